import { parse } from 'csv-parse/sync';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { csvRows } from '../../../src/parse/csv/csv-rows.ts';

const texts = (text: string): string[][] =>
  csvRows(text, 'log.csv').map((row) => row.fields.map((field) => field.text));

describe('csvRows', () => {
  it('keeps the line and column of every field, also after a quoted line end', () => {
    const rows = csvRows('date,note\n2026-11-01,"two\nlines, ""so"""\n2026-11-02,flat\n', 'log.csv');
    expect(rows.map((row) => row.fields.map(({ text }) => text))).toEqual([
      ['date', 'note'],
      ['2026-11-01', 'two\nlines, "so"'],
      ['2026-11-02', 'flat'],
    ]);
    expect(rows[2]?.fields[1]?.place).toEqual({ file: 'log.csv', line: 4, column: 12 });
  });

  it('leaves blank rows out and keeps empty fields', () => {
    expect(texts('a,b\n\n ,\n,x')).toEqual([
      ['a', 'b'],
      ['', 'x'],
    ]);
  });

  it('agrees with a general CSV library on a thousand tables', () => {
    const field = fc.string({ unit: fc.constantFrom('a', 'b', ',', '"', '\n', '7', 'é'), maxLength: 6 });
    const table = fc.array(fc.array(field, { minLength: 3, maxLength: 3 }), { minLength: 1, maxLength: 5 });
    fc.assert(
      fc.property(table, (rows) => {
        const text = rows
          .map((row) => row.map((cell) => `"${cell.replaceAll('"', '""')}"`).join(','))
          .join('\n');
        const wanted = parse(text, { skip_records_with_empty_values: true }).map((row) =>
          row.map((cell) => cell.trim()),
        );
        expect(texts(text)).toEqual(wanted);
      }),
      { numRuns: 1000, seed: 20261101 },
    );
  });
});
