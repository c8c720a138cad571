import type { EggPart, EggSize } from './egg.ts';
import type { Role } from './ingredient.ts';
import type { TinCount } from './tin.ts';

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
  suits?: string;
  /** Left out: the class that the method usually belongs to. */
  bakeClass?: BakeClass;
}
