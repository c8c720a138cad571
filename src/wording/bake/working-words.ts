/** Words of the working behind bake times: a title, a rule and a source for each step, and what numbers are called. */
export interface BakeStepWords {
  title: string;
  rule: string;
  source: string;
}

export type BakeStepKind =
  | 'factor'
  | 'factor-none'
  | 'factor-core'
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
  | 'told';

export interface BakeWorkingWords {
  steps: Record<BakeStepKind, BakeStepWords>;
  labels: Record<BakeLabel, string>;
  /** Put before a rule where bakes of the log moved it. */
  fromLog: (bakes: string) => string;
}
