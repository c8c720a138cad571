/**
 * Pictures of pages for messages and home screens: the house's colours and own fonts, a tin from above, the name.
 * Set as SVG and turned into PNG, so that a message shows them anywhere.
 */
import { createHash } from 'node:crypto';
import { readFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import { initWasm, Resvg } from '@resvg/resvg-wasm';
import { create } from 'fontkit';
import type { HouseStyle } from '../../domain/house-style.ts';
import { escapeHtml } from '../escape-html.ts';
import type { Asset } from '../site-assets.ts';

const WIDTH = 1200;
const HEIGHT = 630;
const ICONS = [192, 512];

export interface Pictured {
  /** File name without its ending. */
  id: string;
  title: string;
  line: string;
}

export interface PictureHouse {
  style: HouseStyle;
  kitchenName: string;
  /** TrueType or OpenType. */
  fonts: { heading: Uint8Array; text: Uint8Array };
  /** Plans of the tins, as paths in mm about one centre, widest first. */
  plans: readonly string[];
}

let ready: Promise<void> | undefined;

async function start(): Promise<void> {
  const file = createRequire(import.meta.url).resolve('@resvg/resvg-wasm/index_bg.wasm');
  await initWasm(await readFile(file));
}

/** Lines of about so many signs, broken between words; at most three. */
function lines(text: string, most: number): string[] {
  const found: string[] = [];
  for (const word of text.split(' ')) {
    const last = found.at(-1);
    if (last !== undefined && last.length + 1 + word.length <= most)
      found[found.length - 1] = `${last} ${word}`;
    else found.push(word);
  }
  return found.slice(0, 3);
}

function nest({ plans, style }: PictureHouse): string {
  const { ink } = style.colours.light;
  const paths = plans.map((d) => `<path d="${d}" fill="none" stroke="${ink}" stroke-width="1.2"/>`);
  return `<g transform="translate(905 315) scale(1.55)">${paths.join('')}</g>`;
}

interface Set {
  heading: string;
  text: string;
}

function pageSvg(picture: Pictured, house: PictureHouse & Set): string {
  const { paper, ink, quietInk, accent } = house.style.colours.light;
  const title = lines(picture.title, 17).map(
    (line, at) =>
      `<text x="80" y="${230 + at * 86}" font-family="${house.heading}" font-size="76" fill="${ink}">${escapeHtml(line)}</text>`,
  );
  const below = lines(picture.line, 40)
    .slice(0, 2)
    .map(
      (line, at) =>
        `<text x="80" y="${250 + title.length * 86 + at * 46}" font-family="${house.text}" font-size="34" fill="${quietInk}">${escapeHtml(line)}</text>`,
    );
  return `<svg xmlns="http://www.w3.org/2000/svg" width="${WIDTH}" height="${HEIGHT}" viewBox="0 0 ${WIDTH} ${HEIGHT}"><rect width="${WIDTH}" height="${HEIGHT}" fill="${paper}"/>${nest(house)}<rect x="0" y="0" width="24" height="${HEIGHT}" fill="${accent}"/><text x="80" y="110" font-family="${house.text}" font-size="34" fill="${accent}">${escapeHtml(house.kitchenName)}</text>${title.join('')}${below.join('')}</svg>`;
}

/** The initial on the accent colour, where a home screen wants a picture. */
function iconSvg(house: PictureHouse & Set): string {
  const { style, kitchenName } = house;
  const { accent, accentInk } = style.colours.light;
  const letter = escapeHtml([...kitchenName][0] ?? '');
  return `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 512 512"><rect width="512" height="512" fill="${accent}"/><circle cx="256" cy="256" r="176" fill="none" stroke="${accentInk}" stroke-width="10"/><text x="256" y="350" text-anchor="middle" font-family="${house.heading}" font-size="270" fill="${accentInk}">${letter}</text></svg>`;
}

/** The names that a font goes by, best first: the drawing library finds it by them. */
function families(bytes: Uint8Array): string {
  const font = create(bytes as Buffer);
  if (!('familyName' in font)) return '';
  const own = font as typeof font & { name?: { records?: { preferredFamily?: Record<string, string> } } };
  const names = [own.name?.records?.preferredFamily?.en, font.familyName, font.fullName];
  return [...new Set(names.flatMap((name) => name ?? []))]
    .map((name) => `'${name.replaceAll("'", '')}'`)
    .join(', ');
}

/** Drawing takes longer than all else of a small change to a site; the same picture is drawn once in a process. */
const drawnPictures = new Map<string, Uint8Array>();
const MOST_DRAWN = 500;

function hashOf(svg: string, { fonts }: PictureHouse, width: number): string {
  const hash = createHash('sha256').update(`${width} ${svg}`);
  return hash.update(fonts.heading).update(fonts.text).digest('hex');
}

function png(svg: string, house: PictureHouse, width: number): Uint8Array {
  const key = hashOf(svg, house, width);
  if (drawnPictures.size >= MOST_DRAWN) drawnPictures.clear();
  const known = drawnPictures.get(key) ?? freshPng(svg, house, width);
  drawnPictures.set(key, known);
  return known;
}

function freshPng(svg: string, { fonts }: PictureHouse, width: number): Uint8Array {
  const drawn = new Resvg(svg, {
    fitTo: { mode: 'width', value: width },
    font: { fontBuffers: [fonts.heading, fonts.text] },
  });
  return drawn.render().asPng();
}

/** A picture for each page given, and the icons. */
export async function pictures(pages: readonly Pictured[], house: PictureHouse): Promise<Asset[]> {
  ready ??= start();
  await ready;
  const set = { ...house, heading: families(house.fonts.heading), text: families(house.fonts.text) };
  return [
    ...pages.map((page) => ({
      path: `pictures/${page.id}.png`,
      bytes: png(pageSvg(page, set), house, WIDTH),
    })),
    ...ICONS.map((size) => ({
      path: `pictures/icon-${size}.png`,
      bytes: png(iconSvg(set), house, size),
    })),
  ];
}
