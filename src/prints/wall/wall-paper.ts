/**
 * Sheets that hang on a wall, and the home paper they can be tiled on. A3, A2: ISO 216, from memory. 11 × 17 in
 * and 17 × 22 in: ANSI/ASME Y14.1 sizes B and C, from memory.
 */
import type { PaperName } from '../../domain/kitchen.ts';
import type { WallSize } from '../../domain/printable.ts';
import type { SheetSize } from '../sheet/paper.ts';

export interface WallPaper extends SheetSize {
  /** In file names. */
  id: string;
  name: string;
  /** As `sizes:` in printables names it. */
  size: WallSize;
  /** The home paper it is tiled on. */
  homePaper: PaperName;
}

const IN_MM = 25.4;
const inches = (id: string, size: WallSize, width: number, height: number): WallPaper => ({
  id,
  name: size.replace('x', '×'),
  size,
  homePaper: 'Letter',
  widthMm: width * IN_MM,
  heightMm: height * IN_MM,
});
const iso = (id: string, size: WallSize, widthMm: number, heightMm: number): WallPaper => ({
  id,
  name: size,
  size,
  homePaper: 'A4',
  widthMm,
  heightMm,
});

const PAPERS: readonly WallPaper[] = [
  iso('a3', 'A3', 297, 420),
  iso('a2', 'A2', 420, 594),
  inches('11x17', '11 x 17 in', 11, 17),
  inches('17x22', '17 x 22 in', 17, 22),
];

/** The wall's papers where a kitchen prints on this one, upright, smaller first. */
export const wallPapers = (paper: PaperName): readonly WallPaper[] =>
  PAPERS.filter(({ homePaper }) => homePaper === paper);

/** Those of the sizes asked for, otherwise those that go with the kitchen's papers. */
export const wantedWallPapers = (
  papers: readonly PaperName[],
  sizes: readonly WallSize[] | null,
): readonly WallPaper[] =>
  sizes === null ? papers.flatMap(wallPapers) : PAPERS.filter(({ size }) => sizes.includes(size));
