/**
 * Dummy tiers: covered like cake, and light. Weight = volume × 0.025 g/mL + what is on it; polystyrene for cakes
 * weighs 15 to 30 kg a cubic metre: common practice, no source.
 */
import type { DummyTier, Order } from '../../domain/order.ts';
import { quantiseG } from '../../domain/quantise.ts';
import type { Tin } from '../../domain/tin.ts';
import { volumeMl } from '../shapes/index.ts';
import type { OrderContent } from './order-content.ts';
import type { PlannedDummy } from './planned-order.types.ts';
import { finishedTier } from './tier-finishes.ts';

const FOAM_G_PER_ML = 0.025;

/** A dummy's own id within its order: 'dummy-1' at the bottom. */
export const dummyId = (at: number): string => `dummy-${at + 1}`;

function plannedDummy(ask: DummyTier, at: number, { finishes, finishing }: OrderContent): PlannedDummy {
  const tin: Tin = { ...ask.form, id: dummyId(at), name: dummyId(at), owned: 0, unit: ask.unit };
  const cake = { tin, count: 1, layers: 1, heightMm: ask.form.depthMm };
  const covered = finishedTier(ask, cake, finishes, finishing);
  const onItG = covered.finishes.reduce((sum, { amount }) => sum + amount.neededG, 0);
  return { at, ask, tin, ...covered, weightGEach: quantiseG(volumeMl(ask.form) * FOAM_G_PER_ML + onItG) };
}

/** All dummies of an order, bottom first. */
export const plannedDummies = ({ dummies = [] }: Order, content: OrderContent): PlannedDummy[] =>
  dummies.map((ask, at) => plannedDummy(ask, at, content));
