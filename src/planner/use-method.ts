/** The method of a recipe, which is fetched when somebody goes to the worktop. */
import { useEffect, useState } from 'preact/hooks';
import type { MethodPiece } from '../views/method-text.types.ts';
import { loadScript } from './load-script.ts';

declare global {
  interface Window {
    tinwrightMethods?: Record<string, MethodPiece[]>;
  }
}

/** Null until it is there; 'failed' when it did not come. */
export function useMethod(recipeId: string): readonly MethodPiece[] | 'failed' | null {
  const [loaded, setLoaded] = useState<'no' | 'yes' | 'failed'>(
    window.tinwrightMethods === undefined ? 'no' : 'yes',
  );
  useEffect(() => {
    if (loaded !== 'no') return;
    loadScript('script/methods.js').then(
      () => setLoaded('yes'),
      () => setLoaded('failed'),
    );
  }, []);
  return loaded === 'yes' ? (window.tinwrightMethods?.[recipeId] ?? []) : loaded === 'no' ? null : 'failed';
}
