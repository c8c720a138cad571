/** The front of an upright card: title, facts beside the code, the weights, and below them as much as fits. */
import type { Block } from '../sheet/strip.ts';
import { table } from '../sheet/table/table.ts';
import { cardCode } from './card-code.ts';
import { lateItems, pressingItems } from './card-items.ts';
import { type CardParts, frameOf } from './card-parts.ts';
import { factLines, summaryBlock, titleBlock } from './card-words.ts';
import {
  drawDown,
  type Fitted,
  fitted,
  type Item,
  otherwise,
  setItems,
  setOnce,
  stackedMm,
} from './fitting.ts';
import { paddingWith, TIGHT_MM, USUAL_MM, type Weights, weightsTables } from './weights-table.ts';

export interface UprightFront {
  blocks: Block[];
  /** Whether all that must stand in front stands on one face, so that the method begins on the back. */
  fits: boolean;
  before: Item[];
  after: Item[];
}

const GAP_BESIDE_MM = 3;

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

const SPILLING: Setting = { oven: false, paddingMm: USUAL_MM, summary: true };

/** What the recipe is, with the code at its right. */
function facts(parts: CardParts, withSummary: boolean): Block {
  return (widthMm, context) => {
    const code = cardCode(parts);
    const textMm = code ? widthMm - code.widthMm - GAP_BESIDE_MM : widthMm;
    const blocks = [...(withSummary ? [summaryBlock(parts)] : []), ...factLines(parts)];
    const strips = blocks.flatMap((block) => block(textMm, context));
    return [
      {
        heightMm: Math.max(stackedMm(strips), code?.heightMm ?? 0),
        spaceMm: 0,
        keepWithNext: true,
        draw(surface, xMm, yMm) {
          drawDown(strips, surface, xMm, yMm);
          code?.draw(surface, xMm + widthMm - code.widthMm, yMm);
        },
      },
    ];
  };
}

type ItemsIn = (setting: Setting) => Item[];

/** `must`: whether warnings and allergens have to stand in front. */
function itemsOf(parts: CardParts, { tins, spec }: Weights, must: boolean): ItemsIn {
  const pressing = pressingItems(tins).map((item): Item => (must ? { ...item, rank: 0 } : item));
  return (setting) => [
    {
      rank: 0,
      otherwise: 'before',
      blocks: () => [titleBlock(parts), facts(parts, setting.summary), table(spec(setting))],
    },
    ...pressing,
    ...lateItems(tins, setting.oven),
  ];
}

/** What stands on one face in a setting; null when something pressing would not. */
function onOneFace(parts: CardParts, items: ItemsIn, setting: Setting): Fitted | null {
  const found = fitted(setItems(items(setting), parts), frameOf(parts.form), parts.context);
  return found.left.every(({ item }) => item.rank > 0) ? found : null;
}

/** The roomiest setting of a table that leaves nothing pressing out, with what is spare shared by its rows. */
function settled(parts: CardParts, weights: Weights, must: boolean): UprightFront | null {
  const items = itemsOf(parts, weights, must);
  for (const setting of SETTINGS) {
    const found = onOneFace(parts, items, setting);
    if (!found) continue;
    const paddingMm = paddingWith(found.spareMm, weights.spec(setting), setting.paddingMm);
    const { taken, left } = onOneFace(parts, items, { ...setting, paddingMm }) ?? found;
    const [before, after] = [otherwise(left, 'before'), otherwise(left, 'after')];
    return { blocks: taken, fits: true, before, after };
  }
  return null;
}

/** Everything that belongs in front, over several faces. */
function spilled(parts: CardParts, weights: Weights): UprightFront {
  const items = itemsOf(parts, weights, true)(SPILLING);
  const blocks = items.filter(({ rank }) => rank === 0).map((item) => setOnce(...item.blocks(parts)));
  return { blocks, fits: false, before: [], after: items.filter(({ rank }) => rank > 0) };
}

/** The most tins whose weights stand on one face: with all cautions if they can, else before a face more. */
export function uprightFront(parts: CardParts): UprightFront {
  const tables = weightsTables(parts, frameOf(parts.form).widthMm);
  for (const must of [true, false]) {
    for (const weights of tables) {
      const found = settled(parts, weights, must);
      if (found) return found;
    }
  }
  const [most] = tables;
  if (most === undefined) throw new Error(`the chart ${parts.view.id} has no tins`);
  return spilled(parts, most);
}
