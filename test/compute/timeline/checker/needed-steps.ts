/** What has to be done for an order, how long it takes and what has to come before it: written from the trade, not from the planner. */
import type { Step, StepKind, WeekPlan } from '../../../../src/compute/timeline/plan.types.ts';
import type {
  DummyWork,
  OrderWork,
  TierWork,
  Work,
  WorkRoom,
} from '../../../../src/compute/timeline/work.ts';
import type { KitchenTimes } from '../../../../src/domain/times.ts';

export interface Asked {
  work: Work;
  room: WorkRoom;
  plan: WeekPlan;
}

/** Faults of one rule: nothing when it holds. */
export const must = (holds: boolean, fault: string): string[] => (holds ? [] : [fault]);

export const stepsOf = (plan: WeekPlan, kind: StepKind, test: (step: Step) => boolean = () => true): Step[] =>
  plan.steps.filter((step) => step.kind === kind && test(step));

export const isFor = (order: OrderWork, tier: Pick<TierWork, 'id'>) => (step: Step) =>
  step.tiers.some(({ orderId, tierId }) => orderId === order.id && tierId === tier.id);

interface NeededStep {
  kind: StepKind;
  minutes: number;
  wait: number;
  finishId: string | null;
}

/** Supports for each cake that carries another (a dummy carries by itself), and the dowel as one more. */
function cutSupportSets(order: OrderWork, joints: number): number {
  const dummies = new Set(order.dummies?.map(({ id }) => id));
  const carried = order.stack?.slice(0, -1).filter((id) => dummies.has(id)).length ?? 0;
  return joints - carried + (order.dowel ? 1 : 0);
}

/** A card for every tier above the drum, and every dummy, is bored where a dowel goes through. */
export function boreMin(order: OrderWork, times: KitchenTimes): number {
  if (order.arrangement !== 'stacked' || !order.dowel) return 0;
  const dummies = order.dummies?.length ?? 0;
  const cakes = order.tiers
    .filter(({ apart }) => !apart)
    .reduce((sum, { count, bakes = 1 }) => sum + count / bakes, 0);
  const cards = cakes + dummies - 1;
  return cards < 1 ? 0 : (cards + dummies) * times.boreHoleMin;
}

/** Work on a tier after it has cooled, with minutes for all its cakes and the waiting after it. */
export function tierWork(tier: DummyWork, times: KitchenTimes): NeededStep[] {
  const uses = (use: string) => tier.finishes.filter((each) => each.use === use);
  const inside = tier.layers > 1 || uses('filling').length + uses('brushed').length > 0;
  // Every bake is levelled; cut, filled, brushed and covered is the cake that they make together.
  const cakes = tier.count / (tier.bakes ?? 1);
  const buildMin =
    tier.count * times.levelMin +
    cakes * (times.layerMin * tier.layers + (uses('brushed').length > 0 ? times.brushMin : 0));
  const build = {
    kind: 'build' as const,
    minutes: buildMin,
    wait: uses('filling').length > 0 ? times.fillingSettlesMin : 0,
    finishId: null,
  };
  const outside = tier.finishes.flatMap(({ finish, use, oneCoat }): NeededStep[] => {
    const finishId = finish.id;
    const isIcing = finish.kind === 'royal icing';
    // A glaze runs over the cake in one go, is left alone while it sets, and only what must be cold sets in the cold.
    if (use === 'coating' && finish.kind === 'poured glaze')
      return [{ kind: 'pour' as const, minutes: cakes * times.pourMin, wait: times.glazeSetsMin, finishId }];
    if (use === 'coating')
      return [
        // Whipped cream and the like go on in one: there is no first coat to firm.
        ...(oneCoat
          ? []
          : [
              {
                kind: 'crumb-coat' as const,
                minutes: cakes * times.crumbCoatMin,
                wait: isIcing ? times.royalIcingDriesMin : times.chillMin,
                finishId,
              },
            ]),
        {
          kind: 'final-coat' as const,
          minutes: cakes * times.finalCoatMin,
          wait: isIcing ? times.royalIcingDriesMin : times.coatSetsMin,
          finishId,
        },
      ];
    if (use === 'rolled') {
      const iced = uses('coating').some((each) => each.finish.kind === 'royal icing');
      const marzipanMin = iced ? times.marzipanHardensMin : times.marzipanDriesMin;
      const wait = finish.kind === 'marzipan' ? marzipanMin : times.rolledSetsMin;
      return [{ kind: 'cover' as const, minutes: cakes * times.rollOutMin, wait, finishId }];
    }
    // A quarter of an hour, or what the kitchen says, for every twelve pieces; the last minute begun is a whole one.
    if (use === 'topping' && tier.small !== undefined) {
      const minutes = Math.ceil((tier.small.pieces * times.topDozenMin) / 12);
      return [{ kind: 'top' as const, minutes, wait: 0, finishId }];
    }
    return [];
  });
  const cut = {
    kind: 'cut-pieces' as const,
    minutes: Math.ceil((cakes * (tier.cutInto ?? 0) * times.cutDozenMin) / 12),
    wait: 0,
    finishId: null,
  };
  return [...(inside ? [build] : []), ...outside, ...(tier.cutInto ? [cut] : [])];
}

/** Work on a whole order once its cakes are done. */
export function orderWork(
  order: OrderWork,
  times: KitchenTimes,
): { kind: StepKind; minutes: number; wait: number }[] {
  // What stands beside the stack is not set on anything; a dummy is.
  let standing = order.dummies?.length ?? 0;
  let boxes = 0;
  for (const { apart, count, bakes = 1, small } of order.tiers) {
    if (!apart) standing += count / bakes;
    if (small) boxes += Math.ceil(small.pieces / small.box);
  }
  const joints = standing > 0 ? standing - 1 : 0;
  const stacked = order.arrangement === 'stacked' && joints > 0;
  const sets = order.place === 'set up at the venue' || order.place === 'sold at a stall';
  const stackMin = joints * times.stackMin;
  const supportSets = stacked ? cutSupportSets(order, joints) : 0;
  return [
    // At home in any case, and before the tiers are stacked.
    ...(supportSets > 0
      ? [{ kind: 'cut-supports' as const, minutes: supportSets * times.cutSupportsMin, wait: 0 }]
      : []),
    ...(stacked && order.travelsAssembled
      ? [{ kind: 'stack' as const, minutes: stackMin, wait: times.stackSettlesMin }]
      : []),
    { kind: 'pack', minutes: times.packMin + boxes * times.packBoxMin, wait: 0 },
    ...(order.place === 'collected'
      ? []
      : [{ kind: 'deliver' as const, minutes: times.deliverMin, wait: 0 }]),
    ...(sets
      ? [
          {
            kind: 'set-up' as const,
            minutes: times.setUpMin + (stacked && !order.travelsAssembled ? stackMin : 0),
            wait: 0,
          },
        ]
      : []),
  ];
}
