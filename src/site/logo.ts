/**
 * The baker's logo, made safe to stand inside a page: only drawing elements and drawing attributes are kept;
 * scripts, links, styles and anything from elsewhere are left out. Colours that the light palette names become
 * that colour's custom property, so that the logo follows light and dark.
 */
import { SaxesParser } from 'saxes';
import type { HouseStyle, Palette } from '../domain/house-style.ts';
import { escapeHtml } from './escape-html.ts';

const ELEMENTS = new Set(['svg', 'g', 'path', 'circle', 'ellipse', 'rect', 'line', 'polyline', 'polygon']);
const ATTRIBUTES = new Set(
  (
    'viewBox width height d fill fill-rule fill-opacity stroke stroke-width stroke-linecap stroke-linejoin ' +
    'stroke-dasharray transform cx cy r rx ry x y x1 y1 x2 y2 points opacity'
  ).split(' '),
);
/** A colour, number, list or transform: never an address. */
const PLAIN_VALUE = /^[#\w\s.,()+-]*$/;

/** 'quietInk' is written '--quiet-ink' in the stylesheet. */
export function customProperty(key: string): string {
  return `--${key.replace(/[A-Z]/g, (letter) => `-${letter.toLowerCase()}`)}`;
}

function themed(value: string, palette: Palette): string {
  const named = Object.entries(palette).find(([, colour]) => colour.toLowerCase() === value.toLowerCase());
  return named ? `var(${customProperty(named[0])})` : value;
}

function keptAttributes(attributes: Record<string, string>, palette: Palette | null): string {
  return Object.entries(attributes)
    .filter(([name, value]) => ATTRIBUTES.has(name) && PLAIN_VALUE.test(value) && !/url\(/i.test(value))
    .map(([name, value]) => ` ${name}="${escapeHtml(palette ? themed(value, palette) : value)}"`)
    .join('');
}

/**
 * A drawing-only copy of an SVG file's text; throws on text that is not XML.
 * With `palette` null the colours stay as they are, for a file of its own.
 */
export function safeSvg(text: string, palette: Palette | null): string {
  const parser = new SaxesParser();
  const out: string[] = [];
  let skipped = 0;
  parser.on('opentag', (tag) => {
    if (skipped > 0 || !ELEMENTS.has(tag.name)) {
      skipped += 1;
      return;
    }
    const root = palette ? ' aria-hidden="true" focusable="false"' : ' xmlns="http://www.w3.org/2000/svg"';
    const own = tag.name === 'svg' ? root : '';
    out.push(`<${tag.name}${own}${keptAttributes(tag.attributes, palette)}>`);
  });
  parser.on('closetag', (tag) => {
    if (skipped > 0) skipped -= 1;
    else out.push(`</${tag.name}>`);
  });
  parser.write(text).close();
  return out.join('');
}

/** The logo as it stands in every page's masthead, '' when the house style has none. */
export function inlineLogo(text: string | null, style: HouseStyle): string {
  return text === null ? '' : safeSvg(text, style.colours.light);
}
