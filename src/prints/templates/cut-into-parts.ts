/**
 * A piece larger than a sheet as parts that lap by 12 mm. Parts are equally large; the line to join along lies
 * in the middle of the lap and is drawn on both, with crosses that must meet. Parts of one row are A1, A2, …;
 * a further row takes the next letter. Lengths in mm about the piece's middle, y down.
 */
import { quantiseMm } from '../../domain/quantise.ts';
import type { TemplatePiece } from '../../views/lining-template.types.ts';
import { clippedCurves, curvesOf, type Spot, spotsAlong, turnedSteps, type Window } from './curves.ts';
import { type Region, regionOf } from './region.ts';

const LAP_MM = 12;

export interface Joint {
  /** Names of the two parts: 'A1–A2'. */
  name: string;
  a: Spot;
  b: Spot;
  crosses: Spot[];
}

export interface Part {
  /** Empty for a piece of one part. */
  name: string;
  column: number;
  row: number;
  /** What the part shows of the piece. */
  window: Window;
  joints: Joint[];
}

export interface LaidPiece {
  piece: TemplatePiece;
  /** A quarter turn clockwise, to fit the sheet better. */
  turned: boolean;
  columns: number;
  rows: number;
  parts: Part[];
  region: Region;
  /** Letters that its part names took. */
  letters: number;
}

interface Band {
  low: number;
  high: number;
  /** The joint at its upper end; null for the last. */
  joint: number | null;
}

export interface Room {
  widthMm: number;
  heightMm: number;
}

const bandCount = (mm: number, roomMm: number): number =>
  mm <= roomMm ? 1 : Math.ceil(quantiseMm((mm - LAP_MM) / (roomMm - LAP_MM)));

/** Lines on the piece's own edge, rounded outwards by a thousandth, still belong to it. */
const EDGE_MM = 0.05;

function bands(mm: number, count: number): Band[] {
  const each = (mm + (count - 1) * LAP_MM) / count;
  return Array.from({ length: count }, (_, index) => {
    const low = quantiseMm(index * (each - LAP_MM) - mm / 2);
    const high = quantiseMm(low + each);
    const isLast = index === count - 1;
    return {
      low: index === 0 ? low - EDGE_MM : low,
      high: isLast ? high + EDGE_MM : high,
      joint: isLast ? null : quantiseMm(high - LAP_MM / 2),
    };
  });
}

const turnedPiece = (piece: TemplatePiece): TemplatePiece => ({
  ...piece,
  cut: turnedSteps(piece.cut),
  guides: piece.guides.map((guide) => ({ ...guide, steps: turnedSteps(guide.steps) })),
  widthMm: piece.heightMm,
  heightMm: piece.widthMm,
  mirrored: { leftRight: piece.mirrored.topBottom, topBottom: piece.mirrored.leftRight },
});

/** Where the piece lies within a window: its box; null when the window holds nothing of it. */
function tightWindow(piece: TemplatePiece, window: Window, region: Region): Window | null {
  const { minX, minY, maxX, maxY } = window;
  const corners = [minX, maxX].flatMap((x) => [minY, maxY].map((y) => ({ x, y })));
  const lines = clippedCurves(curvesOf(piece.cut), window);
  const spots = [
    ...lines.flatMap((curve) => [curve.from, ...(curve.straight ? [curve.to] : spotsAlong(curve, 1))]),
    ...corners.filter((corner) => region.has(corner)),
  ];
  if (spots.length === 0) return null;
  const xs = spots.map(({ x }) => x);
  const ys = spots.map(({ y }) => y);
  const low = (values: number[], edge: number) => Math.max(edge, quantiseMm(Math.min(...values) - 0.1));
  const high = (values: number[], edge: number) => Math.min(edge, quantiseMm(Math.max(...values) + 0.1));
  return { minX: low(xs, minX), minY: low(ys, minY), maxX: high(xs, maxX), maxY: high(ys, maxY) };
}

const CROSS_SHARE = 0.2;

/** A joint from edge to edge of the piece within the band; null where the piece does not cross it. */
function jointLine(along: 'x' | 'y', at: number, band: Band, region: Region, name: string): Joint | null {
  const inBand = (value: number) => value >= band.low && value <= band.high;
  const spot = (value: number): Spot => (along === 'x' ? { x: at, y: value } : { x: value, y: at });
  const ends = [
    ...region.crossings(along, at).filter(inBand),
    ...[band.low, band.high].filter((value) => region.has(spot(value))),
  ].sort((p, q) => p - q);
  const low = quantiseMm(ends[0] ?? 0);
  const high = quantiseMm(ends.at(-1) ?? 0);
  if (high - low < 1) return null;
  const inset = quantiseMm((high - low) * CROSS_SHARE);
  return { name, a: spot(low), b: spot(high), crosses: [spot(low + inset), spot(high - inset)] };
}

const letterOf = (index: number): string =>
  index < 26 ? String.fromCharCode(65 + index) : letterOf(Math.floor(index / 26) - 1) + letterOf(index % 26);

/** The piece in parts that fit the room, names beginning with the given letter (0 = A). */
export function cutIntoParts(
  whole: TemplatePiece,
  turned: boolean,
  room: Room,
  firstLetter: number,
): LaidPiece {
  const piece = turned ? turnedPiece(whole) : whole;
  const region = regionOf(piece.cut);
  const columns = bandCount(piece.widthMm, room.widthMm);
  const rows = bandCount(piece.heightMm, room.heightMm);
  const across = bands(piece.widthMm, columns);
  const down = bands(piece.heightMm, rows);
  const nameOf = (column: number, row: number): string => {
    if (columns * rows === 1) return '';
    return columns === 1
      ? `${letterOf(firstLetter)}${row + 1}`
      : `${letterOf(firstLetter + row)}${column + 1}`;
  };
  const parts = down.flatMap((vertical, row) =>
    across.flatMap((level, column): Part[] => {
      const window = { minX: level.low, maxX: level.high, minY: vertical.low, maxY: vertical.high };
      const tight = tightWindow(piece, window, region);
      if (tight === null) return [];
      return [{ name: nameOf(column, row), column, row, window: tight, joints: [] }];
    }),
  );
  const partAt = (column: number, row: number) =>
    parts.find((part) => part.column === column && part.row === row);
  for (const part of parts) {
    const level = across[part.column];
    const vertical = down[part.row];
    if (level === undefined || vertical === undefined) continue;
    const join = (other: Part | undefined, along: 'x' | 'y', at: number | null, band: Band) => {
      if (other === undefined || at === null) return;
      const joint = jointLine(along, at, band, region, `${part.name}–${other.name}`);
      if (joint === null) return;
      part.joints.push(joint);
      other.joints.push(joint);
    };
    join(partAt(part.column + 1, part.row), 'x', level.joint, vertical);
    join(partAt(part.column, part.row + 1), 'y', vertical.joint, level);
  }
  const letters = columns * rows === 1 ? 0 : columns === 1 ? 1 : rows;
  return { piece, turned, columns, rows, parts, region, letters };
}
