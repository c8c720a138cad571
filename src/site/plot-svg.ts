/**
 * A plot as SVG for a page: one coordinate a millimetre, text set in the page's own font, colours by the house's
 * custom properties. Title and description are read aloud; the table beside it holds the same figures.
 */
import type { Plot, PlotKey, PlotStep, Stroke } from '../views/plot/plot.types.ts';
import { escapeHtml } from './escape-html.ts';

const DASHES: Record<Stroke, string> = {
  solid: '',
  dashed: ' stroke-dasharray="3 1.6"',
  dotted: ' stroke-dasharray="0.5 1.3"',
};
const TEXT_MM = 3.6;

function pathText(steps: readonly PlotStep[]): string {
  return steps
    .map((step) => {
      if (step.op === 'close') return 'Z';
      if (step.op === 'cubic') return `C${step.x1} ${step.y1} ${step.x2} ${step.y2} ${step.x} ${step.y}`;
      return `${step.op === 'move' ? 'M' : 'L'}${step.x} ${step.y}`;
    })
    .join('');
}

const path = (steps: readonly PlotStep[], attributes: string): string =>
  `<path d="${pathText(steps)}" ${attributes}/>`;

const text = (words: string, x: number, y: number, attributes = ''): string =>
  `<text x="${x}" y="${y}"${attributes}>${escapeHtml(words)}</text>`;

const lineAttributes = (stroke: Stroke): string =>
  `class="plot-line" fill="none" stroke-width="0.55"${DASHES[stroke]}`;
const bandAttributes = (tone: 'first' | 'second'): string =>
  tone === 'first'
    ? 'class="plot-band"'
    : 'class="plot-room" fill="none" stroke-width="0.35" stroke-dasharray="0.4 0.9"';
const markAttributes = (filled: boolean): string =>
  `class="${filled ? 'plot-mark' : 'plot-open'}" stroke-width="0.5"`;

function axes({ frame, x, y }: Plot): string {
  const { xMm, yMm, widthMm, heightMm } = frame;
  const foot = yMm + heightMm;
  const across = y.ticks.map(({ atMm }) => `M${xMm} ${atMm}H${xMm + widthMm}`).join('');
  const xTexts = x.ticks.map((tick) => text(tick.text, tick.atMm, foot + 4.8, ' text-anchor="middle"'));
  const yTexts = y.ticks.map((tick) => text(tick.text, xMm - 1.8, tick.atMm + 1.2, ' text-anchor="end"'));
  return [
    `<path class="plot-rule" fill="none" stroke-width="0.2" d="${across}"/>`,
    `<path class="plot-axis" fill="none" stroke-width="0.35" d="M${xMm} ${foot}H${xMm + widthMm}${x.ticks.map(({ atMm }) => `M${atMm} ${foot}v1.2`).join('')}"/>`,
    ...xTexts,
    ...yTexts,
    text(x.label, xMm + widthMm / 2, foot + 10, ' text-anchor="middle"'),
    text(y.label, xMm - 8, yMm - 4),
  ].join('');
}

function keyed(key: PlotKey, tone: 'first' | 'second'): string {
  return [
    key.band === null ? '' : path(key.band, bandAttributes(tone)),
    key.line === null ? '' : path(key.line.steps, lineAttributes(key.line.stroke)),
    key.mark === null ? '' : path(key.mark.steps, markAttributes(key.mark.filled)),
    text(key.text, key.xMm, key.yMm),
  ].join('');
}

function levels({ levels: all, frame }: Plot): string {
  return all
    .map(({ yMm, text: words }) => {
      const right = frame.xMm + frame.widthMm;
      const rule = `<path class="plot-axis" fill="none" stroke-width="0.3" stroke-dasharray="1.4 1" d="M${frame.xMm} ${yMm}H${right}"/>`;
      return `${rule}${text(words, frame.xMm + 2, yMm - 1.2)}`;
    })
    .join('');
}

/** The SVG element; ids are the plot's own, so that several stand on one page. */
export function plotSvg(plot: Plot): string {
  const { id, title, description, widthMm, heightMm, bands, lines, marks, keys } = plot;
  const bandTones = bands.map(({ tone }) => tone);
  let band = 0;
  const keyParts = keys.map((key) =>
    keyed(key, key.band === null ? 'first' : (bandTones[band++] ?? 'first')),
  );
  return [
    `<svg viewBox="0 0 ${widthMm} ${heightMm}" role="img" aria-labelledby="${id}-title ${id}-desc" font-size="${TEXT_MM}">`,
    `<title id="${id}-title">${escapeHtml(title)}</title><desc id="${id}-desc">${escapeHtml(description)}</desc>`,
    ...bands
      .filter(({ tone }) => tone === 'first')
      .map(({ steps, tone }) => path(steps, bandAttributes(tone))),
    axes(plot),
    ...bands
      .filter(({ tone }) => tone === 'second')
      .map(({ steps, tone }) => path(steps, bandAttributes(tone))),
    levels(plot),
    ...lines.map(({ steps, stroke }) => path(steps, lineAttributes(stroke))),
    ...marks.map(({ steps, filled }) => path(steps, markAttributes(filled))),
    ...keyParts,
    '</svg>',
  ].join('');
}
