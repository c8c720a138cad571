/** The working of a plan, once it is asked for: its script is fetched then, and every change of the plan worked anew. */
import { useEffect, useMemo, useState } from 'preact/hooks';
import type { WorkingView } from '../views/working.types.ts';
import type { PlanAnswer } from './answer.ts';
import { loadScript } from './load-script.ts';

type Loaded = 'no' | 'yes' | 'failed';

/** Null until it is there; 'failed' when its script did not come. */
export function useWorking({ view, worked }: PlanAnswer, isAsked: boolean): WorkingView | 'failed' | null {
  const [loaded, setLoaded] = useState<Loaded>('no');
  useEffect(() => {
    if (!isAsked || loaded === 'yes') return;
    const there = window.tinwrightWorking === undefined ? loadScript('script/working.js') : Promise.resolve();
    there.then(
      () => setLoaded('yes'),
      () => setLoaded('failed'),
    );
  }, [isAsked]);
  return useMemo(() => {
    if (!isAsked || loaded === 'no') return null;
    if (loaded === 'failed') return 'failed';
    return window.tinwrightWorking?.(worked.input, worked.mix, view.title, view.chartId) ?? 'failed';
  }, [isAsked, loaded, worked]);
}
