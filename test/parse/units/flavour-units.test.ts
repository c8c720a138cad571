import { describe, expect, it } from 'vitest';
import type { Result } from '../../../src/domain/result.ts';
import { parseAltitude } from '../../../src/parse/units/altitude.ts';
import { parseDays } from '../../../src/parse/units/days.ts';
import { parsePerArea } from '../../../src/parse/units/per-area.ts';
import { parseProportion } from '../../../src/parse/units/share.ts';

const read = (result: Result<number>): number | string =>
  result.ok ? result.value : (result.problems[0]?.code ?? 'no code');

describe('units of flavours and finishes', () => {
  it.each([
    ['75 %', 0.75],
    ['120%', 1.2],
    ['12.5 %', 0.125],
    ['½ %', 0.005],
    ['0 %', 'quantity-not-positive'],
    ['1100 %', 'quantity-out-of-range'],
    ['75', 'unit-missing'],
  ])('parseProportion(%j) is %s', (text, expected) => expect(read(parseProportion(text))).toBe(expected));

  it.each([
    ['3 days', 3],
    ['1 day', 1],
    ['2 weeks', 14],
    ['1½ days', 'quantity-unreadable'],
    ['3', 'unit-missing'],
    ['400 days', 'quantity-out-of-range'],
    ['3 months', 'unit-unknown'],
  ])('parseDays(%j) is %s', (text, expected) => expect(read(parseDays(text))).toBe(expected));

  it.each([
    ['0.12 g/cm2', 0.12],
    ['0.12g/cm²', 0.12],
    ['0.12 g', 'unit-unknown'],
    ['5 g/cm2', 'quantity-out-of-range'],
    ['0.12', 'unit-missing'],
  ])('parsePerArea(%j) is %s', (text, expected) => expect(read(parsePerArea(text))).toBe(expected));

  it.each([
    ['1600 m', 1600],
    ['5000 ft', 1524],
    ['0 m', 0],
    ['-5 m', 'quantity-not-positive'],
    ['9000 m', 'quantity-out-of-range'],
    ['1600', 'unit-missing'],
    ['1 mile', 'unit-unknown'],
  ])('parseAltitude(%j) is %s', (text, expected) => expect(read(parseAltitude(text))).toBe(expected));
});
