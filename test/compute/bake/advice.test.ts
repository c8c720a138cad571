import { describe, expect, it } from 'vitest';
import {
  BAKE_CONSTANTS,
  bakeGuidance,
  bakeSolid,
  bakesToAskFor,
  boilingPointC,
  classOfMethod,
  doneAtAltitudeC,
  fitLog,
  neutralBake,
  ovenOffset,
  priorBelief,
  RECIPE_CLASSES,
  temperatureCurve,
  waterLoss,
  weighingsOf,
} from '../../../src/compute/bake/index.ts';
import type { BakeLogRow } from '../../../src/domain/bake-log.ts';
import type { Shape } from '../../../src/domain/shape.ts';
import type { Tin } from '../../../src/domain/tin.ts';
import { logRow, SETTINGS } from './synthetic-logs.ts';

const tin = (shape: Shape, depthMm = 76.2): Tin => ({
  id: 't',
  name: 'tin',
  shape,
  depthMm,
  owned: 1,
  unit: 'in',
});
const round = (acrossIn: number): Tin => tin({ kind: 'round', acrossMm: acrossIn * 25.4 });
const SPONGE = { recipeClass: RECIPE_CLASSES.sponge, heightMm: 76.2 };
const BLANK = fitLog([], SPONGE, BAKE_CONSTANTS);

function neutralMin(
  form: Tin,
  ovenC = 160,
  more: { band?: boolean; material?: Tin['material'] } = {},
): number {
  const own = more.material ? { ...form, material: more.material } : form;
  const bake = neutralBake(
    { tin: own, heightMm: 76.2, ovenC, core: 'none', band: more.band ?? false },
    BAKE_CONSTANTS,
  );
  if (!bake.ok) throw new Error(bake.problems[0]?.message);
  return bake.value.neutralMin;
}

describe('solids', () => {
  it('of a round and a square are exact; a tapered round takes its mean', () => {
    expect(bakeSolid(round(8), 76.2).sides.map((side) => side.geometry)).toEqual(['cylinder', 'wall']);
    expect(bakeSolid(tin({ kind: 'square', sideMm: 200 }), 76.2).sides).toHaveLength(3);
    const tapered = neutralMin(tin({ kind: 'round', acrossMm: 203.2, baseAcrossMm: 190.5 }));
    expect(tapered).toBeLessThan(neutralMin(round(8)));
    expect(tapered).toBeGreaterThan(neutralMin(round(7.5)));
  });

  it('of other plans bake like the round between their inner and outer circle', () => {
    const hexagon = neutralMin(tin({ kind: 'hexagon', acrossMm: 203.2, measured: 'flats' }));
    expect(hexagon).toBeGreaterThan(neutralMin(round(8)));
    expect(hexagon).toBeLessThan(neutralMin(round(9.24)));
    const oval = bakeSolid(tin({ kind: 'oval', lengthMm: 300, widthMm: 150 }), 76.2);
    expect(oval.sides).toHaveLength(3);
    const heart = bakeSolid(tin({ kind: 'heart', acrossMm: 203.2, measured: 'across' }), 76.2);
    expect(heart.sides).toHaveLength(2);
  });

  it('of a ring bake sooner than the round without its tube; of a measured tin like a round of its area', () => {
    expect(neutralMin(tin({ kind: 'ring', acrossMm: 254, tubeMm: 76 }))).toBeLessThan(neutralMin(round(10)));
    const asRound = neutralMin(tin({ kind: 'measured', volumeMl: 2471.11 }));
    expect(Math.abs(asRound - neutralMin(round(8)))).toBeLessThan(0.01);
  });

  it('take longer when wider, higher, in a cooler oven, in a bright tin or behind a band', () => {
    expect(neutralMin(round(9))).toBeGreaterThan(neutralMin(round(8)));
    expect(neutralMin(round(8), 150)).toBeGreaterThan(neutralMin(round(8), 160));
    expect(neutralMin(round(8), 160, { material: 'bright aluminium' }) / neutralMin(round(8))).toBeCloseTo(
      1.12,
      9,
    );
    expect(neutralMin(round(8), 160, { material: 'dark' }) / neutralMin(round(8))).toBeCloseTo(0.94, 9);
    expect(neutralMin(round(8), 160, { band: true }) / neutralMin(round(8))).toBeCloseTo(1.16, 9);
  });
});

describe('guidance', () => {
  it('lowers the dial for a wide tin, keeps the recipe’s for a small one, and says what stands behind it', () => {
    const ask = { heightMm: 76.2, recipeOvenC: 160, core: 'hollow' as const, band: false };
    const small = bakeGuidance({ ...ask, tin: round(6) }, BLANK, BAKE_CONSTANTS);
    const wide = bakeGuidance({ ...ask, tin: round(12) }, BLANK, BAKE_CONSTANTS);
    if (!small.ok || !wide.ok) throw new Error('no guidance');
    expect(small.value.plain.dialC).toBe(160);
    expect(small.value.coreIsWorthIt).toBe(false);
    expect(small.value.edgeNeedsCare).toBe(false);
    expect(wide.value.plain.dialC).toBeLessThan(148);
    expect(wide.value.coreIsWorthIt).toBe(true);
    expect(wide.value.edgeNeedsCare).toBe(true);
    expect(wide.value.plain.bakes).toBe(0);
    expect(wide.value.withCore?.dialC).toBeGreaterThan(wide.value.plain.dialC);
  });

  it('offers no core where its rule does not reach, and refuses an oven that cannot bake', () => {
    const ask = { tin: round(4), heightMm: 76.2, core: 'solid' as const, band: false };
    const tiny = bakeGuidance({ ...ask, recipeOvenC: 160 }, BLANK, BAKE_CONSTANTS);
    expect(tiny.ok && tiny.value.withCore).toBeNull();
    const cold = bakeGuidance({ ...ask, recipeOvenC: 90 }, BLANK, BAKE_CONSTANTS);
    expect(cold.ok ? [] : cold.problems.map((problem) => problem.code)).toEqual(['oven-too-cool']);
  });

  it('asks first for the smallest and the largest tin, and promises narrower windows', () => {
    const candidates = [5, 6, 7, 8, 9, 10, 12].map((acrossIn) => {
      const bake = neutralBake(
        { tin: round(acrossIn), heightMm: 76.2, ovenC: 160, core: 'none', band: false },
        BAKE_CONSTANTS,
      );
      if (!bake.ok) throw new Error('no bake');
      return { id: `${acrossIn} in`, bake: bake.value };
    });
    const asked = bakesToAskFor(
      priorBelief(RECIPE_CLASSES.sponge, BAKE_CONSTANTS),
      candidates,
      BAKE_CONSTANTS,
    );
    expect(asked.ids.slice(0, 2)).toEqual(['5 in', '12 in']);
    expect(asked.ids).toHaveLength(3);
    expect(asked.nats).toBeGreaterThan(1);
    expect(asked.narrowedTo).toBeLessThan(0.6);
    expect(bakesToAskFor(priorBelief(RECIPE_CLASSES.sponge, BAKE_CONSTANTS), [], BAKE_CONSTANTS).ids).toEqual(
      [],
    );
  });

  it('knows the class of a method, and the higher the kitchen, the cooler done', () => {
    expect(classOfMethod('creamed').timeFactor).toBe(1);
    expect(classOfMethod('rich fruit').timeFactor).toBe(3);
    expect(boilingPointC(0)).toBeCloseTo(100, 1);
    // Common practice: about 1 °C less for every 300 m.
    expect(Math.abs(boilingPointC(1500) - 95)).toBeLessThan(0.5);
    expect(doneAtAltitudeC(0, 95)).toBe(95);
    expect(doneAtAltitudeC(2000, 95)).toBeLessThan(91);
  });
});

describe('what else the log tells', () => {
  const setting = SETTINGS[0];
  const row = (more: Partial<BakeLogRow>): BakeLogRow => {
    if (!setting) throw new Error('no setting');
    return { ...logRow(setting, 60), tin: round(8), finishedHeightMm: 76.2, ...more };
  };

  it('water loss: from the trade’s 10 % to the log’s own, and surer with every weighing', () => {
    const weighed = (n: number) =>
      waterLoss({
        method: 'creamed',
        weighings: weighingsOf(Array.from({ length: n }, () => row({ batterG: 1000, massOutG: 880 }))),
      });
    expect(weighed(0)).toMatchObject({ share: 0.1, bakes: 0 });
    expect(weighed(1).share).toBeGreaterThan(0.1);
    expect(weighed(10).share).toBeGreaterThan(0.118);
    expect(weighed(10).sd).toBeLessThan(weighed(1).sd);
    expect(waterLoss({ method: 'creamed', bakingLossShare: 0.13 }).share).toBe(0.13);
  });

  it('oven offset: of an oven 12 °C hotter than its dial, eight probed bakes give the direction and cover the truth; two, nothing', () => {
    const rows = [140, 150, 160, 170, 180, 190, 145, 185].map((ovenC) => {
      const bake = neutralBake(
        { tin: round(8), heightMm: 76.2, ovenC: ovenC + 12, core: 'none', band: false, doneC: 93 },
        BAKE_CONSTANTS,
      );
      if (!bake.ok) throw new Error('no bake');
      return row({ ovenC, probeC: 93, minutes: 4 + bake.value.neutralMin });
    });
    const found = ovenOffset(rows, SPONGE, BAKE_CONSTANTS);
    expect(found?.offsetC).toBeGreaterThan(3);
    expect(Math.abs((found?.offsetC ?? 0) - 12)).toBeLessThan(1.645 * (found?.sdC ?? 0));
    expect(found?.sdC).toBeLessThan(9);
    expect(ovenOffset(rows.slice(0, 2), SPONGE, BAKE_CONSTANTS)).toBeNull();
  });
});

describe('temperature curves', () => {
  it('start at the batter’s temperature, rise, stay at boiling at most, and the middle is done when promised', () => {
    const solid = bakeSolid(round(8), 76.2);
    const clock = { ovenC: 160, timeFactor: 1, boilingC: 100 };
    const points = temperatureCurve(solid, clock, BAKE_CONSTANTS, { stepMin: 1, untilMin: 90 });
    expect(points[0]).toEqual({ minutes: 0, centreC: 22, edgeC: 22 });
    for (let n = 1; n < points.length; n++) {
      expect(points[n]?.centreC).toBeGreaterThanOrEqual((points[n - 1]?.centreC ?? 0) - 1e-6);
      expect(points[n]?.edgeC).toBeGreaterThanOrEqual(points[n]?.centreC ?? 0);
      expect(points[n]?.edgeC).toBeLessThanOrEqual(100);
    }
    const done = points.findIndex((point) => point.centreC >= 95);
    expect(done).toBe(Math.ceil(4 + neutralMin(round(8))));
  });
});
