/** A CSV file read by a library that shares no code with ours. */
import { parse } from 'csv-parse/sync';

export type CsvRecord = Record<string, string>;

/** Records by their headers; two columns of one name are refused. */
export function csvRecords(text: string): CsvRecord[] {
  const [header = [], ...rows]: string[][] = parse(text, { record_delimiter: '\r\n' });
  if (new Set(header).size !== header.length)
    throw new Error(`two columns of one name in ${header.join(', ')}`);
  return rows.map((row) => Object.fromEntries(header.map((name, at) => [name, row[at] ?? ''])));
}

/** What a cell says, without the apostrophe that keeps a spreadsheet from running it. */
export function cellText(record: CsvRecord, header: string): string {
  const cell = record[header];
  if (cell === undefined) throw new Error(`no column '${header}' among ${Object.keys(record).join(', ')}`);
  return /^'[=+\-@\t\r]/.test(cell) ? cell.slice(1) : cell;
}
