/** The kitchen of an opened kitchen.yaml, read by the build's own reader, which is fetched when there is such a file. */
import { useEffect, useState } from 'preact/hooks';
import type { PlannerContent } from '../views/planner-content.ts';
import type { ReadKitchen } from './kitchen-reader.ts';
import { loadScript } from './load-script.ts';

const NONE: ReadKitchen = { kitchen: null, settings: {}, problems: [] };

export function useOpenedKitchen(file: string, published: PlannerContent): ReadKitchen {
  const [opened, setOpened] = useState(NONE);
  useEffect(() => {
    if (file === '') return setOpened(NONE);
    let left = false;
    const read = async (): Promise<void> => {
      if (window.tinwrightReadKitchen === undefined) await loadScript('script/kitchen.js');
      const kitchen = window.tinwrightReadKitchen?.(file, published);
      if (!left && kitchen !== undefined) setOpened(kitchen);
    };
    read().catch(() => setOpened(NONE));
    return () => {
      left = true;
    };
  }, [file, published]);
  return opened;
}
