/** `portions`: which of my tins, stacked, serve so many; answered in the terminal. */

import { usesOf } from '../compute/orders/ingredient-uses.ts';
import { tinPortions } from '../compute/portions/tin-portions.ts';
import { shoppingList } from '../compute/shopping/shopping-list.ts';
import type { Content } from '../domain/content.ts';
import type { Currency, Minor } from '../domain/money.ts';
import type { PortionSize } from '../domain/portion.ts';
import type { Recipe } from '../domain/recipe.ts';
import { fail, type Result, succeed } from '../domain/result.ts';
import { suggest } from '../parse/nearest.ts';
import { quote } from '../parse/quote.ts';
import { readContent } from '../read/content.ts';
import type { StackAnswerView, StackChoice } from '../views/portions.types.ts';
import { mixOf, recipeForStacks, stackAnswer, stackFinder } from '../views/stack-choices.ts';
import { formatMoney } from '../wording/money.ts';
import { portionsWordsFor } from '../wording/portions/index.ts';
import { EXIT, type ExitCode } from './exit-codes.ts';
import { repairIfNeeded } from './output/output-folder.ts';
import { refuseContent, refuseUsage, usageProblem } from './problem-report.ts';
import type { Terminal } from './terminal.ts';
import { textTable } from './text-table.ts';

export interface PortionsOptions {
  content: string;
  output: string;
  for: string;
  size: string;
  recipe?: string;
  keepTop: boolean;
  json: boolean;
}

interface PortionsQuestion {
  wanted: number;
  size: PortionSize;
  recipe: Recipe;
}

const MOST = 10;
const MOST_GUESTS = 10_000;

/** Runs the command; everything wrong with the question is said at once, with exit 2. */
export async function runPortions(options: PortionsOptions, terminal: Terminal): Promise<ExitCode> {
  repairIfNeeded(options.output);
  const { content, problems } = await readContent(options.content);
  if (content === null) return refuseContent(problems, terminal);
  const question = understood(options, content);
  if (!question.ok) return refuseUsage(question.problems, terminal);
  const { wanted, size, recipe } = question.value;
  const tiers = content.kitchen.tins.flatMap((tin) => {
    const portions = tinPortions(tin, size);
    return portions === null ? [] : [{ tin, portions: portions.rows.good }];
  });
  const found = stackFinder(tiers, recipe, content)({ wanted, keepsTopTier: options.keepTop, most: MOST });
  const answer = stackAnswer(wanted, found, recipe, content);
  if (options.json)
    terminal.say(JSON.stringify(answerJson(answer, question.value, content, options.keepTop), null, 2));
  else terminal.say(answerText(answer, question.value, content, options.keepTop));
  return EXIT.done;
}

function understood(options: PortionsOptions, content: Content): Result<PortionsQuestion> {
  const wanted = guests(options.for);
  const size = sizeNamed(options.size, content);
  const recipe = recipeMeant(options.recipe, content);
  const problems = [wanted, size, recipe].flatMap((part) => (part.ok ? [] : part.problems));
  if (!wanted.ok || !size.ok || !recipe.ok) return fail(...problems);
  return succeed({ wanted: wanted.value, size: size.value, recipe: recipe.value });
}

function guests(text: string): Result<number> {
  const count = Number(text);
  if (/^\d+$/.test(text) && count >= 1 && count <= MOST_GUESTS) return succeed(count);
  return fail({
    ...usageProblem(
      'portions-wanted',
      `${quote(text)} is not a number of portions`,
      `Write a whole number from 1 to ${MOST_GUESTS}, like --for 60.`,
    ),
    file: '--for',
  });
}

function sizeNamed(id: string, { portionSizes }: Content): Result<PortionSize> {
  const size = portionSizes.find((one) => one.id === id);
  if (size !== undefined) return succeed(size);
  const ids = portionSizes.map((one) => one.id);
  return fail({
    ...usageProblem(
      'portion-size-unknown',
      `There is no size of portion ${quote(id)}`,
      suggest(id, ids, 'sizes'),
    ),
    file: '--size',
  });
}

function recipeMeant(id: string | undefined, content: Content): Result<Recipe> {
  const recipe =
    id === undefined ? recipeForStacks(content) : content.recipes.find((candidate) => candidate.id === id);
  if (recipe) return succeed(recipe);
  const ids = content.recipes.map((candidate) => candidate.id);
  return fail({
    ...usageProblem(
      'recipe-unknown',
      `There is no recipe ${quote(id ?? '')}`,
      suggest(id ?? '', ids, 'recipes'),
    ),
    file: '--recipe',
  });
}

/** What the ingredients of a stack's batter come to as used; null where one of them has no price. */
function costMinor({ tiers }: StackChoice, recipe: Recipe, content: Content): Minor | null {
  const { kitchen, ingredients } = content;
  const tins = tiers.flatMap(({ id }) => kitchen.tins.find((tin) => tin.id === id) ?? []);
  const mix = mixOf(tins, recipe, content);
  if (mix === null) return null;
  const { usedMinor, unpricedIds } = shoppingList(usesOf([{ mix }], []), [], ingredients);
  return unpricedIds.length > 0 ? null : usedMinor;
}

function answerJson(
  { choices, hasMore }: StackAnswerView,
  { wanted, size, recipe }: PortionsQuestion,
  content: Content,
  keepsTopTier: boolean,
): unknown {
  return {
    wanted,
    size: size.id,
    recipe: recipe.id,
    keeps_top_tier: keepsTopTier,
    stacks: choices.map((choice) => ({
      tins: choice.tiers.map(({ id }) => id),
      portions: choice.portions.value,
      over: choice.over.value,
      batter_g: choice.batter.value,
      eggs: choice.eggsText,
      height_mm: choice.height.value,
      ingredients_cost_minor: costMinor(choice, recipe, content),
    })),
    has_more: hasMore,
  };
}

const costText = (cost: Minor | null, currency: Currency): string =>
  cost === null ? '–' : formatMoney(cost, currency);

function answerText(
  { wanted, choices, hasMore }: StackAnswerView,
  { size, recipe }: PortionsQuestion,
  content: Content,
  keepsTopTier: boolean,
): string {
  const { kitchen, costs } = content;
  const words = portionsWordsFor(kitchen.locale);
  const head = words.asked(wanted.text, words.sizeNames[size.id].toLowerCase(), recipe.name, keepsTopTier);
  if (choices.length === 0) return `${head}\n\n${words.noStack}`;
  const rows = choices.map((choice) => [
    choice.text,
    choice.portions.text,
    choice.over.text,
    choice.batter.text,
    choice.eggsText,
    `${choice.height.text} mm`,
    costText(costMinor(choice, recipe, content), costs.currency),
  ]);
  const columns = [
    words.stackOf,
    words.portions,
    words.over,
    words.batter,
    words.eggs,
    words.height,
    words.ingredients,
  ];
  return [
    head,
    '',
    ...textTable([columns, ...rows], ['left', 'right', 'right', 'right', 'left', 'right', 'right']),
    '',
    ...(hasMore ? [words.more] : []),
    words.notes.bakes,
    `${words.caution}: ${words.cautions.supports}`,
  ].join('\n');
}
