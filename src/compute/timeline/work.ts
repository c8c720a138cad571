/** What is to be made and by when: all that a timetable needs to know of orders. g, °C, min; instants in UTC minutes. */
import type { Calendar, Minute } from '../../domain/calendar.ts';
import type { Finish, FinishUse } from '../../domain/finish.ts';
import type { PlaceKind, SmallCakes } from '../../domain/order.ts';
import type { MixingMethod } from '../../domain/recipe.ts';
import type { KitchenTimes } from '../../domain/times.ts';
import type { Tin } from '../../domain/tin.ts';
import type { WorkSettings } from '../../domain/work-settings.ts';

/** Minutes in the oven: when to look first, when it is likely done, and when it should be out. */
export interface BakeMinutes {
  firstLook: number;
  expected: number;
  by: number;
}

/** One finish on one tier, and how it is used there. */
export interface FinishWork {
  finish: Pick<Finish, 'id' | 'name' | 'kind' | 'keepsDays' | 'chilled'>;
  /** `topping`: on small cakes, one by one. */
  use: keyof FinishUse | 'topping';
  /** Of a coat: it goes on in one, with no first coat under it. Left out: in two. */
  oneCoat?: true;
}

/** Cakes by the piece. */
export interface SmallWork extends Pick<SmallCakes, 'kind' | 'box'> {
  pieces: number;
}

/** Cakes of one kind in an order. */
export interface TierWork {
  /** Its own within the order: `tier-1`. */
  id: string;
  /** 'Ten-inch round, vanilla and orange'. */
  name: string;
  tin: Tin;
  /** Tins that are filled and baked: one for each cake, so many for a tall one, and for small ones as they fit. */
  count: number;
  /** Bakes that make one tall cake; left out: one. */
  bakes?: number;
  recipeId: string;
  method: MixingMethod;
  /** As set on a conventional oven. */
  ovenC: number;
  bake: BakeMinutes;
  /** A heating core stands in each tin; left out: none. */
  core?: true;
  /** An insulated band lies round each tin; left out: none. */
  band?: true;
  layers: number;
  /** How high each of several layers is cut, mm; left out: not told. */
  layerMm?: number;
  /** Days that the cake keeps from the oven, where the recipe says so itself; left out: by its method. */
  keepsDays?: number;
  /** From the inside out. */
  finishes: FinishWork[];
  /** The finish whose bead holds a soft filling in, by id: it is piped first. Left out: none. */
  dam?: FinishWork['finish']['id'];
  /** It stands beside the tiers, never on them. */
  apart?: boolean;
  /** Pieces that each cake is cut into before it is boxed, as its cutting guide says; left out: it goes whole. */
  cutInto?: number;
  /** Set for cakes by the piece. */
  small?: SmallWork;
}

/** A tier that is covered and stacked like cake, and not baked. */
export type DummyWork = Pick<
  TierWork,
  'id' | 'name' | 'count' | 'bakes' | 'layers' | 'layerMm' | 'finishes' | 'dam' | 'small' | 'cutInto'
>;

/** Cakes of a tier, once its bakes are put together. */
export const cakesOf = ({ count, bakes = 1 }: Pick<TierWork, 'count' | 'bakes'>): number => count / bakes;

export interface OrderWork {
  id: string;
  title: string;
  reference: string;
  handOver: Minute;
  place: PlaceKind;
  arrangement: 'stacked' | 'separate';
  travelsAssembled: boolean;
  /** Bottom first where they are stacked. */
  tiers: TierWork[];
  /** Left out: none. */
  dummies?: DummyWork[];
  /** Tiers and dummies by id from the bottom up; left out: tiers, then dummies. */
  stack?: string[];
  /** A dowel goes through the middle of all tiers; left out: none. */
  dowel?: true;
  /** A cake of it is covered, and has a ribbon round its foot. */
  covered?: true;
  /** What goes with it and is not eaten, by name: flowers, a stand. Left out: none. */
  putOn?: string[];
  /** What is hired out and comes back, by name, and the ISO date it is due. Left out: none. */
  hired?: { name: string | null; backBy?: string }[];
}

/** Tins of one tier that are filled from a bowlful. */
export interface FilledTins {
  orderId: string;
  tierId: string;
  /** Tins that this bowlful fills, in whole or in part. */
  count: number;
  /** Batter that goes into them together, g; left out: as much as they would hold. */
  massG?: number;
  /** Set when a tin is too big for one bowlful: equal parts it comes in, and how many of them are here. */
  ofParts?: number;
  parts?: number;
}

/** One bowlful. Tins that are too big for one stand in several, and are baked when all of them are mixed. */
export interface Bowlful {
  /** Its own within the week. */
  id: string;
  /** 'Vanilla, first bowlful'. */
  name: string;
  /** 'Vanilla', however many bowlfuls of it there are; left out: its name. */
  batter?: string;
  /** The same for bowlfuls of one mix. */
  batterKey: string;
  method: MixingMethod;
  /** There is something in it that lifts as soon as it is wet: it may wait only as long as that allows. */
  actsAtOnce: boolean;
  massG: number;
  tins: FilledTins[];
}

/** One order, or all orders of a week, with the mixes they share. */
export interface Work {
  orders: OrderWork[];
  bowlfuls: Bowlful[];
}

/** The kitchen as a timetable needs it. */
export interface WorkRoom {
  work: WorkSettings;
  times: KitchenTimes;
  /** Days from well before the first step to the last hand-over. */
  calendar: Calendar;
  /** Nothing can be started before this: the edition's own day. */
  notBefore?: Minute;
}
