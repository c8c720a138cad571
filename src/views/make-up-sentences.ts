/** What a batter's make-up would say of its time, beside what its kind of cake and the log say. */
import { COMPARED_AT_C, PLAIN_SPONGE, thermalProperties } from '../compute/bake/index.ts';
import { quantiseRatio } from '../domain/quantise.ts';
import type { BakeWords } from '../wording/bake/index.ts';
import { formatFixed, formatShare } from '../wording/number.ts';
import type { RecipeBakes } from './recipe-bakes.ts';

const MM2_PER_M2 = 1e6;

/** A diffusivity in m²/s as mm²/s. */
export const inMm2 = (diffusivityM2PerS: number): number => quantiseRatio(diffusivityM2PerS * MM2_PER_M2);

/** What the recipe's pace amounts to, with rise and steam in it, mm²/s. */
export const fittedMm2 = ({ fit, constants }: RecipeBakes): number =>
  quantiseRatio((constants.alphaM2PerS * MM2_PER_M2) / fit.plain.timeFactor);

/** A sentence each. */
export function makeUpSentences(bakes: RecipeBakes, { guide, classes }: BakeWords): string[] {
  const { makeUp, fit, recipe, recipeClass } = bakes;
  const { water, fat, protein, carbohydrate } = makeUp.shares;
  const [own, plain] = [makeUp.shares, PLAIN_SPONGE].map((shares) =>
    formatFixed(inMm2(thermalProperties(shares, COMPARED_AT_C).diffusivityM2PerS), 3),
  );
  const logged = fit.plain.bakes > 0;
  return [
    guide.makeUpShares(formatShare(water), formatShare(fat), formatShare(protein), formatShare(carbohydrate)),
    guide.makeUpPace(own ?? '', plain ?? '', formatShare(makeUp.timeFactor)),
    logged
      ? guide.makeUpLogged(
          formatFixed(fittedMm2(bakes), 2),
          formatShare(fit.plain.timeFactor),
          fit.plain.bakes,
        )
      : guide.makeUpClass(classes[recipeClass.id], formatShare(recipeClass.timeFactor)),
    recipe.bakeStart === 'composition' ? guide.makeUpUsed : guide.makeUpUnused,
    guide.makeUpLimits,
  ];
}
