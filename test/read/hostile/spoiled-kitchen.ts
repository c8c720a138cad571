/** A kitchen with a file of every kind, to be spoiled one way at a time. */
import { cpSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { newFolder } from '../../commands/support/folders.ts';

/** One file of each kind that a reader takes. */
export const FILES = [
  'kitchen.yaml',
  'ingredients.yaml',
  'house-style.yaml',
  'house-styles/slate.yaml',
  'recipes/yellow-butter.md',
  'flavours/lemon.yaml',
  'finishes/simple-syrup.yaml',
  'orders/bake-sale.yaml',
  'pages/about.md',
  'bake-log.csv',
  'stock.csv',
  'outlines/one.svg',
] as const;
/** Read where the house style is good: spoiled alone. */
export const LOGO = 'assets/logo.svg';
export type KitchenFile = (typeof FILES)[number] | typeof LOGO;

const GOOD = 'test/kitchens/good';

/** Lays it out in a folder that goes away with the test. */
export function layOutKitchen(): string {
  const folder = join(newFolder(), 'kitchen');
  cpSync(join(GOOD, 'us-bakery'), folder, { recursive: true });
  mkdirSync(join(folder, 'outlines'));
  cpSync(join(GOOD, 'minimal/outlines/one.svg'), join(folder, 'outlines/one.svg'));
  mkdirSync(join(folder, 'house-styles'));
  cpSync(join(GOOD, 'high/house-styles/slate.yaml'), join(folder, 'house-styles/slate.yaml'));
  const tin = '  - { id: one, name: One, shape: outline, outline: one, depth: 3in }\n';
  const kitchen = readFileSync(join(folder, 'kitchen.yaml'), 'utf8').replace('tins:\n', `tins:\n${tin}`);
  writeFileSync(join(folder, 'kitchen.yaml'), `${kitchen}house_styles: [slate]\n`);
  return folder;
}

/** A text put into a value, a cell or a name of each kind of file: where a baker would have typed it. */
export function typeInto(folder: string, file: KitchenFile, typed: string): void {
  const path = join(folder, file);
  const text = readFileSync(path, 'utf8');
  const changed = file.endsWith('.csv')
    ? `${text}${typed},${typed}\n`
    : file.endsWith('.svg')
      ? text.replace(/<(path|circle) /, `<$1 id="${typed}" `)
      : text.replace(/((?:name|title):\s*["']?\w)/, `$1${typed}`);
  if (changed === text) throw new Error(`nothing to type into in ${file}`);
  writeFileSync(path, changed);
}
