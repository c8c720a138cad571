/** Where the CSV files must hold each leaf of the JSON files. A leaf without a place is a failure. */
import { type CsvRecord, cellText } from './csv-records.ts';
import type { Leaf } from './leaves.ts';

const WHOLE_CHART: Record<string, string> = {
  id: 'chart',
  title: 'title',
  kitchen: 'kitchen',
  edition: 'edition',
  'recipe.id': 'recipe',
  'recipe.name': 'recipe name',
  finished_height_mm: 'chart height (mm)',
  finished_height: 'chart height',
  egg_size: 'egg size',
  basis: 'basis',
  bake_basis: 'bake basis',
  baked_basis: 'baked basis',
};

const ROW: Record<string, string> = {
  id: 'row',
  tin: 'tin',
  name: 'name',
  size: 'size',
  other_size: 'size in other units',
  count: 'tins together',
  owned: 'owned',
  volume_ml: 'volume (mL)',
  batter_g_each: 'batter each (g)',
  receives_g_each: 'pour into each (g)',
  batter_g: 'batter (g)',
  'eggs.rule': 'egg rule',
  'eggs.exact': 'eggs exact (count)',
  'eggs.whole': 'eggs whole (count)',
  'eggs.deviation': 'egg deviation (share)',
  'eggs.grams': 'egg shelled (g)',
  'eggs.text': 'eggs',
  raw_fill_mm: 'raw fill (mm)',
  raw_fill_share: 'raw fill (share of depth)',
  finished_height_mm: 'finished height (mm)',
  surplus_g: 'surplus (g)',
  surplus: 'surplus',
  bake: 'dial',
  'bake.dial_c': 'dial (C conventional)',
  'bake.dial': 'dial',
  'bake.dial_elsewhere': 'dial elsewhere',
  'bake.first_look_min': 'first look (min)',
  'bake.likely_min': 'most likely (min)',
  'bake.done_by_min': 'done by (min)',
  'bake.core': 'heating core',
  'bake.band': 'insulated band',
  'bake.advice': 'core and band',
  'bake.logged_bakes': 'logged bakes (count)',
  'bake.shown.first_look': 'first look shown',
  'bake.shown.likely': 'most likely shown',
  'bake.shown.done_by': 'done by shown',
  'bake.shown.logged_bakes': 'logged bakes',
  baked_g_each: 'baked each (g)',
  'shown.baked_g_each': 'baked each shown (g)',
  'shown.volume_ml': 'volume shown (mL)',
  'shown.batter_g_each': 'batter each shown (g)',
  'shown.receives_g_each': 'pour into each shown (g)',
  'shown.batter_g': 'batter shown (g)',
  'shown.raw_fill_mm': 'raw fill shown (mm)',
  'shown.raw_fill_share': 'raw fill shown',
  'shown.finished_height_mm': 'finished height shown',
  'shown.surplus_g': 'surplus shown (g)',
  'shown.eggs_exact': 'eggs exact shown (count)',
  'shown.eggs_whole': 'eggs whole shown (count)',
  'shown.eggs_deviation': 'egg deviation shown',
  'shown.eggs_grams': 'egg shelled shown (g)',
};

/** Column of an ingredient's figure; the order of ingredients is that of the columns. */
function amountCell(record: CsvRecord, at: number, key: string): string {
  const headers = Object.keys(record);
  const grams = headers.filter((header) => / \[[^\]]+\] \(g\)$/.test(header))[at] ?? `ingredient ${at}`;
  const [, name = '', id = ''] = /^(.*) \[([^\]]+)\] \(g\)$/.exec(grams) ?? [];
  if (key === 'id') return id;
  if (key === 'name') return name;
  return cellText(record, { grams, shown: `${name} shown (g)`, spoons: `${name} in spoons` }[key] ?? key);
}

function lineCell(record: CsvRecord, header: string, at: number, key: string): string {
  const line = cellText(record, header).split('\n')[at] ?? '';
  const [, code = '', text = ''] = /^\[([^\]]+)\] (.*)$/.exec(line) ?? [];
  return key === 'code' ? code : text;
}

function rowCell(record: CsvRecord, path: Leaf['path']): string {
  const [head, at, key] = path;
  if (head === 'ingredients') return amountCell(record, Number(at), String(key));
  if (head === 'warnings') {
    return path.length === 1
      ? cellText(record, 'warnings')
      : lineCell(record, 'warnings', Number(at), String(key));
  }
  const eggless = path.length === 1 && head === 'eggs';
  if (eggless) return record['eggs whole (count)'] ?? '';
  return cellText(record, ROW[path.join('.')] ?? path.join('.'));
}

/** The text that the tin chart's CSV holds for a leaf of its JSON. */
export function tinChartCell(records: readonly CsvRecord[], path: Leaf['path']): string {
  const [head, at, key] = path;
  const record = records[head === 'tins' ? Number(at) : 0];
  if (record === undefined) throw new Error(`no record for ${path.join('.')}`);
  if (head === 'tins') return rowCell(record, path.slice(2));
  if (head === 'cautions' || head === 'warnings') {
    const header = head === 'cautions' ? 'cautions' : 'chart warnings';
    return path.length === 1 ? cellText(record, header) : lineCell(record, header, Number(at), String(key));
  }
  if (head === 'flavours') return flavourCell(record, path);
  return cellText(record, WHOLE_CHART[path.join('.')] ?? path.join('.'));
}

function flavourCell(record: CsvRecord, [, at, key]: Leaf['path']): string {
  const header = key === 'name' ? 'flavour names' : 'flavours';
  const cell = cellText(record, header);
  return at === undefined ? cell : (cell.split('\n')[Number(at)] ?? '');
}

const RUNG: Record<string, string> = {
  eggs: 'eggs (count)',
  text: 'eggs',
  batter_g: 'batter (g)',
  'shown.eggs': 'eggs shown (count)',
  'shown.batter_g': 'batter shown (g)',
};

/** The text that the egg ladder's CSV holds for a leaf of its JSON. */
export function eggLadderCell(records: readonly CsvRecord[], path: Leaf['path']): string {
  const [head, at, ...rest] = path;
  const record = records[head === 'rungs' ? Number(at) : 0];
  if (record === undefined) throw new Error(`no record for ${path.join('.')}`);
  if (head === 'flavours') return flavourCell(record, path);
  if (head !== 'rungs') return cellText(record, WHOLE_CHART[path.join('.')] ?? path.join('.'));
  if (rest[0] === 'ingredients') return amountCell(record, Number(rest[1]), String(rest[2]));
  if (rest[0] === 'fills')
    return rest.length === 1 ? '' : fillCell(record, Number(rest[1]) + 1, rest.slice(2).join('.'));
  return cellText(record, RUNG[rest.join('.')] ?? rest.join('.'));
}

function fillCell(record: CsvRecord, number: number, key: string): string {
  const columns: Record<string, string> = {
    text: `fill ${number}`,
    used_g: `fill ${number} used (g)`,
    left_g: `fill ${number} left (g)`,
    'shown.used_g': `fill ${number} used shown (g)`,
    'shown.left_g': `fill ${number} left shown (g)`,
  };
  return cellText(record, columns[key] ?? key);
}
