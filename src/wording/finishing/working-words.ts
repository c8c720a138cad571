/** Words of the working behind fillings and coatings: a title, a rule and a source for each step. */
export interface FinishingStepWords {
  title: string;
  rule: string;
  source: string;
}

export type FinishingStepKind =
  | 'area'
  | 'wall'
  | 'grown-area'
  | 'grown-area-drawn'
  | 'grown-area-sharp'
  | 'grown-wall'
  | 'grown-wall-drawn'
  | 'outside-wall'
  | 'filling-volume'
  | 'dam-volume'
  | 'coat-volume'
  | 'sphere'
  | 'dome-coat-volume'
  | 'glaze-volume'
  | 'dome-glaze-volume'
  | 'sheet-round'
  | 'sheet-wide'
  | 'sheet-long'
  | 'roll-volume'
  | 'sheet-on-cake'
  | 'dome-sheet-on-cake'
  | 'syrup'
  | 'needed'
  | 'made'
  | 'bought'
  | 'part-share'
  | 'coated-across'
  | 'coated-height'
  | 'board'
  | 'box-height'
  | 'ribbon';

export type FinishingLabel =
  | 'across'
  | 'length'
  | 'width'
  | 'area'
  | 'wall'
  | 'thickness'
  | 'grown-area'
  | 'grown-wall'
  | 'glazed-area'
  | 'glazed'
  | 'corners'
  | 'joints'
  | 'dam'
  | 'height'
  | 'volume'
  | 'radius'
  | 'sphere'
  | 'around'
  | 'undercoat'
  | 'trim'
  | 'sheet'
  | 'layers'
  | 'per-face'
  | 'density'
  | 'needed'
  | 'loss'
  | 'made'
  | 'pack'
  | 'bought'
  | 'part'
  | 'parts'
  | 'cooking-loss'
  | 'share'
  | 'coated-across'
  | 'coated-height'
  | 'margin'
  | 'board'
  | 'thick'
  | 'clearance'
  | 'box'
  | 'lap'
  | 'ribbon';

export interface FinishingWorkingWords {
  title: string;
  description: string;
  /** 'At 8 mm' before a step's title: which coat it is about. */
  at: (thickness: string) => string;
  /** The quiet link from a row to its working, and what a screen reader says of it. */
  why: string;
  whyOf: (tin: string) => string;
  steps: Record<FinishingStepKind, FinishingStepWords>;
  labels: Record<FinishingLabel, string>;
}
