/** Portions: what every tin serves, cut in rows and in rings, and which tins to stack for how many. */

import { isHalfSphere } from '../compute/portions/tin-portions.ts';
import { TIER_STEP_MM } from '../compute/stacks/tier-stands.ts';
import type { Content } from '../domain/content.ts';
import type { PortionSize } from '../domain/portion.ts';
import type { Tin } from '../domain/tin.ts';
import { formatLength } from '../wording/length.ts';
import { wordsFor } from '../wording/locales/index.ts';
import { type PortionsWords, portionsWordsFor } from '../wording/portions/index.ts';
import { tinOtherSize, tinSize } from '../wording/tin-size.ts';
import type { Words } from '../wording/words.ts';
import { bySize } from './by-size.ts';
import { pictureOfTin } from './picture-of-tin.ts';
import { portionText, tinCut } from './portion-cuts.ts';
import type { PortionRow, PortionsView } from './portions.types.ts';
import { rememberedBy } from './remembered-by.ts';
import { recipeForStacks, type StackContent, stackAnswer, stackFinder } from './stack-choices.ts';

export type PortionsContent = StackContent & Pick<Content, 'portionSizes'>;

/** Round numbers of guests that people ask for. */
const GUESTS: readonly number[] = [10, 20, 30, 40, 50, 60, 80, 100, 120];
const STACKS_EACH = 3;

/** Cutting a tin in every way takes far longer than asking whether it has been done. */
const cutBefore = new WeakMap<Tin, { sizes: readonly PortionSize[]; words: Words; row: PortionRow | null }>();

function portionRow(
  tin: Tin,
  sizes: readonly PortionSize[],
  words: Words,
  portionsWords: PortionsWords,
): PortionRow | null {
  const before = cutBefore.get(tin);
  if (before?.sizes === sizes && before.words === words) return before.row;
  const row = freshRow(tin, sizes, words, portionsWords);
  cutBefore.set(tin, { sizes, words, row });
  return row;
}

function freshRow(
  tin: Tin,
  sizes: readonly PortionSize[],
  words: Words,
  portionsWords: PortionsWords,
): PortionRow | null {
  const cuts = sizes.flatMap((size) => tinCut(tin, size, portionsWords) ?? []);
  if (cuts.length < sizes.length || cuts.length === 0) return null;
  return {
    id: tin.id,
    tinName: tin.name,
    sizeText: tinSize(tin, words),
    otherSizeText: tinOtherSize(tin, words),
    picture: pictureOfTin(tin, words),
    cuts,
  };
}

function stacksOf(rows: readonly PortionRow[], content: PortionsContent): PortionsView['stacks'] {
  const recipe = recipeForStacks(content);
  if (recipe === null) return [];
  const tiers = rows.flatMap(({ id, cuts }) => {
    const tin = content.kitchen.tins.find((owned) => owned.id === id);
    const dessert = cuts.find(({ sizeId }) => sizeId === 'dessert');
    return tin && dessert ? [{ tin, portions: dessert.rows.count.value }] : [];
  });
  const find = stackFinder(tiers, recipe, content);
  return GUESTS.map((wanted) =>
    stackAnswer(wanted, find({ wanted, keepsTopTier: false, most: STACKS_EACH }), recipe, content),
  );
}

function worked(content: PortionsContent): PortionsView {
  const { kitchen, portionSizes } = content;
  const words = wordsFor(kitchen.locale);
  const own = portionsWordsFor(kitchen.locale);
  const tins = kitchen.tins.filter(({ owned }) => owned > 0).sort(bySize);
  const tried = tins.map((tin) => ({ tin, row: portionRow(tin, portionSizes, words, own) }));
  const rows = tried.flatMap(({ row }) => row ?? []);
  return {
    id: 'portions',
    title: own.title,
    guidesTitle: own.guides,
    kitchenName: kitchen.name,
    edition: kitchen.edition,
    summary: own.summary,
    columns: portionSizes.map((size) => ({
      id: size.id,
      name: own.sizeNames[size.id],
      text: portionText(size, 'in', own),
    })),
    rows,
    stacksTitle: own.stacksTitle,
    stacksAbout: own.stacksAbout(recipeForStacks(content)?.name ?? ''),
    stacks: stacksOf(rows, content),
    leftOut: tried
      .filter(({ row }) => row === null)
      .map(({ tin }) => ({
        id: tin.id,
        text: isHalfSphere(tin) ? own.leftOutDome(tin.name) : own.leftOut(tin.name),
      })),
    notes: [
      own.notes.counted,
      own.notes.rings,
      own.notes.stacks(formatLength(TIER_STEP_MM, 'mm')),
      own.notes.bakes,
      own.notes.owned,
    ],
    cautions: [
      { code: 'inside', text: own.cautions.inside },
      { code: 'supports', text: own.cautions.supports },
    ],
  };
}

/** The portions of a kitchen, smallest tin first; page, prints and data that ask for the same are answered once. */
export const portionsView: (content: PortionsContent) => PortionsView = rememberedBy(
  ['kitchen', 'recipes', 'ingredients', 'finishing', 'altitudeM', 'orders', 'portionSizes'],
  worked,
);
