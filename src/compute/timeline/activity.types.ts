/**
 * Work as the scheduler moves it about: rigid pieces at fixed distances from a start, with loose ends (turning
 * out) that follow as soon as hands are free. Minutes.
 */
import type { Minute } from '../../domain/calendar.ts';
import type { StepKind, TierRef } from './plan.types.ts';

/** What a step is about. */
export interface Subject {
  orderIds: string[];
  tiers: TierRef[];
  bowlfulId: string | null;
  share: number;
  loadId: string | null;
  finishId: string | null;
}

export interface Waiting {
  kind: StepKind;
  minutes: number;
}

export interface Part {
  kind: StepKind;
  subject: Subject;
  offset: number;
  minutes: number;
  /** Takes a pair of hands all the time. */
  handsOn: boolean;
  mixer: boolean;
  /** Only in working hours. */
  awake: boolean;
  /** What has to pass after it, shown as a step of its own. */
  waits: Waiting[];
}

/** A loose end: hands-on, some time after a rigid part, but not much later. */
export interface Tail {
  kind: StepKind;
  subject: Subject;
  /** Offset of the instant it counts from. */
  after: number;
  waitMin: number;
  /** How much longer than that it may wait. */
  patienceMin: number;
  minutes: number;
  waits: Waiting[];
}

/** Tins of one kind, kept busy from an offset to the end of the last of some tails. */
export interface Hold {
  tinId: string;
  count: number;
  from: number;
  untilTails: number[];
}

/** What has to begin later: so many minutes after the whole, or after one of its tails. */
export interface Next {
  activity: number;
  tail: number | null;
  waitMin: number;
}

export interface Activity {
  id: number;
  parts: Part[];
  tails: Tail[];
  holds: Hold[];
  /** Offsets between which the oven is taken, recovery included. */
  oven: { from: number; to: number } | null;
  /** End of the last rigid part. */
  minutes: number;
  next: Next[];
  /** The whole of it must be over by then. */
  deadline: Minute;
}

/** Where an activity has been put. */
export interface Placed {
  start: Minute;
  /** Starts of its tails. */
  tails: Minute[];
}
