/** British English for plans. */
import type { PlanWords } from './plan-words.ts';

export const enGbPlan: PlanWords = {
  bowl: (number, of) => `Bowl ${number} of ${of}`,
  onlyBowl: 'One bowl',
  partOf: (parts, of, tin) =>
    parts === 1 ? `one of ${of} parts of ${tin}` : `${parts} of ${of} parts of ${tin}`,
  mixTitle: 'The mix',
  unfinished: (tin) => `${tin}: known only by the water it holds, so nobody can say how much goes round it.`,
  perCake: (tin, weight) => `${tin}: ${weight} g`,
  sheet: {
    title: (plan) => `Plan: ${plan}`,
    batter: (weight, unit) => `${weight}\u00a0${unit} of batter`,
    exactly: (eggSize, exact) => `${eggSize}. ${exact} exactly.`,
    weigh: 'Weigh out',
    ingredient: 'Ingredient',
    eggs: (eggs) => `${eggs}, out of the shell`,
    bowlHolds: 'In the bowl',
    fills: (what) => `Fills ${what}.`,
    left: (what) => `Left over: ${what}.`,
    tins: 'Into the tins',
    tin: 'Tin',
    inEach: (unit) => `${unit} in each`,
    stands: 'Raw',
    standsAt: (mm, share) => `${mm}\u00a0mm, ${share}`,
    dial: 'Dial',
    firstLook: 'First look',
    doneBy: 'Done by',
    portions: (portions, each) => (each ? `serves ${portions}` : `Serves ${portions} in all.`),
    finishes: 'Between and around',
    finish: 'Filling or coating',
    buy: (weight, unit) => `buy ${weight}\u00a0${unit}`,
    part: (name, weight, unit, beside) =>
      `${name} ${weight}\u00a0${unit}${beside === null ? '' : ` (${beside})`}`,
    toTick: 'to tick',
    code: 'This plan',
    check: 'Check',
  },
};
