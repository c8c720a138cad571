/** The script that is fetched when somebody opens a kitchen.yaml: the build's own reader, on the device. */
import type { Outline } from '../domain/outline.ts';
import { parseKitchenYaml } from '../parse/kitchen.ts';

declare global {
  interface Window {
    tinwrightReadKitchen?: typeof readKitchen;
  }
}

/** As the build reads it; drawings are the published kitchen's. */
export function readKitchen(text: string, outlines: readonly { id: string; outline: Outline }[]) {
  const { kitchen, problems } = parseKitchenYaml(
    text,
    'kitchen.yaml',
    new Map(outlines.map(({ id, outline }) => [id, { id, outline, sized: true }])),
  );
  return { kitchen, problems };
}

if (typeof window !== 'undefined') window.tinwrightReadKitchen = readKitchen;
