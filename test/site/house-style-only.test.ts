/** Colours and fonts come from the house style alone: no file of the source or the templates names one of its own. */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { BUNDLED_FAMILIES } from '../../src/domain/bundled-fonts.ts';

const filesIn = (folder: string, kinds: RegExp): string[] =>
  readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .filter((name) => kinds.test(name))
    .map((name) => join(folder, name).replaceAll('\\', '/'));

const withoutComments = (file: string): string =>
  readFileSync(file, 'utf8')
    .replace(/\/\*[\s\S]*?\*\/|\{#[\s\S]*?#\}|<!--[\s\S]*?-->/g, '')
    .replace(/(^|\s)\/\/ .*/g, '');

const NAMED =
  'black|white|gr[ae]y|silver|red|maroon|green|lime|olive|blue|navy|teal|aqua|cyan|yellow|gold|orange|brown|purple|violet|pink|fuchsia|magenta|beige|ivory|tan|coral|crimson|indigo|khaki|salmon';
/** '#abc' and longer where a value stands, and colours as functions. Anchors and numbers of charts are not colours. */
const COLOUR =
  /['"`:\s(,]#(?:[0-9a-f]{3,4}|[0-9a-f]{6}|[0-9a-f]{8})\b(?![\w-])|\b(?:rgba?|hsla?|hwb|oklch|oklab|lch|lab)\(/i;
const NAMED_COLOUR = new RegExp(
  `(?:color|background|fill|stroke|border|outline|shadow)[\\w-]*["']?\\s*[:=]\\s*["']?[^;"'\`}\\n]*\\b(?:${NAMED})\\b(?!-)`,
  'i',
);
const FONTS = new RegExp(
  `${BUNDLED_FAMILIES.join('|')}|\\b(?:Arial|Helvetica|Verdana|Tahoma|Georgia|Garamond|Palatino|Cambria|Calibri|Segoe|Roboto|Inter|Times New Roman|Courier|Menlo|Consolas)\\b`,
);

const naming = (files: string[], ...patterns: RegExp[]): string[] =>
  files.filter((file) => patterns.some((pattern) => pattern.test(withoutComments(file)))).sort();

const SOURCE = filesIn('src', /\.ts$/);
const TEMPLATES = filesIn('templates', /\.(njk|css|js|ts|svg|html)$/);

describe('the source', () => {
  it('names a colour only in examples of how to write one, and in what SVG calls black and white', () => {
    expect(SOURCE.length).toBeGreaterThan(400);
    expect(naming(SOURCE, COLOUR)).toEqual([
      'src/parse/colour.ts',
      'src/parse/logo-paint.ts',
      'src/parse/schemas/house-style-schema.ts',
      'src/pdf/operators.ts',
    ]);
  });

  it('names a font only where the bundled ones are listed, and in examples of how to write one', () => {
    expect(naming(SOURCE, FONTS)).toEqual([
      'src/commands/make/house-fonts.ts',
      'src/domain/bundled-fonts.ts',
      'src/parse/house-style.ts',
      'src/parse/schemas/house-style-schema.ts',
      // What a device has of its own, while the house's are unpacked.
      'src/site/meanwhile-fonts.ts',
    ]);
  });
});

describe('the templates', () => {
  it('name no colour: custom properties, transparent and the colours of a forced palette only', () => {
    expect(TEMPLATES.length).toBeGreaterThan(30);
    expect(naming(TEMPLATES, COLOUR, NAMED_COLOUR)).toEqual([]);
  });

  it('name no font: every face is a custom property of the house', () => {
    expect(naming(TEMPLATES, FONTS)).toEqual([]);
    const faces = TEMPLATES.flatMap((file) => [
      ...withoutComments(file).matchAll(/font(?:-family)?\s*:\s*([^;}]+)/g),
    ]).map(([, value = '']) => value.trim());
    expect(faces.length).toBeGreaterThan(5);
    const named = faces.filter(
      (value) => /[a-z]/i.test(value) && !/var\(--(?:font|mono)|^inherit$/.test(value),
    );
    expect(named).toEqual([]);
  });
});

describe('the scan', () => {
  it('finds what it looks for', () => {
    for (const colour of [" '#74304d'", 'color: #fff;', 'rgb(1, 2, 3)', 'oklch(0.5 0.1 20)'])
      expect(COLOUR.test(colour), colour).toBe(true);
    for (const colour of ['color: red;', 'fill="white"', 'border: 1px solid grey'])
      expect(NAMED_COLOUR.test(colour), colour).toBe(true);
    for (const plain of ['href="#eggs"', 'white-space: nowrap', 'color: var(--ink)', "'#ladder'"])
      expect(COLOUR.test(plain) || NAMED_COLOUR.test(plain), plain).toBe(false);
    expect(FONTS.test('font-family: Georgia')).toBe(true);
  });
});
