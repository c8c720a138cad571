/** The kitchen of an opened kitchen.yaml, read by the build's own reader, which is fetched when there is such a file. */
import { useEffect, useState } from 'preact/hooks';
import type { Kitchen } from '../domain/kitchen.ts';
import type { Problem } from '../domain/problem.ts';
import type { PlannerContent } from '../views/planner-content.ts';
import { loadScript } from './load-script.ts';

export interface OpenedKitchen {
  /** Null while there is none, and for a file that cannot be read. */
  kitchen: Kitchen | null;
  problems: Problem[];
}

const NONE: OpenedKitchen = { kitchen: null, problems: [] };

export function useOpenedKitchen(file: string, { outlines }: PlannerContent): OpenedKitchen {
  const [opened, setOpened] = useState(NONE);
  useEffect(() => {
    if (file === '') return setOpened(NONE);
    let left = false;
    const read = async (): Promise<void> => {
      if (window.tinwrightReadKitchen === undefined) await loadScript('script/kitchen.js');
      const kitchen = window.tinwrightReadKitchen?.(file, outlines);
      if (!left && kitchen !== undefined) setOpened(kitchen);
    };
    read().catch(() => setOpened(NONE));
    return () => {
      left = true;
    };
  }, [file, outlines]);
  return opened;
}
