import { create, type Font } from 'fontkit';
import subsetFont from 'subset-font';
import { describe, expect, it } from 'vitest';
import { readBundledFont } from '../../src/pdf/bundled-fonts.ts';
import { shareGlyphs } from '../../src/pdf/embedded-glyphs.ts';
import { pdfNumber } from '../../src/pdf/operators.ts';
import type { GlyphSubset } from '../../src/pdf/pdfkit-internals.ts';

function fontNamed(name: string): Font {
  const file = readBundledFont(`bundled:${name}`);
  if (!file.ok) throw new Error(`no font ${name}`);
  return create(file.value.bytes as Buffer) as Font;
}

function embedded(font: Font, text: string, shared: boolean): Uint8Array {
  const subset = font.createSubset() as unknown as GlyphSubset;
  if (shared) shareGlyphs(subset);
  for (const sign of text) subset.includeGlyph(font.glyphForCodePoint(sign.codePointAt(0) ?? 0).id);
  return subset.encode();
}

describe('glyphs read once for all documents', () => {
  it.each(['Source Sans 3/400Regular', 'Source Serif 4/700Bold'])(
    'are embedded as the library embeds them, accents and their letters included: %s',
    (name) => {
      const font = fontNamed(name);
      // The second text takes glyphs that the first has left behind, under other numbers.
      for (const text of ['Crème brûlée, 165 g', 'Éclair à la crème ½ œuf ☐', 'gâteau']) {
        expect(Buffer.from(embedded(font, text, true))).toEqual(Buffer.from(embedded(font, text, false)));
      }
    },
  );
});

describe('a font packed as WOFF', () => {
  it('is embedded as the library embeds it', async () => {
    const file = readBundledFont('bundled:Source Sans 3/600SemiBold');
    if (!file.ok) throw new Error('no font');
    const text = 'Crème brûlée, 165 g';
    const woff = await subsetFont(Buffer.from(file.value.bytes), text, { targetFormat: 'woff' });
    const font = create(woff) as Font;
    expect(font.type).toBe('WOFF');
    expect(Buffer.from(embedded(font, text, true))).toEqual(Buffer.from(embedded(font, text, false)));
  });
});

describe('what documents ask of the table of glyph names', () => {
  it.each(['Source Sans 3/400Regular', 'Source Serif 4/400Regular_Italic'])(
    'is read without the names: %s',
    (name) => {
      const [font, whole] = [fontNamed(name), fontNamed(name)] as unknown as { post: object }[];
      shareGlyphs((font as unknown as Font).createSubset() as unknown as GlyphSubset);
      expect(font?.post).not.toHaveProperty('names');
      expect(whole?.post).toMatchObject(font?.post ?? { none: true });
    },
  );
});

describe('numbers in a page', () => {
  it('are those that the engine writes, to three decimals', () => {
    for (let n = -30_000; n <= 30_000; n += 7) {
      const value = n / 997;
      const rounded = Math.round(value * 1000) / 1000;
      expect(pdfNumber(value)).toBe(rounded === 0 ? '0' : String(rounded));
    }
    expect([-0.0004, 0.0005, 999.9996, 1e13, -12.5].map(pdfNumber)).toEqual([
      '0',
      '0.001',
      '1000',
      '10000000000000',
      '-12.5',
    ]);
  });
});
