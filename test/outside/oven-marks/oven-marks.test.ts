/** Oven settings as a baker writes them, against the usual table. Common practice: no standard exists. */
import { readFileSync } from 'node:fs';
import { parse } from 'csv-parse/sync';
import { describe, expect, it } from 'vitest';
import { parseTemperature } from '../../../src/parse/units/temperature.ts';

const folder = new URL('.', import.meta.url);
const { tolerance } = JSON.parse(readFileSync(new URL('source.json', folder), 'utf8'));
const rows: Record<string, string>[] = parse(readFileSync(new URL('oven.csv', folder), 'utf8'), { columns: true });

function ovenC(text: string): number {
  const oven = parseTemperature(text);
  return oven.ok ? oven.value.ovenC : Number.NaN;
}

describe('oven settings, as written', () => {
  it.each(rows)('gas $gas_mark is $fahrenheit °F, and $dial_celsius on a dial', (row) => {
    const gas = ovenC(`gas ${row.gas_mark}`);
    expect(gas).toBe(ovenC(`${row.fahrenheit}F`));
    expect(Math.abs(gas - Number(row.celsius_exact))).toBeLessThanOrEqual(0.05);
    const [low = Number.NaN, high = low] = (row.dial_celsius ?? '').split('-').map(Number);
    expect(gas).toBeGreaterThanOrEqual(low - tolerance);
    expect(gas).toBeLessThanOrEqual(high + tolerance);
  });

  it('has eleven rows, from ¼ to 9', () => expect(rows).toHaveLength(11));
});
