/** The content folder as domain values, or everything that is wrong with it, each problem at its place. */
import { join } from 'node:path';
import { recipesWithLog } from '../compute/batter/logged-fills.ts';
import type { Content, FreePage } from '../domain/content.ts';
import { type Currency, POUNDS } from '../domain/money.ts';
import type { Problem } from '../domain/problem.ts';
import type { Recipe } from '../domain/recipe.ts';
import { type IngredientsOutcome, parseIngredientsYaml } from '../parse/ingredients.ts';
import { type KitchenOutcome, parseKitchenYaml, unreadKitchen } from '../parse/kitchen.ts';
import { orderWeeks } from '../parse/order-weeks.ts';
import { parsePageMarkdown } from '../parse/page.ts';
import { error, sortProblems, warning } from '../parse/problems.ts';
import { quote } from '../parse/quote.ts';
import { parseRecipeMarkdown, type RecipeContext } from '../parse/recipe.ts';
import { isSound } from '../parse/yaml/yaml-reader.ts';
import { readBakeLog } from './bake-log.ts';
import { namesOf, readFinishes, readFlavours } from './flavours-and-finishes.ts';
import { unexpectedFiles } from './folder-listing.ts';
import { readHouseStyle, readHouseStyles } from './house-styles.ts';
import { readOrders, readStock } from './orders-and-stock.ts';
import { type OutlinesOutcome, readOutlines, unsizedProblems } from './outlines.ts';
import { type Gathered, readEach } from './read-each.ts';
import { readText, whatIs } from './safe-file.ts';

export interface ReadOutcome {
  /** Null when there is any error. */
  content: Content | null;
  /** Errors and warnings, sorted by file, line and column. */
  problems: Problem[];
}

async function readKitchen(folder: string, outlines: OutlinesOutcome): Promise<KitchenOutcome> {
  const text = await readText(folder, 'kitchen.yaml');
  if (text.ok) return parseKitchenYaml(text.value, 'kitchen.yaml', outlines.drawings);
  return unreadKitchen(text.problems);
}

async function readIngredients(folder: string, currency?: Currency): Promise<IngredientsOutcome> {
  const text = await readText(folder, 'ingredients.yaml');
  if (text.ok) return parseIngredientsYaml(text.value, 'ingredients.yaml', currency);
  return { ingredients: [], broken: null, problems: text.problems };
}

async function readRecipes(folder: string, context: RecipeContext): Promise<Gathered<Recipe>> {
  const recipes = await readEach(folder, 'recipes', '.md', (text, file, id) => {
    const { recipe, problems } = parseRecipeMarkdown(text, file, id, context);
    return { item: recipe, problems };
  });
  if (recipes.ids.length > 0 || recipes.problems.length > 0) return recipes;
  const hint = 'Write one as recipes/vanilla.md; until then there are no tin charts.';
  return {
    ...recipes,
    problems: [{ ...warning('recipe-missing', 'There is no recipe yet', hint), file: 'recipes' }],
  };
}

async function readPages(folder: string): Promise<Gathered<FreePage>> {
  const pages = await readEach(folder, 'pages', '.md', (text, file, id) => {
    const { page, problems } = parsePageMarkdown(text, file, id);
    return { item: page, problems };
  });
  // Files come sorted by name, and sorting is stable.
  return { ...pages, items: pages.items.sort((a, b) => a.order - b.order) };
}

function recipeContext(
  kitchen: KitchenOutcome,
  shelf: IngredientsOutcome,
  outlines: OutlinesOutcome,
): RecipeContext {
  return {
    egg: kitchen.egg,
    spec: { tins: kitchen.tins, outlines: outlines.sized, brokenTins: kitchen.brokenTins },
    shelf: { ingredients: new Map(shelf.ingredients.map((item) => [item.id, item])), broken: shelf.broken },
    ovens: kitchen.ovens ?? { ids: [], broken: null },
  };
}

/** Reads and checks a content folder. Reports every problem at once; throws only on failures of the disk. */
export async function readContent(folder: string): Promise<ReadOutcome> {
  const found = await whatIs(join(folder, '.'));
  if (found !== 'folder') {
    const hint = 'Name the folder that holds kitchen.yaml with --content DIR.';
    return {
      content: null,
      problems: [error('content-folder-missing', `There is no folder ${quote(folder)}`, hint)],
    };
  }
  const outlines = await readOutlines(folder);
  const kitchen = await readKitchen(folder, outlines);
  const shelf = await readIngredients(folder, kitchen.extras?.costs.currency);
  const style = await readHouseStyle(folder, 'house-style.yaml');
  const styles = await readHouseStyles(folder, kitchen.extras);
  const context = recipeContext(kitchen, shelf, outlines);
  const recipes = await readRecipes(folder, context);
  const flavours = await readFlavours(folder, {
    shelf: context.shelf,
    recipes: recipes.items,
    brokenRecipes: namesOf(recipes).broken ?? [],
  });
  const finishes = await readFinishes(folder, context.shelf);
  const bakeLog = await readBakeLog(folder, {
    spec: context.spec,
    recipes: namesOf(recipes),
    flavours: namesOf(flavours),
    ovens: context.ovens ?? { ids: [], broken: null },
    found: recipes.items,
  });
  const pages = await readPages(folder);
  const names = {
    recipes: namesOf(recipes),
    flavours: namesOf(flavours),
    finishes: namesOf(finishes),
    tins: { ids: kitchen.tins.map(({ id }) => id), broken: kitchen.brokenTins },
    ingredients: { ids: shelf.ingredients.map(({ id }) => id), broken: shelf.broken },
    bunTins: { ids: kitchen.bunTins.map(({ id }) => id), broken: kitchen.brokenBunTins },
  };
  const label = kitchen.extras?.label(names);
  const orders = await readOrders(folder, {
    ...names,
    found: {
      tins: kitchen.tins,
      bunTins: kitchen.bunTins,
      recipes: recipes.items,
      finishes: finishes.items,
    },
    currency: kitchen.extras?.costs.currency ?? POUNDS,
    timeZone: kitchen.extras?.work.timeZone ?? 'UTC',
  });
  const printables = kitchen.extras?.printables({ ...names, orders: namesOf(orders) });
  const stock = await readStock(folder, context.shelf);
  const parts = [
    ...[outlines, kitchen, shelf, style, styles, recipes, flavours, finishes],
    ...[bakeLog, pages, orders, stock],
  ];
  const unused = kitchen.kitchen === null ? [] : unsizedProblems(outlines, kitchen.kitchen.tins);
  const loose = [...(await unexpectedFiles(folder)), ...unused];
  const problems = sortProblems([...loose, ...parts.flatMap((part) => part.problems)]);
  if (!isSound(problems) || kitchen.kitchen === null || kitchen.extras === null)
    return { content: null, problems };
  if (style.style === null || label === undefined) return { content: null, problems };
  const weeks = orderWeeks(orders.items, kitchen.extras.work);
  if (!weeks.ok) return { content: null, problems: weeks.problems };
  const { finishing, altitudeM, booklet, costs, work, times, business, portionSizes, publishesOrders } =
    kitchen.extras;
  const content: Content = {
    kitchen: kitchen.kitchen,
    ingredients: shelf.ingredients,
    outlines: outlines.sized,
    recipes: recipesWithLog(recipes.items, bakeLog.rows),
    flavours: flavours.items,
    finishes: finishes.items,
    finishing,
    altitudeM,
    houseStyle: style.style,
    houseStyles: styles.styles,
    printables: printables ?? null,
    booklet,
    pages: pages.items,
    bakeLog: bakeLog.rows,
    orders: orders.items,
    weeks: weeks.value,
    stock: stock.stock,
    costs,
    work,
    times,
    business,
    label,
    portionSizes,
    publishesOrders,
  };
  return { content, problems };
}
