/**
 * A kitchen for tests that build over and over to see what a fault leaves behind: every part of the output, and
 * little of each. Charts alone are printed, and one font does for all.
 */
import { appendFileSync, cpSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';

const GOOD = 'test/kitchens/good/minimal';

/** Lays the kitchen out in a folder. */
export function layOutFaultKitchen(folder: string): void {
  cpSync(GOOD, folder, { recursive: true });
  appendFileSync(join(folder, 'kitchen.yaml'), 'printables:\n  - { print: tin-chart }\n');
  const style = join(folder, 'house-style.yaml');
  const text = readFileSync(style, 'utf8');
  writeFileSync(style, text.replace(/bundled:.*$/gm, 'bundled:Source Sans 3/400Regular'));
}

/** The same kitchen under another name: every page, print and data file of its build differs. */
export function renameKitchen(folder: string): void {
  const path = join(folder, 'kitchen.yaml');
  writeFileSync(path, readFileSync(path, 'utf8').replace(/^name: .*$/m, 'name: The Other Kitchen'));
}
