/** The front of a lying card: the title across, what is to be known at the left, the weights at the right. */
import { flow } from '../sheet/flow.ts';
import type { Strip } from '../sheet/strip.ts';
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
  stackedMm,
} from './fitting.ts';
import {
  paddingWith,
  type TableOptions,
  TIGHT_MM,
  USUAL_MM,
  type Weights,
  weightsTables,
} from './weights-table.ts';

export interface LyingFront {
  faces: FaceContent[];
  before: Item[];
  after: Item[];
  /** Null when it stands in front, or when there is none. */
  code: CardCode | null;
}

const TITLE_GAP_MM = 1;
const CODE_GAP_MM = 1.5;

const SETTINGS: readonly TableOptions[] = [
  { oven: true, paddingMm: USUAL_MM },
  { oven: true, paddingMm: TIGHT_MM },
  { oven: false, paddingMm: TIGHT_MM },
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
  weights: Weights;
  options: TableOptions;
}

/** The most tins and then the roomiest setting that stand in one column; when none does, in the fewest. */
function chosenTable(parts: CardParts, widthMm: number, heightMm: number): Chosen {
  const { context, view } = parts;
  const chosen = weightsTables(parts, widthMm).flatMap((weights) =>
    SETTINGS.map((options): Chosen => ({ weights, options })),
  );
  const found = chosen.find(({ weights, options }) => weights.heightMm(options) <= heightMm);
  if (found) return found;
  const columns = ({ weights, options }: Chosen) =>
    flow([{ key: '', blocks: [weights.block(options)] }], { widthMm, heightMm }, context).length;
  const [fewest] = chosen
    .filter(({ options }) => !options.oven)
    .map((one) => ({ one, columns: columns(one) }))
    .sort((a, b) => a.columns - b.columns)
    .map(({ one }) => one);
  if (fewest === undefined) throw new Error(`the chart ${view.id} has no tins`);
  return fewest;
}

/** The weights with as much of the rest below them as fits, in as many columns as they take. */
function weightsColumns(parts: CardParts, { tableMm: widthMm, heightMm }: Columns) {
  const { context, view } = parts;
  const { weights, options } = chosenTable(parts, widthMm, heightMm);
  const { tins } = weights;
  const late = setItems(lateItems(tins, options.oven), parts);
  const below = fitted(late, { widthMm, heightMm: heightMm - weights.heightMm(options) }, context);
  const paddingMm = paddingWith(below.spareMm, weights.rows(options.oven), options.paddingMm);
  const blocks = [weights.block({ ...options, paddingMm }), ...below.taken];
  const pages = flow([{ key: `${view.id} front`, blocks }], { widthMm, heightMm }, context);
  return { tins, pages, left: below.left };
}

/** The first face; a table too long for it goes on over further ones, and what else there is beside it. */
export function lyingFront(parts: CardParts, sideMm: number): LyingFront {
  const { context, view } = parts;
  const columns = columnsOf(parts, sideMm);
  const { title, heightMm } = columns;
  const { tins, pages, left } = weightsColumns(parts, columns);
  const side = sideOf(parts, setItems([summaryItem, factsItem, ...pressingItems(tins)], parts), columns);
  let rest = [...side.left, ...left].filter(({ item }) => item.otherwise !== 'left out');
  const sides = pages.map((_, index) => {
    if (index === 0) return side.taken;
    const beside = fitted(rest, { widthMm: sideMm, heightMm }, context);
    rest = beside.left;
    return beside.taken;
  });
  const key = `${view.id} front`;
  const faces = pages.map((page, index): FaceContent => {
    const topMm = index === 0 ? stackedMm(title) + TITLE_GAP_MM : 0;
    const strips = (sides[index] ?? []).flatMap((block) => block(sideMm, context));
    return {
      fromTop: index === 0,
      draw(surface, xMm, yMm) {
        surface.within('Sect', { key }, () => {
          if (index === 0) drawDown(title, surface, xMm, yMm);
          drawDown(strips, surface, xMm, yMm + topMm);
          if (index === 0) side.code?.draw(surface, xMm, yMm + topMm + heightMm - side.code.heightMm);
        });
        page.draw(surface, xMm + sideMm + COLUMN_GAP_MM, yMm + topMm);
      },
    };
  });
  return {
    faces,
    before: otherwise(rest, 'before'),
    after: otherwise(rest, 'after'),
    code: side.code === null ? cardCode(parts) : null,
  };
}
