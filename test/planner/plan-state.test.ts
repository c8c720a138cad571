import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { ownKitchenFrom } from '../../src/planner/device.ts';
import { kitchenHere, NO_OWN_KITCHEN } from '../../src/planner/own-kitchen.ts';
import { EMPTY_PLAN, type PlanState, planFrom, planText, withTin } from '../../src/planner/plan-state.ts';
import { demoContent } from '../samples/demo.ts';

const id = fc.stringMatching(/^[a-z][a-z0-9]{0,8}(-[a-z0-9]{1,6}){0,2}$/);
const tin = fc.oneof(id, fc.constantFrom('round 7in x 3in', 'petal6 9in x 3in', 'square 150mm x 75mm'));

const state: fc.Arbitrary<PlanState> = fc.record({
  recipeId: fc.oneof(fc.constant(''), id),
  flavourIds: fc.uniqueArray(id, { maxLength: 3 }),
  tins: fc.uniqueArray(fc.record({ tin, count: fc.integer({ min: 1, max: 99 }) }), {
    maxLength: 12,
    selector: (one) => one.tin,
  }),
  height: fc.constantFrom('', '60 mm', '2 1/2in'),
  egg: fc.constantFrom('', 'UK large', '52 g'),
  finishes: fc.uniqueArray(
    id.map((one) => `${one}--filling`),
    { maxLength: 4 },
  ),
  size: fc.constantFrom('dessert' as const, 'finger' as const),
  mass: fc.constantFrom('g' as const, 'oz' as const),
  step: fc.constantFrom(0, 1, 2, 5, 10),
  ask: fc.constant('tins' as const),
  eggs: fc.constant(EMPTY_PLAN.eggs),
  portions: fc.constant(EMPTY_PLAN.portions),
});

describe('the address of a plan', () => {
  it('brings the same plan back', () => {
    fc.assert(
      fc.property(state, (plan) => {
        expect(planFrom(planText(plan))).toEqual(plan);
      }),
    );
    for (const asked of [
      { ...EMPTY_PLAN, ask: 'eggs' as const, eggs: 7 },
      { ...EMPTY_PLAN, ask: 'portions' as const, portions: 60 },
    ])
      expect(planFrom(`#${planText(asked)}`)).toEqual(asked);
  });

  it('takes any text without a fault', () => {
    fc.assert(
      fc.property(fc.string({ maxLength: 200 }), (text) => {
        const plan = planFrom(text);
        expect(plan.tins.every(({ count }) => count >= 1 && count <= 99)).toBe(true);
        expect(Number.isFinite(plan.step) && Number.isFinite(plan.eggs)).toBe(true);
      }),
    );
  });

  it('keeps tins in their order as counts change, and drops what comes to none', () => {
    const two = withTin(withTin(EMPTY_PLAN, 'a', 2), 'b', 1);
    expect(withTin(two, 'a', 3).tins.map((one) => one.tin)).toEqual(['a', 'b']);
    expect(withTin(two, 'a', 0).tins).toEqual([{ tin: 'b', count: 1 }]);
  });
});

describe('a kitchen of one’s own', () => {
  it('takes whatever a device kept, and only what fits', () => {
    fc.assert(
      fc.property(fc.jsonValue(), (kept) => {
        expect(Object.keys(ownKitchenFrom(kept)).sort()).toEqual(Object.keys(NO_OWN_KITCHEN).sort());
      }),
    );
    expect(
      ownKitchenFrom({
        owned: { a: 2, b: -1 },
        tins: [{ description: 'round 7in x 3in', owned: 1 }, 3],
        egg: 7,
      }),
    ).toEqual({
      ...NO_OWN_KITCHEN,
      owned: { a: 2 },
      tins: [{ description: 'round 7in x 3in', owned: 1 }],
    });
  });

  it('lies over the published one: eggs, bowl, scale, what is owned and other tins', async () => {
    const content = await demoContent();
    const own = {
      owned: { 'round-6': 5 },
      tins: [{ description: 'round 7in x 3in', owned: 2 }],
      egg: 'UK large',
      bowl: '6.7 l',
      step: '1 g',
      file: '',
      prices: {},
    };
    const { kitchen, problems } = kitchenHere(content.kitchen, own, content.outlines);
    expect(problems).toEqual([]);
    expect(kitchen.tins.find((one) => one.id === 'round-6')?.owned).toBe(5);
    expect(kitchen.tins.at(-1)).toMatchObject({ id: 'round 7in x 3in', owned: 2, shape: { kind: 'round' } });
    expect(kitchen.mixer.bowlMl).toBe(6700);
    expect(kitchen.scale.stepG).toBe(1);
    expect(kitchen.egg.size).toEqual({ scheme: 'UK', grade: 'large' });
    const wrong = kitchenHere(content.kitchen, { ...own, egg: 'ostrich', bowl: 'big' }, content.outlines);
    expect(wrong.problems).toHaveLength(2);
    expect(wrong.kitchen.egg).toEqual(content.kitchen.egg);
  });
});
