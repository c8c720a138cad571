/** A recipe as it is written: what goes into the bowl, how, and which bakes prove it. */
import type { Content } from '../domain/content.ts';
import { PART_SHARE, tableShelledG } from '../domain/egg.ts';
import type { FormulaLine, ProvenBake, Recipe } from '../domain/recipe.ts';
import { formatLength } from '../wording/length.ts';
import { listInWords } from '../wording/list.ts';
import { wordsFor } from '../wording/locales/index.ts';
import { formatGrams, formatWholeGrams } from '../wording/mass.ts';
import { formatNumber } from '../wording/number.ts';
import type { Words } from '../wording/words.ts';
import { chartCautions } from './chart-cautions.ts';
import type { Caution } from './figure.ts';
import { chartPath, labelPath, type PageHead, pageHead, recipePath } from './nav.ts';

export interface RecipeLine {
  name: string;
  /** '250 g', '5'. */
  amountText: string;
  /** '255 g without shells' beside a count, '' otherwise. */
  alsoText: string;
}

export interface Fact {
  label: string;
  text: string;
}

export interface RecipeView {
  id: string;
  name: string;
  head: PageHead;
  summary: string;
  path: string;
  chartPath: string;
  /** The page of its label and allergens. */
  labelPath: string;
  formula: RecipeLine[];
  totalText: string;
  eggNote: string;
  facts: Fact[];
  /** What the ingredients contain, and those whose allergens nobody has filled in. */
  cautions: Caution[];
  methodMarkdown: string;
  provenBakes: { tinsText: string; heightText: string; batterText: string; dateText: string; note: string }[];
  factsText: string;
}

const FAN_OFFSET_C = 20;

function eggCount(line: FormulaLine, recipe: Recipe): number | null {
  const shelledG = tableShelledG(recipe.eggSize);
  return line.eggPart && shelledG ? line.grams / (shelledG * PART_SHARE[line.eggPart]) : null;
}

function recipeLine(line: FormulaLine, recipe: Recipe): RecipeLine {
  const count = eggCount(line, recipe);
  const grams = `${formatGrams(Math.round(line.grams * 10) / 10)} g`;
  if (count === null || Math.abs(count - Math.round(count)) > 0.005) {
    return { name: line.name, amountText: grams, alsoText: '' };
  }
  return {
    name: line.name,
    amountText: formatNumber(count, 0),
    alsoText: `${formatWholeGrams(line.grams)} g without shells`,
  };
}

function provenBake(bake: ProvenBake, words: Words): RecipeView['provenBakes'][number] {
  return {
    tinsText: listInWords(
      bake.tins.map(({ tin, count }) => `${count} × ${tin.name}`),
      words.and,
    ),
    heightText: formatLength(bake.finishedHeightMm, 'mm'),
    batterText: `${formatWholeGrams(bake.batterG)} g`,
    dateText: bake.date ? words.date(bake.date) : '',
    note: bake.note ?? '',
  };
}

function recipeFacts(recipe: Recipe): Fact[] {
  const { ovenC, layers } = recipe;
  return [
    { label: 'Method', text: recipe.method },
    {
      label: 'Oven',
      text: `${formatNumber(ovenC, 0)} °C, or ${formatNumber(ovenC - FAN_OFFSET_C, 0)} °C fan`,
    },
    { label: 'Finished height', text: formatLength(recipe.finishedHeightMm, 'mm') },
    { label: 'Layers', text: layers === 1 ? 'one, not cut' : `cut into ${layers}` },
  ];
}

/** The page of one recipe. */
export function recipeView(recipe: Recipe, content: Content): RecipeView {
  const words = wordsFor(content.kitchen.locale);
  const totalG = recipe.formula.reduce((sum, line) => sum + line.grams, 0);
  const hasEggs = recipe.formula.some((line) => line.eggPart);
  const path = recipePath(recipe.id);
  return {
    id: recipe.id,
    name: recipe.name,
    head: pageHead({
      path,
      text: recipe.name,
      description: recipe.summary,
      section: 'recipes',
      picture: recipe.id,
    }),
    summary: recipe.summary,
    path,
    chartPath: chartPath(recipe.id),
    labelPath: labelPath(recipe.id),
    formula: recipe.formula.map((line) => recipeLine(line, recipe)),
    totalText: `${formatWholeGrams(totalG)} g`,
    eggNote: hasEggs ? `Eggs are ${words.eggSize(recipe.eggSize)}.` : 'Made without eggs.',
    facts: recipeFacts(recipe),
    cautions: chartCautions(recipe.formula, content.ingredients, words).filter(({ code }) =>
      code.startsWith('allergens'),
    ),
    methodMarkdown: recipe.methodMarkdown,
    provenBakes: recipe.provenBakes.map((bake) => provenBake(bake, words)),
    factsText: `${recipe.method}, ${formatNumber(recipe.ovenC, 0)} °C, ${formatLength(recipe.finishedHeightMm, 'mm')} high`,
  };
}
