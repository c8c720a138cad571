/** Links between content files: a name must be that of something there, and one slip gets one message. */
import { fail, type Result, succeed } from '../domain/result.ts';
import type { ProblemCode } from './codes.ts';
import { suggest } from './nearest.ts';
import { error, refuse } from './problems.ts';
import { quote } from './quote.ts';
import type { YamlReader } from './yaml/yaml-reader.ts';
import type { YamlPath } from './yaml/yaml-source.ts';

export interface KnownNames {
  /** Ids that may be named. */
  ids: readonly string[];
  /** Ids that are there but wrong: their own problem is enough. Null when none could be read. */
  broken: readonly string[] | null;
}

/** How an unknown name of one kind is reported. */
export interface NamedKind {
  code: ProblemCode;
  /** 'recipe' */
  one: string;
  /** 'recipes' */
  many: string;
}

export const RECIPES: NamedKind = { code: 'recipe-unknown', one: 'recipe', many: 'recipes' };
export const FLAVOURS: NamedKind = { code: 'flavour-unknown', one: 'flavour', many: 'flavours' };
export const FINISHES: NamedKind = { code: 'finish-unknown', one: 'finish', many: 'finishes' };
export const OVENS: NamedKind = { code: 'oven-unknown', one: 'oven', many: 'ovens' };
export const ORDERS: NamedKind = { code: 'order-unknown', one: 'order', many: 'orders' };
export const INGREDIENTS: NamedKind = { code: 'ingredient-unknown', one: 'ingredient', many: 'ingredients' };
export const TINS: NamedKind = { code: 'tin-unknown', one: 'tin', many: 'tins' };

/** One name, known or refused; one that is there but broken, or among names nobody could read, fails without a word. */
export function oneName(text: string, kind: NamedKind, { ids, broken }: KnownNames): Result<string> {
  if (ids.includes(text)) return succeed(text);
  if (broken === null || broken.includes(text)) return fail();
  const hint = suggest(text, [...ids, ...broken], kind.many);
  return refuse(kind.code, `There is no ${kind.one} ${quote(text)}`, hint);
}

/** The names of a list that are known, each once; the others are reported at their places. */
export function readNames(
  reader: YamlReader,
  path: YamlPath,
  kind: NamedKind,
  { ids, broken }: KnownNames,
): string[] {
  const found: string[] = [];
  for (let index = 0; index < reader.items(...path); index += 1) {
    const name = reader.text(...path, index);
    if (name === undefined) continue;
    if (found.includes(name)) {
      const message = `${quote(name)} stands in this list twice`;
      reader.report(error('item-repeated', message, 'Delete one of the two.'), ...path, index);
    } else if (ids.includes(name)) {
      found.push(name);
    } else if (broken !== null && !broken.includes(name)) {
      const hint = suggest(name, [...ids, ...broken], kind.many);
      reader.report(error(kind.code, `There is no ${kind.one} ${quote(name)}`, hint), ...path, index);
    }
  }
  return found;
}
