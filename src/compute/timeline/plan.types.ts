/** A timetable: steps at their times, oven loads with their tins in place, and how good it is known to be. */
import type { Minute } from '../../domain/calendar.ts';
import type { Warning } from '../../domain/problem.ts';
import type { Tin } from '../../domain/tin.ts';
import type { BakeMinutes } from './work.ts';

/** Work, in the order it is usually done; those marked (w) are waiting. */
export const STEP_KINDS = [
  'shop',
  'make-finish',
  'finish-stands', // (w)
  'weigh-out',
  'soften', // (w)
  'oven-on', // (w)
  'mix',
  'fill-tins',
  'wash-bowl',
  'oven-in',
  'bake', // (w)
  'oven-out',
  'cool-in-tin', // (w)
  'turn-out',
  'cool', // (w)
  'wrap',
  'rest', // (w)
  'bore-holes',
  'build',
  'filling-settles', // (w)
  'crumb-coat',
  'chill', // (w)
  'final-coat',
  'coat-chills', // (w)
  'coat-sets', // (w)
  'pour',
  'glaze-sets', // (w)
  'cover',
  'cover-sets', // (w)
  'top',
  'cut-pieces',
  'cut-supports',
  'stack',
  'stack-settles', // (w)
  'pack',
  'deliver',
  'set-up',
  'drive-back',
] as const;

export type StepKind = (typeof STEP_KINDS)[number];

/** Cakes of one tier of one order. */
export interface TierRef {
  orderId: string;
  tierId: string;
  count: number;
}

export interface Step {
  /** Its own within the plan: 'mix-3'. */
  id: string;
  kind: StepKind;
  from: Minute;
  /** Of waiting: when it is long enough. */
  to: Minute;
  /** Someone's hands are at it all the time. */
  handsOn: boolean;
  mixer: boolean;
  orderIds: string[];
  tiers: TierRef[];
  /** Bowlful that is weighed out, mixed or filled from. */
  bowlfulId: string | null;
  /** Share of that bowlful: less than 1 where its tins do not go into the oven at once. */
  share: number;
  loadId: string | null;
  finishId: string | null;
}

/** A tin in the oven. Lengths mm from the front left corner of its shelf to the tin's middle. */
export interface TinInOven {
  tin: Tin;
  orderId: string;
  tierId: string;
  bake: BakeMinutes;
  /** From the bottom, 0 first. */
  shelf: number;
  xMm: number;
  yMm: number;
  turned: boolean;
  /** Earliest look and when it should be out, as instants. */
  firstLook: Minute;
  expected: Minute;
  by: Minute;
}

export interface OvenLoad {
  id: string;
  ovenC: number;
  /** Door closed. */
  from: Minute;
  /** Last tin out. */
  to: Minute;
  /** Whether the oven has to be switched on for it; otherwise it is still hot. */
  cold: boolean;
  tins: TinInOven[];
}

/** How far a plan may be from the best there is. Minutes from the first step to the last hand-over. */
export interface PlanBound {
  spanMin: number;
  /** No timetable of these loads is shorter. */
  leastSpanMin: number;
  /** (span − least) ÷ least. */
  gap: number;
  /** What the bound comes from. */
  from: 'longest chain' | 'hands' | 'mixer' | 'oven';
  loads: number;
  leastLoads: number;
  loadsProven: boolean;
}

/** What to mind in a plan, and whose orders it is about. */
export interface PlanWarning extends Warning {
  orderIds: string[];
}

export interface WeekPlan {
  /** Earliest first; at the same time in the order of the work. */
  steps: Step[];
  loads: OvenLoad[];
  bound: PlanBound;
  warnings: PlanWarning[];
}
