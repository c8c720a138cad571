/** What the planner knows of a kitchen: everything that its computations need, as plain data written by the build. */
import type { Content } from '../domain/content.ts';
import type { Ingredient } from '../domain/ingredient.ts';
import type { Currency } from '../domain/money.ts';
import { methodPieces } from './method-text.ts';
import type { MethodPiece } from './method-text.types.ts';

export interface PlannerContent
  extends Pick<
    Content,
    | 'kitchen'
    | 'ingredients'
    | 'outlines'
    | 'recipes'
    | 'flavours'
    | 'finishes'
    | 'finishing'
    | 'altitudeM'
    | 'portionSizes'
    | 'bakeLog'
  > {
  /** What prices are counted in. */
  currency: Currency;
  /** What a kitchen.yaml that was opened says for orders and labels; the published house stands for the rest. */
  house?: Partial<HouseSettings>;
}

/** How a house works, and what its labels say of it. */
export type HouseSettings = Pick<Content, 'work' | 'times' | 'business' | 'label' | 'booklet'>;

/**
 * What is on packets stays at home: no sum of the planner asks for it. Prices go along only where the kitchen shows
 * what its orders cost.
 */
function forSums(
  { packs, nutrients: _nutrients, compound: _compound, ...ingredient }: Ingredient,
  publishesPrices: boolean,
): Ingredient {
  return publishesPrices && packs !== undefined ? { ...ingredient, packs } : ingredient;
}

/** What the print shop needs beside the planner's content to make an order of a plan: fetched when somebody does. */
export interface OrderHouse extends HouseSettings, Pick<Content, 'printables'> {
  /** What labels say of ingredients, by id. */
  labelled: Record<string, Pick<Ingredient, 'compound' | 'nutrients'>>;
}

/** Costs, stock and the orders of customers are not in it. */
export function orderHouse({
  ingredients,
  work,
  times,
  business,
  label,
  booklet,
  printables,
}: Content): OrderHouse {
  const labelled = ingredients.map(
    ({ id, compound, nutrients }): [string, OrderHouse['labelled'][string]] => [
      id,
      { ...(compound === undefined ? {} : { compound }), ...(nutrients === undefined ? {} : { nutrients }) },
    ],
  );
  return { work, times, business, label, booklet, printables, labelled: Object.fromEntries(labelled) };
}

/** The planner's part of a kitchen's content; orders, stock and what work costs stay at home. */
export function plannerContent(content: Content): PlannerContent {
  const { kitchen, outlines, flavours, finishing, altitudeM, portionSizes, bakeLog } = content;
  return {
    kitchen,
    ingredients: content.ingredients.map((item) => forSums(item, content.publishesOrders)),
    outlines,
    recipes: content.recipes.map((recipe) => ({ ...recipe, methodMarkdown: '' })),
    flavours,
    finishes: content.finishes.map((finish) => ({ ...finish, methodMarkdown: '' })),
    finishing,
    altitudeM,
    portionSizes,
    bakeLog,
    currency: content.costs.currency,
  };
}

/** Each recipe's method in pieces, by its id: fetched at the worktop, and no Markdown is read on the device. */
export const plannerMethods = ({ recipes }: Content): Record<string, MethodPiece[]> =>
  Object.fromEntries(recipes.map(({ id, methodMarkdown }) => [id, methodPieces(methodMarkdown)]));
