/**
 * Orders are worked out once for page, prints and data. Each asks with a content of its own (other papers, another
 * house style), so that the answer is kept by what it depends on, not by the content object.
 */
import type { Content } from '../domain/content.ts';
import type { Kitchen } from '../domain/kitchen.ts';

const PARTS = [
  ...([
    'orders',
    'weeks',
    'ingredients',
    'recipes',
    'flavours',
    'finishes',
    'finishing',
    'altitudeM',
  ] as const),
  ...([
    'bakeLog',
    'stock',
    'costs',
    'work',
    'times',
    'business',
    'label',
    'portionSizes',
    'printables',
  ] as const),
] as const satisfies readonly (keyof Content)[];

const KITCHEN_PARTS = [
  ...(['tins', 'name', 'edition', 'locale', 'egg', 'scale', 'mixer', 'fairyCaseG', 'oven'] as const),
  ...(['furtherOvens', 'batterC'] as const),
] as const satisfies readonly (keyof Kitchen)[];

function isSame(one: Content, other: Content): boolean {
  return (
    PARTS.every((part) => one[part] === other[part]) &&
    KITCHEN_PARTS.every((part) => one.kitchen[part] === other.kitchen[part])
  );
}

/** The same answer for contents that agree in everything that orders depend on. */
export function rememberedForOrders<T>(make: (content: Content) => T): (content: Content) => T {
  const known = new WeakMap<Content['orders'], { content: Content; made: T }>();
  return (content) => {
    const before = known.get(content.orders);
    if (before !== undefined && isSame(before.content, content)) return before.made;
    const made = make(content);
    known.set(content.orders, { content, made });
    return made;
  };
}
