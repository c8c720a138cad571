/** The lining papers of a tin as pieces with their guides; what has no pattern is left to the notes. */
import type { LiningPiece } from '../compute/lining/index.ts';
import type { Tin } from '../domain/tin.ts';
import type { TemplateWords } from '../wording/lining-template/index.ts';
import { formatNumber } from '../wording/number.ts';
import { LINING } from './lining-allowances.ts';
import type { TemplateGuide, TemplatePiece } from './lining-template.types.ts';
import { MIRRORED, mirrorsOf } from './lining-template-mirrors.ts';
import { sectorGuides } from './lining-template-sector.ts';
import {
  guide,
  lapLine,
  levelLine,
  lineSteps,
  type PieceShape,
  rectangleShape,
  shapeOf,
} from './lining-template-steps.ts';
import { tinLining } from './tin-lining.ts';

/** Millimetres to the tenth: what a steel rule can tell. */
export const mmText = (mm: number): string => formatNumber(mm, 1);

type Cut = Exclude<LiningPiece, { kind: 'trace-the-base' | 'grease-and-flour' }>;
type Drawn = Pick<TemplatePiece, 'id' | 'name' | 'sizeText' | 'guides' | 'centreText' | 'mirrored'> &
  PieceShape;

function basePiece(piece: Extract<Cut, { kind: 'base' }>, tin: Tin, words: TemplateWords): Drawn {
  const shape = shapeOf(piece.outline);
  const round = tin.shape.kind === 'round' || tin.shape.kind === 'ring';
  const sizeText = round
    ? words.across(mmText(shape.widthMm))
    : words.by(mmText(shape.widthMm), mmText(shape.heightMm));
  const mirrored = mirrorsOf(tin.shape);
  return { id: 'base', name: words.base, ...shape, sizeText, guides: [], centreText: words.centre, mirrored };
}

function wallName(wall: 'side' | 'tube', words: TemplateWords): string {
  return wall === 'tube' ? words.tube : words.side;
}

function stripPiece(piece: Extract<Cut, { kind: 'strip' }>, tin: Tin, words: TemplateWords): Drawn {
  const shape = rectangleShape(piece.lengthMm, piece.heightMm);
  const guides: TemplateGuide[] = [
    guide('rim', words.guides.rim, levelLine(shape, tin.depthMm)),
    guide('foot', words.guides.foot, levelLine(shape, 0), false),
    guide('lap', words.guides.lap, lapLine(shape, LINING.overlapMm)),
  ];
  const sizeText = words.strip(mmText(piece.lengthMm), mmText(piece.heightMm));
  const name = wallName(piece.wall, words);
  return { id: piece.wall, name, ...shape, sizeText, guides, centreText: null, mirrored: MIRRORED };
}

function sectorPiece(piece: Extract<Cut, { kind: 'sector' }>, tin: Tin, words: TemplateWords): Drawn {
  const { shape } = tin;
  const opens =
    piece.wall === 'side'
      ? !('baseAcrossMm' in shape) || (shape.baseAcrossMm ?? 0) < shape.acrossMm
      : shape.kind === 'ring' && (shape.baseTubeMm ?? 0) < shape.tubeMm;
  const degrees = formatNumber((piece.angleRad * 180) / Math.PI, 1);
  const sizeText = words.sector(mmText(piece.innerRadiusMm), mmText(piece.outerRadiusMm), degrees);
  const guides = sectorGuides(piece, opens, LINING, words);
  const name = wallName(piece.wall, words);
  const mirrored = { leftRight: true, topBottom: false };
  return { id: piece.wall, name, ...shapeOf(piece.outline), sizeText, guides, centreText: null, mirrored };
}

function panelPiece(piece: Extract<Cut, { kind: 'panel' }>, words: TemplateWords): Drawn {
  const shape = shapeOf(piece.outline);
  const rim = piece.heightMm - LINING.collarMm;
  const half = (piece.footMm + ((piece.headMm - piece.footMm) * rim) / piece.heightMm) / 2;
  const y = piece.heightMm / 2 - rim;
  const foot = piece.footMm / 2;
  const guides = [
    guide('rim', words.guides.rim, lineSteps(-half, y, half, y)),
    guide('foot', words.guides.foot, lineSteps(-foot, piece.heightMm / 2, foot, piece.heightMm / 2), false),
  ];
  const sizeText = words.panel(mmText(piece.footMm), mmText(piece.headMm), mmText(piece.heightMm));
  const mirrored = { leftRight: true, topBottom: false };
  return { id: 'panel', name: words.side, ...shape, sizeText, guides, centreText: null, mirrored };
}

function drawnPiece(piece: Cut, tin: Tin, words: TemplateWords): Drawn {
  if (piece.kind === 'base') return basePiece(piece, tin, words);
  if (piece.kind === 'strip') return stripPiece(piece, tin, words);
  if (piece.kind === 'sector') return sectorPiece(piece, tin, words);
  return panelPiece(piece, words);
}

/** Equal sloping sides are one pattern cut more often; unequal ones are told apart by name. */
function panelsNamed(pieces: TemplatePiece[], words: TemplateWords): TemplatePiece[] {
  const panels = pieces.filter((piece) => piece.id === 'panel');
  const [long, short] = [...panels].sort((a, b) => b.widthMm - a.widthMm);
  if (long === undefined || short === undefined) return pieces;
  const others = pieces.filter((piece) => piece.id !== 'panel');
  if (long.sizeText === short.sizeText) {
    const count = long.count + short.count;
    return [...others, { ...long, count, cutText: words.cut(count) }];
  }
  return [
    ...others,
    { ...long, id: 'long-side', name: words.longSide },
    { ...short, id: 'short-side', name: words.shortSide },
  ];
}

/** Ids and names of their own where a tin has several strips of a kind. */
export function numberedPieces(pieces: TemplatePiece[], words: TemplateWords): TemplatePiece[] {
  return pieces.map((piece, index) => {
    const alike = pieces.filter(({ id }) => id === piece.id).length;
    if (alike < 2) return piece;
    const number = pieces.slice(0, index + 1).filter(({ id }) => id === piece.id).length;
    return { ...piece, id: `${piece.id}-${number}`, name: words.numbered(piece.name, number) };
  });
}

/** Every paper that lines the tin; none for a tin that is greased and floured. */
export function liningTemplatePieces(tin: Tin, words: TemplateWords): TemplatePiece[] {
  const pieces = tinLining(tin).flatMap((piece): TemplatePiece[] => {
    if (piece.kind === 'trace-the-base' || piece.kind === 'grease-and-flour') return [];
    const { count } = piece;
    return [{ group: 'lining', count, cutText: words.cut(count), ...drawnPiece(piece, tin, words) }];
  });
  return numberedPieces(panelsNamed(pieces, words), words);
}
