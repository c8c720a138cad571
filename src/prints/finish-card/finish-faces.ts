/**
 * A finish's card: on one face wherever it can be, with as many tins as there is room for and then in the largest
 * type; what is too long for that goes on over the back.
 */
import { besideCode } from '../recipe-card/card-code.ts';
import { drawFurniture } from '../recipe-card/card-furniture.ts';
import { type CardFace, COLUMN_GAP_MM, frameOf, HEAD_MM, lookOf } from '../recipe-card/card-parts.ts';
import { heading, textParagraph } from '../sheet/blocks.ts';
import { type FilledPage, flow } from '../sheet/flow.ts';
import { paragraph } from '../sheet/lines.ts';
import { cautionBlock, leadInBlock, methodBlocks } from '../sheet/method-blocks.ts';
import type { Block } from '../sheet/strip.ts';
import type { FinishCardParts } from './finish-card-parts.ts';
import { batchBlocks, tinBlocks } from './finish-tables.ts';

/** How many tins are tried, most first; fewer than the last are none. */
const TINS: readonly number[] = [6, 4, 3, 0];

/** What it is made of, how it keeps and what it is for, with the code at the right. */
function factsBlock(parts: FinishCardParts): Block {
  const { view, form, own } = parts;
  const { type } = form;
  const look = { ...lookOf(form), gapMm: 0.3 };
  const uses = view.uses.map(({ text }) => text).join('; ');
  const blocks = [
    textParagraph('parts', paragraph(view.partsText, type.summary), 0.4),
    textParagraph('keeps', paragraph(view.keepsText, type.body), look.gapMm),
    ...(uses === '' ? [] : [leadInBlock('uses', own.uses, `${uses}.`, look)]),
  ];
  const words = { working: own.everyTin, workingOf: own.everyTinOf };
  return besideCode({ ...parts, view: { title: view.title, workingUrl: view.pageUrl }, words }, blocks);
}

function blocksOf(parts: FinishCardParts, tins: number): Block[] {
  const { view, form, words } = parts;
  const look = lookOf(form);
  const { type } = form;
  return [
    heading(view.title, { level: 1, type: type.title, bookmark: view.title, anchor: view.id }),
    factsBlock(parts),
    ...batchBlocks(parts),
    ...(view.boilsAwayText === null
      ? []
      : [textParagraph('boils-away', paragraph(view.boilsAwayText, type.small), 0.8)]),
    heading(words.method, { level: 2, type: type.heading, spaceMm: look.headingGapMm * 1.6 }),
    ...methodBlocks('method', view.method, look),
    ...view.cautions.map(({ code, text }) => cautionBlock(code, words.caution, text, look)),
    ...tinBlocks(parts, tins),
  ];
}

/** Columns of a face: two on lying cards. */
const columnsOf = ({ form }: FinishCardParts): number => (form.sideMm === null ? 1 : 2);

function flowed(parts: FinishCardParts, tins: number): FilledPage[] {
  const { form, context, view } = parts;
  const columns = columnsOf(parts);
  const frame = frameOf(form);
  const widthMm = (frame.widthMm - (columns - 1) * COLUMN_GAP_MM) / columns;
  return flow([{ key: `${view.id} card`, blocks: blocksOf(parts, tins) }], { ...frame, widthMm }, context);
}

/** The columns of all faces. */
function settled(parts: FinishCardParts): FilledPage[] {
  const types = parts.form.methodTypes;
  const own = parts.view.tins.length;
  const counts = [...new Set(TINS.map((count) => Math.min(count, own)))];
  for (const tins of counts)
    for (const type of types) {
      const set = flowed({ ...parts, form: { ...parts.form, type } }, tins);
      if (set.length <= columnsOf(parts)) return set;
    }
  return flowed({ ...parts, form: { ...parts.form, type: types.at(-1) ?? parts.form.type } }, own);
}

/** The faces of a finish's card. */
export function finishFaces(parts: FinishCardParts): CardFace[] {
  const { form } = parts;
  const columns = columnsOf(parts);
  const pages = settled(parts);
  const stepMm = (frameOf(form).widthMm + COLUMN_GAP_MM) / columns;
  const faces = Array.from({ length: Math.ceil(pages.length / columns) }, (_, face) =>
    pages.slice(columns * face, columns * (face + 1)),
  );
  return faces.map((own, face) => ({
    draw(surface, xMm, yMm) {
      const at = { xMm, yMm, face, cards: Math.ceil(faces.length / 2), headless: false };
      surface.artifact(() => drawFurniture(surface, parts, at));
      const topMm = yMm + form.marginMm + HEAD_MM;
      for (const [column, page] of own.entries())
        page.draw(surface, xMm + form.marginMm + column * stepMm, topMm);
    },
  }));
}
