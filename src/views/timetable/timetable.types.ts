/** The timetable of one order or a week: days of rows to tick, bars to see at a glance, oven loads as plans. */

import type { Outline } from '../../domain/outline.ts';
import type { Warning } from '../../domain/problem.ts';
import type { Caution, Figure } from '../figure.ts';

/** When to look at one kind of cake in a load; clock times of the day it is baked. */
export interface LookRow {
  /** Number on the oven plan. */
  number: number;
  name: string;
  /** Whose it is; empty where there is only one order. */
  forText: string;
  shelfText: string;
  /** 'with the heating core', 'with the insulated band', or ''. */
  aidText: string;
  firstLook: string;
  likely: string;
  by: string;
  /** The same in minutes from the door's closing: what the order sheet says. */
  firstLookMinutes: Figure;
  likelyMinutes: Figure;
  byMinutes: Figure;
}

/** One line of a day: something that is done, or the moment of the hand-over. */
export interface TimetableRow {
  id: string;
  kind: string;
  /** Minutes since 1970-01-01 00:00 UTC, for data and calendars. */
  fromMinute: number;
  toMinute: number;
  from: string;
  to: string;
  minutes: Figure;
  what: string;
  /** What to mind, and what waits until when. */
  notes: string[];
  /** References of the orders it is for: 'R-1042'. */
  forText: string;
  orderIds: string[];
  handsOn: boolean;
  loadId: string | null;
  /** 'Load 2'; null where it has nothing to do with the oven. */
  loadName: string | null;
}

export type BarTone = 'hands' | 'heat' | 'waiting';

/** A stretch of a lane, as shares of the day's width. */
export interface Bar {
  from: number;
  to: number;
  tone: BarTone;
  /** 'Mix, 14:55 to 15:15'. */
  text: string;
}

export interface Lane {
  name: string;
  bars: Bar[];
}

export interface DayBars {
  /** Hours along the top. */
  ticks: { at: number; text: string }[];
  lanes: Lane[];
  /** Read aloud in place of the picture. */
  alt: string;
}

export interface DayView {
  isoDate: string;
  /** 'Thursday 22 October'. */
  title: string;
  /** 'Hands-on 5 h 10 min, from 14:55 to 21:00'. */
  summary: string;
  handsOn: Figure;
  /** When the clock changes that day; null on others. */
  clockNote: string | null;
  rows: TimetableRow[];
  bars: DayBars;
}

/** A tin on a shelf as it is drawn: mm from the front left corner, y to the back. */
export interface ShelfTin {
  number: number;
  name: string;
  outline: Outline | null;
  middle: { xMm: number; yMm: number };
}

export interface ShelfView {
  name: string;
  widthMm: number;
  depthMm: number;
  tins: ShelfTin[];
  alt: string;
}

export interface OvenLoadView {
  id: string;
  name: string;
  /** What this kitchen sets: '140 °C fan', and the same heat elsewhere. */
  dial: string;
  dialOthers: string;
  /** 'Thursday 22 October, in at 17:14, all out by 18:42'. */
  whenText: string;
  heatNote: string;
  /** What to mind where several shelves are in use; '' for one. */
  shelvesNote: string;
  minutes: Figure;
  shelves: ShelfView[];
  looks: LookRow[];
}

export interface OvenPlanView {
  id: string;
  title: string;
  kitchenName: string;
  edition: string;
  lead: string;
  /** How many loads, and whether fewer would do. */
  loadsText: string;
  /** Air between tins and to the walls. */
  gapText: string;
  loads: OvenLoadView[];
  doneTests: string;
  cautions: Caution[];
}

export interface TimetableView {
  /** The order's id, or the week's. */
  id: string;
  title: string;
  kitchenName: string;
  edition: string;
  /** IANA name. */
  zone: string;
  /** When to begin and how much of it is work. */
  lead: string;
  /** How much better a timetable could be. */
  boundText: string;
  loadsText: string;
  handsOn: Figure;
  ovenOn: Figure;
  days: DayView[];
  ovenPlan: OvenPlanView;
  cautions: Caution[];
  warnings: Warning[];
}
