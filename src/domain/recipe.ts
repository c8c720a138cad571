import type { EggPart, EggSize } from './egg.ts';
import type { Role } from './ingredient.ts';
import type { Tin, TinCount } from './tin.ts';

/** One weighed (or, for eggs, counted) line of a formula. Eggs are shelled grams here. */
export interface FormulaLine {
  ingredientId: string;
  name: string;
  grams: number;
  role: Role;
  fine: boolean;
  eggPart?: EggPart;
  /** Share of its own weight in liquid that a dry ingredient takes up: cocoa 0.75. */
  drinks?: number;
}

/** What goes into the bowl, in the order it is written. */
export type Formula = FormulaLine[];

/** These tins, this finished height, this much batter, and it worked. */
export interface ProvenBake {
  tins: TinCount[];
  finishedHeightMm: number;
  batterG: number;
  /** ISO date, when the baker noted it. */
  date?: string;
  note?: string;
}

export type MixingMethod = 'creamed' | 'all-in-one' | 'whisked' | 'oil' | 'melted' | 'rich fruit' | 'angel';
export const MIXING_METHODS: readonly MixingMethod[] = [
  'creamed',
  'all-in-one',
  'whisked',
  'oil',
  'melted',
  'rich fruit',
  'angel',
];

/** How a cake takes the heat, when its method does not say it well enough. */
export type BakeClass = 'sponge' | 'very light' | 'dense butter' | 'dense chocolate' | 'rich fruit';
export const BAKE_CLASSES: readonly BakeClass[] = [
  'sponge',
  'very light',
  'dense butter',
  'dense chocolate',
  'rich fruit',
];

/** Where the time factor starts before anything is logged: from the kind of cake, or from the batter's make-up. */
export type BakeStart = 'class' | 'composition';
export const BAKE_STARTS: readonly BakeStart[] = ['class', 'composition'];

/** A bake of the log that tells how far the batter goes: plain recipe, no core, its height measured. */
export interface LoggedFill {
  date: string;
  tin: Tin;
  count: number;
  finishedHeightMm: number;
  /** In all tins together. */
  batterG: number;
}

/** One tin's batter and the cake that came of it, g. */
export interface Weighing {
  batterG: number;
  massOutG: number;
}

/** Base formula, method and proven bakes. */
export interface Recipe {
  id: string;
  name: string;
  summary: string;
  method: MixingMethod;
  formula: Formula;
  /** The size that counted eggs in the recipe were written for. */
  eggSize: EggSize;
  provenBakes: ProvenBake[];
  /** Finished (baked) height that this recipe is made to, mm. */
  finishedHeightMm: number;
  /** How far a finished cake may stand above the rim, mm. */
  allowedRiseMm: number;
  /** Raw batter, g/mL. */
  rawDensityGPerMl: number;
  /** Whether the raw density was weighed by the baker or taken from the method's default. */
  rawDensitySource: 'own' | 'method';
  /** Conventional oven temperature, °C, as the recipe is written. */
  ovenC: number;
  /** The Markdown method, as written. */
  methodMarkdown: string;
  /** Layers the finished cake is usually cut into. */
  layers: number;
  /** Cut off the top of every bake to make it level, mm; left out: nothing. */
  levelMm?: number;
  suits?: string;
  /** Left out: the class that the method usually belongs to. */
  bakeClass?: BakeClass;
  /** Share of the batter that leaves as steam, by the baker's own weighing; left out: the method's usual. */
  bakingLossShare?: number;
  /** Days that the plain cake keeps; left out: the method's usual. */
  keepsDays?: number;
  /** Left out: from the class. */
  bakeStart?: BakeStart;
  /** The oven it is baked in; the main one when left out. */
  ovenId?: string;
  /** Temperature of its batter when it goes in, °C; the kitchen's when left out. */
  batterC?: number;
  /** Bakes of the log that its yield rests on besides the proven ones; absent while there are too few. */
  loggedFills?: LoggedFill[];
  /** Cakes of this recipe that the log has weighed; absent while there are none. */
  weighings?: Weighing[];
}
