/** One flavour: what it changes, in words and in weights, for every recipe it names. */
import type { Warning } from '../domain/problem.ts';
import type { Caution, Figure, Named } from './figure.ts';

export interface FlavourLine extends Named {
  /** g in the plain recipe as written; null where it is not in it. */
  before: Figure | null;
  /** g in the flavoured formula; null where it has gone. */
  after: Figure | null;
  /** after − before, g. */
  change: Figure;
}

/** What a flavour makes of one recipe. */
export interface FlavourChange {
  recipe: Named;
  /** The flavoured tin chart's id. */
  chartId: string;
  lines: FlavourLine[];
  totalBefore: Figure;
  totalAfter: Figure;
  growth: Figure;
  growthText: string;
  /** Null for recipes without eggs on either side. Counted at the recipe's own size. */
  eggsText: string | null;
  /** Eggs and liquid against flour and cocoa; null for batters that are not judged by it. */
  wetText: string | null;
  allergensAdded: string[];
  allergensLeftOut: string[];
  allergenText: string;
  cautions: Caution[];
  warnings: Warning[];
}

export interface FlavourView extends Named {
  summary: string;
  why: string;
  /** The adjustments in order, a sentence each. */
  steps: string[];
  batterText: string;
  method: string | null;
  /** Batters it may be tried in beyond the recipes it names; '' for none. */
  alsoText: string;
  changes: FlavourChange[];
}
