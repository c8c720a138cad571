/** The sample style's fonts, read and parsed once per test file. */
import type { HouseStyle } from '../../src/domain/house-style.ts';
import { readBundledFont } from '../../src/pdf/bundled-fonts.ts';
import type { FontFile } from '../../src/pdf/fonts.ts';
import { type LoadedFonts, loadFonts } from '../../src/pdf/fonts.ts';
import { sampleStyle } from './house-style.ts';

function bundled(name: string): FontFile {
  const file = readBundledFont(name);
  if (!file.ok) throw new Error(JSON.stringify(file.problems));
  return file.value;
}

/** Fonts of a style that names bundled ones only. */
export function fontsOf({ fonts: names, headingCase }: HouseStyle): LoadedFonts {
  const { text, textBold, textItalic, heading } = names;
  const files = {
    text: bundled(text),
    textBold: bundled(textBold),
    textItalic: bundled(textItalic),
    heading: bundled(heading),
  };
  const fonts = loadFonts(files, headingCase);
  if (!fonts.ok) throw new Error(JSON.stringify(fonts.problems));
  return fonts.value;
}

export const sampleFonts = (): LoadedFonts => fontsOf(sampleStyle);
