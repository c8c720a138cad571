/** What a flavour makes of one recipe: weights before and after, eggs, liquid, allergens. */
import { allergenChange, allergensOf } from '../compute/allergens/allergens-of.ts';
import { formulaInKitchen } from '../compute/flavours/formula-in-kitchen.ts';
import type { Content } from '../domain/content.ts';
import { PART_SHARE, tableShelledG } from '../domain/egg.ts';
import type { Flavour } from '../domain/flavour.ts';
import { quantiseG, quantiseRatio } from '../domain/quantise.ts';
import type { Formula, FormulaLine, Recipe } from '../domain/recipe.ts';
import { type FlavourWords, flavourWordsFor } from '../wording/flavour/index.ts';
import { listInWords } from '../wording/list.ts';
import { wordsFor } from '../wording/locales/index.ts';
import { formatNumber, formatShare } from '../wording/number.ts';
import type { Words } from '../wording/words.ts';
import { allergenCautions, allergenNames, madeWithoutCautions } from './chart-cautions.ts';
import type { Figure } from './figure.ts';
import { shareFigure, totalFigure } from './figures.ts';
import type { FlavourChange, FlavourLine } from './flavour.types.ts';

export type FlavourContent = Pick<Content, 'kitchen' | 'ingredients' | 'recipes' | 'flavours' | 'altitudeM'>;

const gramsFigure = (grams: number): Figure => ({
  value: quantiseG(grams),
  unit: 'g',
  text: formatNumber(grams, Math.abs(grams) < 100 ? 1 : 0),
});

function changeFigure(grams: number): Figure {
  const figure = gramsFigure(grams);
  return figure.value > 0 && figure.text !== '0' ? { ...figure, text: `+${figure.text}` } : figure;
}

const gramsOf = (formula: Formula, id: string): number | null =>
  formula.find(({ ingredientId }) => ingredientId === id)?.grams ?? null;

/** In the order of the new formula; what has gone comes last. */
function lines(before: Formula, after: Formula): FlavourLine[] {
  const gone = before.filter((line) => gramsOf(after, line.ingredientId) === null);
  return [...after, ...gone].map(({ ingredientId: id, name }) => {
    const was = gramsOf(before, id);
    const is = gramsOf(after, id);
    return {
      id,
      name,
      before: was === null ? null : gramsFigure(was),
      after: is === null ? null : gramsFigure(is),
      change: changeFigure((is ?? 0) - (was ?? 0)),
    };
  });
}

function eggCounts(formula: Formula, { eggSize }: Recipe, words: Words): string | null {
  const shelledG = tableShelledG(eggSize);
  const counted = formula.filter((line) => line.eggPart !== undefined);
  if (shelledG === null || counted.length === 0) return null;
  const texts = counted.map(({ eggPart = 'egg', grams }) => {
    const count = quantiseRatio(grams / (shelledG * PART_SHARE[eggPart]));
    const noun = words.eggParts[eggPart];
    return `${formatNumber(count, 2)} ${count === 1 ? noun.one : noun.many}`;
  });
  return listInWords(texts, words.and);
}

function eggsText(recipe: Recipe, after: Formula, words: Words, own: FlavourWords): string | null {
  const was = eggCounts(recipe.formula, recipe, words);
  const is = eggCounts(after, recipe, words);
  if (was === null && is === null) return null;
  return was === is ? own.eggsSame(is ?? own.noEggs) : own.eggsChange(was ?? own.noEggs, is ?? own.noEggs);
}

function wetShare(formula: Formula): number | null {
  const sum = (wanted: (line: FormulaLine) => boolean): number =>
    formula.reduce((total, line) => total + (wanted(line) ? line.grams : 0), 0);
  const dry = sum(({ role, drinks }) => role === 'flour' || (drinks ?? 0) > 0);
  return dry === 0 ? null : quantiseRatio(sum(({ role }) => role === 'egg' || role === 'liquid') / dry);
}

/** Eggs and liquid are balanced against flour in creamed and all-in-one batters. */
function wetText(recipe: Recipe, after: Formula, own: FlavourWords): string | null {
  if (recipe.method !== 'creamed' && recipe.method !== 'all-in-one') return null;
  const was = wetShare(recipe.formula);
  const is = wetShare(after);
  return was === null || is === null ? null : own.wetChange(formatShare(was), formatShare(is));
}

const idsOf = (formula: Formula): string[] => formula.map(({ ingredientId }) => ingredientId);

function allergens(
  before: Formula,
  after: Formula,
  { ingredients }: FlavourContent,
  words: Words,
  own: FlavourWords,
): Pick<FlavourChange, 'allergensAdded' | 'allergensLeftOut' | 'allergenText'> {
  const { added, leftOut } = allergenChange(
    allergensOf(idsOf(before), ingredients),
    allergensOf(idsOf(after), ingredients),
  );
  const addedNames = allergenNames(added, words);
  const leftOutNames = allergenNames(leftOut, words);
  const said = [
    ...(addedNames.length === 0 ? [] : [own.added(listInWords(addedNames, words.and))]),
    ...(leftOutNames.length === 0 ? [] : [own.leftOut(listInWords(leftOutNames, words.and))]),
  ];
  return {
    allergensAdded: addedNames,
    allergensLeftOut: leftOutNames,
    allergenText: said.length === 0 ? own.noAllergenChange : said.join(' '),
  };
}

const totalG = (formula: Formula): number => formula.reduce((sum, { grams }) => sum + grams, 0);

/** The change that a flavour makes to a recipe as it is written, at the kitchen's altitude. */
export function flavourChange(flavour: Flavour, recipe: Recipe, content: FlavourContent): FlavourChange {
  const words = wordsFor(content.kitchen.locale);
  const own = flavourWordsFor(content.kitchen.locale);
  const { formula, growth, warnings } = formulaInKitchen(recipe, [flavour], content);
  const growthShare = quantiseRatio(growth - 1);
  return {
    recipe: { id: recipe.id, name: recipe.name },
    chartId: `${recipe.id}--${flavour.id}`,
    lines: lines(recipe.formula, formula),
    totalBefore: totalFigure(quantiseG(totalG(recipe.formula))),
    totalAfter: totalFigure(quantiseG(totalG(formula))),
    growth: shareFigure(growthShare),
    growthText: growthShare === 0 ? own.kept : own.grows(formatShare(growthShare)),
    eggsText: eggsText(recipe, formula, words, own),
    wetText: wetText(recipe, formula, own),
    ...allergens(recipe.formula, formula, content, words, own),
    cautions: [
      ...madeWithoutCautions(recipe.formula, formula, content.ingredients, words),
      ...allergenCautions(idsOf(formula), content.ingredients, words),
    ],
    warnings: warnings.map(({ code, message }) => ({
      code,
      message: words.warning(message, [recipe.name, flavour.name]),
    })),
  };
}
