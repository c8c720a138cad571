/** The method and what stands around it, in the largest type that takes no more cards than the smallest. */
import { heading } from '../sheet/blocks.ts';
import { leadInBlock, methodBlocks } from '../sheet/method-blocks.ts';
import type { Block } from '../sheet/strip.ts';
import { type CardParts, type FaceContent, lookOf } from './card-parts.ts';
import { type Item, setOnce } from './fitting.ts';

/** A recipe's flavours have its method in common: it is set once for all of them. */
function methodOnce({ view, form, kept: { methods } }: CardParts): Block[] {
  const key = `${form.type.body.sizePt} ${JSON.stringify(view.method)}`;
  const found = methods.get(key);
  if (found !== undefined) return found;
  const blocks = methodBlocks('method', view.method, lookOf(form)).map((block) => setOnce(block));
  methods.set(key, blocks);
  return blocks;
}

/** The first paragraph stands close to the heading above it. */
function closeTo([first, ...rest]: Block[], heading: boolean): Block[] {
  if (!heading || first === undefined) return first ? [first, ...rest] : rest;
  const close: Block = (widthMm, context) =>
    first(widthMm, context).map((strip, index) => (index === 0 ? { ...strip, spaceMm: 0 } : strip));
  return [close, ...rest];
}

/** What the front left for before and after the method goes with it. */
export function cardMethod(parts: CardParts, before: readonly Item[], after: readonly Item[]): Block[] {
  const { view, words, form } = parts;
  const look = lookOf(form);
  const close = { ...look, gapMm: 0 };
  return [
    ...before.flatMap((item) => item.blocks(parts)),
    heading(words.method, { level: 2, type: form.type.heading, spaceMm: look.headingGapMm }),
    ...view.flavours.map(({ name, text }, index) =>
      leadInBlock(`flavour ${index}`, name, text, index === 0 ? close : look),
    ),
    ...closeTo(methodOnce(parts), view.flavours.length === 0),
    ...after.flatMap((item) => item.blocks(parts)),
  ];
}

const cardsFor = (faces: readonly unknown[]): number => Math.ceil(faces.length / 2);

/** `faces` sets the whole card with the method in the type of the parts it is given. */
export function withFewestCards(
  parts: CardParts,
  faces: (methodParts: CardParts) => FaceContent[],
): FaceContent[] {
  const { form } = parts;
  const [smallest, ...larger] = [...form.methodTypes].reverse();
  const set = (type = form.type) => faces({ ...parts, form: { ...form, type } });
  const least = set(smallest);
  for (const type of larger.reverse()) {
    const found = set(type);
    if (cardsFor(found) === cardsFor(least)) return found;
  }
  return least;
}
