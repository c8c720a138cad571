/** One recipe in the oven: how long in which tin, what the log holds, and what it still lacks. */
import type { Caution, Named } from './figure.ts';
import type { Plot } from './plot/plot.types.ts';

export interface LoggedBakeText {
  date: string;
  tin: string;
  dial: string;
  /** 'hollow core', 'insulated band', 'skewer': whatever was noted of how. */
  how: string;
  took: string;
  expected: string;
  batter: string;
  notes: string;
}

export interface BakeGuideView {
  /** The recipe's id. */
  id: string;
  title: string;
  kitchenName: string;
  edition: string;
  recipe: Named;
  chartPath: string;
  /** The tin the recipe was proven in first, told before all else; null where it cannot be baked in. */
  answerText: string | null;
  basisText: string;
  factorText: string;
  /** Which oven, and how warm the batter goes in. */
  settingText: string;
  lead: string;
  doneTests: string;
  plots: Plot[];
  /** Beneath the pictures: what they leave out. */
  pictureNote: string;
  log: LoggedBakeText[];
  /** Stands in for the log while there is none. */
  logEmpty: string;
  /** A sentence for each bake that disagrees with the rest. */
  odd: string[];
  oddHint: string;
  /** Bakes that would teach most; null once the log knows enough. */
  ask: { lead: string; bakes: string[]; promise: string } | null;
  /** Yield, water and oven as the log has them. */
  fromLog: string[];
  /** What the batter's make-up would say of its time, a sentence each; and where that is worked out. */
  makeUp: { sentences: string[]; workingPath: string };
  cautions: Caution[];
}
