/**
 * Sheets that hang on a wall, and the home paper they can be tiled on. A3, A2: ISO 216, from memory. 11 × 17 in
 * and 17 × 22 in: ANSI/ASME Y14.1 sizes B and C, from memory.
 */
import type { PaperName } from '../../domain/kitchen.ts';
import type { SheetSize } from '../sheet/paper.ts';

export interface WallPaper extends SheetSize {
  /** In file names. */
  id: string;
  name: string;
}

const IN_MM = 25.4;
const inches = (id: string, name: string, width: number, height: number): WallPaper => ({
  id,
  name,
  widthMm: width * IN_MM,
  heightMm: height * IN_MM,
});

const PAPERS: Record<PaperName, readonly WallPaper[]> = {
  A4: [
    { id: 'a3', name: 'A3', widthMm: 297, heightMm: 420 },
    { id: 'a2', name: 'A2', widthMm: 420, heightMm: 594 },
  ],
  Letter: [inches('11x17', '11 × 17 in', 11, 17), inches('17x22', '17 × 22 in', 17, 22)],
};

/** The wall's papers where a kitchen prints on this one, upright, smaller first. */
export const wallPapers = (paper: PaperName): readonly WallPaper[] => PAPERS[paper];
