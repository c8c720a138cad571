/**
 * A day's bars for a page, in millimetres of a drawing that shrinks with the page: hands solid, heat tinted with an
 * edge, waiting a thin line. The table beside it says the same, so the picture is one image with one description.
 */
import type { Bar, DayBars, Lane } from '../views/timetable/timetable.types.ts';
import { escapeHtml } from './escape-html.ts';
import { tenth } from './tin-profile.ts';

const WIDTH_MM = 180;
const LABEL_MM = 22;
const HEAD_MM = 7;
const LANE_MM = 6;
const BAR_MM = 3.8;
const TEXT_MM = 3.6;

const xOf = (share: number): number => tenth(LABEL_MM + share * (WIDTH_MM - LABEL_MM - 2));

function bar({ from, to, tone, text }: Bar, topMm: number): string {
  const [left, wide] = [xOf(from), tenth(xOf(to) - xOf(from))];
  if (tone === 'waiting')
    return `<path class="bar-waiting" d="M${left} ${tenth(topMm + LANE_MM / 2)}h${wide}"/>`;
  const y = tenth(topMm + (LANE_MM - BAR_MM) / 2);
  return `<rect class="bar-${tone}" x="${left}" y="${y}" width="${wide}" height="${BAR_MM}"><title>${escapeHtml(text)}</title></rect>`;
}

function lane({ name, bars }: Lane, at: number): string {
  const top = HEAD_MM + at * LANE_MM;
  const words = `<text x="0" y="${tenth(top + 4.2)}" font-size="${TEXT_MM}">${escapeHtml(name)}</text>`;
  return `${words}${bars.map((each) => bar(each, top)).join('')}`;
}

/** One image; `id` must be its own on the page. */
export function dayBarsSvg({ ticks, lanes, alt }: DayBars): string {
  const height = tenth(HEAD_MM + lanes.length * LANE_MM + 1);
  const rules = ticks.map(({ at }) => `M${xOf(at)} ${HEAD_MM - 1.5}V${height}`).join('');
  const hours = ticks.map(({ at, text }) => {
    const anchor = at > 0.95 ? 'end' : 'middle';
    const x = at > 0.95 ? WIDTH_MM : xOf(at);
    return `<text class="bar-hour" x="${x}" y="4" font-size="${TEXT_MM}" text-anchor="${anchor}">${escapeHtml(text)}</text>`;
  });
  return [
    `<svg class="day-bars" viewBox="0 0 ${WIDTH_MM} ${height}" role="img" aria-label="${escapeHtml(alt)}">`,
    `<path class="bar-rule" d="${rules}"/>`,
    ...hours,
    ...lanes.map(lane),
    '</svg>',
  ].join('');
}
