/**
 * How many millimetres is one unit of the drawing? width and height in mm, cm or in, over the viewBox; without
 * a viewBox a unit is a CSS pixel, 1/96 in (SVG 2, W3C, chapter 8, from memory).
 */
import type { Result } from '../domain/result.ts';
import { fail, succeed } from '../domain/result.ts';
import { MM_PER } from '../domain/units.ts';
import type { DrawnElement } from './outline-elements.ts';
import { errorAt } from './outline-place.ts';
import { quote } from './quote.ts';

export interface Scale {
  x: number;
  y: number;
}

const PIXEL_MM = 25.4 / 96;
const LENGTH = /^\s*(\d+\.?\d*|\.\d+)\s*(mm|cm|in)\s*$/;

function lengthMm(text: string | undefined): number | null {
  const [, number, unit] = LENGTH.exec(text ?? '') ?? [];
  if (unit !== 'mm' && unit !== 'cm' && unit !== 'in') return null;
  return Number(number) * MM_PER[unit];
}

function viewBoxSize(text: string): { width: number; height: number } | null {
  const numbers = text
    .trim()
    .split(/[\s,]+/)
    .map(Number);
  const [, , width = Number.NaN, height = Number.NaN] = numbers;
  return numbers.length === 4 && width > 0 && height > 0 ? { width, height } : null;
}

/** Millimetres per unit along x and y; null when the drawing does not say. */
export function drawingScale(root: DrawnElement): Result<Scale | null> {
  const { attributes, place } = root;
  const box = attributes.get('viewBox');
  const size = box === undefined ? null : viewBoxSize(box);
  if (box !== undefined && size === null) {
    const message = `viewBox is ${quote(box)}, not four numbers with a width and height above 0`;
    return fail(errorAt(place, 'outline-number', message, 'Write viewBox="0 0 80 120", for instance.'));
  }
  const width = lengthMm(attributes.get('width'));
  const height = lengthMm(attributes.get('height'));
  if (width === null && height === null) return succeed(null);
  if (size === null) return succeed({ x: PIXEL_MM, y: PIXEL_MM });
  const x = width === null ? null : width / size.width;
  const y = height === null ? null : height / size.height;
  if (x !== null && y !== null && attributes.get('preserveAspectRatio') === 'none') return succeed({ x, y });
  const both = Math.min(x ?? Number.POSITIVE_INFINITY, y ?? Number.POSITIVE_INFINITY);
  return succeed({ x: both, y: both });
}
