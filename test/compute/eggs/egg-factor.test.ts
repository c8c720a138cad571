import { describe, expect, it } from 'vitest';
import { eggFactor, planEggs } from '../../../src/compute/eggs/whole-eggs.ts';
import type { EggPart } from '../../../src/domain/egg.ts';
import type { Formula } from '../../../src/domain/recipe.ts';
import { between, seeded } from '../loads/random.ts';

const line = (id: string, grams: number, eggPart?: EggPart): Formula[number] => ({
  ingredientId: id,
  name: id,
  grams,
  role: 'flour',
  fine: false,
  ...(eggPart === undefined ? {} : { eggPart }),
});

describe('eggFactor', () => {
  it('is the factor of planEggs to the last digit, for eggs, yolks, whites, none, and a kitchen that weighs them', () => {
    const random = seeded(31);
    let stepped = 0;
    for (let run = 0; run < 400; run++) {
      const parts = (['egg', 'yolk', 'white'] as const).slice(0, between(random, 0, 3));
      const formula = [
        ...parts.map((part) => line(part, between(random, 0, 250), part)),
        line('flour', between(random, 100, 600)),
      ];
      const setting = {
        shelledG: between(random, 40, 65),
        tolerance: between(random, 0, 10) / 100,
        otherwise: run % 4 === 0 ? ('weigh' as const) : ('step-up' as const),
      };
      const scale = 0.05 + 6 * random();
      const factor = eggFactor(formula, setting)(scale);
      expect(factor).toBe(planEggs(formula, scale, setting)?.factor ?? 1);
      if (factor > 1) stepped += 1;
    }
    expect(stepped).toBeGreaterThan(50);
  });
});
