/** Words of the working behind bake times: a title, a rule and a source for each step, and what numbers are called. */
/** What a batter is reckoned to be made of. */
export type Component = 'water' | 'protein' | 'fat' | 'carbohydrate' | 'fibre' | 'ash';

export interface BakeStepWords {
  title: string;
  rule: string;
  source: string;
}

export type BakeStepKind =
  | 'factor'
  | 'factor-none'
  | 'factor-core'
  | 'factor-elsewhere'
  | 'factor-make-up'
  | 'batter'
  | 'done'
  | 'to-go'
  | 'bake-neutral'
  | 'bake-expected'
  | 'bake-scatter'
  | 'bake-off'
  | 'bake-weight'
  | 'bake-says'
  | 'steady'
  | 'steady-none'
  | 'doubt-start'
  | 'doubt-core-start'
  | 'doubt'
  | 'doubt-core'
  | 'doubt-size'
  | 'water'
  | 'offset'
  | 'baked'
  | 'make-up-share'
  | 'make-up-density'
  | 'make-up-conductivity'
  | 'make-up-heat'
  | 'make-up-diffusivity'
  | 'make-up-factor'
  | 'make-up-fitted'
  | 'heat'
  | 'series'
  | 'neutral'
  | 'size'
  | 'likely'
  | 'done-scatter'
  | 'spread'
  | 'first-look'
  | 'first-look-told'
  | 'done-by'
  | 'done-by-told';

export type BakeLabel =
  | 'factor'
  | 'heat'
  | 'series'
  | 'tin'
  | 'band'
  | 'core'
  | 'neutral'
  | 'across'
  | 'power'
  | 'size'
  | 'likely'
  | 'variance'
  | 'scatter'
  | 'spread'
  | 'first-look'
  | 'done-by'
  | 'told'
  | 'batter'
  | 'done'
  | 'to-go'
  | 'took'
  | 'scatter-squared'
  | 'off'
  | 'weight'
  | 'steady'
  | 'offset'
  | 'information'
  | 'doubt'
  | 'poured'
  | 'water-loss'
  | 'baked'
  | 'grams'
  | 'share'
  | 'density'
  | 'conductivity'
  | 'heat-capacity'
  | 'diffusivity'
  | 'plain-diffusivity';

export interface BakeWorkingWords {
  steps: Record<BakeStepKind, BakeStepWords>;
  labels: Record<BakeLabel, string>;
  /** Put before a rule where bakes of the log moved it. */
  fromLog: (bakes: string) => string;
  components: Record<Component, string>;
}
