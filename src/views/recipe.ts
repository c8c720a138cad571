/** A recipe as it is written: what goes into the bowl, how, and which bakes prove it. */
import { fanFromConventionalC, fanFromConventionalF } from '../compute/bake/oven-scales.ts';
import type { Content } from '../domain/content.ts';
import { PART_SHARE, tableShelledG } from '../domain/egg.ts';
import { type Kitchen, ovenNamed } from '../domain/kitchen.ts';
import type { FormulaLine, ProvenBake, Recipe } from '../domain/recipe.ts';
import { celsiusFromFahrenheit, fahrenheitFromCelsius } from '../domain/units.ts';
import { bakeWordsFor, heatScaleOf, heatText } from '../wording/bake/index.ts';
import { formatLength } from '../wording/length.ts';
import { listInWords } from '../wording/list.ts';
import { wordsFor } from '../wording/locales/index.ts';
import { formatGrams, formatWholeGrams } from '../wording/mass.ts';
import { formatNumber } from '../wording/number.ts';
import { siteWordsFor } from '../wording/site/index.ts';
import { spoonsFor } from '../wording/spoons.ts';
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

function eggCount(line: FormulaLine, recipe: Recipe): number | null {
  const shelledG = tableShelledG(recipe.eggSize);
  return line.eggPart && shelledG ? line.grams / (shelledG * PART_SHARE[line.eggPart]) : null;
}

function recipeLine(line: FormulaLine, recipe: Recipe, { kitchen, ingredients }: Content): RecipeLine {
  const words = wordsFor(kitchen.locale);
  const { recipeFacts: say } = siteWordsFor(kitchen.locale);
  const count = eggCount(line, recipe);
  const grams = `${formatGrams(Math.round(line.grams * 10) / 10)} g`;
  if (count === null || Math.abs(count - Math.round(count)) > 0.005) {
    const item = ingredients.find(({ id }) => id === line.ingredientId);
    const cups = words.cups && line.eggPart === undefined ? spoonsFor(line.grams, item, words) : null;
    return { name: line.name, amountText: cups ?? grams, alsoText: cups === null ? '' : grams };
  }
  return {
    name: line.name,
    amountText: formatNumber(count, 0),
    alsoText: say.withoutShells(`${formatWholeGrams(line.grams)} g`),
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

/** The heat without and with a fan, on the scale of the recipe's oven. */
function heatsOf(recipe: Recipe, kitchen: Kitchen): { plain: string; fan: string } {
  const scale = heatScaleOf(ovenNamed(kitchen, recipe.ovenId));
  const { dial } = bakeWordsFor(kitchen.locale);
  const ovenF = fahrenheitFromCelsius(recipe.ovenC);
  const withFan =
    scale === 'F' ? celsiusFromFahrenheit(fanFromConventionalF(ovenF)) : fanFromConventionalC(recipe.ovenC);
  return { plain: heatText(recipe.ovenC, scale), fan: dial.fan(heatText(withFan, scale)) };
}

function recipeFacts(recipe: Recipe, kitchen: Kitchen): Fact[] {
  const { layers } = recipe;
  const { recipeFacts: say } = siteWordsFor(kitchen.locale);
  const { plain, fan } = heatsOf(recipe, kitchen);
  return [
    { label: say.method, text: recipe.method },
    { label: say.oven, text: say.ovenOr(plain, fan) },
    { label: say.finishedHeight, text: formatLength(recipe.finishedHeightMm, 'mm') },
    { label: say.layers, text: layers === 1 ? say.notCut : say.cutInto(layers) },
  ];
}

/** The page of one recipe. */
export function recipeView(recipe: Recipe, content: Content): RecipeView {
  const words = wordsFor(content.kitchen.locale);
  const { recipeFacts: say } = siteWordsFor(content.kitchen.locale);
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
    formula: recipe.formula.map((line) => recipeLine(line, recipe, content)),
    totalText: `${formatWholeGrams(totalG)} g`,
    eggNote: hasEggs ? say.eggsAre(words.eggSize(recipe.eggSize)) : say.withoutEggs,
    facts: recipeFacts(recipe, content.kitchen),
    cautions: chartCautions(recipe.formula, content.ingredients, words).filter(({ code }) =>
      code.startsWith('allergens'),
    ),
    methodMarkdown: recipe.methodMarkdown,
    provenBakes: recipe.provenBakes.map((bake) => provenBake(bake, words)),
    factsText: say.inShort(
      recipe.method,
      heatsOf(recipe, content.kitchen).plain,
      formatLength(recipe.finishedHeightMm, 'mm'),
    ),
  };
}
