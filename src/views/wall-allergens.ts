/**
 * Which allergens are in what we bake? Recipes, fillings and coatings against the allergens that any of them
 * brings, each named as a label must name it. What nobody has checked is counted; an empty place is no promise.
 * The fourteen allergens: Regulation (EU) 1169/2011, Annex II.
 */

import { type AllergensFound, allergensOf } from '../compute/allergens/allergens-of.ts';
import type { Content } from '../domain/content.ts';
import { ALLERGENS, type Allergen } from '../domain/ingredient.ts';
import type { WallWords } from '../wording/wall/index.ts';
import type { Words } from '../wording/words.ts';
import { countFigure } from './figures.ts';
import type { WallCell, WallTable, WallView } from './wall.types.ts';
import { figureCell, wordCell } from './wall-cells.ts';

export type BoardContent = Pick<Content, 'kitchen' | 'ingredients' | 'recipes' | 'finishes'>;

interface BoardLine {
  id: string;
  name: string;
  found: AllergensFound;
}

function boardLines({ recipes, finishes, ingredients }: BoardContent): BoardLine[] {
  return [
    ...recipes.map(({ id, name, formula }) => ({
      id,
      name,
      found: allergensOf(
        formula.map(({ ingredientId }) => ingredientId),
        ingredients,
      ),
    })),
    ...finishes.map(({ id, name, parts }) => ({
      id,
      name,
      found: allergensOf(
        parts.map(({ ingredientId }) => ingredientId),
        ingredients,
      ),
    })),
  ];
}

function allergenCell({ found }: BoardLine, allergen: Allergen, words: Words, own: WallWords): WallCell {
  const here = found.contained.filter((one) => one.allergen === allergen);
  if (here.length === 0) return wordCell(own.allergens.notThere, 'nothing');
  const names = here.map(({ name }) => name ?? words.allergens[allergen]);
  return wordCell([...new Set(names)].join(', '), 'contains');
}

function unknownCell({ found }: BoardLine, own: WallWords): WallCell {
  const count = found.unknownIds.length;
  if (count === 0) return wordCell(own.allergens.notThere, 'nothing');
  return { ...figureCell(countFigure(count)), tone: 'unknown' };
}

function boardTable(
  lines: BoardLine[],
  firstFinishId: string | null,
  words: Words,
  own: WallWords,
): WallTable {
  const present = ALLERGENS.filter((allergen) =>
    lines.some(({ found }) => found.contained.some((one) => one.allergen === allergen)),
  );
  const hasUnknown = lines.some(({ found }) => found.unknownIds.length > 0);
  const column = (id: string, name: string) => ({ id, name, unit: '', weight: 'word' as const });
  return {
    form: 'table',
    columns: [
      column('what', own.allergens.what),
      ...present.map((allergen) => column(allergen, words.allergens[allergen])),
      ...(hasUnknown ? [column('unknown', own.allergens.unknownColumn)] : []),
    ],
    rows: lines.map((line) => ({
      id: line.id,
      cells: [
        wordCell(line.name),
        ...present.map((allergen) => allergenCell(line, allergen, words, own)),
        ...(hasUnknown ? [unknownCell(line, own)] : []),
      ],
    })),
    secondGroupAt: firstFinishId,
  };
}

/** The board of a kitchen: recipes in the order of their files, then what goes between and around. */
export function wallAllergens(content: BoardContent, words: Words, own: WallWords): WallView {
  const { title, lead, notes, caution } = own.allergens;
  const lines = boardLines(content);
  const hasUnknown = lines.some(({ found }) => found.unknownIds.length > 0);
  return {
    id: 'allergens',
    title,
    lead,
    kitchenName: content.kitchen.name,
    edition: content.kitchen.edition,
    body: boardTable(lines, content.finishes[0]?.id ?? null, words, own),
    notes: [notes.dash, ...(hasUnknown ? [notes.unknown] : []), notes.flavours],
    cautions: [{ code: 'cross-contact', text: caution }],
    path: 'labels.html',
    pathText: own.wherePage,
  };
}
