/** The derivation behind every printed figure of one chart: one page per chart, one anchor per row. */
import type { Figure } from './figure.ts';

export interface WorkingInput {
  label: string;
  figure: Figure;
  /** With its unit, as shown: '0.431 g/mL'. */
  text: string;
}

export interface WorkingStep {
  id: string;
  title: string;
  inputs: WorkingInput[];
  /** Arithmetic with the shown numbers: '0.4312 × 1 389.9'. Operators + − × ÷ ( ) π √ ^ and round, up, min, max. */
  operation: string;
  output: WorkingInput;
  /** The rule in words. */
  rule: string;
  /** Title, issuer, year, section; or 'common practice, no source'; or 'this kitchen'. */
  source: string;
}

export interface WorkingRow {
  anchor: string;
  title: string;
  steps: WorkingStep[];
}

export interface WorkingView {
  chartId: string;
  title: string;
  /** Steps that all rows share: yield density, the mean egg. */
  shared: WorkingStep[];
  rows: WorkingRow[];
}
