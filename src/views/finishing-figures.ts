/** Figures of the finishing chart: lengths to cut and roll in centimetres, boards in inches with centimetres. */
import { formatBothLengths } from '../wording/length.ts';
import { formatNumber } from '../wording/number.ts';
import type { Figure } from './figure.ts';

const MM_PER_CM = 10;

/** A length to cut or roll, to the millimetre, with its unit: '71.1 cm'. */
export const cutFigure = (mm: number): Figure => ({
  value: mm,
  unit: 'mm',
  text: `${formatNumber(mm / MM_PER_CM, 1)} cm`,
});

/** A board's or a box's width, sold by the inch: '11 in (27.9 cm)'. */
export const boardFigure = (mm: number): Figure => ({
  value: mm,
  unit: 'mm',
  text: formatBothLengths(mm, 'in'),
});
