/** The tin chart's sentences in British English. */
import type { ChartWords } from '../words.ts';

export const enGBChart: ChartWords = {
  title: (recipe, flavours) => [recipe, ...flavours].join(', '),
  summaryWithEggs: (eggs, rest, batter, tin) =>
    `${eggs} and ${rest} g of everything else make ${batter} g of batter, enough for ‘${tin}’.`,
  summaryWithoutEggs: (batter, tin) => `${batter} g of batter, made without egg ingredients, fills ‘${tin}’.`,
  countOfTin: (count, tin) => (count === 1 ? tin : `${count} × ${tin}`),
  noFill: 'too little for any tin on the shelf',
  basisOne: (tins, height, batter) =>
    `Worked out from one proven bake: ${batter} g of batter in ${tins}, ${height} high when baked.`,
  basisMany: (count, spread) =>
    `Worked out from ${count} proven bakes taken together; they agree to within ${spread}.`,
  basisLogged: (count, change) =>
    `From your log: ${count} more bakes have joined in, and every weight of batter is ${change} for it.`,
  changed: (share, more) => (share === null ? 'the same' : `${share} ${more ? 'more' : 'less'}`),
  notes: {
    rows: 'Each row is one mix. Where a tin is owned more than once, the next row is for all of them filled from one mix; do not add up two rows, because eggs are made whole for the mix.',
    eggs: (tolerance) =>
      `Eggs go to the nearest whole one while that is within ${tolerance} of the exact count; otherwise up to the next egg, and everything else with it.`,
    eggsWeighed: (tolerance) =>
      `Eggs go to the nearest whole one while that is within ${tolerance} of the exact count; otherwise beat the eggs and weigh them.`,
    grams: (step, fineStep) =>
      `Weights are to ${step} g, raising agents, salt and spices to ${fineStep} g, and finer for small amounts, so that rounding moves nothing by more than 2 %.`,
    ounces:
      'Weights are in ounces, to a tenth, and finer for small amounts, so that rounding moves nothing by more than 2 %.',
    surplus: (caseG) =>
      `What is over is told in fairy cakes of ${caseG} g. What is short is shared between the tins by volume.`,
    fill: 'Raw fill is how deep the batter stands before baking, measured from the base with the top levelled.',
    heights:
      'Finished height is the baked cake before its top is trimmed. A tin too shallow for the recipe is worked out for what it can hold.',
    loads: 'Where a mix is more than the bowl takes at once, eggs are made whole for each bowlful.',
    ladder: 'The egg ladder goes the other way: so many eggs, these weights, and the tins they fill best.',
  },
};
