/**
 * Numbers of the working. Each is shown once, and the arithmetic is written with the very texts that are
 * shown, so that anybody can follow it with a pocket calculator and meet the result within its last digit.
 */

import { formatFixed, formatNumber } from '../wording/number.ts';
import { uncapitalised } from '../wording/sentence-case.ts';
import type { LabelKey, StepKind } from '../wording/working-words.ts';
import type { Figure, FigureUnit } from './figure.ts';
import type { WorkingInput, WorkingStep } from './working.types.ts';

/** Digits after the point: enough that a step's result meets the next one's. */
const DECIMALS: Record<FigureUnit, number> = {
  mm: 3,
  mm2: 2,
  mL: 2,
  mL2: 1,
  g: 2,
  'g/mL': 6,
  eggs: 4,
  min: 1,
  C: 0,
  F: 0,
  gas: 0,
  share: 5,
  count: 0,
  ratio: 6,
  'W/mK': 5,
  'kg/m3': 2,
  'kJ/kgK': 5,
  'mm2/s': 6,
  kJ: 0,
  kcal: 0,
  mg: 0,
  days: 0,
  minor: 0,
  kWh: 3,
  h: 3,
};

/** Units that are printed behind the number. */
const SUFFIX: Record<FigureUnit, string> = {
  mm: ' mm',
  mm2: ' mm²',
  mL: ' mL',
  mL2: ' mL²',
  g: ' g',
  'g/mL': ' g/mL',
  eggs: '',
  min: ' min',
  C: ' °C',
  F: ' °F',
  gas: '',
  share: '',
  count: '',
  ratio: '',
  'W/mK': ' W/(m·K)',
  'kg/m3': ' kg/m³',
  'kJ/kgK': ' kJ/(kg·K)',
  'mm2/s': ' mm²/s',
  kJ: ' kJ',
  kcal: ' kcal',
  mg: ' mg',
  days: ' days',
  minor: '',
  kWh: ' kWh',
  h: ' h',
};

/** A computed number, its last digit rounded. */
export function computed(value: number, unit: FigureUnit): Figure {
  return {
    value,
    unit,
    text: Number.isInteger(value) ? formatNumber(value, 0) : formatFixed(value, DECIMALS[unit]),
  };
}

/** A number as it was given or weighed: all its digits. */
export const given = (value: number, unit: FigureUnit): Figure => ({
  value,
  unit,
  text: formatNumber(value, 6),
});

/** A labelled number of the working. */
export function labelled(label: string, figure: Figure): WorkingInput {
  return { label, figure, text: `${figure.text}${SUFFIX[figure.unit]}` };
}

/** What a locale says of steps and of their numbers. */
interface StepWords<Kind extends string, Label extends string> {
  steps: Record<Kind, Pick<WorkingStep, 'title' | 'rule' | 'source'>>;
  labels: Record<Label, string>;
}

/** A number's label: one of the words', or a name of the kitchen's own. */
type Labelled<Label> = [Label | { own: string }, Figure];

export interface Parts<Kind extends string, Label extends string> {
  id: string;
  kind: Kind;
  /** Before the kind's own title: an ingredient, a bowlful. */
  of?: string;
  inputs: Labelled<Label>[];
  operation: string;
  output: Labelled<Label>;
}

export type StepParts = Parts<StepKind, LabelKey>;

/** Puts a step together from its parts and the locale's words. */
export function workingStep<Kind extends string, Label extends string>(
  words: StepWords<Kind, Label>,
  parts: Parts<Kind, Label>,
): WorkingStep {
  const { title, rule, source } = words.steps[parts.kind];
  const named = ([label, figure]: Labelled<Label>): WorkingInput =>
    labelled(typeof label === 'string' ? words.labels[label] : label.own, figure);
  return {
    id: parts.id,
    title: parts.of === undefined ? title : `${parts.of}: ${uncapitalised(title)}`,
    inputs: parts.inputs.map(named),
    operation: parts.operation,
    output: named(parts.output),
    rule,
    source,
  };
}
