/**
 * A kitchen of any size, to measure growth: the demo's recipes, flavours, tins, orders and bakes, repeated under
 * further names with tins of further sizes. Nothing is drawn by chance: the same numbers give the same files.
 */
import { cpSync, mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';

export interface KitchenSize {
  tins: number;
  recipes: number;
  orders: number;
  logRows: number;
}

/** The demo's own size, in round numbers. Flavours are always the same ten. */
export const ONCE: KitchenSize = { tins: 20, recipes: 9, orders: 10, logRows: 100 };

/** Ten times the demo in all that grows: recipes by tins would be a hundredfold, so either grows by itself. */
export const TENFOLD: KitchenSize = { tins: 20, recipes: 90, orders: 100, logRows: 1000 };

/** The largest kitchen that is promised to build. */
const LARGEST: KitchenSize = { tins: 200, recipes: 100, orders: 1000, logRows: 10_000 };

/** A part of the largest, in all that grows. */
export function partOfLargest(divisor: number): KitchenSize {
  const { tins, recipes, orders, logRows } = LARGEST;
  const part = (count: number): number => Math.ceil(count / divisor);
  return { tins: part(tins), recipes: part(recipes), orders: part(orders), logRows: part(logRows) };
}

const SHAPES = [
  (size: string) => ({ shape: `shape: round, across: ${size}`, name: 'round' }),
  (size: string) => ({ shape: `shape: square, side: ${size}`, name: 'square' }),
  (size: string) => ({ shape: `shape: hexagon, flats: ${size}`, name: 'hexagon' }),
  (size: string) => ({ shape: `shape: heart, across: ${size}`, name: 'heart' }),
  (size: string) => ({ shape: `shape: octagon, flats: ${size}`, name: 'octagon' }),
] as const;

/** Tins from 100 mm across, a step of 5 mm after every round of shapes. */
function tinLines(count: number): string[] {
  return Array.from({ length: Math.max(0, count) }, (_, index) => {
    const across = 100 + 5 * Math.floor(index / SHAPES.length);
    const { shape, name } = (SHAPES[index % SHAPES.length] ?? SHAPES[0])(`${across} mm`);
    return `  - { id: ${name}-${across}, name: ${name} ${across}, ${shape}, depth: 76 mm, owned: 2, material: bright aluminium }`;
  });
}

/** One order a file, ten a week from the first Monday of 2027 on, each of one or two of the demo's tins. */
function orderText(index: number): string {
  const week = Math.floor(index / 10);
  const day = new Date(Date.UTC(2027, 0, 7 + 7 * week + (index % 3))).toISOString().slice(0, 10);
  const hour = 10 + (index % 8);
  const tier = (tin: string): string[] => [
    `  - tin: ${tin}`,
    '    recipe: vanilla-equal-weights',
    ...(index % 2 === 0 ? ['    flavours: [orange]'] : []),
    '    layers: 3',
    '    finishes:',
    '      - { finish: vanilla-buttercream, use: filling }',
    '      - { finish: vanilla-buttercream, use: coating }',
  ];
  return [
    `title: Order ${index + 1}`,
    `reference: S-${index + 1}`,
    `hand_over: { at: ${day} ${hour}:00, place: collected }`,
    'portions: { wanted: 10, size: dessert }',
    ...(index % 5 === 0 ? ['arrangement: stacked'] : []),
    'tiers:',
    ...(index % 5 === 0 ? [...tier('round-8'), ...tier('round-6')] : tier(index % 2 ? 'round-8' : 'round-6')),
    '',
  ].join('\n');
}

function logRows(count: number): string[] {
  return Array.from({ length: count }, (_, index) => {
    const date = new Date(Date.UTC(2020, 0, 1 + (index % 2000))).toISOString().slice(0, 10);
    const [tin, batter, minutes] = index % 2 ? ['round-8', 900, 52] : ['round-6', 510, 46];
    return `${date},vanilla-equal-weights,,${tin},1,${batter} g,140C fan,${minutes + (index % 7) - 3} min,skewer,none,no,65 mm,,`;
  });
}

const numbered = (id: string, index: number): string => `${id}-${String(index + 1).padStart(3, '0')}`;

/**
 * Writes the kitchen below `to`, beginning with the demo's files of `from`. Drops the second house style, so that
 * seconds can be held against the demo's own.
 */
export function writeLargeKitchen(from: string, to: string, size: KitchenSize): void {
  rmSync(to, { recursive: true, force: true });
  cpSync(from, to, { recursive: true });
  const kitchen = readFileSync(join(to, 'kitchen.yaml'), 'utf8').replace(/^house_styles:.*$/m, '');
  const own = /^tins:\n(?:[ #].*\n)+/m.exec(kitchen)?.[0] ?? '';
  const further = tinLines(size.tins - (own.match(/^ {2}- /gm)?.length ?? 0));
  const text = kitchen.replace(own, () => own + further.map((line) => `${line}\n`).join(''));
  writeFileSync(join(to, 'kitchen.yaml'), text);
  copyRecipes(to, size.recipes);
  rmSync(join(to, 'orders'), { recursive: true, force: true });
  mkdirSync(join(to, 'orders'));
  for (let index = 0; index < size.orders; index += 1)
    writeFileSync(join(to, 'orders', `${numbered('order', index)}.yaml`), orderText(index));
  const log = readFileSync(join(to, 'bake-log.csv'), 'utf8').trimEnd();
  const ownRows = log.split('\n').length - 1;
  writeFileSync(join(to, 'bake-log.csv'), [log, ...logRows(size.logRows - ownRows), ''].join('\n'));
}

/** The ten flavours that are kept. */
const FLAVOURS = new Set(
  [
    'almond',
    'banana',
    'cardamom-and-rose',
    'carrot-and-walnut',
    'cocoa',
    'coconut-and-lime',
    'coffee',
  ].concat(['mocha', 'orange', 'poppy-seed']),
);

/** All recipes in turn, so that ten times as many are ten times the work; copies take the flavours of their own. */
function copyRecipes(to: string, count: number): void {
  const folder = join(to, 'recipes');
  const own = readdirSync(folder).map((file) => file.replace(/\.md$/, ''));
  const copiesOf = new Map(own.map((id) => [id, [id]]));
  for (let index = own.length; index < count; index += 1) {
    const id = own[index % own.length] ?? '';
    const round = Math.floor(index / own.length);
    const copy = numbered(id, round);
    const text = readFileSync(join(folder, `${id}.md`), 'utf8');
    writeFileSync(join(folder, `${copy}.md`), text.replace(/^name: (.*)$/m, `name: $1 ${round + 1}`));
    copiesOf.get(id)?.push(copy);
  }
  for (const file of readdirSync(join(to, 'flavours'))) {
    const path = join(to, 'flavours', file);
    if (FLAVOURS.has(file.replace(/\.yaml$/, ''))) suitCopies(path, copiesOf);
    else rmSync(path);
  }
}

function suitCopies(path: string, copiesOf: ReadonlyMap<string, readonly string[]>): void {
  const suited = (ids: string): string[] => ids.split(/,\s*/).flatMap((id) => copiesOf.get(id) ?? [id]);
  const text = readFileSync(path, 'utf8');
  writeFileSync(
    path,
    text.replace(/recipes: \[(.*?)\]/, (_, ids: string) => `recipes: [${suited(ids).join(', ')}]`),
  );
}
