import { describe, expect, it } from 'vitest';
import { altitudeFlavour, altitudeShares } from '../../../src/compute/flavours/altitude.ts';

const metres = (feet: number): number => feet * 0.3048;

/**
 * Ranges per cup as in the high-altitude tables of USDA and US state extension services, seen on several public
 * pages, which differ slightly. Tolerance: anywhere inside the range.
 */
describe('altitudeShares(metres)', () => {
  it.each([
    [3000, [-1 / 8, -1 / 8], [-1 / 16, 0], [1 / 16, 2 / 16]],
    [5000, [-1 / 4, -1 / 8], [-2 / 16, 0], [2 / 16, 4 / 16]],
    [7000, [-1 / 2, -1 / 4], [-3 / 16, -1 / 16], [3 / 16, 4 / 16]],
  ])('%i ft lies inside the published ranges', (feet, powder, sugar, liquid) => {
    const shares = altitudeShares(metres(feet));
    for (const [value, range] of [
      [shares?.powder, powder],
      [shares?.sugar, sugar],
      [shares?.liquid, liquid],
    ] as const) {
      expect(value).toBeGreaterThanOrEqual((range[0] ?? Number.NaN) - 1e-9);
      expect(value).toBeLessThanOrEqual((range[1] ?? Number.NaN) + 1e-9);
    }
  });

  it('changes nothing below 3,000 ft and keeps the last row above 7,000 ft', () => {
    expect(altitudeShares(metres(2999))).toBeNull();
    expect(altitudeFlavour(200, [])).toBeNull();
    expect(altitudeShares(metres(9000))).toMatchObject({ powder: -0.25 });
  });

  it('is linear between rows', () => {
    const a = altitudeShares(metres(3000));
    const b = altitudeShares(metres(5000));
    expect(altitudeShares(metres(4000))?.liquid).toBeCloseTo(((a?.liquid ?? 0) + (b?.liquid ?? 0)) / 2, 12);
  });
});
