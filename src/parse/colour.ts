/** Colours of a house style: '#rrggbb', and whether text on them can be read. */
import { type Result, succeed } from '../domain/result.ts';
import { refuse } from './problems.ts';
import { quote } from './quote.ts';

/** A colour as '#rrggbb' in small letters. */
export function parseColour(text: string): Result<string> {
  if (/^#[0-9a-f]{6}$/i.test(text)) return succeed(text.toLowerCase());
  const hint = "Write # and six signs from 0–9 and a–f, in quotes because # starts a comment: '#2a2226'.";
  return refuse('colour-unreadable', `${quote(text)} is not a colour`, hint);
}

function channel(hex: string): number {
  const share = Number.parseInt(hex, 16) / 255;
  return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
}

function luminance(colour: string): number {
  const [red, green, blue] = [colour.slice(1, 3), colour.slice(3, 5), colour.slice(5, 7)].map(channel);
  return 0.2126 * (red ?? 0) + 0.7152 * (green ?? 0) + 0.0722 * (blue ?? 0);
}

/** Contrast of two colours, 1 to 21, to one decimal (WCAG 2.2, W3C 2023, 'contrast ratio'; from memory). */
export function contrast(one: string, other: string): number {
  const [light = 0, dark = 0] = [luminance(one), luminance(other)].sort((a, b) => b - a);
  return Math.round(((light + 0.05) / (dark + 0.05)) * 10) / 10;
}
