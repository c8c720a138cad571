/** All recipes on one page: how high, how hot, and what they contain. */
import { type AllergensFound, allergensOf } from '../../compute/allergens/allergens-of.ts';
import type { Content } from '../../domain/content.ts';
import { PLAIN_OVEN } from '../../domain/kitchen.ts';
import type { Recipe } from '../../domain/recipe.ts';
import { bakeWordsFor } from '../../wording/bake/index.ts';
import type { BookletWords } from '../../wording/booklet/index.ts';
import { wordsFor } from '../../wording/locales/index.ts';
import { dialTextsOf } from '../bake-figures.ts';
import { allergenNames } from '../chart-cautions.ts';
import { heightFigure } from '../figures.ts';
import { tableRowAnchor } from './anchors.ts';
import type { BookletTable, TableCell, TableColumn } from './booklet.types.ts';
import { figureCell, wordCell } from './cells.ts';

function containsCell(found: AllergensFound, content: Content, words: BookletWords): TableCell {
  const names = allergenNames(found.contained, wordsFor(content.kitchen.locale));
  const unknown = found.unknownIds.length;
  const said = names.length === 0 && unknown === 0 ? [words.recipes.noneWritten] : names;
  const text = [...said, ...(unknown === 0 ? [] : [words.recipes.unchecked(unknown)])].join(', ');
  return wordCell(text, unknown === 0 ? 'plain' : 'unknown');
}

/** A row for each recipe, in the booklet's order. */
export function bookletOverview(
  recipes: readonly Recipe[],
  content: Content,
  words: BookletWords,
): BookletTable {
  const own = words.recipes;
  const column = (
    id: string,
    name: string,
    unit = '',
    weight: TableColumn['weight'] = 'word',
  ): TableColumn => ({
    id,
    name,
    unit,
    weight,
  });
  const oven = content.kitchen.oven ?? PLAIN_OVEN;
  return {
    id: 'recipes',
    title: own.heading,
    lead: own.lead(recipes.length),
    columns: [
      column('recipe', own.name),
      column('height', own.height, own.heightUnit, 'key'),
      column('oven', own.oven),
      column('contains', own.contains),
    ],
    rows: recipes.map((recipe) => {
      const ids = recipe.formula.map(({ ingredientId }) => ingredientId);
      const found = allergensOf(ids, content.ingredients);
      return {
        id: recipe.id,
        cells: [
          { ...wordCell(recipe.name, 'strong'), small: recipe.summary },
          figureCell(heightFigure(recipe.finishedHeightMm)),
          wordCell(
            dialTextsOf(recipe.ovenC, oven, bakeWordsFor(content.kitchen.locale)).set.replaceAll(
              ' ',
              '\u00a0',
            ),
          ),
          containsCell(found, content, words),
        ],
      };
    }),
    anchors: Object.fromEntries(recipes.map(({ id }) => [id, tableRowAnchor('recipes', id)])),
    notes: [],
    cautions: [],
  };
}
