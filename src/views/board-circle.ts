/**
 * Which board, and where does the cake stand on it? A board as the finishing chart names it (the coated cake and
 * the margin, up to a whole inch): round, square under a square cake, oblong under a tray, a loaf or
 * a long octagon, whose corners may stand further out than its length.
 */
import { boardAcrossMm } from '../compute/finishes/around.ts';
import { finishingFor } from '../compute/finishes/finishing.ts';
import { outlinePath } from '../compute/outline/index.ts';
import { tinOutline } from '../compute/shapes/index.ts';
import type { FinishingSettings } from '../domain/finishing.ts';
import { quantiseMm } from '../domain/quantise.ts';
import type { Tin } from '../domain/tin.ts';
import { formatBothLengths } from '../wording/length.ts';
import type { TemplateWords } from '../wording/lining-template/index.ts';
import type { TemplatePiece } from './lining-template.types.ts';
import { mmText } from './lining-template-pieces.ts';
import { guide, type PieceShape, rectangleShape, shapeOf } from './lining-template-steps.ts';

function discShape(acrossMm: number): PieceShape {
  const radius = acrossMm / 2;
  const arc = {
    kind: 'arc',
    to: { x: radius, y: 0 },
    centre: { x: 0, y: 0 },
    rx: radius,
    ry: radius,
  } as const;
  const segment = { ...arc, rotation: 0, startAngle: 0, sweep: 2 * Math.PI };
  return shapeOf({ rings: [{ start: { x: radius, y: 0 }, segments: [segment] }] });
}

function boardShape({ shape }: Tin, acrossMm: number, settings: FinishingSettings): PieceShape {
  if (shape.kind === 'square') return rectangleShape(acrossMm, acrossMm);
  if (shape.kind !== 'rectangle' && shape.kind !== 'loaf' && shape.kind !== 'long-octagon')
    return discShape(acrossMm);
  const side = (cakeMm: number) => quantiseMm(boardAcrossMm(cakeMm + 2 * settings.undercoatMm, settings));
  return rectangleShape(side(shape.lengthMm), side(shape.widthMm));
}

/** The board for the coated cake; null where the tin's width is not known. */
export function boardPiece(
  tin: Tin,
  settings: FinishingSettings,
  words: TemplateWords,
): TemplatePiece | null {
  const finishing = finishingFor(tin, [], settings);
  const outline = tinOutline(tin);
  if (finishing === null || outline === null) return null;
  const shape = boardShape(tin, finishing.boardAcrossMm, settings);
  const isRound = shape.cut.some((step) => step.op === 'cubic');
  const own = formatBothLengths(shape.widthMm, tin.unit);
  const sizeText = isRound
    ? `${words.across(mmText(shape.widthMm))}, ${own}`
    : words.by(mmText(shape.widthMm), mmText(shape.heightMm));
  return {
    id: 'board',
    group: 'board',
    name: words.board,
    count: 1,
    ...shape,
    guides: [guide('cake', words.guides.cake, outlinePath(outline))],
    centreText: words.centre,
    sizeText,
    cutText: words.cut(1),
    mirrored: { leftRight: false, topBottom: false },
  };
}
