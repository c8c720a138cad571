/**
 * How is a top tier kept for another day? Frozen on the day it is handed over and eaten within three months; what
 * keeps four weeks as it is (rich fruit cake) needs no freezer, and fresh cream and curd are not kept back at all.
 * Common practice, no source; the day is never later than the same day of the month, three months on.
 */
import type { FinishKind } from '../../domain/finish.ts';

const MONTHS = 3;
/** A sponge that keeps so long is not frozen. */
const KEEPS_ITSELF_DAYS = 28;
/** No month is shorter. */
const SAFE_DAY = 28;

const SPOILS: readonly FinishKind[] = ['cream', 'curd'];

export type KeptBack =
  | { how: 'frozen'; freezeOn: string; eatBy: string }
  | { how: 'unfrozen' }
  | { how: 'not kept' };

const padded = (value: number): string => String(value).padStart(2, '0');

/** Three months on, of an ISO date. */
function threeMonthsAfter(isoDate: string): string {
  const [year = 0, month = 1, day = 1] = isoDate.split('-').map(Number);
  const months = month - 1 + MONTHS;
  return `${year + Math.floor(months / 12)}-${padded((months % 12) + 1)}-${padded(Math.min(day, SAFE_DAY))}`;
}

/**
 * How the tier is kept, from the day of the hand-over, how many days its sponge keeps and the kinds of its finishes.
 * @example keptBack('2026-11-28', 4, ['buttercream']) // { how: 'frozen', freezeOn: '2026-11-28', eatBy: '2027-02-28' }
 */
export function keptBack(handOverOn: string, spongeDays: number, finishes: readonly FinishKind[]): KeptBack {
  if (finishes.some((kind) => SPOILS.includes(kind))) return { how: 'not kept' };
  if (spongeDays >= KEEPS_ITSELF_DAYS) return { how: 'unfrozen' };
  return { how: 'frozen', freezeOn: handOverOn, eatBy: threeMonthsAfter(handOverOn) };
}
