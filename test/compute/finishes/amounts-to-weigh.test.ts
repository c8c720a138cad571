import { describe, expect, it } from 'vitest';
import { cakePlan } from '../../../src/compute/finishes/cake-plan.ts';
import { finishClashes } from '../../../src/compute/finishes/clashes.ts';
import { damAmount } from '../../../src/compute/finishes/dam.ts';
import { weighedPartsG } from '../../../src/compute/finishes/weighed-parts.ts';
import type { Finish } from '../../../src/domain/finish.ts';

const finish = (more: Partial<Finish> = {}): Finish => ({
  id: 'buttercream',
  name: 'Buttercream',
  kind: 'buttercream',
  densityGPerMl: 1.05,
  parts: [
    { ingredientId: 'butter', name: 'butter', parts: 1, fine: false },
    { ingredientId: 'icing-sugar', name: 'icing sugar', parts: 2, fine: false },
    { ingredientId: 'salt', name: 'salt', parts: 0.004, fine: true },
  ],
  use: { filling: { thicknessMm: 8 } },
  lossShare: 0.1,
  cookingLossShare: 0,
  keepsDays: 3,
  chilled: false,
  methodMarkdown: '',
  ...more,
});

describe('damAmount(plan, finish, settings)', () => {
  const plan = cakePlan({ shape: { kind: 'round', acrossMm: 200 }, depthMm: 75 });
  if (plan === null) throw new Error('no plan');

  it('is a round bead along every joint, its middle half a bead inside the wall', () => {
    const amount = damAmount(plan, finish(), { layers: 3, damMm: 10 });
    const byHandMl = (2 * Math.PI * 190 * Math.PI * 25) / 1000;
    expect(amount?.neededMl).toBeCloseTo(byHandMl, 2);
    expect(amount?.neededG).toBeCloseTo(byHandMl * 1.05, 2);
    expect(amount?.makeG).toBeCloseTo(byHandMl * 1.05 * 1.1, 2);
  });

  it('is nothing for one layer or no bead', () => {
    expect(damAmount(plan, finish(), { layers: 1, damMm: 10 })).toBeNull();
    expect(damAmount(plan, finish(), { layers: 3, damMm: 0 })).toBeNull();
  });
});

describe('weighedPartsG(finish, grams, scale)', () => {
  it('rounds to the scale and moves nothing by more than 2 %', () => {
    const exact = [321.7, 643.4, 1.287];
    const weighed = weighedPartsG(finish(), exact, { stepG: 5, fineStepG: 0.5 });
    expect(weighed.slice(0, 2)).toEqual([320, 645]);
    weighed.forEach((grams, at) => {
      expect(Math.abs(grams / (exact[at] ?? 0) - 1)).toBeLessThanOrEqual(0.02);
    });
  });
});

describe('finishClashes(finishes)', () => {
  const paste = finish({
    id: 'paste',
    name: 'Paste',
    kind: 'sugarpaste',
    use: { rolled: { thicknessMm: 4, trimMm: 25 } },
  });
  const cream = finish({ id: 'cream', name: 'Cream', kind: 'cream', chilled: true });
  const curd = finish({ id: 'curd', name: 'Curd', kind: 'curd', chilled: true });

  it('refuses fresh cream under a sheet, and warns of what must be chilled', () => {
    expect(finishClashes([cream, paste]).map(({ code }) => code)).toEqual(['cream-under-sheet']);
    expect(finishClashes([paste, curd]).map(({ code }) => code)).toEqual(['chilled-under-sheet']);
  });

  it('warns of royal icing without marzipan under it: it stains and cracks (common practice, no source)', () => {
    const coat = { coating: { crumbMm: 2, finalMm: 2, corners: 'sharp' as const } };
    const icing = finish({ id: 'icing', name: 'Icing', kind: 'royal icing', use: coat });
    const marzipan = { ...paste, id: 'marzipan', name: 'Marzipan', kind: 'marzipan' as const };
    expect(finishClashes([marzipan, icing])).toEqual([]);
    expect(finishClashes([icing]).map(({ code }) => code)).toEqual(['icing-without-marzipan']);
    expect(finishClashes([{ ...finish(), use: coat }, icing]).map(({ code }) => code)).toEqual([
      'icing-without-marzipan',
    ]);
  });

  it('wants a glaze last of all, over a coat that is firm and cold (common practice, no source)', () => {
    const coated = (more: Partial<Finish>): Finish =>
      finish({ use: { coating: { crumbMm: 0, finalMm: 3, corners: 'rounded' } }, ...more });
    const glaze = coated({ id: 'glaze', name: 'Glaze', kind: 'poured glaze' });
    const ganache = coated({ id: 'ganache', name: 'Ganache', kind: 'ganache' });
    const codes = (...used: Finish[]): string[] => finishClashes(used).map(({ code }) => code);
    expect(codes(ganache, glaze)).toEqual([]);
    expect(codes(paste, glaze)).toEqual([]);
    expect(codes(glaze)).toEqual(['glaze-on-bare-cake']);
    expect(codes(finish(), glaze)).toEqual(['glaze-on-bare-cake']);
    expect(codes(coated({ kind: 'cream', name: 'Cream' }), glaze)).toEqual(['glaze-on-cream']);
    expect(codes(ganache, glaze, paste)).toEqual(['glaze-covered']);
    expect(codes(ganache, glaze, finish())).toEqual([]);
  });

  it('has nothing to say of buttercream below a sheet, or of cream alone', () => {
    expect(finishClashes([finish(), paste])).toEqual([]);
    expect(finishClashes([cream, curd])).toEqual([]);
  });
});
