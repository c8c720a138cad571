/**
 * Tins as SVG, plan above and side view below, from the same outline that the sums use. Drawings that share a
 * frame share a scale, whatever width the page gives them.
 */
import { outlineSvgPath } from '../compute/outline/index.ts';
import type { Outline } from '../domain/outline.ts';
import type { TinPicture } from '../views/tin-picture.ts';
import { escapeHtml } from './escape-html.ts';
import { halfWidthMm, hiddenPath, profilePath, tenth } from './tin-profile.ts';

/** Room that every drawing of a set is given, mm. */
export interface Frame {
  widthMm: number;
  planMm: number;
  sideMm: number;
}

const MARGIN_MM = 5;
/** Air between neighbours on a plate: shelves join from drawing to drawing. */
export const PLATE_AIR_MM = 26;

/** The smallest frame that holds each picture. */
export function commonFrame(pictures: readonly TinPicture[]): Frame {
  const widest = (values: number[]): number => Math.max(0, ...values);
  return {
    widthMm: widest(pictures.map((picture) => halfWidthMm(picture) * 2)) + 2 * MARGIN_MM,
    planMm: widest(pictures.map((picture) => picture.heightMm)),
    sideMm: widest(pictures.map((picture) => picture.depthMm)),
  };
}

/** The `d` of a plan with coordinates to a tenth of a millimetre, or to the millimetre for a small drawing. */
export function planPath(plan: Outline, perMm = 10): string {
  return outlineSvgPath(plan).replace(/-?\d+(\.\d+)?/g, (number) => {
    return String(Math.round(Number(number) * perMm) / perMm || 0);
  });
}

function planMarkup(picture: TinPicture, bottomMm: number, perMm: number): string {
  const { plan, basePlan } = picture;
  if (!plan) return '';
  const centre = tenth(bottomMm - picture.heightMm / 2);
  const base = basePlan ? `<path class="thin" d="${planPath(basePlan, perMm)}"/>` : '';
  return `<g transform="translate(0 ${centre})"><path class="wash" fill-rule="evenodd" d="${planPath(plan, perMm)}"/>${base}</g>`;
}

function sideMarkup(picture: TinPicture, topMm: number): string {
  const hidden = hiddenPath(picture);
  const style = picture.plan ? 'side' : 'dash';
  return `<g transform="translate(0 ${tenth(topMm)})"><path class="${style}" d="${profilePath(picture)}"/>${hidden ? `<path class="dash" d="${hidden}"/>` : ''}</g>`;
}

/** A drawing in a frame shared with others; decoration, because the name and size stand beside it. */
export function framedDrawing(picture: TinPicture, frame: Frame): string {
  const gap = 18;
  const shelf = MARGIN_MM + frame.planMm + gap + frame.sideMm;
  const width = frame.widthMm + PLATE_AIR_MM;
  const view = [-width / 2, 0, width, shelf + MARGIN_MM].map(tenth).join(' ');
  const board = `<path class="thin" d="M${tenth(-width / 2)} ${tenth(shelf)}h${tenth(width)}"/>`;
  const plan = planMarkup(picture, MARGIN_MM + frame.planMm, 10);
  const side = sideMarkup(picture, shelf - picture.depthMm);
  return `<svg viewBox="${view}" aria-hidden="true" focusable="false">${board}${plan}${side}</svg>`;
}

/** A thumbnail for a table's row, at a fixed scale in px per mm. */
export function rowDrawing(picture: TinPicture, pxPerMm: number): string {
  const half = halfWidthMm(picture) + MARGIN_MM;
  const top = picture.plan ? picture.heightMm + MARGIN_MM * 3 : MARGIN_MM;
  const height = top + picture.depthMm + MARGIN_MM;
  const view = [-half, 0, half * 2, height].map(Math.round).join(' ');
  const size = `width="${Math.round(half * 2 * pxPerMm)}" height="${Math.round(height * pxPerMm)}"`;
  const plan = planMarkup(picture, picture.heightMm + MARGIN_MM, 1);
  return `<svg viewBox="${view}" ${size} aria-hidden="true" focusable="false">${plan}${sideMarkup(picture, top)}</svg>`;
}

/** Every plan on one centre, largest first, as a picture with a text alternative. */
export function nestedPlans(pictures: readonly TinPicture[], alt: string): string {
  const frame = commonFrame(pictures);
  const width = frame.widthMm + 8;
  const height = frame.planMm + 18;
  const view = [-width / 2, -height / 2, width, height].map(tenth).join(' ');
  const paths = new Set(pictures.flatMap(({ plan }) => (plan ? [planPath(plan)] : [])));
  const plans = [...paths].map((d) => `<path class="leaf" fill-rule="evenodd" d="${d}"/>`).join('');
  const cross = `<path class="dash" d="M${tenth(-width / 2)} 0H${tenth(width / 2)}M0 ${tenth(-height / 2)}V${tenth(height / 2)}"/>`;
  return `<svg viewBox="${view}" role="img" aria-label="${escapeHtml(alt)}">${cross}${plans}</svg>`;
}
