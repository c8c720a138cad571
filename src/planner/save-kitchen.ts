/** This device's kitchen as a file; what the published kitchen.yaml says beside is fetched when somebody saves. */
import type { Kitchen } from '../domain/kitchen.ts';
import type { KitchenText } from '../parse/kitchen-sections.ts';
import { handOver } from './hand-over.ts';
import { loadScript } from './load-script.ts';

declare global {
  interface Window {
    /** Written by the build. */
    tinwrightKitchenText?: KitchenText;
  }
}

/** Hands over kitchen.yaml; `opened` is the file that `base` was read from, empty for the published one. Throws when a script does not come. */
export async function saveKitchen(kitchen: Kitchen, base: Kitchen, opened: string): Promise<void> {
  if (window.tinwrightKitchenFile === undefined) await loadScript('script/kitchen.js');
  if (opened === '' && window.tinwrightKitchenText === undefined) await loadScript('script/kitchen-text.js');
  const { tinwrightKitchenFile: file, tinwrightKitchenText: published } = window;
  const text = opened === '' ? published : file?.openedText(opened);
  if (file === undefined || text === undefined) throw new Error('a script of the planner says nothing');
  handOver(file.kitchenYaml({ base, kitchen, text }), 'kitchen.yaml', 'text/yaml');
}
