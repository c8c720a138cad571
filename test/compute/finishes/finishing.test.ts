import { describe, expect, it } from 'vitest';
import { type Finishing, finishingFor } from '../../../src/compute/finishes/finishing.ts';
import type { Finish } from '../../../src/domain/finish.ts';
import { USUAL_FINISHING } from '../../../src/domain/finishing.ts';
import type { TinForm } from '../../../src/domain/tin.ts';

const part = (ingredientId: string, parts: number): Finish['parts'][number] => ({
  ingredientId,
  name: ingredientId,
  parts,
  fine: false,
});
const base = {
  lossShare: 0.1,
  cookingLossShare: 0,
  keepsDays: 3,
  chilled: false,
  methodMarkdown: '',
};
const buttercream: Finish = {
  ...base,
  id: 'buttercream',
  name: 'Buttercream',
  kind: 'buttercream',
  densityGPerMl: 1.05,
  parts: [part('butter', 1), part('icing-sugar', 2)],
  use: { filling: { thicknessMm: 8 }, coating: { crumbMm: 2, finalMm: 6, corners: 'rounded' } },
};
const sugarpaste: Finish = {
  ...base,
  id: 'sugarpaste',
  name: 'Sugarpaste',
  kind: 'sugarpaste',
  densityGPerMl: 1.4,
  lossShare: 0,
  packG: 1000,
  parts: [part('sugarpaste', 1)],
  use: { rolled: { thicknessMm: 4, trimMm: 25 } },
};
const tin = (shape: TinForm['shape'], depthMm = 75): TinForm => ({ shape, depthMm });
const finishing = (form: TinForm): Finishing => {
  const found = finishingFor(form, [buttercream, sugarpaste], USUAL_FINISHING);
  if (found === null) throw new Error('no finishing');
  return found;
};

describe('finishingFor(tin, finishes, settings)', () => {
  it('gives filling, coat and sheet for a round, each by its own arithmetic', () => {
    const { amounts } = finishing(tin({ kind: 'round', acrossMm: 200 }));
    const [filling, coat, sheet] = amounts;
    expect(amounts.map(({ use }) => use)).toEqual(['filling', 'coating', 'rolled']);
    expect(filling?.neededMl).toBeCloseTo((2 * Math.PI * 90 ** 2 * 8) / 1000, 3);
    expect(coat?.neededMl).toBeCloseTo((Math.PI * (108 ** 2 * 108 - 100 ** 2 * 100)) / 1000, 2);
    expect(coat?.makeG).toBeCloseTo((coat?.neededG ?? 0) * 1.1, 2);
    expect(coat?.partsG[1]).toBeCloseTo(2 * (coat?.partsG[0] ?? 0), 2);
    // Rolled over the coated cake: 216 across, 108 high, 25 trim a side.
    expect(sheet?.sheet?.acrossMm).toBeCloseTo(216 + 216 + 50, 3);
    expect(sheet?.makeG).toBeCloseTo(((Math.PI * 482 ** 2) / 4) * 4 * 1.4e-3, 1);
    expect((sheet?.buyG ?? 0) % 1000).toBe(0);
  });

  it('a square takes a square sheet, an oblong an oblong one', () => {
    const square = finishing(tin({ kind: 'square', sideMm: 200 })).amounts[2];
    const oblong = finishing(tin({ kind: 'rectangle', lengthMm: 330, widthMm: 230 })).amounts[2];
    expect(square?.sheet?.form).toBe('rectangle');
    expect(oblong?.sheet?.acrossMm).not.toBe(oblong?.sheet?.otherAcrossMm);
  });

  it('board, box and ribbon follow the coated cake', () => {
    const round = finishing(tin({ kind: 'round', acrossMm: 8 * 25.4 }));
    expect(round.boardAcrossMm / 25.4).toBeCloseTo(12, 3);
    expect(round.boxHeightMm).toBe(100 + 8 + 12 + 50);
    expect(round.ribbonMm).toBeCloseTo(Math.PI * (8 * 25.4 + 16) + 20, 2);
    const ring = finishing(tin({ kind: 'ring', acrossMm: 250, tubeMm: 70 }));
    expect(Math.abs(ring.ribbonMm - (Math.PI * 266 + 20))).toBeLessThan(0.2);
  });

  it('a dome is coated over its curve at its own height', () => {
    const dome = finishing(tin({ kind: 'dome', acrossMm: 152.4 }, 76.2));
    expect(dome.cakeHeightMm).toBe(76.2);
    const coat = dome.amounts.find(({ use }) => use === 'coating');
    expect(coat?.neededMl).toBeCloseTo((((2 * Math.PI) / 3) * (84.2 ** 3 - 76.2 ** 3)) / 1000, 2);
  });

  it('a tin known only by its water has no plan to finish', () => {
    expect(
      finishingFor(tin({ kind: 'measured', volumeMl: 1800 }), [buttercream], USUAL_FINISHING),
    ).toBeNull();
  });
});
