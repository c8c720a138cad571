/** The demo kitchen's files as texts, and what its readers know of each other's: where fuzzing starts from. */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { BakeLogContext } from '../../src/parse/bake-log.ts';
import type { FlavourContext } from '../../src/parse/flavours.ts';
import { parseIngredientsYaml } from '../../src/parse/ingredients.ts';
import { parseKitchenYaml } from '../../src/parse/kitchen.ts';
import type { OrderContext } from '../../src/parse/orders.ts';
import { parseOutlineSvg } from '../../src/parse/outline-svg.ts';
import type { RecipeContext } from '../../src/parse/recipe.ts';
import type { Drawings } from '../../src/parse/tins/tin-entry.ts';
import { readContent } from '../../src/read/content.ts';

const FOLDER = 'content';

export const goodText = (file: string): string => readFileSync(join(FOLDER, file), 'utf8');

/** Every file of a folder of content, as text. */
export const goodTexts = (folder: string): string[] =>
  readdirSync(join(FOLDER, folder))
    .sort()
    .map((name) => goodText(`${folder}/${name}`));

export interface KnownToReaders {
  drawings: Drawings;
  recipe: RecipeContext;
  flavour: FlavourContext;
  log: BakeLogContext;
  order: OrderContext;
}

/** What the demo kitchen's readers tell each other. */
export async function knownToReaders(): Promise<KnownToReaders> {
  const { content } = await readContent(FOLDER);
  if (content === null) throw new Error('the demo kitchen was not read');
  const outline = parseOutlineSvg(goodText('outlines/six.svg'), 'six.svg', { sizeFromTin: true });
  if (!outline.ok) throw new Error('the demo outline was not read');
  const drawings: Drawings = new Map([['six', { id: 'six', outline: outline.value, sized: true }]]);
  const kitchen = parseKitchenYaml(goodText('kitchen.yaml'), 'kitchen.yaml', drawings);
  const shelf = parseIngredientsYaml(goodText('ingredients.yaml'), 'ingredients.yaml');
  const names = (things: readonly { id: string }[]) => ({ ids: things.map(({ id }) => id), broken: [] });
  const ovens = kitchen.ovens ?? { ids: [], broken: null };
  const recipe: RecipeContext = {
    egg: kitchen.egg,
    spec: { tins: kitchen.tins, outlines: content.outlines, brokenTins: [] },
    shelf: { ingredients: new Map(shelf.ingredients.map((item) => [item.id, item])), broken: [] },
    ovens,
  };
  const [recipes, flavours] = [names(content.recipes), names(content.flavours)];
  return {
    drawings,
    recipe,
    flavour: { shelf: recipe.shelf, recipes: content.recipes, brokenRecipes: [] },
    log: { spec: recipe.spec, recipes, flavours, ovens, found: content.recipes },
    order: {
      ...{ recipes, flavours, tins: names(kitchen.tins), finishes: names(content.finishes) },
      bunTins: names(kitchen.bunTins),
      found: {
        ...{ tins: kitchen.tins, bunTins: kitchen.bunTins },
        ...{ recipes: content.recipes, finishes: content.finishes },
      },
      currency: content.costs.currency,
      timeZone: content.work.timeZone,
    },
  };
}
