/**
 * The nutrition table. UK and EU in the order of Regulation (EU) No 1169/2011 Annex XV, energy in kJ and kcal; US
 * figures in the order of 21 CFR 101.9(c), where carbohydrate holds the fibre and sodium stands for salt ÷ 2.5
 * (both from memory). Fibre and polyols stand there only where there are any.
 */
import type { Nutrition, NutritionFigures } from '../compute/nutrition/nutrition.ts';
import type { LabelRules } from '../domain/label-settings.ts';
import type { LabelWords } from '../wording/label/index.ts';
import type { NutrientWords } from '../wording/label/label-words.ts';
import { euFigure, type RoundedAs, type RoundedUs, usFigure } from '../wording/label/nutrition-rounding.ts';
import { formatFixed } from '../wording/number.ts';
import { capitalised } from '../wording/sentence-case.ts';
import type { Figure } from './figure.ts';
import type { LabelNutrient, LabelNutrition } from './label.types.ts';

interface Row {
  id: keyof NutrientWords;
  within: boolean;
  figures(of: NutritionFigures): Figure[];
}

const quantised = (value: number): number => Math.round(value * 1000) / 1000;

const eu = (value: number, as: RoundedAs, unit: Figure['unit'] = 'g'): Figure => ({
  value: quantised(value),
  unit,
  text: `${euFigure(value, as)}\u00a0${unit}`,
});

const us = (value: number, as: RoundedUs, unit: Figure['unit'] = 'g'): Figure => ({
  value: quantised(value),
  unit,
  text: unit === 'kcal' ? usFigure(value, as) : `${usFigure(value, as)}\u00a0${unit}`,
});

const SALT_PER_SODIUM = 2.5;

const EU_ROWS: readonly Row[] = [
  {
    id: 'energy',
    within: false,
    figures: ({ energy }) => [eu(energy.kj, 'energy', 'kJ'), eu(energy.kcal, 'energy', 'kcal')],
  },
  { id: 'fat', within: false, figures: ({ fatG }) => [eu(fatG, 'major')] },
  { id: 'saturates', within: true, figures: ({ saturatesG }) => [eu(saturatesG, 'saturates')] },
  { id: 'carbohydrate', within: false, figures: ({ carbohydrateG }) => [eu(carbohydrateG, 'major')] },
  { id: 'sugars', within: true, figures: ({ sugarsG }) => [eu(sugarsG, 'major')] },
  { id: 'polyols', within: true, figures: ({ polyolsG }) => [eu(polyolsG, 'major')] },
  { id: 'fibre', within: false, figures: ({ fibreG }) => [eu(fibreG, 'major')] },
  { id: 'protein', within: false, figures: ({ proteinG }) => [eu(proteinG, 'major')] },
  { id: 'salt', within: false, figures: ({ saltG }) => [eu(saltG, 'salt')] },
];

const US_ROWS: readonly Row[] = [
  { id: 'energy', within: false, figures: ({ energy }) => [us(energy.kcal, 'calories', 'kcal')] },
  { id: 'fat', within: false, figures: ({ fatG }) => [us(fatG, 'fat')] },
  { id: 'saturates', within: true, figures: ({ saturatesG }) => [us(saturatesG, 'fat')] },
  {
    id: 'salt',
    within: false,
    figures: ({ saltG }) => [us((saltG / SALT_PER_SODIUM) * 1000, 'sodium', 'mg')],
  },
  {
    id: 'carbohydrate',
    within: false,
    figures: ({ carbohydrateG, fibreG }) => [us(carbohydrateG + fibreG, 'other')],
  },
  { id: 'fibre', within: true, figures: ({ fibreG }) => [us(fibreG, 'other')] },
  { id: 'sugars', within: true, figures: ({ sugarsG }) => [us(sugarsG, 'other')] },
  { id: 'polyols', within: true, figures: ({ polyolsG }) => [us(polyolsG, 'other')] },
  { id: 'protein', within: false, figures: ({ proteinG }) => [us(proteinG, 'other')] },
];

const shown = (figures: readonly Figure[]): string => figures.map(({ text }) => text).join(' / ');

function nutrient({ id, within, figures }: Row, nutrition: Nutrition, words: LabelWords): LabelNutrient {
  const name = words.nutrition.figures[id];
  const per100G = figures(nutrition.per100G);
  const perPortion = nutrition.perPortion === null ? [] : figures(nutrition.perPortion);
  return {
    id,
    name: within ? words.nutrition.ofWhich(name) : name,
    within,
    per100G,
    perPortion,
    per100GText: shown(per100G),
    perPortionText: shown(perPortion),
  };
}

/** The table of a cake; null where figures are missing. */
export function labelNutrition(
  nutrition: Nutrition | null,
  rules: LabelRules,
  words: LabelWords,
): LabelNutrition | null {
  if (nutrition === null) return null;
  const { per100G, portionG } = nutrition;
  const rows = (rules === 'US' ? US_ROWS : EU_ROWS).filter(
    ({ id }) => id !== 'polyols' || per100G.polyolsG > 0,
  );
  return {
    title: words.nutrition.title,
    per100GHead: words.nutrition.per100,
    perPortionHead: portionG === null ? '' : words.nutrition.perPortion(formatFixed(portionG, 0)),
    rows: rows.map((row) => nutrient(row, nutrition, words)),
  };
}

/**
 * The same in words, for a label too small for a table: UK and EU per 100 g, and the energy of a portion where it is
 * known (all of it stands in the table), as Regulation (EU) No 1169/2011 Articles 32 and 33 have it; US per serving,
 * as 21 CFR 101.9(b) has it (both from memory), and per 100 g only where no serving is known.
 */
export function nutritionText(nutrition: LabelNutrition, rules: LabelRules, words: LabelWords): string {
  const { title, per100GHead, perPortionHead, rows } = nutrition;
  const line = (head: string, key: 'per100GText' | 'perPortionText', of = rows): string =>
    words.nutrition.line(head, of.map((row) => `${row.name.toLowerCase()} ${row[key]}`).join(', '));
  if (perPortionHead === '') return line(`${title} ${per100GHead}`, 'per100GText');
  if (rules === 'US') return line(`${title} ${perPortionHead}`, 'perPortionText');
  const portion = line(capitalised(perPortionHead), 'perPortionText', rows.slice(0, 1));
  return `${line(`${title} ${per100GHead}`, 'per100GText')} ${portion}`;
}
