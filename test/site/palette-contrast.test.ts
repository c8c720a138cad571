/**
 * Can every colour be read on what it stands on? Contrast by WCAG 2.2 (W3C 2023, 1.4.3 and 1.4.11; from memory), worked
 * out here once more, in both house styles, light and dark: text 4.5 to 1, lines that mark something to touch 3 to 1.
 */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import type { Palette } from '../../src/domain/house-style.ts';
import { demoContent } from '../samples/demo.ts';

type Name = keyof Palette;

const TEXT: readonly [Name, Name][] = [
  ...(['ink', 'quietInk', 'accent', 'caution'] as const).flatMap((text): [Name, Name][] => [
    [text, 'paper'],
    [text, 'tint'],
  ]),
  ['accentInk', 'accent'],
];
const MARKS: readonly [Name, Name][] = (['rule', 'quietInk', 'accent', 'caution', 'ink'] as const).map(
  (mark) => [mark, 'paper'],
);

function luminance(hex: string): number {
  const [red = 0, green = 0, blue = 0] = [1, 3, 5].map((at) => {
    const share = Number.parseInt(hex.slice(at, at + 2), 16) / 255;
    return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
  });
  return 0.2126 * red + 0.7152 * green + 0.0722 * blue;
}

function ratio(one: string, other: string): number {
  const [low = 0, high = 0] = [luminance(one), luminance(other)].sort((a, b) => a - b);
  return (high + 0.05) / (low + 0.05);
}

const content = await demoContent();
const palettes = [content.houseStyle, ...content.houseStyles.map(({ style }) => style)].flatMap(
  ({ name, colours }) =>
    (['light', 'dark'] as const).map((scheme) => ({ name: `${name}, ${scheme}`, palette: colours[scheme] })),
);

const tooFaint = (palette: Palette, pairs: readonly [Name, Name][], least: number): string[] =>
  pairs.flatMap(([mark, ground]) => {
    const found = ratio(palette[mark], palette[ground]);
    return found >= least ? [] : [`${mark} on ${ground}: ${found.toFixed(2)}`];
  });

describe('a house style’s colours', () => {
  it('are told apart as the rule’s own extremes are: black on white is 21 to 1', () => {
    expect(ratio('#000000', '#ffffff')).toBeCloseTo(21, 10);
    expect(ratio('#767676', '#ffffff')).toBeCloseTo(4.54, 2);
  });

  it.each(palettes)('can be read as text, $name', ({ palette }) => {
    expect(tooFaint(palette, TEXT, 4.5)).toEqual([]);
  });

  it.each(palettes)('can be seen as lines and marks, $name', ({ palette }) => {
    expect(tooFaint(palette, MARKS, 3)).toEqual([]);
  });

  it('are the only ones: no style sheet puts text in the colour of a rule, or on another ground', () => {
    const folder = 'templates/style';
    const sheets = readdirSync(folder).map((name) => readFileSync(join(folder, name), 'utf8'));
    const uses = (property: string): string[] => [
      ...new Set(
        sheets.flatMap((sheet) =>
          [...sheet.matchAll(new RegExp(`(?<![-\\w])${property}: (?:[^;{}]*)var\\(--([a-z-]+)\\)`, 'g'))].map(
            ([, name = '']) => name,
          ),
        ),
      ),
    ];
    const asText = new Set(['ink', 'quiet-ink', 'accent', 'accent-ink', 'caution']);
    expect(uses('color').filter((name) => !asText.has(name))).toEqual([]);
    expect(uses('color').length).toBeGreaterThan(3);
    const grounds = new Set(['paper', 'tint', 'accent', 'ink']);
    expect(uses('background(?:-color)?').filter((name) => !grounds.has(name))).toEqual([]);
  });
});
