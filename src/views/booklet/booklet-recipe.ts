/** One recipe of the booklet: the page of the recipe and its tin chart, brought together. */

import type { Content } from '../../domain/content.ts';
import { PLAIN_OVEN } from '../../domain/kitchen.ts';
import type { Recipe } from '../../domain/recipe.ts';
import { bakeWordsFor } from '../../wording/bake/index.ts';
import type { BookletWords } from '../../wording/booklet/index.ts';
import { formatLength } from '../../wording/length.ts';
import { wordsFor } from '../../wording/locales/index.ts';
import { capitalised } from '../../wording/sentence-case.ts';
import type { Words } from '../../wording/words.ts';
import { dialTextsOf } from '../bake-figures.ts';
import { methodPieces } from '../method-text.ts';
import { workingPath } from '../nav.ts';
import { recipeView } from '../recipe.ts';
import type { TinChartRow, TinChartView } from '../tin-chart.types.ts';
import { bakeAnchor, formulaAnchor, recipeAnchor, weightsAnchor } from './anchors.ts';
import type {
  BookletBake,
  BookletFact,
  BookletIngredient,
  BookletRecipe,
  BookletRow,
} from './booklet.types.ts';
import { type RemarkLetters, remarksOf } from './remarks.ts';

const isAllergen = (code: string): boolean => code.startsWith('allergens') || code === 'made-without';

const rowName = ({ count, tinName }: Pick<TinChartRow, 'count' | 'tinName'>): string =>
  count > 1 ? `${count}\u00a0× ${tinName}` : tinName;

/** 'Eggs', 'Yolks': what the chart counts, in the bowl's order; 'Eggs' alone where beaten egg is weighed. */
function eggHeadings({ rows }: TinChartView, { eggParts }: Words): string[] {
  if (rows.every(({ eggs }) => eggs === null)) return [];
  const counted = rows.flatMap(({ eggs }) => eggs?.parts ?? []).map(({ part }) => part);
  const parts = counted.length === 0 ? (['egg'] as const) : [...new Set(counted)];
  return parts.map((part) => capitalised(eggParts[part].many));
}

function bookletRow(row: TinChartRow, chart: TinChartView, letters: RemarkLetters): BookletRow {
  const { id, tinId, eggs, batter, amounts, rawFill, surplus } = row;
  return {
    id,
    tinId,
    name: rowName(row),
    eggs: (eggs?.parts ?? []).map(({ whole }) => whole),
    eggText: eggs?.rule === 'weigh' ? eggs.text : '',
    batter,
    amounts,
    fill: rawFill,
    surplus,
    remarks: letters.get(id) ?? [],
    anchor: weightsAnchor(chart.id, id),
  };
}

function bookletBake(
  { tinId, tinName, bake }: TinChartRow,
  chartId: string,
  words: BookletWords,
): BookletBake[] {
  if (!bake) return [];
  const { dial, firstLook, expectedBy, core, band } = bake;
  return [
    {
      tinId,
      name: tinName,
      dial,
      firstLook,
      expectedBy,
      aid: core ? words.recipe.withCore : band ? words.recipe.withBand : '',
      anchor: bakeAnchor(chartId, tinId),
    },
  ];
}

function factsOf(recipe: Recipe, chart: TinChartView, content: Content, words: BookletWords): BookletFact[] {
  const { facts } = words.recipe;
  const { set, others } = dialTextsOf(
    recipe.ovenC,
    content.kitchen.oven ?? PLAIN_OVEN,
    bakeWordsFor(content.kitchen.locale),
  );
  const layers = recipeView(recipe, content).facts.at(-1)?.text ?? '';
  return [
    { label: facts.oven, text: others === '' ? set : `${set} (${others})` },
    { label: facts.height, text: chart.finishedHeightText },
    { label: facts.layers, text: layers },
    ...(chart.rows.some(({ eggs }) => eggs !== null) ? [{ label: facts.eggs, text: chart.eggSizeText }] : []),
    ...(recipe.suits === undefined ? [] : [{ label: facts.suits, text: recipe.suits }]),
  ];
}

/** The recipe as its chart has it; figures are the chart's own. */
export function bookletRecipe(
  recipe: Recipe,
  chart: TinChartView,
  content: Content,
  words: BookletWords,
): BookletRecipe {
  const own = wordsFor(content.kitchen.locale);
  const written = recipeView(recipe, content);
  const heightText = formatLength(recipe.finishedHeightMm, 'mm');
  const { remarks, letters } = remarksOf(chart.rows, heightText, words);
  return {
    id: chart.id,
    name: chart.title,
    summary: recipe.summary,
    path: workingPath(chart.id),
    anchor: recipeAnchor(chart.id),
    facts: factsOf(recipe, chart, content, words),
    formula: written.formula.map(
      (line, at): BookletIngredient => ({
        ...line,
        id: recipe.formula[at]?.ingredientId ?? line.name,
        anchor: formulaAnchor(recipe.id, recipe.formula[at]?.ingredientId ?? line.name),
      }),
    ),
    totalText: written.totalText,
    eggNote: written.eggNote,
    allergens: chart.cautions.filter(({ code }) => isAllergen(code)),
    method: methodPieces(recipe.methodMarkdown),
    basisText: chart.basisText,
    eggHeadings: eggHeadings(chart, own),
    columns: chart.columns,
    rows: chart.rows.map((row) => bookletRow(row, chart, letters)),
    remarks,
    warnings: chart.warnings.map(({ message }) => message),
    bakes: chart.rows
      .filter((row, at, all) => all.findIndex(({ tinId }) => tinId === row.tinId) === at)
      .flatMap((row) => bookletBake(row, chart.id, words)),
    bakeBasisText: chart.bake?.basisText ?? '',
    readyText: own.cautions.ready,
    cautions: chart.cautions.filter(({ code }) => !isAllergen(code) && code !== 'ready'),
  };
}
