/** What a part says about itself: its name, the piece and its tin, the size, how many, and the map of its piece. */

import type { TemplateLabels } from '../../wording/lining-template/sheet-words.ts';
import { paragraph } from '../sheet/lines.ts';
import type { SheetContext } from '../sheet/sheet-context.ts';
import type { Surface } from '../sheet/surface.ts';
import { drawText, setText } from '../sheet/text-block.ts';
import { assemblyMap } from './assembly-map.ts';
import type { LaidPiece, Part } from './cut-into-parts.ts';
import { templateType } from './template-type.ts';

export interface Legend {
  widthMm: number;
  heightMm: number;
  draw(surface: Surface, xMm: number, yMm: number): void;
}

interface Form {
  widthMm: number;
  mapAt: 'right' | 'below';
  mapMm: number;
  /** The tin's name, which the head of the sheet says as well, and how to fold. */
  full: boolean;
}

/** Widest first; the narrowest still holds a word such as 'Levelling'. */
const FORMS: readonly Form[] = [
  { widthMm: 78, mapAt: 'right', mapMm: 50, full: true },
  { widthMm: 78, mapAt: 'below', mapMm: 50, full: true },
  { widthMm: 60, mapAt: 'below', mapMm: 50, full: true },
  { widthMm: 46, mapAt: 'right', mapMm: 34, full: false },
  { widthMm: 46, mapAt: 'below', mapMm: 46, full: false },
  { widthMm: 34, mapAt: 'right', mapMm: 34, full: false },
  { widthMm: 34, mapAt: 'below', mapMm: 34, full: false },
  { widthMm: 26, mapAt: 'below', mapMm: 26, full: false },
];
const MAP_BESIDE_MM = 6;
/** The map stands level with the part's name. */
const MAP_DROP_MM = 2;
const MAP_GAP_MM = 2.5;
const MAP_HEIGHT_MM = 22;

/** How a pattern that mirrors itself at its joints can be cut without joining; null where it cannot. */
export function foldText({ piece, columns, rows }: LaidPiece, labels: TemplateLabels): string | null {
  const { leftRight, topBottom } = piece.mirrored;
  if (columns === 2 && rows === 1 && leftRight) return labels.foldInHalf;
  if (columns === 1 && rows === 2 && topBottom) return labels.foldInHalf;
  if (columns === 2 && rows === 2 && leftRight && topBottom) return labels.foldInFour;
  return null;
}

function legendAt(
  laid: LaidPiece,
  part: Part,
  tinName: string,
  labels: TemplateLabels,
  context: SheetContext,
  { widthMm, mapAt, mapMm, full }: Form,
): Legend {
  const { piece } = laid;
  const tiled = part.name !== '';
  const fold = foldText(laid, labels);
  const text = setText(
    [
      ...(tiled ? [paragraph(part.name, templateType.part)] : []),
      paragraph(full ? labels.partOf(piece.name, tinName) : piece.name, templateType.piece),
      paragraph(piece.sizeText, templateType.detail),
      paragraph(piece.cutText, templateType.detail),
      ...(tiled && full && fold ? [paragraph(fold, templateType.detail)] : []),
    ],
    widthMm,
    context,
  );
  const map = tiled ? assemblyMap(laid, part, { widthMm: mapMm, heightMm: MAP_HEIGHT_MM }, context) : null;
  const inkMm = Math.max(...text.lines.map(({ line }) => line.widthMm));
  const [mapX, mapY] = mapAt === 'right' ? [inkMm + MAP_BESIDE_MM, 0] : [0, text.heightMm + MAP_GAP_MM];
  return {
    widthMm: Math.max(inkMm, map ? mapX + map.widthMm : 0),
    heightMm: Math.max(text.heightMm, map ? mapY + map.heightMm + (mapAt === 'right' ? MAP_DROP_MM : 0) : 0),
    draw(surface, xMm, yMm) {
      drawText(surface, context, text, xMm, yMm);
      map?.draw(surface, xMm + mapX, yMm + mapY + (mapAt === 'right' ? MAP_DROP_MM : 0));
    },
  };
}

/** The same words in narrower and narrower columns, for whichever finds room; set one by one as they are tried. */
export function* legendChoices(
  laid: LaidPiece,
  part: Part,
  tinName: string,
  labels: TemplateLabels,
  context: SheetContext,
): Generator<Legend> {
  for (const form of FORMS) yield legendAt(laid, part, tinName, labels, context, form);
}
