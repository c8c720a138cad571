/**
 * The demo's three tiers from content to stack, worked by hand on paper: heights from boards, layers and coats,
 * weights from the volumes of what is on them. Board, card and densities are the demo's own.
 */
import { beforeAll, describe, expect, it } from 'vitest';
import { type OrderStack, orderStack } from '../../../src/compute/orders/order-stack.ts';
import { planOrder } from '../../../src/compute/orders/plan-order.ts';
import type { PlannedOrder } from '../../../src/compute/orders/planned-order.types.ts';
import { demoContent } from '../../samples/demo.ts';

let planned: PlannedOrder;
let stack: OrderStack;

beforeAll(async () => {
  const content = await demoContent();
  const order = content.orders.find(({ id }) => id === 'three-tiers-for-sixty');
  if (order === undefined) throw new Error('no three tiers');
  // A sponge that loses a tenth in the oven, as its recipe would say, whatever the log has weighed.
  const recipes = content.recipes.map((recipe) => {
    const { weighings: _, ...rest } = recipe;
    return { ...rest, bakingLossShare: 0.1 };
  });
  const plan = planOrder(order, { ...content, recipes, guidance: () => null });
  if (!plan.ok) throw new Error('the order cannot be planned');
  planned = plan.value;
  const found = orderStack(planned, content.finishing);
  if (found === null || found === 'unknown-width') throw new Error('no stack');
  stack = found;
});

const near = (values: readonly number[], digits: number): unknown[] =>
  values.map((value) => expect.closeTo(value, digits));

describe('three tiers on paper', () => {
  it('are 83, 93 and 93 mm high, 287 mm on the table', () => {
    // Sponge 65; two fillings of jam, 3 each, or of buttercream, 8 each: 71, 81, 81.
    expect(planned.tiers.map(({ builtHeightMm }) => builtHeightMm)).toEqual([71, 81, 81]);
    // On top: crumb coat 2, coat 6, sugarpaste 4.
    expect(planned.tiers.map(({ coatedHeightMm }) => coatedHeightMm)).toEqual([83, 93, 93]);
    // Drum 12. 12 + 83 = 95; card 3: 98 + 93 = 191; card 3: 194 + 93 = 287.
    expect(stack.tiers.map(({ footMm, topMm }) => [footMm, topMm])).toEqual([
      [12, 95],
      [98, 191],
      [194, 287],
    ]);
    expect(stack.totalHeightMm).toBe(287);
    // From the drum's top to 25 below the cake's: 287 − 12 − 25.
    expect(stack.dowel?.lengthMm).toBe(250);
    // Supports are as long as the tier they stand in is high.
    expect(stack.tiers.map(({ supports }) => supports?.lengthMm ?? null)).toEqual([83, 93, null]);
  });

  it('reach 12 mm farther than their tins on every side: 278.0, 227.2 and 176.4 mm', () => {
    // 254.0, 203.2 and 152.4 + 2 × (2 + 6 + 4); the drum 278 + 75, up to whole inches: 14 in.
    expect(stack.tiers.map(({ acrossMm }) => acrossMm)).toEqual(near([278, 227.2, 176.4], 3));
    expect(stack.tiers.map(({ board }) => board.acrossMm)).toEqual(near([355.6, 227.2, 176.4], 3));
  });

  it('have batter as the proven bake of two eight-inch tins has it', () => {
    // 1,795 g in two tins: 897.5. For ten and six inches × (10 ÷ 8)² and (6 ÷ 8)²: 1,402 and 505. Half in a hundred.
    for (const [at, grams] of [1402, 897.5, 505].entries()) {
      const receivesG = planned.tiers[at]?.receivesG ?? 0;
      expect(Math.abs(receivesG / grams - 1)).toBeLessThan(0.005);
    }
  });

  it('weigh what is on them and nine tenths of their batter', () => {
    // Volumes in ml: π r² h in mm ÷ 1000; R is the bare cake's radius, h its height with fillings.
    //   dam: a bead 10 across, its middle 5 in from the edge, twice: 2 × π 5² × 2π 122 = 120.41; × 1.05 = 126.43 g
    //   jam within it, twice 3 high: π 117² × 6 = 258.03; × 1.32 = 340.60 g
    //   buttercream between, twice 8 high: π R² × 16; R = 101.6: 518.87, 544.81 g; R = 76.2: 291.86, 306.46 g
    //   coat of 8, top and side: π (R + 8)² (h + 8) − π R² h; 925.56, 731.85, 504.72; × 1.05 = 971.84, 768.44, 529.95 g
    //   sheet of 4 on that: π (R + 8)² × 4 + 2π (R + 8) (h + 8) × 4; 497.06, 396.10, 277.43; × 1.40 = 695.89, 554.55, 388.40 g
    const onIt = [
      126.43 + 340.6 + 971.84 + 695.89, // 2,134.76
      544.81 + 768.44 + 554.55, // 1,867.80
      306.46 + 529.95 + 388.4, // 1,224.81
    ];
    const whole = planned.tiers.map(({ receivesG }, at) => 0.9 * receivesG + (onIt[at] ?? 0));
    const [bottom = 0, middle = 0, top = 0] = whole;
    for (const [at, { weightG }] of stack.tiers.entries())
      expect(Math.abs(weightG - (whole[at] ?? 0))).toBeLessThan(0.05);
    expect(Math.abs(stack.totalWeightG - (bottom + middle + top))).toBeLessThan(0.1);
    // Each tier carries what stands on it: middle and top, top, nothing.
    const carries = stack.tiers.map(({ carriesG }) => carriesG);
    expect(carries[2]).toBeNull();
    expect(Math.abs((carries[0] ?? 0) - middle - top)).toBeLessThan(0.1);
    expect(Math.abs((carries[1] ?? 0) - top)).toBeLessThan(0.05);
  });
});
