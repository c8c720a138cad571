import { describe, expect, it } from 'vitest';
import { readBundledFont } from '../../src/pdf/bundled-fonts.ts';
import { type FontFile, loadFonts } from '../../src/pdf/fonts.ts';

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

/** The font with one table's entry turned into an 'fvar' table of one axis, put at the end. */
function madeVariable(bytes: Uint8Array): Uint8Array {
  const axis = new DataView(new ArrayBuffer(36));
  [1, 0, 16, 2, 1, 20, 0, 8].forEach((value, index) => {
    axis.setUint16(index * 2, value);
  });
  new Uint8Array(axis.buffer).set(new TextEncoder().encode('wght'), 16);
  [200, 400, 900].forEach((value, index) => {
    axis.setInt32(20 + index * 4, value * 65536);
  });
  const whole = new Uint8Array(bytes.length + 36);
  whole.set(bytes);
  whole.set(new Uint8Array(axis.buffer), bytes.length);
  const view = new DataView(whole.buffer);
  const entries = Array.from({ length: view.getUint16(4) }, (_, index) => 12 + index * 16);
  const tagAt = (at: number) => String.fromCharCode(...whole.subarray(at, at + 4));
  const spare = entries.find((at) => ['gasp', 'DSIG', 'STAT', 'meta'].includes(tagAt(at)));
  if (spare === undefined) throw new Error('no table to spare');
  whole.set(new TextEncoder().encode('fvar'), spare);
  view.setUint32(spare + 8, bytes.length);
  view.setUint32(spare + 12, 36);
  return whole;
}

describe('readBundledFont', () => {
  it('names the families there are', () => {
    const font = readBundledFont('bundled:No Such/400Regular');
    expect(font.ok ? null : font.problems[0]).toMatchObject({
      code: 'font-not-bundled',
      hint: "Bundled families: Source Sans 3, Source Serif 4; a cut follows, as in '/400Regular'.",
    });
  });

  it('names the cuts there are', () => {
    const font = readBundledFont('bundled:Source Sans 3/450Book');
    expect(font.ok ? '' : font.problems[0]?.hint).toContain('400Regular, 400Regular_Italic');
  });
});

describe('loadFonts', () => {
  it('parses a file given for several roles once', () => {
    const fonts = loadFonts(all(regular));
    expect(fonts.ok && fonts.value.text).toBe(fonts.ok && fonts.value.heading);
  });

  it('refuses WOFF2, variable and broken fonts by name', () => {
    const woff2 = new TextEncoder().encode('wOF2....');
    expect(codes({ name: 'assets/Own.woff2', bytes: woff2 })).toEqual(['font-woff2']);
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
