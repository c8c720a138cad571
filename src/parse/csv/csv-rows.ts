/**
 * Rows of a CSV file (RFC 4180, from memory) with the line and column of every field, so that a problem in a
 * long log can be found. The first row names the columns. Quotes may hold commas, line ends and doubled quotes.
 */
import type { Place } from '../../domain/problem.ts';

export interface CsvField {
  text: string;
  place: Place;
  /** The field opens a quote that nothing closes; it then ends with its line, so that the rows below still count. */
  unclosed?: true;
}

export interface CsvRow {
  fields: CsvField[];
}

interface Cursor {
  text: string;
  at: number;
  line: number;
  lineStart: number;
}

function step(cursor: Cursor): string {
  const sign = cursor.text[cursor.at] ?? '';
  cursor.at += 1;
  if (sign === '\n') {
    cursor.line += 1;
    cursor.lineStart = cursor.at;
  }
  return sign;
}

/** The text in quotes; null, with the cursor back where it was, when they are never closed. */
function quoted(cursor: Cursor): string | null {
  const start = { ...cursor };
  let value = '';
  step(cursor);
  while (cursor.at < cursor.text.length) {
    const sign = step(cursor);
    if (sign !== '"') value += sign;
    else if (cursor.text[cursor.at] === '"') value += step(cursor);
    else return value;
  }
  Object.assign(cursor, start);
  return null;
}

function nextField(cursor: Cursor, file: string): CsvField {
  const place = { file, line: cursor.line, column: cursor.at - cursor.lineStart + 1 };
  const inQuotes = cursor.text[cursor.at] === '"' ? quoted(cursor) : '';
  const end = inQuotes === null ? /\n/ : /[,\n]/;
  let text = inQuotes ?? '';
  while (cursor.at < cursor.text.length && !end.test(cursor.text[cursor.at] ?? '')) text += step(cursor);
  return { text: text.trim(), place, ...(inQuotes === null ? { unclosed: true } : {}) };
}

/** Every row that is not blank; `text` has plain line ends. */
export function csvRows(text: string, file: string): CsvRow[] {
  const cursor: Cursor = { text, at: 0, line: 1, lineStart: 0 };
  const rows: CsvRow[] = [];
  while (cursor.at < text.length) {
    const fields = [nextField(cursor, file)];
    while (text[cursor.at] === ',') {
      step(cursor);
      fields.push(nextField(cursor, file));
    }
    step(cursor);
    if (fields.some((field) => field.text !== '')) rows.push({ fields });
  }
  return rows;
}
