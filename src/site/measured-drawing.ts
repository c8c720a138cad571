/** One tin, large, with its measures on dimension lines as a workshop drawing has them. */
import type { LengthUnit } from '../domain/units.ts';
import type { TinPicture } from '../views/tin-picture.ts';
import { formatLength } from '../wording/length.ts';
import { escapeHtml } from './escape-html.ts';
import { planPath } from './tin-drawing.ts';
import { halfWidthMm, hiddenPath, profilePath, tenth } from './tin-profile.ts';

interface Span {
  from: number;
  to: number;
  at: number;
}

const text = (x: number, y: number, size: number, anchor: string, words: string): string =>
  `<text x="${tenth(x)}" y="${tenth(y)}" font-size="${tenth(size)}" text-anchor="${anchor}">${escapeHtml(words)}</text>`;

function acrossLine({ from, to, at }: Span, size: number, words: string): string {
  const tick = size / 3;
  const line = `M${tenth(from)} ${tenth(at)}H${tenth(to)}M${tenth(from)} ${tenth(at - tick)}v${tenth(2 * tick)}M${tenth(to)} ${tenth(at - tick)}v${tenth(2 * tick)}`;
  return `<path class="thin" d="${line}"/>${text((from + to) / 2, at + size * 1.2, size, 'middle', words)}`;
}

function downLine({ from, to, at }: Span, size: number, words: string): string {
  const tick = size / 3;
  const line = `M${tenth(at)} ${tenth(from)}V${tenth(to)}M${tenth(at - tick)} ${tenth(from)}h${tenth(2 * tick)}M${tenth(at - tick)} ${tenth(to)}h${tenth(2 * tick)}`;
  return `<path class="thin" d="${line}"/>${text(at + size * 0.6, (from + to) / 2 + size * 0.35, size, 'start', words)}`;
}

function planPart(picture: TinPicture, size: number, unit: LengthUnit): string {
  const { plan, basePlan, widthMm, heightMm } = picture;
  if (!plan) return '';
  const half = widthMm / 2;
  const reach = size * 0.8;
  const cross = `<path class="dash" d="M${tenth(-half - reach)} 0H${tenth(half + reach)}M0 ${tenth(-heightMm / 2 - reach)}V${tenth(heightMm / 2 + reach)}"/>`;
  const base = basePlan ? `<path class="thin" d="${planPath(basePlan)}"/>` : '';
  const high = downLine(
    { from: -heightMm / 2, to: heightMm / 2, at: half + size * 1.4 },
    size,
    formatLength(heightMm, unit),
  );
  return `<g transform="translate(0 ${tenth(heightMm / 2)})"><path class="wash" fill-rule="evenodd" d="${planPath(plan)}"/>${base}${cross}${high}</g>`;
}

function sidePart(picture: TinPicture, topMm: number, size: number, unit: LengthUnit): string {
  const half = halfWidthMm(picture);
  const hidden = hiddenPath(picture);
  const depth = picture.depthMm;
  const deep = downLine({ from: 0, to: depth, at: half + size * 1.4 }, size, formatLength(depth, unit));
  const wide = picture.plan
    ? acrossLine({ from: -half, to: half, at: depth + size }, size, formatLength(picture.widthMm, unit))
    : '';
  const wall = `<path class="${picture.plan ? 'side' : 'dash'}" d="${profilePath(picture)}"/>`;
  return `<g transform="translate(0 ${tenth(topMm)})">${wall}${hidden ? `<path class="dash" d="${hidden}"/>` : ''}${deep}${wide}</g>`;
}

/** Plan and side view with width, length and depth in the tin's own unit. */
export function measuredDrawing(picture: TinPicture, unit: LengthUnit): string {
  const half = halfWidthMm(picture);
  const size = Math.max(half * 2, picture.depthMm) * 0.052;
  const room = size * 7;
  const sideTop = picture.plan ? picture.heightMm + size * 2.2 : 0;
  const height = sideTop + picture.depthMm + size * 4;
  const view = [-half - room, -size * 1.2, 2 * (half + room), height].map(tenth).join(' ');
  return `<svg viewBox="${view}" role="img" aria-label="${escapeHtml(picture.alt)}">${planPart(picture, size, unit)}${sidePart(picture, sideTop, size, unit)}</svg>`;
}
