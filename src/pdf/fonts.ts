/**
 * The house fonts, parsed once and shared by every document of a run (parsing is most of a small document's time).
 * TrueType, OpenType and WOFF as static cuts (WOFF2 is unpacked first); measures come from the very font that is embedded.
 */
import { create, type Font } from 'fontkit';
import type { FontRole, HouseStyle } from '../domain/house-style.ts';
import type { Problem } from '../domain/problem.ts';
import { fail, type Result, succeed } from '../domain/result.ts';
import { isWoff2 } from '../domain/woff2-signature.ts';
import type { Metrics } from '../prints/sheet/surface.ts';
import { type ShapedText, type Shaper, shaperFor, shapeText } from './shaped-text.ts';

export interface FontFile {
  /** As the house style names it; used in messages. */
  name: string;
  bytes: Uint8Array;
}

export interface LoadedFont {
  name: string;
  font: Font;
  shape(text: string, tabular: boolean): ShapedText;
}

export interface LoadedFonts extends Record<FontRole, LoadedFont> {
  metrics: Metrics;
}

const MM_PER_PT = 25.4 / 72;
const roles: FontRole[] = ['text', 'textBold', 'textItalic', 'heading'];

const problem = (code: string, message: string, hint: string): Problem => ({
  code,
  severity: 'error',
  message,
  hint,
});

function parsedFont(file: FontFile): Result<Font> {
  if (isWoff2(file.bytes)) throw new Error(`'${file.name}' is still packed`);
  try {
    const font = create(file.bytes as Buffer);
    if (!('variationAxes' in font))
      return fail(
        problem('font-collection', `the font '${file.name}' is a collection`, 'Give one cut as TTF or OTF.'),
      );
    return (font as Font & { fvar?: unknown }).fvar === undefined
      ? succeed(font)
      : fail(
          problem(
            'font-variable',
            `the font '${file.name}' is a variable font, which cannot be embedded`,
            'Give a static cut, such as the family’s Regular.',
          ),
        );
  } catch {
    return fail(
      problem(
        'font-unreadable',
        `the font '${file.name}' could not be read`,
        'Give a TTF, OTF, WOFF or WOFF2 file; the download may be broken.',
      ),
    );
  }
}

/** A font's rules are read when it first says something: a print seldom speaks in all four. */
function shaperWhenAsked(font: Font): Shaper {
  let shaper: Shaper | null = null;
  return (text, tabular) => {
    shaper ??= shaperFor(font);
    return shaper(text, tabular);
  };
}

/** Shaped texts of a font; beyond this a kitchen is so large that most were said once only. */
const MOST_SHAPED = 20_000;

function cachingFont(name: string, font: Font, shapeFresh: Shaper): LoadedFont {
  const shaped = [new Map<string, ShapedText>(), new Map<string, ShapedText>()] as const;
  return {
    name,
    font,
    shape(text, tabular) {
      const cache = shaped[tabular ? 1 : 0];
      const known = cache.get(text);
      if (known) return known;
      const fresh = shapeFresh(text, tabular);
      if (cache.size >= MOST_SHAPED) cache.clear();
      cache.set(text, fresh);
      return fresh;
    },
  };
}

/** Headings in the font's own small capitals; a font without any keeps them as written. */
function headingFont(plain: LoadedFont, headingCase: HouseStyle['headingCase']): LoadedFont {
  const { name, font } = plain;
  if (headingCase === 'as written' || !font.availableFeatures.includes('smcp')) return plain;
  // A glyph keeps the first sign it was asked for: plain letters come before their small capitals.
  shaperFor(font);
  return cachingFont(name, font, (text, tabular) => shapeText(font, text, tabular, true));
}

function metricsOf(fonts: Record<FontRole, LoadedFont>): Metrics {
  const measure = (pick: (font: Font) => number) => {
    // The library looks into its tables each time it is asked.
    const known = new Map<FontRole, number>();
    return (role: FontRole, sizePt: number) => {
      const font = fonts[role].font;
      const share = known.get(role) ?? pick(font) / font.unitsPerEm;
      known.set(role, share);
      return share * sizePt * MM_PER_PT;
    };
  };
  return {
    widthMm: (text, role, sizePt, tabular = false) =>
      (fonts[role].shape(text, tabular).width / 1000) * sizePt * MM_PER_PT,
    ascentMm: measure((font) => font.ascent),
    descentMm: measure((font) => -font.descent),
    capHeightMm: measure((font) => font.capHeight),
    xHeightMm: measure((font) => font.xHeight),
    hasGlyph: (codePoint, role) => fonts[role].font.hasGlyphForCodePoint(codePoint),
  };
}

/**
 * Parses the four fonts of a house style; a file given for two roles is parsed once.
 * Problems: font-variable, font-collection, font-unreadable, all at once.
 */
export function loadFonts(
  files: Record<FontRole, FontFile>,
  headingCase: HouseStyle['headingCase'] = 'as written',
): Result<LoadedFonts> {
  const byName = new Map<string, Result<LoadedFont>>();
  for (const role of roles) {
    const file = files[role];
    if (byName.has(file.name)) continue;
    const font = parsedFont(file);
    byName.set(
      file.name,
      font.ok ? succeed(cachingFont(file.name, font.value, shaperWhenAsked(font.value))) : font,
    );
  }
  const problems = [...byName.values()].flatMap((font) => (font.ok ? [] : font.problems));
  const loaded = (role: FontRole): LoadedFont => {
    const font = byName.get(files[role].name);
    if (!font?.ok) throw new Error(`font for ${role} was not loaded`);
    return font.value;
  };
  if (problems.length > 0) return fail(...problems);
  const fonts = {
    text: loaded('text'),
    textBold: loaded('textBold'),
    textItalic: loaded('textItalic'),
    heading: headingFont(loaded('heading'), headingCase),
  };
  return succeed({ ...fonts, metrics: metricsOf(fonts) });
}
