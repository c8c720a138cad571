/** house-style.yaml: the look of every page and print, and the files it names. */
import {
  BUNDLED_CUTS,
  BUNDLED_FAMILIES,
  bundledFont,
  bundledFontNames,
  isBundledFont,
  isKnownBundledFont,
} from '../domain/bundled-fonts.ts';
import type { HouseStyle, Palette } from '../domain/house-style.ts';
import type { Place, Problem } from '../domain/problem.ts';
import { type Result, succeed } from '../domain/result.ts';
import { contrast, parseColour } from './colour.ts';
import { parseContentPath } from './names.ts';
import { suggest } from './nearest.ts';
import { error, refuse, warning } from './problems.ts';
import { quote } from './quote.ts';
import { houseStyleSchema } from './schemas/house-style-schema.ts';
import { parseLength } from './units/length.ts';
import { plainLines } from './yaml/readable-text.ts';
import { complete, isSound, present, type YamlReader, yamlReader } from './yaml/yaml-reader.ts';
import { yamlSource } from './yaml/yaml-source.ts';

/** A file that a style needs, and where it says so. */
export interface NamedFile {
  path: string;
  place: Place;
}

export interface HouseStyleOutcome {
  style: HouseStyle | null;
  /** Files below the content folder that must be there. */
  files: NamedFile[];
  problems: Problem[];
}

const READABLE = 4.5;
const FONT_FILE = /\.(?:ttf|otf|woff|woff2)$/i;

function notBundled(text: string): Result<string> {
  const { family, cut } = bundledFont(text);
  const isFamily = BUNDLED_FAMILIES.some((known) => known === family);
  const hint = isFamily
    ? suggest(cut, BUNDLED_CUTS, `cuts of ${family}`)
    : suggest(text, bundledFontNames(), 'bundled fonts');
  return refuse('font-not-bundled', `There is no bundled font ${quote(`${family}/${cut}`)}`, hint);
}

/** 'bundled:FAMILY/CUT' or a font file below the content folder. */
function parseFont(text: string): Result<string> {
  if (isBundledFont(text)) return isKnownBundledFont(bundledFont(text)) ? succeed(text) : notBundled(text);
  if (FONT_FILE.test(text)) return parseContentPath(text);
  const hint =
    "Write 'bundled:Source Sans 3/400Regular', or a .ttf, .otf, .woff or .woff2 file below content.";
  return refuse('font-unknown', `${quote(text)} is not a font that can be used`, hint);
}

function parseLogo(text: string): Result<string> {
  const path = parseContentPath(text);
  if (!path.ok || /\.svg$/i.test(text)) return path;
  return refuse(
    'value-not-one-of',
    `${quote(text)} is not an SVG file`,
    "Use an SVG drawing: 'assets/logo.svg'.",
  );
}

const PALETTE_KEYS = {
  paper: 'paper',
  ink: 'ink',
  quietInk: 'quiet_ink',
  rule: 'rule',
  accent: 'accent',
  accentInk: 'accent_ink',
  tint: 'tint',
  caution: 'caution',
} as const;

function checkContrast(reader: YamlReader, scheme: string, palette: Palette): void {
  const pairs: [keyof Palette, keyof Palette][] = [
    ['ink', 'paper'],
    ['quietInk', 'paper'],
    ['caution', 'paper'],
    ['accentInk', 'accent'],
  ];
  for (const [text, ground] of pairs) {
    const ratio = contrast(palette[text], palette[ground]);
    if (ratio >= READABLE) continue;
    const message = `'${PALETTE_KEYS[text]}' on '${PALETTE_KEYS[ground]}' has a contrast of ${ratio.toFixed(1)} to 1, which is hard to read`;
    const hint = `Make one of the two lighter or darker, to ${READABLE} to 1 or more.`;
    reader.report(warning('colour-contrast-low', message, hint), 'colours', scheme, PALETTE_KEYS[text]);
  }
}

function readPalette(reader: YamlReader, scheme: 'light' | 'dark'): Palette | undefined {
  const entries = Object.entries(PALETTE_KEYS).map(([name, key]) => [
    name,
    reader.parsed(parseColour, 'colours', scheme, key),
  ]);
  const palette = complete<Palette>(Object.fromEntries(entries));
  if (palette !== null) checkContrast(reader, scheme, palette);
  return palette ?? undefined;
}

function readFonts(reader: YamlReader, files: NamedFile[]): HouseStyle['fonts'] | undefined {
  const font = (key: string): string | undefined => {
    const value = reader.parsed(parseFont, 'fonts', key);
    if (value !== undefined && !isBundledFont(value)) {
      files.push({ path: value, place: reader.source.at(['fonts', key]) });
    }
    return value;
  };
  const fonts = complete<HouseStyle['fonts']>({
    text: font('text'),
    textBold: font('text_bold'),
    textItalic: font('text_italic'),
    heading: font('heading'),
  });
  return fonts ?? undefined;
}

const WIDEST_MARGIN_MM = 60;

function parseMargin(text: string): Result<{ mm: number }> {
  const length = parseLength(text);
  if (!length.ok || (length.value.mm >= 3 && length.value.mm <= WIDEST_MARGIN_MM)) return length;
  const hint = `Use 3 mm to ${WIDEST_MARGIN_MM} mm: printers cannot reach the very edge.`;
  return refuse('quantity-out-of-range', `${quote(text)} cannot be the margin of a sheet`, hint);
}

function readMargins(reader: YamlReader): HouseStyle['marginMm'] | undefined {
  const margin = (side: string): number | undefined => reader.parsed(parseMargin, 'margins', side)?.mm;
  const margins = complete<HouseStyle['marginMm']>({
    top: margin('top'),
    right: margin('right'),
    bottom: margin('bottom'),
    left: margin('left'),
  });
  return margins ?? undefined;
}

function readLogo(reader: YamlReader, files: NamedFile[]): string | undefined {
  const logo = reader.parsed(parseLogo, 'logo');
  if (logo !== undefined) files.push({ path: logo, place: reader.source.at(['logo']) });
  return logo;
}

/** The style of house-style.yaml's text, the files it names, and everything that is wrong with it. */
export function parseHouseStyleYaml(text: string, file: string): HouseStyleOutcome {
  const source = yamlSource(plainLines(text), file);
  if (!source.ok) return { style: null, files: [], problems: source.problems };
  const reader = yamlReader(source.value, houseStyleSchema);
  const files: NamedFile[] = [];
  const light = readPalette(reader, 'light');
  const dark = readPalette(reader, 'dark');
  const whole = complete<Omit<HouseStyle, 'logo'>>({
    name: reader.text('name'),
    colours: light && dark ? { light, dark } : undefined,
    fonts: readFonts(reader, files),
    headingCase: reader.word(['small capitals'] as const, 'heading_case') ?? 'as written',
    marginMm: readMargins(reader),
  });
  const optional = present({ logo: readLogo(reader, files) });
  const style = whole !== null && isSound(reader.problems) ? { ...whole, ...optional } : null;
  return { style, files, problems: reader.problems };
}

/** The problem of a file that a style names and that is not there. */
export function missingFile({ path, place }: NamedFile): Problem {
  const hint = 'Check the spelling, small and large letters included, or put the file there.';
  return {
    ...error('file-not-found', `There is no file ${quote(path)} below the content folder`, hint),
    ...place,
  };
}
