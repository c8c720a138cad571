/** The front of an upright card: title, facts beside the code, the weights, and below them as much as fits. */
import type { CardTin } from '../../views/recipe-card.types.ts';
import type { Block } from '../sheet/strip.ts';
import { besideCode } from './card-code.ts';
import { lateItems, pressingItems } from './card-items.ts';
import { type CardParts, frameOf } from './card-parts.ts';
import { factLines, summaryBlock, titleBlock } from './card-words.ts';
import { fitted, type Item, otherwise, setItems, setOnce, stackedMm } from './fitting.ts';
import { paddingWith, TIGHT_MM, USUAL_MM, type Weights, weightsTables } from './weights-table.ts';

export interface UprightFront {
  blocks: Block[];
  /** Whether all that must stand in front stands on one face, so that the method begins on the back. */
  fits: boolean;
  before: Item[];
  after: Item[];
}

/** Above a table that follows text. */
const TABLE_SPACE_MM = 4;

interface Setting {
  /** Whether the oven stands in the table. */
  oven: boolean;
  /** Air above and below each row. */
  paddingMm: number;
  summary: boolean;
}

/** From usual to tight. */
const SETTINGS: readonly Setting[] = [
  { oven: true, paddingMm: USUAL_MM, summary: true },
  { oven: true, paddingMm: TIGHT_MM, summary: true },
  { oven: false, paddingMm: USUAL_MM, summary: true },
  { oven: false, paddingMm: TIGHT_MM, summary: false },
];

/** What the recipe is, with the code at its right. */
const facts = (parts: CardParts, withSummary: boolean): Block =>
  besideCode(parts, [...(withSummary ? [summaryBlock(parts)] : []), ...factLines(parts)]);

/** Title and facts with and without the summary, each set once. */
interface Heads {
  withSummary: Block;
  bare: Block;
}

function headsOf(parts: CardParts): Heads {
  const title = setOnce(titleBlock(parts));
  return {
    withSummary: setOnce(title, facts(parts, true)),
    bare: setOnce(title, facts(parts, false)),
  };
}

/** Warnings and allergens; `must`: whether they have to stand in front. */
const pressing = (tins: readonly CardTin[], must: boolean): Item[] =>
  pressingItems(tins).map((item) => (must ? { ...item, rank: 0 } : item));

/** The roomiest setting of a table that leaves nothing pressing out, with what is spare shared by its rows. */
function settled(parts: CardParts, heads: Heads, weights: Weights, must: boolean): UprightFront | null {
  const { form, context } = parts;
  const { widthMm, heightMm } = frameOf(form);
  const first = setItems(pressing(weights.tins, must), parts);
  const late = {
    in: setItems(lateItems(weights.tins, true), parts),
    out: setItems(lateItems(weights.tins, false), parts),
  };
  for (const setting of SETTINGS) {
    const head = setting.summary ? heads.withSummary : heads.bare;
    const takenMm = stackedMm(head(widthMm, context)) + TABLE_SPACE_MM + weights.heightMm(setting);
    const items = [...first, ...(setting.oven ? late.in : late.out)];
    const found = fitted(items, { widthMm, heightMm: heightMm - takenMm }, context);
    if (found.spareMm < 0 || found.left.some(({ item }) => item.rank === 0)) continue;
    const paddingMm = paddingWith(found.spareMm, weights.rows(setting.oven), setting.paddingMm);
    const blocks = [head, weights.block({ oven: setting.oven, paddingMm }), ...found.taken];
    const [before, after] = [otherwise(found.left, 'before'), otherwise(found.left, 'after')];
    return { blocks, fits: true, before, after };
  }
  return null;
}

/** Everything that belongs in front, over several faces. */
function spilled(parts: CardParts, heads: Heads, weights: Weights): UprightFront {
  const first = pressing(weights.tins, true).flatMap((item) => item.blocks(parts));
  const blocks = [heads.withSummary, weights.block({ oven: false, paddingMm: USUAL_MM }), ...first];
  return { blocks, fits: false, before: [], after: lateItems(weights.tins, false) };
}

/** The most tins whose weights stand on one face: with all cautions if they can, else before a face more. */
export function uprightFront(parts: CardParts): UprightFront {
  const tables = weightsTables(parts, frameOf(parts.form).widthMm);
  const heads = headsOf(parts);
  for (const must of [true, false]) {
    for (const weights of tables) {
      const found = settled(parts, heads, weights, must);
      if (found) return found;
    }
  }
  const [most] = tables;
  if (most === undefined) throw new Error(`the chart ${parts.view.id} has no tins`);
  return spilled(parts, heads, most);
}
