/**
 * How many supports, cards inside and dowels does a stack take, and under which tiers can nobody reckon supports?
 * A tin known only by the water it holds has no width, and so no supports that could be counted.
 */
import { isStacked } from '../../domain/order.ts';
import { quantiseMm } from '../../domain/quantise.ts';
import { cakePlan } from '../finishes/cake-plan.ts';
import type { CakePlan } from '../finishes/plan.ts';
import { isTall, wantsDowel } from '../stacks/stack-plan.ts';
import { supportsUnder } from '../stacks/supports.ts';
import { isDummyPart, type StackPart, stackParts } from './order-stack.ts';
import type { PlannedOrder } from './planned-order.types.ts';

export interface StackPieces {
  supports: number;
  /** Tins whose cakes stand on supports that nobody can count; each once. */
  uncounted: string[];
  /** How wide the cards inside tall tiers are: as the bare cake, mm; null where nobody knows. */
  innerCardsMm: (number | null)[];
  dowels: number;
}

interface Held {
  name: string;
  plan: CakePlan | null;
}

const held = ({ tin }: StackPart): Held => ({ name: tin.name, plan: cakePlan(tin) });

const isTallPart = (part: StackPart): boolean => isTall({ ...part, solid: isDummyPart(part) });

/** Each thing that ends under a card: tiers above, which a dummy holds by itself, and halves of tall ones. */
function heldIn(part: StackPart, above: StackPart | undefined): Held[] {
  if (isDummyPart(part)) return [];
  return [...(isTallPart(part) ? [held(part)] : []), ...(above === undefined ? [] : [held(above)])];
}

const acrossMm = (plan: CakePlan | null): number | null =>
  plan === null ? null : quantiseMm(Math.max(plan.widthMm, plan.heightMm));

/** What the stack of an order takes; nothing where none stands on another. */
export function stackPieces({ order, tiers, dummies }: PlannedOrder): StackPieces {
  const parts = isStacked(order) ? stackParts({ tiers, dummies }) : [];
  const all = parts.flatMap((part, at) => heldIn(part, parts[at + 1]));
  const counts = all.map(({ plan }) => (plan === null ? 0 : supportsUnder(plan).places.length));
  return {
    supports: counts.reduce((sum, count) => sum + count, 0),
    uncounted: [...new Set(all.flatMap(({ plan, name }) => (plan === null ? [name] : [])))],
    innerCardsMm: parts.filter(isTallPart).map((part) => acrossMm(held(part).plan)),
    dowels: wantsDowel(parts.length, order.travelsAssembled) ? 1 : 0,
  };
}
