/** Figures of the usual kinds: the value that data files carry and the text that every output shows for it. */
import { formatGrams, formatWholeGrams } from '../wording/mass.ts';
import { formatFixed, formatNumber, formatShare } from '../wording/number.ts';
import type { Figure } from './figure.ts';

/** An amount on the scale, exactly as rounded. */
export const weighedFigure = (grams: number): Figure => ({
  value: grams,
  unit: 'g',
  text: formatGrams(grams),
});

/** A total or a tin's share, shown to the gram. */
export const totalFigure = (grams: number): Figure => ({
  value: grams,
  unit: 'g',
  text: formatWholeGrams(grams),
});

/** Pieces, cakes, tins: whole. */
export const countFigure = (count: number): Figure => ({
  value: count,
  unit: 'count',
  text: formatNumber(count, 0),
});

export const volumeFigure = (ml: number): Figure => ({ value: ml, unit: 'mL', text: formatNumber(ml, 0) });

/** A height in whole millimetres: what a ruler on the worktop can tell. */
export const heightFigure = (mm: number): Figure => ({ value: mm, unit: 'mm', text: formatNumber(mm, 0) });

export const wholeEggsFigure = (count: number): Figure => ({
  value: count,
  unit: 'eggs',
  text: formatNumber(count, 0),
});

export const exactEggsFigure = (count: number): Figure => ({
  value: count,
  unit: 'eggs',
  text: formatFixed(count, 2),
});

/** A share with its sign where it has one: '+3.9 %'. */
export const deviationFigure = (share: number): Figure => ({
  value: share,
  unit: 'share',
  text: share > 0 ? `+${formatShare(share, 1)}` : formatShare(share, 1),
});

export const shareFigure = (share: number): Figure => ({
  value: share,
  unit: 'share',
  text: formatShare(share),
});
