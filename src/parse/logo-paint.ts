/** How a shape of a logo is painted: its own attributes and styles, or those of the groups around it. */
import { type Result, succeed } from '../domain/result.ts';
import { refuse } from './problems.ts';
import { quote } from './quote.ts';

const PAINTED_BY = [
  'fill',
  'fill-rule',
  'fill-opacity',
  'stroke',
  'stroke-width',
  'stroke-opacity',
  'opacity',
];

export type Paint = ReadonlyMap<string, string>;

export const UNPAINTED: Paint = new Map();

/** The paint of an element inside others; a style wins over an attribute, as in SVG 2 (W3C; from memory). */
export function paintOf(attributes: ReadonlyMap<string, string>, outer: Paint): Paint {
  const paint = new Map(outer);
  for (const name of PAINTED_BY) {
    const value = attributes.get(name);
    if (value !== undefined && value !== 'inherit') paint.set(name, value.trim());
  }
  for (const declaration of (attributes.get('style') ?? '').split(';')) {
    const [name = '', value = ''] = declaration.split(':').map((part) => part.trim());
    if (PAINTED_BY.includes(name) && value !== 'inherit') paint.set(name, value);
  }
  return paint;
}

const HINT = 'Use plain colours such as #74304d; turn gradients, patterns and see-through parts into shapes.';
const NAMED: Readonly<Record<string, string>> = { black: '#000000', white: '#ffffff' };

function colourOf(text: string): Result<string | null> {
  if (text === 'none' || text === 'transparent') return succeed(null);
  if (text === 'currentColor') return succeed('ink');
  const named = Object.hasOwn(NAMED, text.toLowerCase()) ? NAMED[text.toLowerCase()] : undefined;
  if (named !== undefined) return succeed(named);
  const [, r, g, b] = /^#([0-9a-f])([0-9a-f])([0-9a-f])$/i.exec(text) ?? [];
  if (r !== undefined) return succeed(`#${r}${r}${g}${g}${b}${b}`.toLowerCase());
  if (/^#[0-9a-f]{6}$/i.test(text)) return succeed(text.toLowerCase());
  const channels = /^rgb\(\s*(\d{1,3})\s*,\s*(\d{1,3})\s*,\s*(\d{1,3})\s*\)$/i
    .exec(text)
    ?.slice(1)
    .map(Number);
  if (channels?.every((channel) => channel <= 255))
    return succeed(`#${channels.map((channel) => channel.toString(16).padStart(2, '0')).join('')}`);
  return refuse('logo-not-drawn', `the colour ${quote(text)} cannot be printed`, HINT);
}

export interface ShapePaint {
  fill: string | null;
  evenOdd: boolean;
  stroke: string | null;
  /** In the shape's own units. */
  strokeWidth: number;
}

/** In the drawing's units. */
const WIDEST_STROKE = 100_000;

const solid = (paint: Paint): boolean =>
  ['opacity', 'fill-opacity', 'stroke-opacity'].every((name) => Number(paint.get(name) ?? '1') === 1);

/** Problem: logo-not-drawn, for paint that is not one plain colour. */
export function shapePaint(paint: Paint): Result<ShapePaint> {
  if (!solid(paint)) return refuse('logo-not-drawn', 'parts of it are see-through', HINT);
  const fill = colourOf(paint.get('fill') ?? 'black');
  const stroke = colourOf(paint.get('stroke') ?? 'none');
  if (!fill.ok) return fill;
  if (!stroke.ok) return stroke;
  const strokeWidth = Number.parseFloat(paint.get('stroke-width') ?? '1');
  if (!(strokeWidth >= 0 && strokeWidth <= WIDEST_STROKE))
    return refuse('logo-not-drawn', 'the width of its lines cannot be read', HINT);
  return succeed({
    fill: fill.value,
    evenOdd: paint.get('fill-rule') === 'evenodd',
    stroke: stroke.value,
    strokeWidth,
  });
}
