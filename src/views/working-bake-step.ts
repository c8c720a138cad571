/** How a step of the oven's working is put together from its parts and the words of the locale. */
import { quantiseRatio } from '../domain/quantise.ts';
import type { BakeLabel, BakeStepKind, BakeWorkingWords } from '../wording/bake/index.ts';
import { formatFixed } from '../wording/number.ts';
import type { Figure } from './figure.ts';
import type { WorkingStep } from './working.types.ts';
import { given, labelled } from './working-numbers.ts';

/** A label of the locale's, or a name that is the same everywhere: an ingredient. */
export type OwnLabel = BakeLabel | { own: string };

export interface BakeStepParts {
  kind: BakeStepKind;
  /** Its name on the page where the kind's will not do. */
  id?: string;
  /** Sets steps of one kind apart: '2', 'water'. */
  key?: string;
  /** Stands before the title: a bake, a component. */
  of?: string;
  inputs: [OwnLabel, Figure][];
  operation: string;
  output: [OwnLabel, Figure];
  /** Said after the rule. */
  more?: string;
}

export const minutes = (value: number): Figure => ({ value, unit: 'min', text: formatFixed(value, 3) });
export const variance = (value: number): Figure => ({ value, unit: 'ratio', text: formatFixed(value, 9) });
export const ratio = (value: number): Figure => given(quantiseRatio(value), 'ratio');

/** The step; its id is 'bake-' and its kind, with the key behind it. */
export function bakeStep({ steps, labels }: BakeWorkingWords, parts: BakeStepParts): WorkingStep {
  const { kind, id = kind, key, of, inputs, operation, output, more } = parts;
  const { title, rule, source } = steps[kind];
  const named = ([label, figure]: [OwnLabel, Figure]) =>
    labelled(typeof label === 'string' ? labels[label] : label.own, figure);
  return {
    id: key === undefined ? `bake-${id}` : `bake-${id}-${key}`,
    title: of === undefined ? title : `${of}: ${title}`,
    inputs: inputs.map(named),
    operation,
    output: named(output),
    rule: more === undefined ? rule : `${rule} ${more}`,
    source,
  };
}
