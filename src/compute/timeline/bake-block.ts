/**
 * One oven load as a block of work: bowlful after bowlful mixed, filled and washed up, into the oven without delay,
 * out tin by tin as each is done, and turned out when it has cooled in its tin.
 */

import type { OvenMemory } from '../oven/index.ts';
import { fillShelves, footprintsOf, mixingOrder } from '../oven/index.ts';
import type { Activity, Hold, Part, Subject } from './activity.types.ts';
import { type Batch, type BatchBowlful, type BatchTin, gathered } from './batches.ts';
import { outings, turnings } from './outings.ts';
import type { TinInOven } from './plan.types.ts';
import { bowlfulSubject, isOf, subjectOf } from './subjects.ts';
import type { WorkRoom } from './work.ts';

/** A tin's place; its instants are known once the load has its time. */
export type TinPlace = Omit<TinInOven, 'firstLook' | 'expected' | 'by'>;

export interface Load {
  id: string;
  ovenC: number;
  batches: Batch[];
  /** In the order they are mixed. */
  bowlfuls: BatchBowlful[];
  tins: BatchTin[];
  places: TinPlace[];
  /** Offset of the door closing on the load. */
  inAt: number;
  /** From then until the last tin is out. */
  bakedMin: number;
  /** Offset of each bowlful's mixing. */
  mixAt: number[];
}

export interface BakeBlock {
  load: Load;
  activity: Activity;
  /** For each of the load's tins, the tail that turns it out. */
  tailOf: number[];
}

function placesIn(batches: readonly Batch[], memory: OvenMemory): TinPlace[] {
  const places = fillShelves(footprintsOf(batches.map(({ oven }) => oven)), memory) ?? [];
  const tins = batches.flatMap((batch) =>
    batch.tins.flatMap(({ count, ...tin }) => Array.from({ length: count }, () => tin)),
  );
  return tins.flatMap(({ order, tier }, at) => {
    const place = places[at];
    if (place === undefined) return [];
    const { shelf, turned, x: xMm, y: yMm } = place;
    return [{ tin: tier.tin, orderId: order.id, tierId: tier.id, bake: tier.bake, shelf, xMm, yMm, turned }];
  });
}

const hands = (
  kind: Part['kind'],
  subject: Subject,
  offset: number,
  minutes: number,
  mixer = false,
): Part => ({
  kind,
  subject,
  offset,
  minutes,
  handsOn: true,
  mixer,
  awake: true,
  waits: [],
});

/** Mixing, filling and washing up, one after the other; the last bowl is washed when the oven is shut. */
function mixingParts(bowlfuls: readonly BatchBowlful[], loadId: string, room: WorkRoom) {
  const { times } = room;
  const parts: Part[] = [];
  const mixAt: number[] = [];
  let at = 0;
  const add = (kind: Part['kind'], subject: Subject, minutes: number, mixer: boolean): void => {
    parts.push(hands(kind, subject, at, minutes, mixer));
    at += minutes;
  };
  for (const [index, each] of bowlfuls.entries()) {
    const subject = bowlfulSubject(each, loadId);
    if (index > 0)
      add('wash-bowl', bowlfulSubject(bowlfuls[index - 1] ?? each, loadId), times.washBowlMin, true);
    mixAt.push(at);
    add('mix', subject, times.mixMin[each.bowlful.method], true);
    add('fill-tins', subject, times.fillTinMin * each.tins.reduce((sum, { count }) => sum + count, 0), false);
  }
  return { parts, mixAt, end: at };
}

/** The block of one load. */
export function bakeBlock(
  id: string,
  activityId: number,
  grouped: readonly Batch[],
  memory: OvenMemory,
  room: WorkRoom,
): BakeBlock {
  const { times } = room;
  const order = mixingOrder(grouped.map(({ oven }) => oven)).map((oven) => oven.id);
  const batches = [...grouped].sort((a, b) => order.indexOf(a.oven.id) - order.indexOf(b.oven.id));
  const bowlfuls = batches.flatMap((batch) => batch.bowlfuls);
  const tins = gathered(batches.flatMap((batch) => batch.tins));
  const mixing = mixingParts(bowlfuls, id, room);
  const whole = subjectOf(tins, id);
  const inAt = mixing.end + times.ovenDoorMin;
  const last = bowlfuls.at(-1);
  const outs = outings(tins, times, times.washBowlMin);
  const out: Part[] = outs.map(({ tins: some, at, coolingMin }) => ({
    ...hands('oven-out', subjectOf(some, id), inAt + at, times.ovenDoorMin),
    waits: [{ kind: 'cool-in-tin', minutes: coolingMin }],
  }));
  const bakedMin = (outs.at(-1)?.at ?? 0) + times.ovenDoorMin;
  const heated = (kind: Part['kind'], from: number, minutes: number): Part => ({
    ...hands(kind, whole, from, minutes),
    handsOn: false,
  });
  const parts: Part[] = [
    ...mixing.parts,
    heated('oven-on', mixing.end - times.preheatMin, times.preheatMin),
    hands('oven-in', whole, mixing.end, times.ovenDoorMin),
    heated('bake', inAt, bakedMin),
    ...(last ? [hands('wash-bowl', bowlfulSubject(last, id), inAt, times.washBowlMin, true)] : []),
    ...out,
  ];
  const tails = outs.flatMap((outing) => turnings(outing, id, inAt, room));
  const tailOf = tins.map((tin) =>
    tails.findIndex((tail) => tail.subject.tiers.some((ref) => isOf(ref, tin))),
  );
  const load = {
    id,
    ovenC: tins[0]?.tier.ovenC ?? 0,
    batches,
    bowlfuls,
    tins,
    inAt,
    bakedMin,
    mixAt: mixing.mixAt,
  };
  const oven = { from: inAt - room.work.ovenRoom.recoveryMin, to: inAt + bakedMin };
  return {
    load: { ...load, places: placesIn(batches, memory) },
    tailOf,
    activity: {
      id: activityId,
      parts,
      tails,
      holds: holdsOf(tins, tailOf, mixing.parts),
      oven,
      minutes: inAt + bakedMin,
      next: [],
      deadline: Number.POSITIVE_INFINITY,
    },
  };
}

/** Tins are taken from their first batter until they are turned out and washed, those of a kind together. */
function holdsOf(tins: readonly BatchTin[], tailOf: readonly number[], mixing: readonly Part[]): Hold[] {
  const ids = [...new Set(tins.map(({ tier }) => tier.tin.id))];
  return ids.map((tinId) => {
    const mine = tins
      .map((tin, at) => ({ tin, tail: tailOf[at] ?? 0 }))
      .filter(({ tin }) => tin.tier.tin.id === tinId);
    const fills = mixing.filter(
      ({ kind, subject }) =>
        kind === 'fill-tins' && subject.tiers.some((ref) => mine.some(({ tin }) => isOf(ref, tin))),
    );
    return {
      tinId,
      count: mine.reduce((sum, { tin }) => sum + tin.count, 0),
      from: Math.min(...fills.map(({ offset }) => offset)),
      untilTails: mine.map(({ tail }) => tail),
    };
  });
}
