/** Is the bound a bound? Small pieces of work in every order there is, on a calendar with nights. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Activity } from '../../../src/compute/timeline/activity.types.ts';
import { awakeHours, workedBack } from '../../../src/compute/timeline/awake.ts';
import { earlierOnes, placeBackwards } from '../../../src/compute/timeline/backwards.ts';
import { leastHeads, leastSpan } from '../../../src/compute/timeline/bound.ts';
import { resources } from '../../../src/compute/timeline/place-activity.ts';
import { pressingRules } from '../../../src/compute/timeline/pressing.ts';
import { calendarOf } from './random-week.ts';

const AWAKE = awakeHours(calendarOf('UTC', '2026-11-01', '2026-11-12'));
const END = Date.UTC(2026, 10, 12, 14) / 60_000;
const subject = { orderIds: [], tiers: [], bowlfulId: null, share: 1, loadId: null, finishId: null };

interface Piece {
  minutes: number;
  mixer: boolean;
  /** Comes before the piece so many places later, when there is one. */
  ahead: number;
  waitMin: number;
}

function activitiesOf(pieces: readonly Piece[]): Activity[] {
  return pieces.map(({ minutes, mixer, ahead, waitMin }, id) => {
    const later = id + ahead;
    return {
      id,
      parts: [{ kind: 'build', subject, offset: 0, minutes, handsOn: true, mixer, awake: true, waits: [] }],
      tails: [],
      holds: [],
      oven: null,
      minutes,
      next: later < pieces.length ? [{ activity: later, tail: null, waitMin }] : [],
      deadline: END,
    };
  });
}

function permutations(items: readonly number[]): number[][] {
  if (items.length < 2) return [[...items]];
  return items.flatMap((item, at) =>
    permutations([...items.slice(0, at), ...items.slice(at + 1)]).map((rest) => [item, ...rest]),
  );
}

const anyPieces = fc.array(
  fc.record({
    minutes: fc.integer({ min: 1, max: 60 }).map((n) => n * 10),
    mixer: fc.boolean(),
    ahead: fc.integer({ min: 1, max: 5 }),
    waitMin: fc.constantFrom(0, 30, 120, 480),
  }),
  { minLength: 2, maxLength: 5 },
);

describe('the bound', () => {
  it('is never above the best of all orders of doing things, and the planner’s own orders come near that', () => {
    const found: { best: number; least: number; planned: number }[] = [];
    fc.assert(
      fc.property(anyPieces, fc.constantFrom(1, 2), (pieces, hands) => {
        const activities = activitiesOf(pieces);
        const earlier = earlierOnes(activities);
        const fresh = () => resources(AWAKE, hands, new Map());
        const spanOf = (pressing: readonly number[]): number => {
          const pass = placeBackwards(activities, earlier, pressing, fresh(), fresh);
          return pass.ok
            ? END - Math.min(...pass.placed.map(({ start }) => start))
            : Number.POSITIVE_INFINITY;
        };
        const alone = placeBackwards(
          activities,
          earlier,
          pieces.map(() => 0),
          'endless',
          fresh,
        );
        if (!alone.ok) throw new Error('the calendar is too short');
        const least = leastSpan(activities, earlier, alone.placed, AWAKE, hands).spanMin;
        const best = Math.min(...permutations(pieces.map((_, at) => at)).map(spanOf));
        const rules = pressingRules(activities, leastHeads(activities, earlier), alone.placed, 12);
        const planned = Math.min(...rules.map(spanOf));
        expect(least).toBeLessThanOrEqual(best);
        expect(planned).toBeGreaterThanOrEqual(best);
        found.push({ best, least, planned });
      }),
      { numRuns: 40, seed: 45 },
    );
    const share = (test: (one: (typeof found)[number]) => boolean): number =>
      found.filter(test).length / found.length;
    expect(share(({ planned, best }) => planned === best)).toBeGreaterThan(0.9);
    expect(share(({ least, best }) => least === best)).toBeGreaterThan(0.5);
  });

  it('counts only hours in which somebody is awake', () => {
    // From two in the afternoon back: seven hours of that day, fourteen of the day before, one more.
    expect(workedBack(AWAKE, 22 * 60, END)).toBe(Date.UTC(2026, 10, 10, 20) / 60_000);
    expect(workedBack(AWAKE, 7 * 60, END)).toBe(Date.UTC(2026, 10, 12, 7) / 60_000);
    expect(workedBack(AWAKE, 1_000_000, END)).toBe(Number.NEGATIVE_INFINITY);
  });
});
