/** Volumes of tins whose walls slope or curve, as arithmetic. */
import { quantiseMm } from '../domain/quantise.ts';
import type { LabelKey, StepKind } from '../wording/working-words.ts';
import type { Figure } from './figure.ts';
import { computed, type StepParts } from './working-numbers.ts';
import { type Inputs, length, type ShapeOf, type SlopingSolid } from './working-solid.ts';

interface Widening {
  kind: StepKind;
  label: LabelKey;
  baseLabel: LabelKey;
  rimMm: number;
  baseMm: number;
}

interface Widened {
  step: StepParts;
  at: Figure;
  base: Figure;
}

/** The step from base and rim to the width at a height. */
function widened(wall: Widening, height: Figure, depth: Figure, prefix: string): Widened {
  const rim = length(wall.rimMm);
  const base = length(wall.baseMm);
  const at = computed(
    quantiseMm(wall.baseMm + ((wall.rimMm - wall.baseMm) * height.value) / depth.value),
    'mm',
  );
  const step: StepParts = {
    id: `${prefix}${wall.kind}`,
    kind: wall.kind,
    inputs: [
      [wall.label, rim],
      [wall.baseLabel, base],
      ['height', height],
      ['depth', depth],
    ],
    operation: `${base.text} + (${rim.text} − ${base.text}) × ${height.text} ÷ ${depth.text}`,
    output: [wall.label, at],
  };
  return { step, at, base };
}

const coneText = (base: Figure, at: Figure, height: Figure): string =>
  `π × ${height.text} ÷ 12 × (${base.text}^2 + ${base.text} × ${at.text} + ${at.text}^2)`;

const prismText = (base: [Figure, Figure], at: [Figure, Figure], height: Figure): string => {
  const middle = [0, 1].map((side) => `((${base[side]?.text} + ${at[side]?.text}) ÷ 2)`).join(' × ');
  const [b, a] = [base, at].map((ends) => ends.map(({ text }) => text).join(' × '));
  return `${height.text} ÷ 6 × (${a} + 4 × ${middle} + ${b})`;
};

/** A round tin that narrows to the base. */
export function taperedRound({ acrossMm, baseAcrossMm = acrossMm }: ShapeOf<'round'>): SlopingSolid {
  const rim = length(acrossMm);
  return {
    kind: 'sloping',
    rimInputs: [['across', rim]],
    rimAreaText: `π × ${rim.text}^2 ÷ 4`,
    fill: (height, depth, prefix) => {
      const wall = {
        rimMm: acrossMm,
        baseMm: baseAcrossMm,
        label: 'across',
        baseLabel: 'base-across',
      } as const;
      const { step, at, base } = widened({ ...wall, kind: 'width-at-height' }, height, depth, prefix);
      const inputs: Inputs = [
        ['base-across', base],
        ['across', at],
        ['height', height],
      ];
      return { before: [step], inputs, mm3Text: coneText(base, at, height) };
    },
  };
}

/** A square tin that narrows to the base. */
export function taperedSquare({ sideMm, baseSideMm = sideMm }: ShapeOf<'square'>): SlopingSolid {
  const rim = length(sideMm);
  return {
    kind: 'sloping',
    rimInputs: [['side', rim]],
    rimAreaText: `${rim.text}^2`,
    fill: (height, depth, prefix) => {
      const wall = { rimMm: sideMm, baseMm: baseSideMm, label: 'side', baseLabel: 'base-width' } as const;
      const { step, at, base } = widened({ ...wall, kind: 'width-at-height' }, height, depth, prefix);
      const inputs: Inputs = [
        ['base-width', base],
        ['side', at],
        ['height', height],
      ];
      return { before: [step], inputs, mm3Text: prismText([base, base], [at, at], height) };
    },
  };
}

/** A loaf tin. */
export function loafSolid(loaf: ShapeOf<'loaf'>): SlopingSolid {
  const [l, w] = [length(loaf.lengthMm), length(loaf.widthMm)];
  const long = { kind: 'length-at-height', label: 'length', baseLabel: 'base-length' } as const;
  const wide = { kind: 'width-at-height', label: 'width', baseLabel: 'base-width' } as const;
  return {
    kind: 'sloping',
    rimInputs: [
      ['length', l],
      ['width', w],
    ],
    rimAreaText: `${l.text} × ${w.text}`,
    fill: (height, depth, prefix) => {
      const along = widened(
        { ...long, rimMm: loaf.lengthMm, baseMm: loaf.baseLengthMm },
        height,
        depth,
        prefix,
      );
      const across = widened(
        { ...wide, rimMm: loaf.widthMm, baseMm: loaf.baseWidthMm },
        height,
        depth,
        prefix,
      );
      const inputs: Inputs = [
        ['base-length', along.base],
        ['base-width', across.base],
        ['length', along.at],
        ['width', across.at],
        ['height', height],
      ];
      const mm3Text = prismText([along.base, across.base], [along.at, across.at], height);
      return { before: [along.step, across.step], inputs, mm3Text };
    },
  };
}

/** A ring tin with sloping walls: the outside less the tube. */
export function taperedRing(ring: ShapeOf<'ring'>): SlopingSolid {
  const { acrossMm, tubeMm, baseAcrossMm = acrossMm, baseTubeMm = tubeMm } = ring;
  const [rim, tube] = [length(acrossMm), length(tubeMm)];
  const outer = { kind: 'width-at-height', label: 'across', baseLabel: 'base-across' } as const;
  const inner = { kind: 'tube-at-height', label: 'tube', baseLabel: 'base-tube' } as const;
  return {
    kind: 'sloping',
    rimInputs: [
      ['across', rim],
      ['tube', tube],
    ],
    rimAreaText: `π × (${rim.text}^2 − ${tube.text}^2) ÷ 4`,
    fill: (height, depth, prefix) => {
      const wall = widened({ ...outer, rimMm: acrossMm, baseMm: baseAcrossMm }, height, depth, prefix);
      const core = widened({ ...inner, rimMm: tubeMm, baseMm: baseTubeMm }, height, depth, prefix);
      const inputs: Inputs = [
        ['base-across', wall.base],
        ['across', wall.at],
        ['base-tube', core.base],
        ['tube', core.at],
        ['height', height],
      ];
      const mm3Text = `${coneText(wall.base, wall.at, height)} − ${coneText(core.base, core.at, height)}`;
      return { before: [wall.step, core.step], inputs, mm3Text };
    },
  };
}

/** A dome, rim up. */
export function domeSolid({ acrossMm }: ShapeOf<'dome'>): SlopingSolid {
  const rim = length(acrossMm);
  return {
    kind: 'sloping',
    rimInputs: [['across', rim]],
    rimAreaText: `π × ${rim.text}^2 ÷ 4`,
    fill: (height, depth, prefix) => {
      const radiusMm = ((acrossMm / 2) ** 2 + depth.value ** 2) / (2 * depth.value);
      const sphere = computed(quantiseMm(radiusMm), 'mm');
      const step: StepParts = {
        id: `${prefix}sphere`,
        kind: 'sphere',
        inputs: [
          ['across', rim],
          ['depth', depth],
        ],
        operation: `((${rim.text} ÷ 2)^2 + ${depth.text}^2) ÷ (2 × ${depth.text})`,
        output: ['sphere', sphere],
      };
      const inputs: Inputs = [
        ['sphere', sphere],
        ['height', height],
      ];
      return {
        before: [step],
        inputs,
        mm3Text: `π × ${height.text}^2 × (3 × ${sphere.text} − ${height.text}) ÷ 3`,
      };
    },
  };
}
