import { readdirSync } from 'node:fs';
import { createRequire } from 'node:module';
import { dirname } from 'node:path';
import fc from 'fast-check';
import { create, type Font } from 'fontkit';
import { describe, expect, it } from 'vitest';
import { readBundledFont } from '../../src/pdf/bundled-fonts.ts';
import { shaperFor, shapeText } from '../../src/pdf/shaped-text.ts';

const { resolve } = createRequire(import.meta.url);

function fontNamed(name: string): Font {
  const file = readBundledFont(`bundled:${name}`);
  if (!file.ok) throw new Error(`no font ${name}`);
  return create(file.value.bytes as Buffer) as Font;
}

function cutsOf(family: string, packageName: string): string[] {
  const folder = dirname(resolve(`@expo-google-fonts/${packageName}/package.json`));
  return readdirSync(folder)
    .filter((name) => /^\d{3}/.test(name))
    .map((cut) => `${family}/${cut}`);
}

const FEW = ['Source Sans 3/400Regular', 'Source Serif 4/400Regular_Italic'];
const CUTS =
  process.env.TINWRIGHT_LONG === '1'
    ? [...cutsOf('Source Sans 3', 'source-sans-3'), ...cutsOf('Source Serif 4', 'source-serif-4')]
    : FEW;

/** Letters that join, kern, change in columns or set off rules over several signs, and some of every other kind. */
const telling = fc.constantFrom(
  ...'ffffiijlltTAVWYoearvy  ,.-–’“”()/0112457,·ïéçêöŁłßæ½⅓×−≤→%&\u00a0\u2044\u0301\u00ad',
);
const anyLatin = fc.integer({ min: 0x20, max: 0x17f }).map((code) => String.fromCodePoint(code));
const signs = fc.oneof({ weight: 7, arbitrary: telling }, { weight: 1, arbitrary: anyLatin });
const lines = fc.array(fc.string({ unit: signs, maxLength: 14 }), { minLength: 1, maxLength: 12 });

describe('text set from the font’s own rules', () => {
  it.each(CUTS)('is what the font library says of the whole line: %s', (name) => {
    const font = fontNamed(name);
    const shape = shaperFor(font);
    fc.assert(
      fc.property(lines, fc.boolean(), (texts, tabular) => {
        for (const text of texts) expect(shape(text, tabular)).toEqual(shapeText(font, text, tabular));
      }),
      { numRuns: 120, seed: 11 },
    );
  });

  it('needs nothing of the library where all letters are plain, joined ones too', () => {
    const font = fontNamed('Source Serif 4/400Regular');
    let asked = 0;
    const counted = Object.create(font, {
      layout: {
        value: (...given: Parameters<Font['layout']>) => {
          asked += 1;
          return font.layout(...given);
        },
      },
    }) as Font;
    const shape = shaperFor(counted);
    const lines = Array.from({ length: 400 }, (_, g) => `${g} g of fine flour, office waffles, “Ångström”`);
    for (const text of lines) expect(shape(text, true)).toEqual(shapeText(font, text, true));
    expect(asked).toBe(0);
    shape('3\u204416', true);
    expect(asked).toBe(1);
  });

  it.each(['GSUB', 'GPOS'])('leaves a font to the library whose table %s ends too soon', (tag) => {
    const font = fontNamed('Source Sans 3/400Regular');
    const { directory } = font as unknown as { directory: { tables: Record<string, { length: number }> } };
    const table = directory.tables[tag];
    if (table) table.length = 40;
    for (const text of ['Two eggs', 'AVAY 165 g'])
      expect(shaperFor(font)(text, true)).toEqual(shapeText(font, text, true));
  });

  it('does not take a rule over three signs for the sum of its pairs', () => {
    const font = fontNamed('Source Serif 4/400Regular');
    const shape = shaperFor(font);
    // In this font a middle dot between two l moves; f, f and i join. The pairs alone are seen first.
    for (const text of ['al·a', 'a·la', 'aff', 'fa', 'a f', 'l·l', 'col·legi', 'office', 'off'])
      expect(shape(text, false), text).toEqual(shapeText(font, text, false));
    const between = shape('l·l', false).glyphs.map(({ dx }) => dx);
    expect(between).not.toEqual([0, 0, 0]);
  });
});
