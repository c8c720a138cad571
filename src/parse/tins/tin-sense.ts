/**
 * Can a tin with these inside measurements exist? Checks what a slip of the pen or of the unit would break.
 * Valid: 20 to 1000 mm across, 5 to 500 mm deep; the base no wider than the rim; the tube inside the ring;
 * a slant that leaves something of both walls beside it; 3 to 24 petals; a dome no deeper than half its width. Limits are our choice, generous to any household tin.
 */
import type { Problem } from '../../domain/problem.ts';
import type { ShapeKind } from '../../domain/shape.ts';
import { error } from '../problems.ts';
import type { SizeKey, Sizes } from './shape-sizes.ts';

/** A measurement, or another key of a tin, that a problem is about. */
export type TinKey = SizeKey | 'depth' | 'petals' | 'volume' | 'measured_volume';

export interface TinProblem {
  key: TinKey;
  problem: Problem;
}

const SMALLEST_MM = 20;
const LARGEST_MM = 1000;
const SHALLOWEST_MM = 5;
const DEEPEST_MM = 500;
const TUBE_MM = 5;

/** Millimetres as shown in a message: at most one decimal. */
export function shownMm(mm: number): string {
  return `${Math.round(mm * 10) / 10} mm`;
}

function sizeProblems(sizes: Sizes): TinProblem[] {
  return (Object.entries(sizes) as [SizeKey, number][])
    .filter(([key, mm]) => mm > LARGEST_MM || mm < (key.endsWith('tube') ? TUBE_MM : SMALLEST_MM))
    .map(([key, mm]) => ({
      key,
      problem: error(
        'tin-size-out-of-range',
        `${shownMm(mm)} is too ${mm > LARGEST_MM ? 'large' : 'small'} for a tin (${words(key)})`,
        `Inside measurements run from ${SMALLEST_MM} mm to ${LARGEST_MM} mm. Check the unit.`,
      ),
    }));
}

function words(key: string): string {
  return key.replace('_', ' ');
}

function depthProblems(kind: ShapeKind, depthMm: number | undefined, sizes: Sizes): TinProblem[] {
  if (depthMm === undefined) return [];
  if (depthMm < SHALLOWEST_MM || depthMm > DEEPEST_MM) {
    const what = depthMm > DEEPEST_MM ? 'deep' : 'shallow';
    const hint = `Inside depth runs from ${SHALLOWEST_MM} mm to ${DEEPEST_MM} mm. Check the unit.`;
    return [
      {
        key: 'depth',
        problem: error('tin-depth-out-of-range', `${shownMm(depthMm)} is too ${what} for a tin`, hint),
      },
    ];
  }
  const half = (sizes.across ?? Number.POSITIVE_INFINITY) / 2;
  // A tenth of a millimetre covers a half written in rounded millimetres.
  if (kind !== 'dome' || depthMm <= half + 0.1) return [];
  return [
    {
      key: 'depth',
      problem: error(
        'tin-dome-too-deep',
        `A dome ${shownMm(half * 2)} across cannot be ${shownMm(depthMm)} deep`,
        `A dome is at most half as deep as it is wide: ${shownMm(half)}. Leave the depth out for a half ball.`,
      ),
    },
  ];
}

const BASES: readonly [SizeKey, SizeKey][] = [
  ['base_across', 'across'],
  ['base_side', 'side'],
  ['base_length', 'length'],
  ['base_width', 'width'],
];

function baseProblems(sizes: Sizes): TinProblem[] {
  return BASES.flatMap(([base, rim]) => {
    const baseMm = sizes[base];
    const rimMm = sizes[rim];
    if (baseMm === undefined || rimMm === undefined || baseMm <= rimMm) return [];
    return [
      {
        key: base,
        problem: error(
          'tin-base-wider',
          `The base (${shownMm(baseMm)}) is wider than the rim (${shownMm(rimMm)})`,
          'Measure the rim inside at the top and the base inside at the bottom; they may be swapped.',
        ),
      },
    ];
  });
}

function tubeProblem(key: SizeKey, tubeMm: number | undefined, acrossMm: number | undefined): TinProblem[] {
  if (tubeMm === undefined || acrossMm === undefined || tubeMm < acrossMm) return [];
  return [
    {
      key,
      problem: error(
        'tin-tube-too-wide',
        `A tube ${shownMm(tubeMm)} across does not fit in a ring ${shownMm(acrossMm)} across`,
        'The tube is measured across its outside, the ring across the inside of the tin.',
      ),
    },
  ];
}

function tubeProblems(sizes: Sizes): TinProblem[] {
  return [
    ...tubeProblem('tube', sizes.tube, sizes.across),
    ...tubeProblem('base_tube', sizes.base_tube ?? sizes.tube, sizes.base_across),
  ];
}

/** Two corners cut at 45° take √2 × the slant off a wall, and something of the shorter wall must be left. */
export function slantProblems({ length, width, slant }: Sizes): TinProblem[] {
  if (length === undefined || width === undefined || slant === undefined) return [];
  const longestMm = Math.min(length, width) * Math.SQRT1_2;
  if (slant < longestMm) return [];
  const problem = error(
    'tin-slant-too-long',
    `Two corners with a slant of ${shownMm(slant)} do not fit beside one another in ${shownMm(Math.min(length, width))}`,
    `The slant is the short side across one corner, less than ${shownMm(longestMm)} here; length and width are the whole ones.`,
  );
  return [{ key: 'slant', problem }];
}

function petalProblems(petals: number | undefined): TinProblem[] {
  // What is no finite number the schema has refused.
  if (petals === undefined || !Number.isFinite(petals)) return [];
  if (Number.isInteger(petals) && petals >= 3 && petals <= 24) return [];
  const problem = error(
    'tin-petals',
    `A petal tin cannot have ${petals} petals`,
    'Use a whole number from 3 to 24.',
  );
  return [{ key: 'petals', problem }];
}

/** The longest two inside measurements make a box that no tin can hold more than. */
function boxMl(sizes: Sizes, depthMm: number | undefined): number | null {
  const measured = Object.values(sizes);
  if (measured.length === 0 || depthMm === undefined) return null;
  const [longest = 0, second = longest] = [...measured].sort((a, b) => b - a);
  const side = sizes.length === undefined ? longest : second;
  // Flats to corners and point to lobes can be up to 16 % more.
  return (longest * side * depthMm * 1.35) / 1000;
}

function volumeProblems(kind: ShapeKind, sizes: Sizes, depthMm?: number, volumeMl?: number): TinProblem[] {
  const box = kind === 'outline' ? null : boxMl(sizes, depthMm);
  if (volumeMl === undefined || box === null || volumeMl <= box) return [];
  return [
    {
      key: 'measured_volume',
      problem: error(
        'tin-measured-volume-too-big',
        `A tin of these measurements cannot hold ${Math.round(volumeMl)} ml of water`,
        `A box around it holds ${Math.round(box)} ml. Check the volume, the depth and their units.`,
      ),
    },
  ];
}

/** Everything that cannot be right about a tin; empty when it can exist. Lengths in mm, volume in mL. */
export function tinProblems(
  kind: ShapeKind,
  sizes: Sizes,
  depthMm: number | undefined,
  extras: { petals?: number; measuredVolumeMl?: number } = {},
): TinProblem[] {
  return [
    ...sizeProblems(sizes),
    ...depthProblems(kind, depthMm, sizes),
    ...baseProblems(sizes),
    ...tubeProblems(sizes),
    ...slantProblems(sizes),
    ...petalProblems(extras.petals),
    ...volumeProblems(kind, sizes, depthMm, extras.measuredVolumeMl),
  ];
}
