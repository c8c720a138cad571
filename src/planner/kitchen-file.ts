/**
 * The kitchen of this device as a kitchen.yaml that `build` reads, and back. Lengths are written in the unit the
 * baker named a tin in, so that charts print it first again.
 */
import type { Kitchen, OvenSetting } from '../domain/kitchen.ts';
import type { Shape } from '../domain/shape.ts';
import type { Tin } from '../domain/tin.ts';
import { type LengthUnit, MM_PER } from '../domain/units.ts';
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
      return [['outline', shape.outlineId]];
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

function ovenLine({ name, fan, dial, core, band }: OvenSetting): string {
  const named = name === undefined ? '' : `name: ${JSON.stringify(name)}, `;
  return `oven: { ${named}heat: ${fan ? 'fan' : 'conventional'}, dial: ${dial}, core: ${core}, band: ${band} }`;
}

function eggLines({ egg }: Kitchen): string[] {
  return [
    'eggs:',
    ...(egg.size === null ? [] : [`  size: ${egg.size.scheme} ${egg.size.grade}`]),
    ...(egg.source === 'weighed' ? [`  weighed: ${number(egg.shelledG)} g`] : []),
    `  tolerance: ${share(egg.tolerance)}`,
    `  otherwise: ${egg.otherwise === 'weigh' ? 'weigh' : 'step up'}`,
  ];
}

/** The text of a kitchen.yaml. Tins from a drawing need that drawing beside it, in outlines/. */
export function kitchenYaml(kitchen: Kitchen): string {
  const { scale, mixer } = kitchen;
  const drawn = kitchen.tins.some(({ shape }) => shape.kind === 'outline');
  return [
    '# My kitchen, saved from the planner. Put it in the content folder as kitchen.yaml.',
    ...(drawn ? ['# Tins with an outline need its drawing in outlines/ there too.'] : []),
    `name: ${JSON.stringify(kitchen.name)}`,
    `place: ${JSON.stringify(kitchen.place)}`,
    `edition: ${kitchen.edition}`,
    `locale: ${kitchen.locale}`,
    `paper: [${kitchen.paper.join(', ')}]`,
    ...eggLines(kitchen),
    `scale: { step: ${number(scale.stepG)} g, fine_step: ${number(scale.fineStepG)} g }`,
    `mixer: { bowl: ${number(mixer.bowlMl)} ml, max_fill: ${share(mixer.maxFill)}, min_fill: ${share(mixer.minFill)} }`,
    `fairy_case: ${number(kitchen.fairyCaseG)} g`,
    ...(kitchen.oven === undefined ? [] : [ovenLine(kitchen.oven)]),
    'tins:',
    ...kitchen.tins.map(tinLine),
    '',
  ].join('\n');
}
