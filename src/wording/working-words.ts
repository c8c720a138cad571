/** Words of the working: a title, a rule and a source for each kind of step, and what its numbers are called. */

export interface StepWords {
  title: string;
  rule: string;
  source: string;
}

export type StepKind =
  | 'finished-height'
  | 'asked-height'
  | 'width-at-height'
  | 'tube-at-height'
  | 'length-at-height'
  | 'across-flats'
  | 'side'
  | 'sphere'
  | 'volume'
  | 'volume-to-rim'
  | 'volume-above-rim'
  | 'formula-volume'
  | 'water-volume'
  | 'bake-volume'
  | 'bake-density'
  | 'density'
  | 'proven-squares'
  | 'density-log'
  | 'growth'
  | 'egg-mass'
  | 'egg-part-mass'
  | 'batter-each'
  | 'batter-all'
  | 'raw-volume'
  | 'raw-fill'
  | 'raw-fill-checked'
  | 'load-asks'
  | 'scale'
  | 'eggs-exact'
  | 'eggs-nearest'
  | 'eggs-off'
  | 'eggs-up'
  | 'eggs-weighed'
  | 'eggs-following'
  | 'eggs-grams'
  | 'factor'
  | 'ingredient-exact'
  | 'ingredient-rounded'
  | 'batter'
  | 'surplus'
  | 'received'
  | 'total-eggs'
  | 'total-ingredient';

export type LabelKey =
  | 'across'
  | 'base-across'
  | 'tube'
  | 'base-tube'
  | 'length'
  | 'width'
  | 'base-length'
  | 'base-width'
  | 'height'
  | 'depth'
  | 'petals'
  | 'cotangent'
  | 'side'
  | 'flats'
  | 'slant'
  | 'sphere'
  | 'area'
  | 'water'
  | 'volume'
  | 'volume-to-rim'
  | 'formula-volume'
  | 'raw-volume'
  | 'raw-density'
  | 'density'
  | 'squares'
  | 'weight'
  | 'batter'
  | 'batter-each'
  | 'asked'
  | 'formula'
  | 'scale'
  | 'growth'
  | 'exact'
  | 'whole'
  | 'deviation'
  | 'factor'
  | 'step'
  | 'rounded'
  | 'recipe-height'
  | 'rise'
  | 'count'
  | 'parts'
  | 'surplus'
  | 'egg'
  | 'part-share'
  | 'in-formula';

export interface WorkingWords {
  title: (chart: string) => string;
  rowTitle: (tin: string, size: string) => string;
  /** Before the step titles of a load, where there are several. */
  load: (number: number) => string;
  bake: (number: number) => string;
  loggedBake: (number: number) => string;
  steps: Record<StepKind, StepWords>;
  labels: Record<LabelKey, string>;
  eggWeighed: string;
}
