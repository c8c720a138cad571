/** The front of an upright card: title, facts beside the code, the weights, and below them as much as fits. */
import type { Block } from '../sheet/strip.ts';
import { table } from '../sheet/table/table.ts';
import { cardCode } from './card-code.ts';
import { lateItems, pressingItems } from './card-items.ts';
import { type CardParts, frameOf } from './card-parts.ts';
import { factLines, summaryBlock, titleBlock } from './card-words.ts';
import { drawDown, fitted, type Item, otherwise, setItems, setOnce, stackedMm } from './fitting.ts';
import { type Weights, weightsTables } from './weights-table.ts';

export interface UprightFront {
  blocks: Block[];
  /** Whether all that must stand in front stands on one face, so that the method begins on the back. */
  fits: boolean;
  after: Item[];
}

const GAP_BESIDE_MM = 3;

/** From roomy to tight: where the oven stands in the table, and how much air the rows have. */
const SETTINGS = [
  { oven: true, paddingMm: 0.9, summary: true, everything: true },
  { oven: true, paddingMm: 0.55, summary: true, everything: true },
  { oven: true, paddingMm: 0.3, summary: true, everything: false },
  { oven: true, paddingMm: 0.05, summary: true, everything: false },
  { oven: false, paddingMm: 0.3, summary: true, everything: false },
  { oven: false, paddingMm: 0.05, summary: false, everything: false },
];

const SPILLING = { oven: false, paddingMm: 0.3, summary: true, everything: false };

type Setting = (typeof SETTINGS)[number];

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

function itemsOf(parts: CardParts, { tins, spec }: Weights): (setting: Setting) => Item[] {
  const pressing = pressingItems(tins).map((item): Item => ({ ...item, rank: 0 }));
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
function onOneFace(parts: CardParts, items: Item[], { everything }: Setting): UprightFront | null {
  const { taken, left } = fitted(setItems(items, parts), frameOf(parts.form), parts.context);
  const fits = everything ? left.length === 0 : left.every(({ item }) => item.rank > 0);
  return fits ? { blocks: taken, fits, after: otherwise(left, 'after') } : null;
}

/** The most tins and then the roomiest setting that leave nothing pressing out; else all of it, over several faces. */
export function uprightFront(parts: CardParts): UprightFront {
  const tables = weightsTables(parts, frameOf(parts.form).widthMm);
  for (const weights of tables) {
    const items = itemsOf(parts, weights);
    for (const setting of SETTINGS) {
      const found = onOneFace(parts, items(setting), setting);
      if (found) return found;
    }
  }
  const spilling = tables.slice(0, 1).flatMap((weights) => itemsOf(parts, weights)(SPILLING));
  const pressing = spilling.filter(({ rank }) => rank === 0);
  return {
    blocks: pressing.map((item) => setOnce(...item.blocks(parts))),
    fits: false,
    after: spilling.filter(({ rank }) => rank > 0),
  };
}
