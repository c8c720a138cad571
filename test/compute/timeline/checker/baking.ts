/** Batter and oven: everything mixed once, nothing standing too long, every tin in its place for its time. */
import type { OvenLoad } from '../../../../src/compute/timeline/plan.types.ts';
import { apartMm, standingRim } from '../../oven/rims.ts';
import { type Asked, must, stepsOf } from './needed-steps.ts';

export function batterFaults({ work, room, plan }: Asked): string[] {
  const { times } = room;
  return work.bowlfuls.flatMap((bowlful) => {
    const mixes = stepsOf(plan, 'mix', ({ bowlfulId }) => bowlfulId === bowlful.id);
    const mixed = mixes.reduce((sum, { share }) => sum + share, 0);
    return [
      ...must(Math.abs(mixed - 1) < 1e-9, `mixed: ${bowlful.id} to ${mixed}`),
      ...mixes.flatMap((mix) => {
        const mine = (step: { bowlfulId: string | null; loadId: string | null }) =>
          step.bowlfulId === bowlful.id && step.loadId === mix.loadId;
        const [weighed] = stepsOf(plan, 'weigh-out', mine);
        const [filled] = stepsOf(plan, 'fill-tins', mine);
        const washed = stepsOf(plan, 'wash-bowl', mine);
        const load = plan.loads.find(({ id }) => id === mix.loadId);
        const [door] = stepsOf(plan, 'oven-in', ({ loadId }) => loadId === mix.loadId);
        if (!weighed || !filled || !load || !door) return [`missing: ${bowlful.id} around ${mix.id}`];
        const tins = filled.tiers.reduce((sum, { count }) => sum + count, 0);
        const soaked = bowlful.tins.every(({ orderId, tierId }) =>
          plan.loads.some(({ tins: inOven }) =>
            inOven.some((tin) => tin.orderId === orderId && tin.tierId === tierId),
          ),
        );
        return [
          ...must(soaked, `not baked: ${bowlful.id}`),
          ...must(
            weighed.to - weighed.from === times.weighOutMin + times.lineTinMin * tins,
            `lasts: ${weighed.id}`,
          ),
          ...must(mix.to - mix.from === times.mixMin[bowlful.method], `lasts: ${mix.id}`),
          ...must(filled.to - filled.from === times.fillTinMin * tins, `lasts: ${filled.id}`),
          ...must(
            washed.length === 1 &&
              washed.every(({ from, to }) => from >= mix.to && to - from === times.washBowlMin),
            `washed: ${mix.id}`,
          ),
          ...must(mix.from - weighed.to >= times.softenMin, `early: ${mix.id}`),
          ...must(filled.from >= mix.to, `early: ${filled.id}`),
          ...must(door.from >= filled.to && door.to - door.from === times.ovenDoorMin, `early: ${door.id}`),
          ...must(load.from === door.to, `door: ${load.id}`),
          ...must(
            door.from - filled.to <= room.work.batterStandsMin[bowlful.method] &&
              (!bowlful.actsAtOnce || door.from - filled.to <= room.work.batterStandsMin.bicarbonate),
            `stands: ${bowlful.id}`,
          ),
        ];
      }),
    ];
  });
}

/** Every cake of every tier baked once, at its heat, for its minutes. */
export function bakeFaults({ work, room, plan }: Asked): string[] {
  return work.orders.flatMap((order) =>
    order.tiers.flatMap((tier) => {
      const mine = plan.loads.flatMap((load) =>
        load.tins
          .filter((tin) => tin.orderId === order.id && tin.tierId === tier.id)
          .map((tin) => ({ load, tin })),
      );
      return [
        ...must(mine.length === tier.count, `baked: ${order.id} ${tier.id} ${mine.length} of ${tier.count}`),
        ...mine.flatMap(({ load, tin }) => {
          const name = `${load.id} ${order.id} ${tier.id}`;
          const outs = stepsOf(
            plan,
            'oven-out',
            (step) =>
              step.loadId === load.id &&
              step.tiers.some((each) => each.orderId === order.id && each.tierId === tier.id),
          );
          const [out] = outs;
          const stays = out === undefined ? -1 : out.from - load.from;
          return [
            ...must(
              outs.length === 1 &&
                stays >= tier.bake.expected &&
                stays <= tier.bake.by + room.times.ovenDoorMin,
              `bake: ${name}`,
            ),
            ...must(out !== undefined && out.to <= load.to, `load-end: ${name}`),
            ...must(load.ovenC === tier.ovenC, `heat: ${name}`),
            ...must(tin.tin.id === tier.tin.id, `tin: ${name}`),
            ...must(
              tin.firstLook === load.from + tier.bake.firstLook &&
                tin.by === load.from + tier.bake.by &&
                tin.expected === load.from + tier.bake.expected,
              `look: ${name}`,
            ),
          ];
        }),
      ];
    }),
  );
}

const SLACK_MM = 0.01;

/** Distances between true outlines; slow, so asked of some plans only. */
export function placeFaults({ plan, room }: Asked): string[] {
  return plan.loads.flatMap((load) => loadFaults(load, room.work.ovenRoom));
}

function loadFaults(load: OvenLoad, oven: Asked['room']['work']['ovenRoom']): string[] {
  return load.tins.flatMap((one, at) => {
    if (one.tin.shape.kind === 'measured')
      return must(
        load.tins.every((other) => other === one || other.shelf !== one.shelf),
        `air: ${load.id} ${at}`,
      );
    const rim = standingRim(one.tin, { x: one.xMm, y: one.yMm, turned: one.turned }, 0.2);
    const walls = rim.map(({ x, y }) => Math.min(x, y, oven.widthMm - x, oven.depthMm - y));
    const others = load.tins
      .slice(at + 1)
      .filter(({ shelf, tin }) => shelf === one.shelf && tin.shape.kind !== 'measured');
    return [
      ...must(one.shelf >= 0 && one.shelf < oven.shelves, `shelf: ${load.id} ${at}`),
      ...must(Math.min(...walls) >= oven.wallGapMm - SLACK_MM, `wall: ${load.id} ${at}`),
      ...others.flatMap((other) => {
        const far = standingRim(other.tin, { x: other.xMm, y: other.yMm, turned: other.turned }, 0.2);
        return must(
          Math.min(apartMm(rim, far), apartMm(far, rim)) >= oven.airGapMm - SLACK_MM,
          `air: ${load.id} ${at}`,
        );
      }),
    ];
  });
}
