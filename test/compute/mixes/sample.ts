/** A small invented kitchen for the computations' tests; masses in g, lengths in mm. */
import type { Kitchen } from '../../../src/domain/kitchen.ts';
import type { FormulaLine, Recipe } from '../../../src/domain/recipe.ts';
import type { Shape } from '../../../src/domain/shape.ts';
import type { Tin } from '../../../src/domain/tin.ts';

export const INCH = 25.4;

export function tin(id: string, shape: Shape, depthMm: number, owned = 1): Tin {
  return { id, name: id, shape, depthMm, owned, unit: 'in' };
}

export const round = (acrossIn: number, owned = 1, depthIn = 3): Tin =>
  tin(`round-${acrossIn}`, { kind: 'round', acrossMm: acrossIn * INCH }, depthIn * INCH, owned);

export function line(ingredientId: string, grams: number, more: Partial<FormulaLine> = {}): FormulaLine {
  return { ingredientId, name: ingredientId, grams, role: 'flour', fine: false, ...more };
}

/** UK medium: 58 g × 0.88, derived. */
export const MEDIUM_G = 51.04;

export const equalWeights: Recipe = {
  id: 'equal-weights',
  name: 'Equal-weights sponge',
  summary: 'Everything weighs what the eggs weigh.',
  method: 'creamed',
  formula: [
    line('butter', 250, { role: 'fat' }),
    line('sugar', 250, { role: 'sugar' }),
    line('egg', 5 * MEDIUM_G, { role: 'egg', eggPart: 'egg' }),
    line('flour', 250),
  ],
  eggSize: { scheme: 'UK', grade: 'medium' },
  provenBakes: [{ tins: [{ tin: round(7), count: 2 }], finishedHeightMm: 65, batterG: 1370 }],
  finishedHeightMm: 65,
  allowedRiseMm: 5,
  rawDensityGPerMl: 0.85,
  rawDensitySource: 'method',
  ovenC: 160,
  methodMarkdown: '',
  layers: 2,
};

export const kitchen: Kitchen = {
  name: 'Test kitchen',
  place: 'Nowhere',
  edition: '2026-11-01',
  locale: 'en-GB',
  paper: ['A4'],
  egg: {
    size: { scheme: 'UK', grade: 'medium' },
    shelledG: MEDIUM_G,
    source: 'table',
    tolerance: 0.06,
    otherwise: 'step-up',
  },
  scale: { stepG: 5, fineStepG: 0.5 },
  mixer: { bowlMl: 4800, maxFill: 0.55, minFill: 0 },
  fairyCaseG: 25,
  tins: [round(4, 2), round(6, 2), round(7, 2), round(8, 2), round(10)],
};

/** A mixer that takes anything, for what does not depend on bowlfuls. */
export const bigBowl: Kitchen = { ...kitchen, mixer: { bowlMl: 1e9, maxFill: 1, minFill: 0 } };
