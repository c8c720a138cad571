import { readdirSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { compress } from 'wawoff2';
import { BUNDLED_CUTS, bundledFontNames } from '../../src/domain/bundled-fonts.ts';
import { readBundledFont } from '../../src/pdf/bundled-fonts.ts';
import { type FontFile, loadFonts } from '../../src/pdf/fonts.ts';
import { unpackedFont } from '../../src/read/unpacked-font.ts';
import { pageContents, rawObjects } from '../reading-back/raw-objects.ts';
import { readPdf } from '../reading-back/read-pdf.ts';
import { printed, smallPrint, words } from '../samples/printed.ts';
import { expectSameBytes } from '../samples/same-bytes.ts';
import { madeVariable } from '../samples/variable-font.ts';

function bundled(name: string): FontFile {
  const file = readBundledFont(name);
  if (!file.ok) throw new Error('missing');
  return file.value;
}

const regular = bundled('bundled:Source Sans 3/400Regular');
const all = (text: FontFile) => ({ text, textBold: regular, textItalic: regular, heading: regular });
const codes = (text: FontFile) => {
  const fonts = loadFonts(all(text));
  return fonts.ok ? [] : fonts.problems.map(({ code }) => code);
};

describe('readBundledFont', () => {
  it('names the families there are', () => {
    const font = readBundledFont('bundled:No Such/400Regular');
    expect(font.ok ? null : font.problems[0]).toMatchObject({
      code: 'font-not-bundled',
      hint: expect.stringContaining('Bundled families: Source Sans 3, Source Serif 4; their cuts: '),
    });
  });

  it('names the cuts there are', () => {
    const font = readBundledFont('bundled:Source Sans 3/450Book');
    expect(font.ok ? '' : font.problems[0]?.hint).toContain('400Regular, 400Regular_Italic');
  });
});

describe('the names a house style may write', () => {
  it('are the cuts that the packages hold, all of them', () => {
    for (const folder of ['source-sans-3', 'source-serif-4']) {
      const cuts = readdirSync(`node_modules/@expo-google-fonts/${folder}`).filter((name) =>
        /^\d{3}/.test(name),
      );
      expect([...BUNDLED_CUTS].sort()).toEqual(cuts.sort());
    }
    for (const name of bundledFontNames()) expect(readBundledFont(name).ok).toBe(true);
  });
});

describe('unpackedFont', async () => {
  const packed = { name: 'assets/Own.woff2', bytes: await compress(regular.bytes) };
  const unpacked = async (file: FontFile): Promise<FontFile> => {
    const font = await unpackedFont(file);
    if (font === null) throw new Error('broken');
    return font;
  };

  it('makes of a WOFF2 the same font: measures, and the page of a print with accents, glyph by glyph', async () => {
    expect(packed.bytes.length).toBeLessThan(regular.bytes.length / 2);
    const plain = loadFonts(all(regular));
    const own = loadFonts(all(await unpacked(packed)));
    if (!plain.ok || !own.ok) throw new Error('not loaded');
    const print = smallPrint((surface) =>
      surface.within('P', {}, () => surface.text(words('Crème brûlée, 2¾'))),
    );
    const pages = [plain.value, own.value].map((fonts) => pageContents(rawObjects(printed(print, fonts))));
    expect(pages[1]).toEqual(pages[0]);
    const [one, other] = [plain.value, own.value].map(({ metrics }) =>
      metrics.widthMm('Crème brûlée', 'text', 12),
    );
    expect(other).toBeCloseTo(one ?? 0, 6);
  });

  it('gives the same bytes every time, and leaves other fonts alone', async () => {
    expectSameBytes((await unpacked(packed)).bytes, (await unpacked(packed)).bytes);
    expect((await unpacked(regular)).bytes).toBe(regular.bytes);
  });

  it('gives none for a broken one, and a variable one is refused by name once it is unpacked', async () => {
    const broken = { name: 'assets/Own.woff2', bytes: new TextEncoder().encode('wOF2 nothing more') };
    expect(await unpackedFont(broken)).toBeNull();
    const variable = { name: 'assets/Own.woff2', bytes: await compress(madeVariable(regular.bytes)) };
    expect(codes(await unpacked(variable))).toEqual(['font-variable']);
  });
});

describe('loadFonts', () => {
  it('sets headings in the font’s small capitals where the style asks, and they still say what was written', async () => {
    const heading = bundled('bundled:Source Serif 4/600SemiBold');
    const files = { ...all(regular), heading };
    const [plain, small] = [loadFonts(files), loadFonts(files, 'small capitals')];
    if (!plain.ok || !small.ok) throw new Error('not loaded');
    const glyphs = (fonts: typeof plain.value, role: 'heading' | 'text') =>
      fonts[role].shape('Oven dials', false).glyphs.map(({ id }) => id);
    expect(glyphs(small.value, 'heading')).not.toEqual(glyphs(plain.value, 'heading'));
    expect(glyphs(small.value, 'heading')[0]).toBe(glyphs(plain.value, 'heading')[0]);
    expect(glyphs(small.value, 'text')).toEqual(glyphs(plain.value, 'text'));
    const print = smallPrint((surface) =>
      surface.within('P', {}, () => surface.text({ ...words('Oven dials'), font: 'heading' })),
    );
    const { pages } = await readPdf(printed(print, small.value));
    expect(pages[0]?.texts.map(({ text }) => text).join('')).toBe('Oven dials');
  });

  it('parses a file given for several roles once', () => {
    const fonts = loadFonts(all(regular));
    expect(fonts.ok && fonts.value.text).toBe(fonts.ok && fonts.value.heading);
  });

  it('refuses variable and broken fonts by name', () => {
    expect(codes({ name: 'assets/Own.ttf', bytes: madeVariable(regular.bytes) })).toEqual(['font-variable']);
    expect(codes({ name: 'assets/Own.ttf', bytes: new Uint8Array(40) })).toEqual(['font-unreadable']);
  });

  it('measures digits of equal width in columns, in both families', () => {
    const fonts = loadFonts({ ...all(regular), heading: bundled('bundled:Source Serif 4/600SemiBold') });
    if (!fonts.ok) throw new Error('not loaded');
    for (const role of ['text', 'heading'] as const) {
      const widths = Array.from('0123456789', (digit) => fonts.value.metrics.widthMm(digit, role, 12, true));
      expect(new Set(widths.map((width) => width.toFixed(6))).size).toBe(1);
    }
  });
});
