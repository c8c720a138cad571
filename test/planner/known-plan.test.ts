import { expect, it } from 'vitest';
import { knownPlan } from '../../src/planner/known-plan.ts';
import { planFrom } from '../../src/planner/plan-state.ts';
import { demoContent } from '../samples/demo.ts';

it('plans without what the kitchen does not have, and names it', async () => {
  const content = await demoContent();
  const recipe = content.recipes[0]?.id ?? '';
  const finish = `${content.finishes[0]?.id}--coat`;
  const flavour = content.flavours[0]?.id ?? '';
  const sent = planFrom(
    `#recipe=lost-cake&flavours=${flavour},moonlight&finishes=${finish},stardust--coat&tins=1xround-6`,
    'g',
  );
  const { state, unknown } = knownPlan(sent, content);
  expect(unknown).toEqual(['lost-cake', 'moonlight', 'stardust']);
  expect(state).toMatchObject({ recipeId: '', flavourIds: [flavour], finishes: [finish], tins: sent.tins });

  const own = { ...sent, recipeId: recipe, flavourIds: [flavour], finishes: [finish] };
  expect(knownPlan(own, content)).toEqual({ state: own, unknown: [] });
  expect(knownPlan(own, content).state).toBe(own);
});
