/** From the oven to the hand-over: everything done, in its order, with its waiting, and in time. */
import type { Step } from '../../../../src/compute/timeline/plan.types.ts';
import type { DummyWork, OrderWork, TierWork } from '../../../../src/compute/timeline/work.ts';
import { type Asked, boreMin, isFor, must, orderWork, stepsOf, tierWork } from './needed-steps.ts';

const DAY = 1440;

/** A cold cake is not left bare while one pair of hands has time to wrap it; judged where there is one pair. */
function bareFaults(wrapped: Step, cooled: number, { plan, room }: Asked): string[] {
  if (room.work.hands > 1) return [];
  const minutes = wrapped.to - wrapped.from;
  const busy = plan.steps.filter(({ handsOn, id }) => handsOn && id !== wrapped.id);
  for (let at = Math.ceil(cooled / 5) * 5; at < wrapped.from; at += 5) {
    const isAwake = room.calendar.days.some(
      ({ workFromMinute, workToMinute }) => workFromMinute <= at && at + minutes <= workToMinute,
    );
    if (isAwake && busy.every(({ from, to }) => to <= at || from >= at + minutes))
      return [`bare: ${wrapped.id} might be wrapped ${wrapped.from - at} min sooner`];
  }
  return [];
}

/** When all cakes of a tier may first be worked on; null with faults when they never may. */
function restedAt(order: OrderWork, tier: TierWork, asked: Asked): { at: number; faults: string[] } {
  const { plan, room } = asked;
  const { times } = room;
  const loads = plan.loads.filter(({ tins }) =>
    tins.some((tin) => tin.orderId === order.id && tin.tierId === tier.id),
  );
  const parts = loads.map((load) => {
    const here = (step: Step) => step.loadId === load.id && isFor(order, tier)(step);
    const count = load.tins.filter((tin) => tin.orderId === order.id && tin.tierId === tier.id).length;
    const [out] = stepsOf(plan, 'oven-out', here);
    const [turned] = stepsOf(plan, 'turn-out', here);
    const [wrapped] = stepsOf(plan, 'wrap', here);
    const name = `${load.id} ${order.id} ${tier.id}`;
    if (!out || !turned) return { at: 0, faults: [`missing: turn-out ${name}`] };
    const faults = [
      ...must(
        turned.from - out.to >= times.coolInTinMin[tier.method] ||
          (tier.small !== undefined && turned.from - out.to >= times.coolSmallMin),
        `early: ${turned.id}`,
      ),
      ...must(turned.to - turned.from === times.turnOutMin * count, `lasts: ${turned.id}`),
    ];
    const cooled = turned.to + (tier.small ? times.coolSmallMin : times.coolMin[tier.method]);
    // Small cakes are topped or boxed as soon as they are cold.
    if (tier.small || times.restMin[tier.method] === 0) return { at: cooled, faults };
    if (!wrapped) return { at: 0, faults: [...faults, `missing: wrap ${name}`] };
    faults.push(
      ...must(wrapped.from >= cooled, `early: ${wrapped.id}`),
      ...must(wrapped.to - wrapped.from === times.wrapMin * count, `lasts: ${wrapped.id}`),
      ...bareFaults(wrapped, cooled, asked),
    );
    return { at: wrapped.to + times.restMin[tier.method], faults };
  });
  return { at: Math.max(...parts.map(({ at }) => at)), faults: parts.flatMap(({ faults }) => faults) };
}

/** From when a finish can be used; made once for the order. */
function readyAt(
  order: OrderWork,
  finishId: string,
  { plan, room }: Asked,
): { at: number; faults: string[] } {
  const finish = [...order.tiers, ...(order.dummies ?? [])]
    .flatMap(({ finishes }) => finishes)
    .find((each) => each.finish.id === finishId)?.finish;
  const makeMin = finish === undefined ? 0 : room.times.makeMin[finish.kind];
  if (finish === undefined || makeMin === 0) return { at: 0, faults: [] };
  const made = stepsOf(
    plan,
    'make-finish',
    (step) => step.finishId === finishId && step.orderIds.includes(order.id),
  );
  const [make] = made;
  if (make === undefined || made.length > 1)
    return { at: 0, faults: [`made: ${order.id} ${finishId} ${made.length} times`] };
  const age = order.handOver - make.from;
  const warned = plan.warnings.some(({ code }) => code === 'finish-too-old');
  return {
    at: make.to + room.times.standsMin[finish.kind],
    faults: [
      ...must(make.to - make.from === makeMin, `lasts: ${make.id}`),
      ...must(age <= finish.keepsDays * DAY || warned, `old: ${make.id}`),
    ],
  };
}

/** Everything put in, round and on a tier from an instant on; a dummy is there from the start. */
function coverFaults(
  order: OrderWork,
  tier: DummyWork,
  rested: { at: number; faults: string[] },
  asked: Asked,
): { at: number; faults: string[] } {
  const { plan, room } = asked;
  const inside = tier.finishes
    .filter(({ use }) => use === 'filling' || use === 'brushed')
    .map(({ finish }) => finish.id);
  if (tier.dam !== undefined) inside.push(tier.dam);
  const faults = [...rested.faults];
  let at = rested.at;
  for (const { kind, minutes, wait, finishId } of tierWork(tier, room.times)) {
    const found = stepsOf(plan, kind, (step) => isFor(order, tier)(step) && step.finishId === finishId);
    const [step] = found;
    if (step === undefined || found.length > 1) {
      faults.push(`missing: ${kind} ${order.id} ${tier.id}, found ${found.length}`);
      continue;
    }
    const needs = (kind === 'build' ? inside : [finishId ?? '']).map((id) => readyAt(order, id, asked));
    faults.push(
      ...needs.flatMap((need) => need.faults),
      ...must(step.from >= Math.max(at, ...needs.map((need) => need.at)), `early: ${step.id}`),
      ...must(step.to - step.from === minutes, `lasts: ${step.id}`),
    );
    at = step.to + wait;
  }
  return { at, faults };
}

function tierFaults(order: OrderWork, tier: TierWork, asked: Asked): { at: number; faults: string[] } {
  const { plan, room } = asked;
  const { at, faults } = coverFaults(order, tier, restedAt(order, tier, asked), asked);
  // The recipe's own word goes before what the kitchen says of its method.
  const keepsMin = tier.keepsDays === undefined ? room.times.cakeKeepsMin[tier.method] : tier.keepsDays * DAY;
  const baked = plan.loads
    .filter(({ tins }) => tins.some((tin) => tin.orderId === order.id && tin.tierId === tier.id))
    .map(({ from }) => from);
  const warned = plan.warnings.some(({ code }) => code === 'cake-too-old');
  faults.push(
    ...must(
      order.handOver - Math.min(...baked) <=
        (tier.small ? Math.min(keepsMin, room.times.smallKeepsMin) : keepsMin) || warned,
      `old: ${order.id} ${tier.id}`,
    ),
  );
  return { at, faults };
}

export function orderFaults(asked: Asked): string[] {
  const { work, room, plan } = asked;
  return work.orders.flatMap((order) => {
    const ready = { at: Number.NEGATIVE_INFINITY, faults: [] };
    const tiers = [
      ...order.tiers.map((tier) => tierFaults(order, tier, asked)),
      ...(order.dummies ?? []).map((dummy) => coverFaults(order, dummy, ready, asked)),
    ];
    const faults = tiers.flatMap((tier) => tier.faults);
    let at = Math.max(...tiers.map((tier) => tier.at));
    for (const { kind, minutes, wait } of orderWork(order, room.times)) {
      const found = stepsOf(plan, kind, (step) => step.orderIds.includes(order.id));
      const [step] = found;
      if (step === undefined || found.length > 1) {
        faults.push(`missing: ${kind} ${order.id}, found ${found.length}`);
        continue;
      }
      faults.push(
        ...must(step.from >= at, `early: ${step.id}`),
        ...must(step.to - step.from === minutes, `lasts: ${step.id}`),
      );
      at = step.to + wait;
    }
    return [
      ...faults,
      ...must(at <= order.handOver, `late: ${order.id} by ${at - order.handOver}`),
      ...homeFaults(order, at, asked),
      ...boreFaults(order, asked),
      ...coldFaults(order, asked),
      ...glazeFaults(order, asked),
    ];
  });
}

/** Cards and dummies are bored before any tier of the stack is put on its card. */
function boreFaults(order: OrderWork, { plan, room }: Asked): string[] {
  const minutes = boreMin(order, room.times);
  const [bored, ...more] = stepsOf(plan, 'bore-holes', ({ orderIds }) => orderIds.includes(order.id));
  if (minutes === 0) return must(bored === undefined, `bored: ${order.id}`);
  if (bored === undefined || more.length > 0) return [`missing: bore-holes ${order.id}`];
  const beside = new Set(order.tiers.filter(({ apart }) => apart).map(({ id }) => id));
  const later = plan.steps.filter(
    ({ kind, tiers }) =>
      ['build', 'crumb-coat', 'final-coat', 'pour', 'cover', 'cut-supports'].includes(kind) &&
      tiers.some(({ orderId, tierId }) => orderId === order.id && !beside.has(tierId)),
  );
  return [
    ...must(bored.to - bored.from === minutes, `lasts: ${bored.id}`),
    ...must(bored.to <= Math.min(...later.map(({ from }) => from)), `early: before ${bored.id}`),
  ];
}

const CHILLED = new Set(['buttercream', 'ganache', 'cream', 'curd']);

/** After its last coat, what is soft stands cold and what would sweat stands dry, and is told so. */
function coldFaults(order: OrderWork, { plan, room }: Asked): string[] {
  return [...order.tiers, ...(order.dummies ?? [])].flatMap((tier) =>
    tier.finishes
      .filter(({ use, finish }) => use === 'coating' && CHILLED.has(finish.kind))
      .flatMap(({ finish }) => {
        const of = (step: Step) => isFor(order, tier)(step) && step.finishId === finish.id;
        const [coated] = stepsOf(plan, 'final-coat', of);
        const [cold] = stepsOf(plan, 'coat-chills', of);
        const next = plan.steps.filter(
          ({ kind, orderIds }) =>
            ['cut-supports', 'stack', 'pack'].includes(kind) && orderIds.includes(order.id),
        );
        return [
          ...must(
            cold !== undefined &&
              coated !== undefined &&
              cold.from === coated.to &&
              cold.to - cold.from === room.times.coatSetsMin,
            `chilled: ${order.id} ${tier.id}`,
          ),
          ...must(
            next.every(({ from }) => from >= (cold?.to ?? 0)),
            `early: soft ${order.id} ${tier.id}`,
          ),
        ];
      }),
  );
}

/** A glaze that is still running is neither moved nor stacked on: it sets where it stands, and is told so. */
function glazeFaults(order: OrderWork, { plan, room }: Asked): string[] {
  return [...order.tiers, ...(order.dummies ?? [])].flatMap((tier) =>
    tier.finishes
      .filter(({ use, finish }) => use === 'coating' && finish.kind === 'poured glaze')
      .flatMap(({ finish }) => {
        const of = (step: Step) => isFor(order, tier)(step) && step.finishId === finish.id;
        const [poured, ...again] = stepsOf(plan, 'pour', of);
        // What spoils out of the fridge is not left out of it for two hours, whatever that does to the shine.
        const spoils = tier.finishes.some((each) => each.finish.chilled && each.finish.kind !== 'syrup');
        const [sets] = stepsOf(plan, spoils ? 'coat-chills' : 'glaze-sets', of);
        return must(
          again.length === 0 &&
            poured !== undefined &&
            sets !== undefined &&
            sets.from === poured.to &&
            sets.to - sets.from === room.times.glazeSetsMin,
          `glaze: ${order.id} ${tier.id}`,
        );
      }),
  );
}

/** Whoever took a cake somewhere has to come back: as long as the way there, once all is done at the place. */
function homeFaults(order: OrderWork, doneAt: number, { plan, room }: Asked): string[] {
  const found = stepsOf(plan, 'drive-back', ({ orderIds }) => orderIds.includes(order.id));
  const [home] = found;
  if (found.length !== (order.place === 'collected' ? 0 : 1))
    return [`missing: drive-back ${order.id}, found ${found.length}`];
  if (home === undefined) return [];
  return [
    ...must(home.from >= doneAt, `early: ${home.id}`),
    ...must(home.to - home.from === room.times.deliverMin, `lasts: ${home.id}`),
  ];
}

/** One shopping trip before anything is weighed or made. */
export function shopFaults({ plan, room }: Asked): string[] {
  const [shop, ...more] = stepsOf(plan, 'shop');
  if (shop === undefined || more.length > 0) return ['missing: one shopping trip'];
  const first = plan.steps
    .filter(({ kind }) => kind === 'weigh-out' || kind === 'make-finish')
    .map(({ from }) => from);
  return [
    ...must(shop.to - shop.from === room.times.shopMin, 'lasts: shop'),
    ...must(shop.to <= Math.min(...first), 'early: before the shopping'),
  ];
}
