/** Tins on a shelf, measured against their true outlines, and a shelf's 'no' against arrangements known to work. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  type Footprint,
  fillShelves,
  ovenMemory,
  type Place,
  placeTins,
  type ShelfRoom,
  tinFootprint,
  turnedFootprint,
} from '../../../src/compute/oven/index.ts';
import type { TinForm } from '../../../src/domain/tin.ts';
import { USUAL_OVEN_ROOM } from '../../../src/domain/work-settings.ts';
import { SAMPLE_TINS } from '../../samples/tins.ts';
import { apartMm, standingRim } from './rims.ts';

const round = (inches: number): TinForm => ({
  shape: { kind: 'round', acrossMm: inches * 25.4 },
  depthMm: 76,
});
const square = (inches: number): TinForm => ({
  shape: { kind: 'square', sideMm: inches * 25.4 },
  depthMm: 76,
});

function footprint(form: TinForm): Footprint {
  const found = tinFootprint(form);
  if (found === null) throw new Error('no footprint');
  return found;
}

const answer = (forms: TinForm[], room: ShelfRoom = USUAL_OVEN_ROOM) => placeTins(forms.map(footprint), room);

/** Rims are drawn as chords this near to their curves. */
const SLACK_MM = 0.06;

function expectAir(forms: TinForm[], places: readonly Place[], room: ShelfRoom): void {
  const rims = forms.map((form, at) => standingRim(form, places[at] ?? { x: 0, y: 0, turned: false }));
  rims.forEach((rim, at) => {
    for (const { x, y } of rim) {
      expect(Math.min(x, y, room.widthMm - x, room.depthMm - y)).toBeGreaterThanOrEqual(
        room.wallGapMm - SLACK_MM,
      );
    }
    for (const other of rims.slice(at + 1))
      expect(Math.min(apartMm(rim, other), apartMm(other, rim))).toBeGreaterThanOrEqual(
        room.airGapMm - SLACK_MM,
      );
  });
}

describe('tins on a shelf of 440 × 360 mm with 25 mm of air and 20 mm to the walls', () => {
  it('two eight-inch rounds stand cornerwise, side by side they would be 31 mm too wide', () => {
    const found = answer([round(8), round(8)]);
    expect(found.fits).toBe('yes');
    if (found.fits === 'yes') expectAir([round(8), round(8)], found.places, USUAL_OVEN_ROOM);
  });

  it.each([
    ['two eight-inch squares', [square(8), square(8)], { fits: 'no', because: 'a pair' }],
    ['a sixteen-inch round', [round(16)], { fits: 'no', because: 'too big' }],
    ['nine five-inch squares', Array.from({ length: 9 }, () => square(5)), { fits: 'no', because: 'area' }],
  ])('%s do not go on it', (_, forms, expected) => {
    expect(answer(forms)).toEqual(expected);
  });

  it('six four-inch rounds stand in two rows of three', () => {
    const six = Array.from({ length: 6 }, () => round(4));
    const found = answer(six);
    expect(found.fits).toBe('yes');
    if (found.fits === 'yes') expectAir(six, found.places, USUAL_OVEN_ROOM);
  });

  it('two shelves take two ten-inch rounds and not a third', () => {
    const memory = ovenMemory(USUAL_OVEN_ROOM);
    const ten = footprint(round(10));
    expect(fillShelves([ten, ten], memory)?.map(({ shelf }) => shelf)).toEqual([0, 1]);
    expect(fillShelves([ten, ten, ten], memory)).toBeNull();
  });

  it('a tin known only by its water has no footprint', () => {
    expect(tinFootprint({ shape: { kind: 'measured', volumeMl: 1850 }, depthMm: 75 })).toBeNull();
  });
});

describe('properties', () => {
  const big = { widthMm: 700, depthMm: 550, airGapMm: 25, wallGapMm: 20 };
  const drawn = SAMPLE_TINS.filter(({ shape }) => shape.kind !== 'measured');

  it('every outline keeps its air from every other and from the walls', () => {
    const some = fc.array(fc.constantFrom(...drawn), { minLength: 2, maxLength: 4 });
    fc.assert(
      fc.property(some, (tins) => {
        const found = answer(tins, big);
        if (found.fits === 'yes') expectAir(tins, found.places, big);
      }),
      { numRuns: 25, seed: 41 },
    );
  });

  it('never says no to tins that are seen to stand, and seldom fails to find a way', () => {
    const spot = fc.record({
      x: fc.integer({ min: 0, max: 440 }),
      y: fc.integer({ min: 0, max: 360 }),
      half: fc.integer({ min: 30, max: 110 }),
      other: fc.integer({ min: 30, max: 110 }),
      isRound: fc.boolean(),
    });
    let asked = 0;
    let missed = 0;
    fc.assert(
      fc.property(fc.array(spot, { minLength: 6, maxLength: 30 }), (spots) => {
        const standing: { x: number; y: number; tin: Footprint }[] = [];
        for (const { x, y, half, other, isRound } of spots) {
          const tin = isRound
            ? { halfXMm: 0, halfYMm: 0, roundMm: half }
            : { halfXMm: half, halfYMm: other, roundMm: 0 };
          if (standsFree({ x, y, tin }, standing)) standing.push({ x, y, tin });
        }
        // Some are handed over turned: the shelf must turn them back.
        const tins = standing.map(({ tin }, at) => (at % 2 === 0 ? tin : turnedFootprint(tin)));
        const found = placeTins(tins, USUAL_OVEN_ROOM);
        asked += 1;
        if (found.fits === 'not found') missed += 1;
        expect(found.fits).not.toBe('no');
      }),
      { numRuns: 250, seed: 42 },
    );
    expect(missed / asked).toBeLessThan(0.02);
  });

  interface Stood {
    x: number;
    y: number;
    tin: Footprint;
  }

  /** By its own reckoning: nearest points of two rounded boxes. */
  function standsFree(one: Stood, standing: readonly Stood[]): boolean {
    const reachX = one.tin.halfXMm + one.tin.roundMm + 20;
    const reachY = one.tin.halfYMm + one.tin.roundMm + 20;
    if (one.x < reachX || one.x > 440 - reachX || one.y < reachY || one.y > 360 - reachY) return false;
    return standing.every((other) => {
      const gap = (a: number, b: number, halves: number) => Math.max(0, Math.abs(a - b) - halves);
      const x = gap(one.x, other.x, one.tin.halfXMm + other.tin.halfXMm);
      const y = gap(one.y, other.y, one.tin.halfYMm + other.tin.halfYMm);
      return Math.sqrt(x * x + y * y) >= one.tin.roundMm + other.tin.roundMm + 25;
    });
  }
});
