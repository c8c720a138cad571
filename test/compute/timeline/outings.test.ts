/** Tins leave the oven by the minute they are due, worked by hand with three minutes at the door. */
import { describe, expect, it } from 'vitest';
import type { BatchTin } from '../../../src/compute/timeline/batches.ts';
import { outings } from '../../../src/compute/timeline/outings.ts';
import type { BakeMinutes } from '../../../src/compute/timeline/work.ts';
import { USUAL_TIMES } from '../../../src/domain/times.ts';
import { BIRTHDAY } from './sample-week.ts';

const due = (id: string, by: number, more: Partial<BatchTin['tier']> = {}, likely = by - 10): BatchTin => {
  const [first] = BIRTHDAY.tiers;
  if (first === undefined) throw new Error('no tier');
  const bake: BakeMinutes = { firstLook: likely - 10, expected: likely, by };
  return { order: BIRTHDAY, tier: { ...first, id, bake, ...more }, count: 1 };
};

/** When which tiers leave. */
const told = (...tins: BatchTin[]) =>
  outings(tins, USUAL_TIMES, 5).map(({ at, tins: some }) => [at, some.map(({ tier }) => tier.id).join()]);

describe('outings', () => {
  it('takes out together what is due at once, and the rest when it is due', () => {
    expect(told(due('a', 65), due('b', 65), due('c', 60))).toEqual([
      [60, 'c'],
      [65, 'a,b'],
    ]);
  });

  it('of two that are due at once and cool differently, one leaves the door’s three minutes sooner', () => {
    expect(told(due('a', 65), due('fruit', 65, { method: 'rich fruit' }))).toEqual([
      [62, 'a'],
      [65, 'fruit'],
    ]);
  });

  it('takes nothing out before it is likely done: then the other waits those minutes', () => {
    const fruit = due('fruit', 65, { method: 'rich fruit' }, 65);
    expect(told(due('a', 65, {}, 64), fruit)).toEqual([
      [64, 'a'],
      [67, 'fruit'],
    ]);
  });
});
