/** Where a mix takes several bowlfuls: what each is for, and their sums. What a tin gets when the mix is short. */
import type { LoadTin, Mix, MixLoad, MixTin } from '../compute/mixes/mix.types.ts';
import { computed, given, type StepParts } from './working-numbers.ts';

function askTerm(share: LoadTin, filled: MixTin): { inputs: StepParts['inputs']; text: string } {
  const each = computed(filled.batterGEach, 'g');
  if (share.ofParts === undefined) {
    const count = computed(share.count, 'count');
    const inputs: StepParts['inputs'] = [
      ['count', count],
      ['batter-each', each],
    ];
    return { inputs, text: `${count.text} × ${each.text}` };
  }
  const of = computed(share.ofParts, 'count');
  const parts = computed(share.parts ?? 1, 'count');
  const inputs: StepParts['inputs'] = [
    ['batter-each', each],
    ['count', parts],
    ['parts', of],
  ];
  return { inputs, text: `${each.text} × ${parts.text} ÷ ${of.text}` };
}

/** What the tins filled from one bowlful ask for. */
export function loadAsksStep(load: MixLoad, mix: Mix, prefix: string): StepParts {
  const terms = load.tins.flatMap((share) => {
    const filled = mix.tins[share.tin];
    return filled === undefined ? [] : [askTerm(share, filled)];
  });
  return {
    id: `${prefix}asks`,
    kind: 'load-asks',
    inputs: terms.flatMap(({ inputs }) => inputs),
    operation: terms.map(({ text }) => text).join(' + '),
    output: ['asked', computed(load.askedG, 'g')],
  };
}

interface Sum {
  id: string;
  kind: StepParts['kind'];
  of?: string;
  label: StepParts['output'][0];
  unit: 'g' | 'count';
  values: number[];
  total: number;
}

function sumStep({ id, kind, of, label, unit, values, total }: Sum): StepParts {
  const terms = values.map((value): StepParts['output'] => [label, given(value, unit)]);
  return {
    id,
    kind,
    ...(of === undefined ? {} : { of }),
    inputs: terms,
    operation: terms.map(([, { text }]) => text).join(' + '),
    output: [label, given(total, unit)],
  };
}

function surplusSum(mix: Mix): StepParts {
  const [batter, asked] = [given(mix.batterG, 'g'), computed(mix.askedG, 'g')];
  return {
    id: 'surplus',
    kind: 'surplus',
    inputs: [
      ['batter', batter],
      ['asked', asked],
    ],
    operation: `${batter.text} − ${asked.text}`,
    output: ['surplus', computed(mix.surplusG, 'g')],
  };
}

/** Sums over several bowlfuls: eggs, every ingredient, batter and surplus. */
export function totalSteps(mix: Mix): StepParts[] {
  if (mix.loads.length < 2) return [];
  const eggs = (mix.eggs?.parts ?? []).map((part): Sum => {
    const values = mix.loads.map(
      (load) => load.eggs?.parts.find(({ ingredientId }) => ingredientId === part.ingredientId)?.whole ?? 0,
    );
    return {
      id: `total-${part.ingredientId}-eggs`,
      kind: 'total-eggs',
      label: 'whole',
      unit: 'count',
      values,
      total: part.whole,
    };
  });
  const lines = mix.lines.map((line, at): Sum => {
    const values = mix.loads.map((load) => load.lines[at]?.grams ?? 0);
    const label = { own: line.name };
    return {
      id: line.ingredientId,
      kind: 'total-ingredient',
      of: line.name,
      label,
      unit: 'g',
      values,
      total: line.grams,
    };
  });
  const values = mix.loads.map((load) => load.batterG);
  const batter: Sum = {
    id: 'batter',
    kind: 'batter',
    label: 'batter',
    unit: 'g',
    values,
    total: mix.batterG,
  };
  return [...eggs, ...lines, batter].map(sumStep).concat(surplusSum(mix));
}

/** What one tin gets of a bowlful that falls short; nothing to say otherwise, or where bowlfuls differ. */
export function receivedSteps(mix: Mix, filled: MixTin): StepParts[] {
  if (mix.loads.length > 1 || mix.surplusG >= 0) return [];
  const [each, batter, asked] = [
    computed(filled.batterGEach, 'g'),
    given(mix.batterG, 'g'),
    computed(mix.askedG, 'g'),
  ];
  return [
    {
      id: 'received',
      kind: 'received',
      inputs: [
        ['batter-each', each],
        ['batter', batter],
        ['asked', asked],
      ],
      operation: `${each.text} × ${batter.text} ÷ ${asked.text}`,
      output: ['batter-each', computed(filled.receivesG, 'g')],
    },
  ];
}
