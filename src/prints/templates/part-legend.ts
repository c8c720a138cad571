/** What a part says about itself: its name, the piece and its tin, the size, how many, and the map of its piece. */
import { paragraph } from '../sheet/lines.ts';
import type { SheetContext } from '../sheet/sheet-context.ts';
import type { Surface } from '../sheet/surface.ts';
import { drawText, setText } from '../sheet/text-block.ts';
import { assemblyMap } from './assembly-map.ts';
import type { LaidPiece, Part } from './cut-into-parts.ts';
import type { TemplateLabels } from './template-labels.ts';
import { templateType } from './template-type.ts';

export interface Legend {
  widthMm: number;
  heightMm: number;
  draw(surface: Surface, xMm: number, yMm: number): void;
}

/** Widest first; the narrowest still holds a word such as 'Levelling'. */
const WIDTHS_MM = [78, 60, 46, 34, 26];
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
  widthMm: number,
): Legend {
  const { piece } = laid;
  const tiled = part.name !== '';
  const fold = foldText(laid, labels);
  const text = setText(
    [
      ...(tiled ? [paragraph(part.name, templateType.part)] : []),
      paragraph(labels.partOf(piece.name, tinName), templateType.piece),
      paragraph(piece.sizeText, templateType.detail),
      paragraph(piece.cutText, templateType.detail),
      ...(tiled && fold ? [paragraph(fold, templateType.detail)] : []),
    ],
    widthMm,
    context,
  );
  const map = tiled
    ? assemblyMap(laid, part, { widthMm: Math.min(widthMm, 50), heightMm: MAP_HEIGHT_MM }, context)
    : null;
  const inkMm = Math.max(map?.widthMm ?? 0, ...text.lines.map(({ line }) => line.widthMm));
  return {
    widthMm: inkMm,
    heightMm: text.heightMm + (map ? MAP_GAP_MM + map.heightMm : 0),
    draw(surface, xMm, yMm) {
      drawText(surface, context, text, xMm, yMm);
      map?.draw(surface, xMm, yMm + text.heightMm + MAP_GAP_MM);
    },
  };
}

/** The same words in narrower and narrower columns, for whichever finds room. */
export function legendChoices(
  laid: LaidPiece,
  part: Part,
  tinName: string,
  labels: TemplateLabels,
  context: SheetContext,
): Legend[] {
  return WIDTHS_MM.map((widthMm) => legendAt(laid, part, tinName, labels, context, widthMm));
}
