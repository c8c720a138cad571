/** A cake from above with the knife's lines, as SVG: the same outline and lines as in the printed cutting guide. */
import { outlineBounds } from '../compute/outline/index.ts';
import type { KnifeLine } from '../compute/portions/knife-lines.ts';
import type { Outline } from '../domain/outline.ts';
import type { RingsGuide, RowsGuide } from '../views/portions.types.ts';
import { escapeHtml } from './escape-html.ts';
import { planPath } from './tin-drawing.ts';
import { tenth } from './tin-profile.ts';

const MARGIN_MM = 3;

const linePath = (lines: readonly KnifeLine[]): string =>
  lines.map(({ from, to }) => `M${tenth(from.x)} ${tenth(-from.y)}L${tenth(to.x)} ${tenth(-to.y)}`).join('');

/** Drawn at so many px per mm. */
export function cutSvg(plan: Outline, guide: RowsGuide | RingsGuide, pxPerMm: number): string {
  const bounds = outlineBounds(plan);
  const [width, height] = [
    bounds.maxX - bounds.minX + 2 * MARGIN_MM,
    bounds.maxY - bounds.minY + 2 * MARGIN_MM,
  ];
  const view = [bounds.minX - MARGIN_MM, -bounds.maxY - MARGIN_MM, width, height].map(tenth).join(' ');
  const size = `width="${Math.round(width * pxPerMm)}" height="${Math.round(height * pxPerMm)}"`;
  const cuts =
    'lines' in guide
      ? `<path class="knife" d="${linePath(guide.lines)}"/>`
      : `${guide.circlesMm.map((r) => `<circle class="knife" r="${tenth(r)}"/>`).join('')}<path class="knife" d="${linePath(guide.spokes)}"/>`;
  return `<svg viewBox="${view}" ${size} role="img" aria-label="${escapeHtml(guide.alt)}"><path class="wash" fill-rule="evenodd" d="${planPath(plan)}"/>${cuts}</svg>`;
}
