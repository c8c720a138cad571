/** One recipe of the booklet: the page of the recipe and its tin chart, brought together. */
import type { Content } from '../../domain/content.ts';
import { PLAIN_OVEN } from '../../domain/kitchen.ts';
import type { Recipe } from '../../domain/recipe.ts';
import type { BookletWords } from '../../wording/booklet/index.ts';
import { formatLength } from '../../wording/length.ts';
import { wordsFor } from '../../wording/locales/index.ts';
import { dialTextsOf } from '../bake-figures.ts';
import { methodPieces } from '../method-text.ts';
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

export const rowName = ({ count, tinName }: Pick<TinChartRow, 'count' | 'tinName'>): string =>
  count > 1 ? `${count}\u00a0× ${tinName}` : tinName;

/** Parts of the egg that a formula counts. */
const partsOf = ({ formula }: Recipe) => [
  ...new Set(formula.flatMap(({ eggPart }) => (eggPart === undefined ? [] : [eggPart]))),
];

function bookletRow(
  row: TinChartRow,
  chart: TinChartView,
  parts: number,
  letters: RemarkLetters,
): BookletRow {
  const { id, tinId, eggs, batter, amounts, rawFill, surplus } = row;
  const said = eggs === null || (eggs.rule !== 'weigh' && parts === 1);
  return {
    id,
    tinId,
    name: rowName(row),
    eggs: eggs === null || eggs.rule === 'weigh' ? null : eggs.whole,
    eggText: said ? '' : eggs.text,
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
  const { set, others } = dialTextsOf(recipe.ovenC, content.kitchen.oven ?? PLAIN_OVEN);
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
  const parts = partsOf(recipe);
  const [part] = parts;
  const noun = part === undefined ? null : own.eggParts[parts.length === 1 ? part : 'egg'].many;
  const heightText = formatLength(recipe.finishedHeightMm, 'mm');
  const { remarks, letters } = remarksOf(chart.rows, heightText, words);
  return {
    id: chart.id,
    name: chart.title,
    summary: recipe.summary,
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
    eggHeading: noun === null ? null : `${noun.charAt(0).toUpperCase()}${noun.slice(1)}`,
    columns: chart.columns,
    rows: chart.rows.map((row) => bookletRow(row, chart, parts.length, letters)),
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
