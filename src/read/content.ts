/** The content folder as domain values, or everything that is wrong with it, each problem at its place. */
import { join } from 'node:path';
import type { Content, FreePage } from '../domain/content.ts';
import type { HouseStyle } from '../domain/house-style.ts';
import type { Problem } from '../domain/problem.ts';
import type { Recipe } from '../domain/recipe.ts';
import type { Result } from '../domain/result.ts';
import { missingFile, parseHouseStyleYaml } from '../parse/house-style.ts';
import { type IngredientsOutcome, parseIngredientsYaml } from '../parse/ingredients.ts';
import { type KitchenOutcome, parseKitchenYaml } from '../parse/kitchen.ts';
import { parsePageMarkdown } from '../parse/page.ts';
import { error, sortProblems, warning } from '../parse/problems.ts';
import { quote } from '../parse/quote.ts';
import { parseRecipeMarkdown, type RecipeContext } from '../parse/recipe.ts';
import { isSound } from '../parse/yaml/yaml-reader.ts';
import { listFiles, unexpectedFiles } from './folder-listing.ts';
import { type OutlinesOutcome, readOutlines, unsizedProblems } from './outlines.ts';
import { linkProblem, readText, whatIs } from './safe-file.ts';

export interface ReadOutcome {
  /** Null when there is any error. */
  content: Content | null;
  /** Errors and warnings, sorted by file, line and column. */
  problems: Problem[];
}

async function readKitchen(folder: string, outlines: OutlinesOutcome): Promise<KitchenOutcome> {
  const text = await readText(folder, 'kitchen.yaml');
  if (text.ok) return parseKitchenYaml(text.value, 'kitchen.yaml', outlines.drawings);
  return { kitchen: null, tins: [], brokenTins: null, egg: null, problems: text.problems };
}

async function readIngredients(folder: string): Promise<IngredientsOutcome> {
  const text = await readText(folder, 'ingredients.yaml');
  if (text.ok) return parseIngredientsYaml(text.value, 'ingredients.yaml');
  return { ingredients: [], broken: null, problems: text.problems };
}

async function readHouseStyle(folder: string): Promise<{ style: HouseStyle | null; problems: Problem[] }> {
  const text = await readText(folder, 'house-style.yaml');
  if (!text.ok) return { style: null, problems: text.problems };
  const { style, files, problems } = parseHouseStyleYaml(text.value, 'house-style.yaml');
  for (const file of files) {
    const found = await whatIs(join(folder, file.path));
    if (found === 'link') problems.push({ ...linkProblem(file.path), ...file.place });
    else if (found !== 'file') problems.push(missingFile(file));
  }
  return { style: isSound(problems) ? style : null, problems };
}

interface Gathered<T> {
  items: T[];
  /** How many files there are, good or bad. */
  count: number;
  problems: Problem[];
}

/** Every Markdown file of a folder through its parser, in the order of their ids. */
async function readEach<T>(
  folder: string,
  name: string,
  parse: (text: string, file: string, id: string) => { item: T | null; problems: Problem[] },
): Promise<Gathered<T>> {
  const { files, problems } = await listFiles(folder, name, '.md');
  const items: T[] = [];
  for (const { id, file } of files) {
    const text: Result<string> = await readText(folder, file);
    const { item, problems: found } = text.ok
      ? parse(text.value, file, id)
      : { item: null, problems: text.problems };
    problems.push(...found);
    if (item !== null) items.push(item);
  }
  return { items, count: files.length, problems };
}

async function readRecipes(folder: string, context: RecipeContext): Promise<Gathered<Recipe>> {
  const recipes = await readEach(folder, 'recipes', (text, file, id) => {
    const { recipe, problems } = parseRecipeMarkdown(text, file, id, context);
    return { item: recipe, problems };
  });
  if (recipes.count > 0 || recipes.problems.length > 0) return recipes;
  const hint = 'Write one as recipes/vanilla.md; until then there are no tin charts.';
  return {
    ...recipes,
    problems: [{ ...warning('recipe-missing', 'There is no recipe yet', hint), file: 'recipes' }],
  };
}

async function readPages(folder: string): Promise<Gathered<FreePage>> {
  const pages = await readEach(folder, 'pages', (text, file, id) => {
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
  const shelf = await readIngredients(folder);
  const style = await readHouseStyle(folder);
  const recipes = await readRecipes(folder, recipeContext(kitchen, shelf, outlines));
  const pages = await readPages(folder);
  const parts = [outlines, kitchen, shelf, style, recipes, pages];
  const unused = kitchen.kitchen === null ? [] : unsizedProblems(outlines, kitchen.kitchen.tins);
  const loose = [...(await unexpectedFiles(folder)), ...unused];
  const problems = sortProblems([...loose, ...parts.flatMap((part) => part.problems)]);
  if (!isSound(problems) || kitchen.kitchen === null || style.style === null)
    return { content: null, problems };
  const content: Content = {
    kitchen: kitchen.kitchen,
    ingredients: shelf.ingredients,
    outlines: outlines.sized,
    recipes: recipes.items,
    houseStyle: style.style,
    pages: pages.items,
  };
  return { content, problems };
}
