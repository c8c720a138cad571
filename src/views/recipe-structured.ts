/**
 * A recipe in schema.org's own words (type Recipe), for search engines and readers of recipes: one yield per tin
 * owned. Typed by the vocabulary itself, so that a property it does not have does not compile.
 */
import type { HowToSection, HowToStep, Recipe as SchemaRecipe, WithContext } from 'schema-dts';
import type { Content } from '../domain/content.ts';
import type { Recipe } from '../domain/recipe.ts';
import { aroundWordsFor } from '../wording/around/index.ts';
import { methodPieces } from './method-text.ts';
import type { MethodPiece } from './method-text.types.ts';
import { recipePath } from './nav.ts';
import { recipeView } from './recipe.ts';
import type { TinChartView } from './tin-chart.types.ts';

const textOf = (piece: MethodPiece): string =>
  piece.kind === 'heading' ? piece.text : piece.spans.map(({ text }) => text).join('');

/** Sections by the method's headings; what is not an item is read with the step it precedes. */
function instructions(pieces: readonly MethodPiece[]): HowToSection[] {
  const sections: { name: string; steps: HowToStep[] }[] = [{ name: '', steps: [] }];
  for (const piece of pieces) {
    if (piece.kind === 'heading') sections.push({ name: piece.text, steps: [] });
    else sections[sections.length - 1]?.steps.push({ '@type': 'HowToStep', text: textOf(piece) });
  }
  return sections
    .filter(({ steps }) => steps.length > 0)
    .map(({ name, steps }) => ({
      '@type': 'HowToSection',
      ...(name === '' ? {} : { name }),
      itemListElement: steps,
    }));
}

const yields = ({ rows }: TinChartView): string[] =>
  rows
    .filter(({ count }) => count === 1)
    .map(({ tinName, sizeText, batter }) => `${tinName} (${sizeText}): ${batter.text} g`);

/** The recipe as linked data; `chart` is its plain tin chart. */
export function structuredRecipe(
  recipe: Recipe,
  chart: TinChartView | undefined,
  content: Content,
): WithContext<SchemaRecipe> {
  const { kitchen } = content;
  const view = recipeView(recipe, content);
  const site = kitchen.siteUrl?.replace(/\/*$/, '');
  const address =
    site === undefined
      ? {}
      : { url: `${site}/${recipePath(recipe.id)}`, image: `${site}/pictures/${recipe.id}.png` };
  return {
    '@context': 'https://schema.org',
    '@type': 'Recipe',
    name: recipe.name,
    description: recipe.summary,
    ...address,
    inLanguage: kitchen.locale,
    author: { '@type': 'Organization', name: kitchen.name },
    dateModified: kitchen.edition,
    recipeCategory: aroundWordsFor(kitchen.locale).cake,
    ...(chart === undefined ? {} : { recipeYield: yields(chart) }),
    recipeIngredient: view.formula.map(({ name, amountText }) => `${amountText} ${name.toLowerCase()}`),
    recipeInstructions: instructions(methodPieces(recipe.methodMarkdown)),
  };
}
