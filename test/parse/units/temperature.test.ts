import { describe, expect, it } from 'vitest';
import { parseTemperature } from '../../../src/parse/units/temperature.ts';

describe('parseTemperature', () => {
  it.each([
    ['160C', 160, 'conventional', 'C', 160],
    ['160 °C', 160, 'conventional', 'C', 160],
    ['160 degrees C', 160, 'conventional', 'C', 160],
    ['140C fan', 160, 'fan', 'C', 140],
    ['140 °C (fan)', 160, 'fan', 'C', 140],
    ['fan 140C', 160, 'fan', 'C', 140],
    ['325F fan', 176.666666667, 'fan', 'F', 325],
    ['325F convection', 176.666666667, 'fan', 'F', 325],
    ['350F', 176.666666667, 'conventional', 'F', 350],
    ['gas 4', 176.666666667, 'conventional', 'gas', 4],
    ['Gas Mark 1', 135, 'conventional', 'gas', 1],
    ['gas ½', 121.111111111, 'conventional', 'gas', 0.5],
    ['gas 1/4', 107.222222222, 'conventional', 'gas', 0.25],
  ])('%s is %d °C in a conventional oven', (text, ovenC, kind, scale, written) => {
    expect(parseTemperature(text)).toEqual({ ok: true, value: { ovenC, kind, scale, written } });
  });

  it.each([
    ['180', 'unit-missing', 'Write 180C or 180F.'],
    ['160 fan', 'unit-missing', 'Write 160C fan or 160F fan.'],
    ['gas 10', 'gas-mark-unknown', 'Gas marks are ¼, ½ and 1 to 9.'],
    ['gas 4½', 'gas-mark-unknown', 'Gas marks are ¼, ½ and 1 to 9.'],
    ['hot', 'quantity-unreadable', 'Write it like 160C, 140C fan, 350F or gas 4.'],
    [
      '350C',
      'quantity-out-of-range',
      'Use 50C to 300C without fan (120F to 570F). Check whether it is C or F.',
    ],
    [
      '20C',
      'quantity-out-of-range',
      'Use 50C to 300C without fan (120F to 570F). Check whether it is C or F.',
    ],
  ])('%s is refused: %s', (text, code, hint) => {
    const result = parseTemperature(text);
    expect(result.ok ? null : result.problems.map((problem) => [problem.code, problem.hint])).toEqual([
      [code, hint],
    ]);
  });
});
