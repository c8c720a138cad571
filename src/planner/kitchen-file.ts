/**
 * The kitchen of this device as a kitchen.yaml that `build` reads: what this device changed is written anew, all other
 * sections stay as they were written. Lengths of tins are written in the unit the baker named a tin in, so that charts
 * print it first again.
 */
import type { Kitchen } from '../domain/kitchen.ts';
import type { Shape } from '../domain/shape.ts';
import type { Tin } from '../domain/tin.ts';
import { type LengthUnit, MM_PER } from '../domain/units.ts';
import { type KitchenText, kitchenSections } from '../parse/kitchen-sections.ts';
import { idOf } from './order-file.ts';

type Entry = [key: string, value: string];

/** Text that YAML could take for something else is quoted as JSON, which YAML reads too. */
const plain = (text: string): string =>
  /^[A-Za-z][A-Za-z0-9 ’-]*$/.test(text) && !/^(yes|no|on|off|true|false|null|y|n)$/i.test(text)
    ? text
    : JSON.stringify(text);

/** A number without noise of conversion. */
const number = (value: number): string => String(Number(value.toFixed(4)));

const length = (mm: number, unit: LengthUnit): string =>
  unit === 'mm' ? `${number(mm)} mm` : `${number(mm / MM_PER[unit])}${unit === 'in' ? 'in' : ' cm'}`;

function sizes(shape: Shape, unit: LengthUnit): Entry[] {
  const size = (key: string, mm: number | undefined): Entry[] =>
    mm === undefined ? [] : [[key, length(mm, unit)]];
  switch (shape.kind) {
    case 'round':
      return [...size('across', shape.acrossMm), ...size('base_across', shape.baseAcrossMm)];
    case 'square':
      return [...size('side', shape.sideMm), ...size('base_side', shape.baseSideMm)];
    case 'rectangle':
    case 'oval':
      return [...size('length', shape.lengthMm), ...size('width', shape.widthMm)];
    case 'long-octagon':
      return [
        ...size('length', shape.lengthMm),
        ...size('width', shape.widthMm),
        ...size('slant', shape.slantMm),
      ];
    case 'loaf':
      return [
        ...size('length', shape.lengthMm),
        ...size('width', shape.widthMm),
        ...size('base_length', shape.baseLengthMm),
        ...size('base_width', shape.baseWidthMm),
      ];
    case 'hexagon':
    case 'octagon':
    case 'heart':
      return size(shape.measured, shape.acrossMm);
    case 'petal':
      return [['petals', String(shape.petals)], ...size('across', shape.acrossMm)];
    case 'ring':
      return [
        ...size('across', shape.acrossMm),
        ...size('tube', shape.tubeMm),
        ...size('base_across', shape.baseAcrossMm),
        ...size('base_tube', shape.baseTubeMm),
      ];
    case 'dome':
      return size('across', shape.acrossMm);
    case 'outline':
      return [['outline', shape.outlineId], ...size('across', shape.acrossMm)];
    case 'measured':
      return [['volume', `${number(shape.volumeMl)} ml`]];
  }
}

function tinLine(tin: Tin): string {
  const entries: Entry[] = [
    ['id', idOf(tin.id)],
    ['name', plain(tin.name)],
    ['shape', tin.shape.kind],
    ...sizes(tin.shape, tin.unit),
    ['depth', length(tin.depthMm, tin.unit)],
    ['owned', String(tin.owned)],
    ['unit', tin.unit],
    ...(tin.material === undefined ? [] : [['material', plain(tin.material)] as Entry]),
    ...(tin.measuredVolumeMl === undefined
      ? []
      : [['measured_volume', `${number(tin.measuredVolumeMl)} ml`] as Entry]),
    ...(tin.note === undefined ? [] : [['note', JSON.stringify(tin.note)] as Entry]),
  ];
  return `  - { ${entries.map(([key, value]) => `${key}: ${value}`).join(', ')} }`;
}

const share = (value: number): string => `${number(value * 100)} %`;

function eggLines({ egg }: Kitchen): string[] {
  return [
    'eggs:',
    ...(egg.size === null ? [] : [`  size: ${egg.size.scheme} ${egg.size.grade}`]),
    ...(egg.source === 'weighed' ? [`  weighed: ${number(egg.shelledG)} g`] : []),
    `  tolerance: ${share(egg.tolerance)}`,
    `  otherwise: ${egg.otherwise === 'weigh' ? 'weigh' : 'step up'}`,
  ];
}

/** The sections that a device may change, each with the part of the kitchen that it tells and its lines. */
const CHANGED_HERE: Record<string, { part: keyof Kitchen; lines(kitchen: Kitchen): string[] }> = {
  eggs: { part: 'egg', lines: eggLines },
  scale: {
    part: 'scale',
    lines: ({ scale }) => [
      `scale: { step: ${number(scale.stepG)} g, fine_step: ${number(scale.fineStepG)} g }`,
    ],
  },
  mixer: {
    part: 'mixer',
    lines: ({ mixer }) => [
      `mixer: { bowl: ${number(mixer.bowlMl)} ml, max_fill: ${share(mixer.maxFill)}, min_fill: ${share(mixer.minFill)} }`,
    ],
  },
  tins: { part: 'tins', lines: ({ tins }) => ['tins:', ...tins.map(tinLine)] },
};

/** What a kitchen.yaml is saved from. */
export interface SavedFrom {
  /** The published kitchen, or one that was opened, which `text` says. */
  base: Kitchen;
  text: KitchenText;
  /** With this device's settings in place. */
  kitchen: Kitchen;
}

/** The sections of a kitchen.yaml that was opened: nothing of it stays behind. */
export const openedText = (file: string): KitchenText => ({
  sections: kitchenSections(file),
  leftOut: [],
  withoutComments: false,
});

function headLines({ kitchen, text: { leftOut, withoutComments } }: SavedFrom): string[] {
  const drawn = kitchen.tins.some(({ shape }) => shape.kind === 'outline');
  const behind = [...leftOut.map((key) => `${key}:`), ...(withoutComments ? ['the comments'] : [])];
  return [
    '# My kitchen, saved from the planner. Put it in the content folder as kitchen.yaml.',
    ...(drawn ? ['# Tins with an outline need its drawing in outlines/ there too.'] : []),
    ...(behind.length === 0
      ? []
      : [
          `# Not published with the planner, so not in this file: ${behind.join(', ')}.`,
          '# If that kitchen is yours, copy them over from the kitchen.yaml that you have.',
        ]),
  ];
}

/** The text of a kitchen.yaml. Tins from a drawing need that drawing beside it, in outlines/. */
export function kitchenYaml(from: SavedFrom): string {
  const { base, kitchen, text } = from;
  const same = (part: keyof Kitchen): boolean => JSON.stringify(base[part]) === JSON.stringify(kitchen[part]);
  const written = (key: string): string | null => {
    const changed = CHANGED_HERE[key];
    return changed === undefined || same(changed.part) ? null : `${changed.lines(kitchen).join('\n')}\n`;
  };
  const absent = Object.keys(CHANGED_HERE).filter((key) => text.sections.every((one) => one.key !== key));
  return [
    ...headLines(from).map((line) => `${line}\n`),
    ...text.sections.map((section) => written(section.key) ?? section.text),
    ...absent.flatMap((key) => written(key) ?? []),
  ].join('');
}
