/** A shelf from above, door in front, every tin by its true outline with its number; one unit a millimetre. */
import type { ShelfTin, ShelfView } from '../views/timetable/timetable.types.ts';
import { escapeHtml } from './escape-html.ts';
import { planPath } from './tin-drawing.ts';
import { tenth } from './tin-profile.ts';

const MARGIN_MM = 4;
const DOOR_MM = 34;
const NUMBER_MM = 34;
const WORDS_MM = 22;

function tinMarkup({ outline, middle, number }: ShelfTin, depthMm: number): string {
  // Paths have y down already, measured from the front edge.
  const shape = outline
    ? `<path class="wash" fill-rule="evenodd" transform="translate(0 ${tenth(depthMm)})" d="${planPath(outline)}"/>`
    : '';
  const y = tenth(depthMm - middle.yMm + NUMBER_MM * 0.35);
  return `${shape}<text x="${tenth(middle.xMm)}" y="${y}" font-size="${NUMBER_MM}" text-anchor="middle">${number}</text>`;
}

/** One image with its description; `door` names the side one stands at. */
export function shelfSvg({ widthMm, depthMm, tins, alt }: ShelfView, door: string): string {
  const [wide, deep] = [tenth(widthMm), tenth(depthMm)];
  const view = [-MARGIN_MM, -MARGIN_MM, wide + 2 * MARGIN_MM, deep + DOOR_MM + MARGIN_MM]
    .map(tenth)
    .join(' ');
  return [
    `<svg viewBox="${view}" role="img" aria-label="${escapeHtml(alt)}">`,
    `<path class="line" fill="none" d="M0 0H${wide}V${deep}H0Z"/>`,
    `<path class="shelf-door" d="M0 ${deep + 5}H${wide}"/>`,
    ...tins.map((tin) => tinMarkup(tin, depthMm)),
    `<text class="shelf-side" x="${tenth(wide / 2)}" y="${deep + DOOR_MM - 2}" font-size="${WORDS_MM}" text-anchor="middle">${escapeHtml(door)}</text>`,
    '</svg>',
  ].join('');
}
