import { readdirSync } from 'node:fs';
import { createRequire } from 'node:module';
import { dirname } from 'node:path';
import fc from 'fast-check';
import { create, type Font } from 'fontkit';
import { describe, expect, it } from 'vitest';
import { readBundledFont } from '../../src/pdf/bundled-fonts.ts';
import { pairwiseText } from '../../src/pdf/pairwise-font.ts';
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
const signs = fc.constantFrom(
  ...'ffffiijlltTAVWYoearvy  ,.-–’“”()/0112457,·ïéçêöŁłßæ½⅓×−≤→%&\u00a0\u2044\u0301\u00ad',
);
const lines = fc.array(fc.string({ unit: signs, maxLength: 14 }), { minLength: 1, maxLength: 12 });

describe('text put together from pairs already seen', () => {
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

  it('asks the library for few of the lines of a page', () => {
    const font = fontNamed('Source Sans 3/400Regular');
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
    const weights = Array.from({ length: 400 }, (_, g) => `${g} g of sugar`);
    for (const text of weights) shape(text, true);
    expect(asked).toBeLessThan(120);
  });

  it('does not take a rule over three signs for the sum of its pairs', () => {
    const font = fontNamed('Source Serif 4/400Regular');
    const shape = shaperFor(font);
    // In this font a middle dot between two l moves; f, f and i join. The pairs alone are seen first.
    for (const text of ['al·a', 'a·la', 'aff', 'fa', 'a f', 'l·l', 'col·legi', 'office', 'off'])
      expect(shape(text, false), text).toEqual(shapeText(font, text, false));
    const between = shape('l·l', false).glyphs.map(({ dx }) => dx);
    expect(between).not.toEqual([0, 0, 0]);
    expect(pairwiseText(font)?.undecided.size).toBe(1);
  });
});
