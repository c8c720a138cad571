/** Oven loads as plans: every tin in its place on its shelf, and when to look at it. */

import { outlineBounds, settleOutline, transformOutline } from '../../compute/outline/index.ts';
import { tinOutline } from '../../compute/shapes/index.ts';
import type { OvenLoad, TinInOven } from '../../compute/timeline/plan.types.ts';
import { PLAIN_OVEN } from '../../domain/kitchen.ts';
import type { Outline } from '../../domain/outline.ts';
import { bakeWordsFor } from '../../wording/bake/index.ts';
import { listInWords } from '../../wording/list.ts';
import { formatNumber } from '../../wording/number.ts';
import { dialTextsOf } from '../bake-figures.ts';
import { aidText, hotCoreCaution, type OvenAids, workedMinutes } from '../oven-figures.ts';
import { loadsText } from './bound-texts.ts';
import { clockText, dayOf, dayText } from './local-clock.ts';
import type { LookRow, OvenLoadView, OvenPlanView, ShelfView } from './timetable.types.ts';
import { type TimetableInput, type TimetableSource, timetableSource } from './timetable-input.ts';

const QUARTER_TURN = Math.PI / 2;

/** The rim where the tin stands, mm from the front left corner of its shelf; null without a known outline. */
export function standingOutline({ tin, turned, xMm, yMm }: TinInOven): Outline | null {
  const outline = tinOutline(tin);
  if (outline === null) return null;
  const aligned = transformOutline(outline, { turn: turned ? QUARTER_TURN : 0 });
  const { minX, maxX, minY, maxY } = outlineBounds(aligned);
  return settleOutline(
    transformOutline(aligned, { dx: xMm - (minX + maxX) / 2, dy: yMm - (minY + maxY) / 2 }),
  );
}

function shelfView(load: OvenLoad, shelf: number, source: TimetableSource): ShelfView {
  const { words, room } = source;
  const { shelves, widthMm, depthMm } = room.work.ovenRoom;
  const name = words.shelf(shelf, shelves);
  const tins = load.tins.flatMap((tin, at) => {
    if (tin.shelf !== shelf) return [];
    const middle = { xMm: tin.xMm, yMm: tin.yMm };
    return [{ number: at + 1, name: tin.tin.name, outline: standingOutline(tin), middle }];
  });
  const names = tins.map((tin) => `${tin.number} ${tin.name}`);
  const said = names.length === 0 ? words.shelfEmpty : listInWords(names, words.and);
  return { name, widthMm, depthMm, tins, alt: words.shelfAlt(name, said) };
}

function aidsOf({ orderId, tierId }: TinInOven, { tierOf }: TimetableSource): OvenAids {
  const tier = tierOf(orderId, tierId);
  return tier !== undefined && 'tin' in tier ? tier : {};
}

function lookRows(load: OvenLoad, source: TimetableSource): LookRow[] {
  const { words, room, work } = source;
  const clock = (minute: number): string => clockText(room.calendar, minute, words);
  const several = work.orders.length > 1;
  return load.tins.map((tin, at) => ({
    number: at + 1,
    name: tin.tin.name,
    forText: several ? (work.orders.find(({ id }) => id === tin.orderId)?.reference ?? '') : '',
    shelfText: words.shelf(tin.shelf, room.work.ovenRoom.shelves),
    aidText: aidText(aidsOf(tin, source), source.kitchen.locale),
    firstLook: clock(tin.firstLook),
    likely: clock(tin.expected),
    by: clock(tin.by),
    firstLookMinutes: workedMinutes(tin.bake.firstLook),
    likelyMinutes: workedMinutes(tin.bake.expected),
    byMinutes: workedMinutes(tin.bake.by),
  }));
}

function loadView(load: OvenLoad, source: TimetableSource): OvenLoadView {
  const { words, room, kitchen, plan } = source;
  const oven = kitchen.oven ?? PLAIN_OVEN;
  const { set, others } = dialTextsOf(load.ovenC, oven, bakeWordsFor(kitchen.locale));
  const day = dayOf(room.calendar, load.from);
  const clock = (minute: number): string => clockText(room.calendar, minute, words);
  const lastBy = Math.max(...load.tins.map(({ by }) => by));
  const on = plan.steps.find(({ kind, loadId }) => kind === 'oven-on' && loadId === load.id);
  const shelves = Array.from({ length: room.work.ovenRoom.shelves }, (_, shelf) => shelf);
  return {
    id: load.id,
    name: words.load(source.loadNumber(load.id)),
    dial: set,
    dialOthers: others,
    whenText: words.when(day ? dayText(day, words) : '', clock(load.from), clock(lastBy)),
    heatNote: on ? words.heatCold(clock(on.from)) : words.heatHot,
    shelvesNote: new Set(load.tins.map(({ shelf }) => shelf)).size > 1 ? words.shelves(oven.fan) : '',
    minutes: workedMinutes(lastBy - load.from),
    // As the oven is seen: the upper shelf first. A shelf nobody uses is not drawn.
    shelves: shelves
      .reverse()
      .map((shelf) => shelfView(load, shelf, source))
      .filter(({ tins }) => tins.length > 0),
    looks: lookRows(load, source),
  };
}

/** The oven plan of one order or of a week: the loads that bake for it. */
export function ovenPlanView(input: TimetableInput): OvenPlanView {
  const source = timetableSource(input);
  const { words, room, kitchen, plan, orders } = source;
  const loads = plan.loads.filter(({ tins }) =>
    tins.some(({ orderId }) => orders.some(({ id }) => id === orderId)),
  );
  const baked = loads.flatMap(({ tins }) => tins.map((tin) => aidsOf(tin, source)));
  const { airGapMm, wallGapMm, widthMm, depthMm } = room.work.ovenRoom;
  const mm = (value: number): string => formatNumber(value, 0);
  return {
    id: input.id,
    title: words.planTitle(input.title),
    kitchenName: kitchen.name,
    edition: kitchen.edition,
    lead: words.planLead,
    loadsText: loadsText(source),
    gapText: words.gaps(mm(airGapMm), mm(wallGapMm), mm(widthMm), mm(depthMm)),
    loads: loads.map((load) => loadView(load, source)),
    doneTests: bakeWordsFor(kitchen.locale).doneTests,
    cautions: [{ code: 'hot-tins', text: words.cautions.hot }, ...hotCoreCaution(baked, kitchen.locale)],
  };
}
