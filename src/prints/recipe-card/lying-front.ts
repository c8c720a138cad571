/** The front of a lying card: the title across, what is to be known at the left, the weights at the right. */
import type { CardTin } from '../../views/recipe-card.types.ts';
import { flow } from '../sheet/flow.ts';
import type { Block, Strip } from '../sheet/strip.ts';
import { table } from '../sheet/table/table.ts';
import { type CardCode, cardCode } from './card-code.ts';
import { factsItem, lateItems, pressingItems, summaryItem } from './card-items.ts';
import { type CardParts, COLUMN_GAP_MM, type FaceContent, frameOf, HEAD_MM } from './card-parts.ts';
import { titleBlock } from './card-words.ts';
import {
  drawDown,
  type Fitted,
  fitted,
  type Item,
  otherwise,
  type SetItem,
  setItems,
  setOnce,
  stackedMm,
} from './fitting.ts';
import { type TableOptions, weightsTables } from './weights-table.ts';

export interface LyingFront {
  faces: FaceContent[];
  before: Item[];
  after: Item[];
  /** Null when it stands in front, or when there is none. */
  code: CardCode | null;
}

const TITLE_GAP_MM = 1;
const CODE_GAP_MM = 1.5;

const SETTINGS: TableOptions[] = [
  { oven: true, paddingMm: 0.55 },
  { oven: true, paddingMm: 0.3 },
  { oven: true, paddingMm: 0.05 },
  { oven: false, paddingMm: 0.05 },
];

interface Columns {
  title: Strip[];
  sideMm: number;
  tableMm: number;
  /** Height below the title. */
  heightMm: number;
}

function columnsOf(parts: CardParts, sideMm: number): Columns {
  const whole = frameOf(parts.form);
  const title = titleBlock(parts)(whole.widthMm, parts.context);
  return {
    title,
    sideMm,
    tableMm: whole.widthMm - sideMm - COLUMN_GAP_MM,
    heightMm: whole.heightMm + HEAD_MM - stackedMm(title) - TITLE_GAP_MM,
  };
}

/** What stands beside the weights; the code at the foot where what is pressing leaves it room. */
function sideOf(
  parts: CardParts,
  items: readonly SetItem[],
  { sideMm, heightMm }: Columns,
): Fitted & { code: CardCode | null } {
  const { context } = parts;
  const code = cardCode(parts);
  const room = (takenMm: number) => ({ widthMm: sideMm, heightMm: heightMm - takenMm });
  if (code === null) return { ...fitted(items, room(0), context), code };
  const withCode = fitted(items, room(code.heightMm + CODE_GAP_MM), context);
  const fits = code.widthMm <= sideMm && withCode.left.every(({ item }) => item.rank > 1);
  return fits ? { ...withCode, code } : { ...fitted(items, room(0), context), code: null };
}

interface Chosen {
  weights: Block;
  tins: readonly CardTin[];
  oven: boolean;
}

/** The most tins and then the roomiest setting that stand in one column; when none does, the most tins. */
function chosenTable(parts: CardParts, { tableMm, heightMm }: Columns): Chosen {
  const chosen = weightsTables(parts, tableMm).flatMap(({ tins, spec }) =>
    SETTINGS.map((options) => ({ tins, oven: options.oven, weights: setOnce(table(spec(options))) })),
  );
  const found = chosen.find(({ weights }) => stackedMm(weights(tableMm, parts.context)) <= heightMm);
  const spilling = chosen.find(({ oven }) => !oven);
  const taken = found ?? spilling;
  if (taken === undefined) throw new Error(`the chart ${parts.view.id} has no tins`);
  return taken;
}

/** The first face; a table too long for it goes on over further ones. */
export function lyingFront(parts: CardParts, sideMm: number): LyingFront {
  const { context, view } = parts;
  const columns = columnsOf(parts, sideMm);
  const { title, tableMm, heightMm } = columns;
  const { weights, tins, oven } = chosenTable(parts, columns);
  const side = sideOf(parts, setItems([summaryItem, factsItem, ...pressingItems(tins)], parts), columns);
  const roomMm = heightMm - stackedMm(weights(tableMm, context));
  const below = fitted(
    setItems(lateItems(tins, oven), parts),
    { widthMm: tableMm, heightMm: roomMm },
    context,
  );
  const key = `${view.id} front`;
  const pages = flow([{ key, blocks: [weights, ...below.taken] }], { widthMm: tableMm, heightMm }, context);
  const strips = side.taken.flatMap((block) => block(sideMm, context));
  const faces = pages.map((page, index): FaceContent => {
    const topMm = index === 0 ? stackedMm(title) + TITLE_GAP_MM : 0;
    return {
      fromTop: index === 0,
      draw(surface, xMm, yMm) {
        if (index === 0)
          surface.within('Sect', { key }, () => {
            drawDown(title, surface, xMm, yMm);
            drawDown(strips, surface, xMm, yMm + topMm);
            side.code?.draw(surface, xMm, yMm + topMm + heightMm - side.code.heightMm);
          });
        page.draw(surface, xMm + sideMm + COLUMN_GAP_MM, yMm + topMm);
      },
    };
  });
  return {
    faces,
    before: otherwise(side.left, 'before'),
    after: otherwise(below.left, 'after'),
    code: side.code === null ? cardCode(parts) : null,
  };
}
