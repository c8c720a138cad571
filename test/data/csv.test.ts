import { parse } from 'csv-parse/sync';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { csvText } from '../../src/data/csv.ts';

const read = (text: string): string[][] =>
  parse(text, { record_delimiter: '\r\n', relax_column_count: false });

describe('csvText', () => {
  it('ends every record with CR and LF, the last one too (RFC 4180 section 2.1)', () => {
    expect(csvText(['a', 'b'], [['c', 1]])).toBe('a,b\r\nc,1\r\n');
  });

  it('quotes commas, quotes and line breaks, and doubles quotes inside (RFC 4180 sections 2.6 and 2.7)', () => {
    expect(csvText(['a'], [['x,y'], ['8" round'], ['one\ntwo']])).toBe(
      'a\r\n"x,y"\r\n"8"" round"\r\n"one\ntwo"\r\n',
    );
  });

  it.each(['=1+1', '+44', '-2', '@cell', '\tx', '\rx', '\nx', '  =1', '＝1', '＠x'])(
    'makes %j text that no spreadsheet runs',
    (text) => {
      expect(read(csvText(['a'], [[text]]))[1]).toEqual([`'${text}`]);
    },
  );

  it('writes numbers bare, negative ones too', () => {
    expect(csvText(['a'], [[-7.5], [0.001], [1234567.891]])).toBe('a\r\n-7.5\r\n0.001\r\n1234567.891\r\n');
  });

  it('refuses what is not a number', () => {
    expect(() => csvText(['a'], [[Number.NaN]])).toThrow('not a number for CSV');
  });

  it('refuses a record that does not fit its header', () => {
    expect(() => csvText(['a', 'b'], [['c']])).toThrow('a record of 1 cells under a header of 2');
  });

  it('gives back any text to a reader that is not ours', () => {
    const cell = fc.string({ unit: 'binary' }).filter((text) => !/^ *[=+\-@\t\r\n＝＋－＠]/.test(text));
    fc.assert(
      fc.property(fc.array(fc.tuple(cell, cell), { minLength: 1 }), (records) => {
        expect(read(csvText(['a', 'b'], records)).slice(1)).toEqual(records);
      }),
      { numRuns: 1000 },
    );
  });
});
