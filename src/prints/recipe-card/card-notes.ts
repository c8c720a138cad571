/** Lines to write on, where a card would otherwise end in empty paper. */
import { heading } from '../sheet/blocks.ts';
import { hairline } from '../sheet/rules.ts';
import type { Surface } from '../sheet/surface.ts';
import { type CardParts, type FaceContent, frameOf } from './card-parts.ts';

const LINE_MM = 8;
/** Less than this is left empty. */
const WORTH_MM = 38;
const ABOVE_MM = 4;

interface Room {
  xMm: number;
  yMm: number;
  widthMm: number;
  heightMm: number;
}

function drawNotes({ view, words, form, context }: CardParts, surface: Surface, room: Room): void {
  const title = heading(words.notes, { level: 2, type: form.type.heading })(room.widthMm, context);
  for (const strip of title)
    surface.within('Sect', { key: `${view.id} notes` }, () => strip.draw(surface, room.xMm, room.yMm));
  surface.artifact(() => {
    for (let y = 2 * LINE_MM; y < room.heightMm; y += LINE_MM)
      hairline(surface, context, room.xMm, room.yMm + y, room.widthMm);
  });
}

/** Notes below what is used of a column that begins `xMm` into the frame; nothing where there is little room. */
export function notesBelow(parts: CardParts, usedMm: number, column: { xMm: number; widthMm: number }) {
  const topMm = usedMm === 0 ? 0 : usedMm + ABOVE_MM;
  const heightMm = frameOf(parts.form).heightMm - topMm;
  return (surface: Surface, xMm: number, yMm: number): void => {
    if (heightMm < WORTH_MM) return;
    const { widthMm } = column;
    drawNotes(parts, surface, { xMm: xMm + column.xMm, yMm: yMm + topMm, widthMm, heightMm });
  };
}

/** A whole face of notes. */
export function notesFace(parts: CardParts): FaceContent {
  const { widthMm } = frameOf(parts.form);
  return { fromTop: false, draw: notesBelow(parts, 0, { xMm: 0, widthMm }) };
}
