/**
 * Which allergens are in which cake? Every recipe with its flavours, and every filling and coating, against the
 * allergens that any of them brings, each named as a label must name it; what nobody has checked stands apart.
 */
import { type AllergensFound, allergensOf } from '../compute/allergens/allergens-of.ts';
import { ALLERGENS, type Allergen } from '../domain/ingredient.ts';
import { labelWordsFor } from '../wording/label/index.ts';
import { wordsFor } from '../wording/locales/index.ts';
import { chartCombinations, chartInput } from './chart-inputs.ts';
import { chartFormula } from './chart-mixes.ts';
import type { LabelContent } from './label-samples.ts';
import { labelPath } from './nav.ts';

export interface MatrixCell {
  text: string;
  /** Told in heavier type. */
  contains: boolean;
}

export interface MatrixRow {
  id: string;
  name: string;
  /** 'filling or coating', '' for a cake. */
  small: string;
  /** Page of its label; null where it has none of its own. */
  path: string | null;
  cells: MatrixCell[];
}

export interface LabelMatrix {
  columns: { id: string; name: string }[];
  rows: MatrixRow[];
}

interface Line extends Omit<MatrixRow, 'cells'> {
  found: AllergensFound;
}

function cakeLines(content: LabelContent): Line[] {
  const words = labelWordsFor(content.kitchen.locale);
  return chartCombinations(content).map(({ recipe, flavours }) => {
    const id = [recipe.id, ...flavours.map((one) => one.id)].join('--');
    const formula = chartFormula(chartInput(content, recipe, flavours));
    const used = formula.filter(({ grams }) => grams > 0).map(({ ingredientId }) => ingredientId);
    return {
      id,
      name: words.flavoured(
        recipe.name,
        flavours.map(({ name }) => name),
      ),
      small: '',
      path: labelPath(id),
      found: allergensOf(used, content.ingredients),
    };
  });
}

function finishLines({ finishes, ingredients, kitchen }: LabelContent): Line[] {
  const { finish } = labelWordsFor(kitchen.locale).page;
  return finishes.map(({ id, name, parts }) => ({
    id: `finish-${id}`,
    name,
    small: finish,
    path: null,
    found: allergensOf(
      parts.map(({ ingredientId }) => ingredientId),
      ingredients,
    ),
  }));
}

/** The matrix of a kitchen; a column for what nobody has checked only where there is any. */
export function labelMatrix(content: LabelContent): LabelMatrix {
  const words = labelWordsFor(content.kitchen.locale).page;
  const names = wordsFor(content.kitchen.locale).allergens;
  const lines = [...cakeLines(content), ...finishLines(content)];
  const brings = ({ found }: Line, allergen: Allergen) =>
    found.contained.filter((one) => one.allergen === allergen);
  const present = ALLERGENS.filter((allergen) => lines.some((line) => brings(line, allergen).length > 0));
  const hasUnknown = lines.some(({ found }) => found.unknownIds.length > 0);
  const cell = (line: Line, allergen: Allergen): MatrixCell => {
    const here = brings(line, allergen).map(({ name }) => name ?? names[allergen]);
    return {
      text: here.length === 0 ? words.notThere : [...new Set(here)].join(', '),
      contains: here.length > 0,
    };
  };
  const unknown = ({ found: { unknownIds } }: Line): MatrixCell => ({
    text: unknownIds.length === 0 ? words.notThere : words.unknownCount(unknownIds.length),
    contains: unknownIds.length > 0,
  });
  return {
    columns: [
      ...present.map((allergen) => ({ id: allergen, name: names[allergen] })),
      ...(hasUnknown ? [{ id: 'unknown', name: words.unknown }] : []),
    ],
    rows: lines.map((line) => {
      const { found, ...row } = line;
      return {
        ...row,
        cells: [...present.map((allergen) => cell(line, allergen)), ...(hasUnknown ? [unknown(line)] : [])],
      };
    }),
  };
}
