/** Placed activities as steps in time, with the waiting between them shown, and oven loads with their instants. */
import type { Minute } from '../../domain/calendar.ts';
import type { Activity, Placed, Subject, Waiting } from './activity.types.ts';
import type { Network } from './network.ts';
import { type OvenLoad, STEP_KINDS, type Step, type StepKind } from './plan.types.ts';
import type { WorkRoom } from './work.ts';

type Unnamed = Omit<Step, 'id'>;

function waitingSteps(waits: readonly Waiting[], subject: Subject, from: Minute): Unnamed[] {
  let at = from;
  return waits.map(({ kind, minutes }) => {
    const step = { kind, from: at, to: at + minutes, handsOn: false, mixer: false, ...subject };
    at += minutes;
    return step;
  });
}

function stepsOf(activity: Activity, { start, tails }: Placed): Unnamed[] {
  const rigid = activity.parts.flatMap(({ kind, subject, offset, minutes, handsOn, mixer, waits }) => {
    const [from, to] = [start + offset, start + offset + minutes];
    return [{ kind, from, to, handsOn, mixer, ...subject }, ...waitingSteps(waits, subject, to)];
  });
  const loose = activity.tails.flatMap(({ kind, subject, minutes, waits }, at) => {
    const from = tails[at] ?? start;
    const to = from + minutes;
    return [{ kind, from, to, handsOn: true, mixer: false, ...subject }, ...waitingSteps(waits, subject, to)];
  });
  return [...rigid, ...loose];
}

const rankOf = (kind: StepKind): number => STEP_KINDS.indexOf(kind);

/** The loads with their instants, earliest first and numbered so. */
export function emitLoads({ loads }: Network, placed: readonly Placed[], { times }: WorkRoom): OvenLoad[] {
  let last = Number.NEGATIVE_INFINITY;
  const timed = loads.map(({ load, activity }) => ({
    load,
    from: (placed[activity]?.start ?? 0) + load.inAt,
  }));
  return timed
    .sort((a, b) => a.from - b.from)
    .map(({ load, from }) => {
      const to = from + load.bakedMin;
      const cold = from - last > 2 * times.preheatMin;
      last = to;
      const tins = load.places.map((place) => ({
        ...place,
        firstLook: from + place.bake.firstLook,
        expected: from + place.bake.expected,
        by: from + place.bake.by,
      }));
      return { id: load.id, ovenC: load.ovenC, from, to, cold, tins };
    });
}

/** Every step, earliest first, each with a name of its own; an oven that is still hot is not switched on. */
export function emitSteps(
  { activities }: Network,
  placed: readonly Placed[],
  loads: readonly OvenLoad[],
): Step[] {
  const cold = new Set(loads.filter((load) => load.cold).map(({ id }) => id));
  const all = activities.flatMap((activity) => {
    const place = placed[activity.id];
    return place ? stepsOf(activity, place) : [];
  });
  const shown = all
    .filter(({ kind, loadId }) => kind !== 'oven-on' || (loadId !== null && cold.has(loadId)))
    .map((step, at) => ({ step, at }))
    .sort((a, b) => a.step.from - b.step.from || rankOf(a.step.kind) - rankOf(b.step.kind) || a.at - b.at);
  const counts = new Map<StepKind, number>();
  return shown.map(({ step }) => {
    const count = (counts.get(step.kind) ?? 0) + 1;
    counts.set(step.kind, count);
    return { id: `${step.kind}-${count}`, ...step };
  });
}

/** Loads are named in the order they are baked; steps follow. */
export function renamedLoads(
  steps: readonly Step[],
  loads: readonly OvenLoad[],
): { steps: Step[]; loads: OvenLoad[] } {
  const names = new Map(loads.map(({ id }, at) => [id, `load-${at + 1}`]));
  const nameOf = (id: string): string => names.get(id) ?? id;
  return {
    loads: loads.map((load) => ({ ...load, id: nameOf(load.id) })),
    steps: steps.map((step) => (step.loadId === null ? step : { ...step, loadId: nameOf(step.loadId) })),
  };
}
