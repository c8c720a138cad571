/** The sample style's fonts, read and parsed once per test file. */
import { readBundledFont } from '../../src/pdf/bundled-fonts.ts';
import type { FontFile } from '../../src/pdf/fonts.ts';
import { type LoadedFonts, loadFonts } from '../../src/pdf/fonts.ts';
import { sampleStyle } from './house-style.ts';

function bundled(name: string): FontFile {
  const file = readBundledFont(name);
  if (!file.ok) throw new Error(JSON.stringify(file.problems));
  return file.value;
}

export function sampleFonts(): LoadedFonts {
  const { text, textBold, textItalic, heading } = sampleStyle.fonts;
  const fonts = loadFonts({
    text: bundled(text),
    textBold: bundled(textBold),
    textItalic: bundled(textItalic),
    heading: bundled(heading),
  });
  if (!fonts.ok) throw new Error(JSON.stringify(fonts.problems));
  return fonts.value;
}
