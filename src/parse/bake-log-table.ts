/**
 * The bake log as a table: which column is which, and cells by the name of their column. A row of the wrong
 * length or with an open quote is reported and left out; the others are read.
 */
import type { Place, Problem } from '../domain/problem.ts';
import type { Result } from '../domain/result.ts';
import { type CsvField, type CsvRow, csvRows } from './csv/csv-rows.ts';
import { suggest } from './nearest.ts';
import { error, locate } from './problems.ts';
import { quote } from './quote.ts';

export const NEEDED = ['date', 'recipe', 'tin', 'batter', 'oven', 'minutes'] as const;
export const OPTIONAL = [
  'flavours',
  'count',
  'done_by',
  'which_oven',
  'batter_temperature',
  'core',
  'band',
  'height',
  'mass_out',
  'notes',
] as const;
export type LogColumn = (typeof NEEDED)[number] | (typeof OPTIONAL)[number];
const COLUMNS: readonly LogColumn[] = [...NEEDED, ...OPTIONAL];

/** The cells of one row; problems are kept with the place of their cell. */
export interface LogCells {
  line: number;
  start: Place;
  /** '' for an empty cell and for a column that the log does not have. */
  text(column: LogColumn): string;
  /** Reads a cell that must be filled; an empty one is a problem. */
  needed<T>(column: LogColumn, parse: (text: string) => Result<T>): T | undefined;
  /** Reads a cell if there is anything in it. */
  optional<T>(column: LogColumn, parse: (text: string) => Result<T>): T | undefined;
  report(problem: Problem, column: LogColumn): void;
}

export interface LogTable {
  rows: LogCells[];
  problems: Problem[];
}

const EXAMPLE =
  'Start the file with: date,recipe,flavours,tin,count,batter,oven,minutes,done_by,core,band,height,mass_out,notes';

/** Columns by where they stand; null for one that nobody knows. */
function readHeader(head: CsvRow, problems: Problem[]): (LogColumn | null)[] {
  const columns = head.fields.map(({ text }) => COLUMNS.find((column) => column === text) ?? null);
  head.fields.forEach(({ text, place }, at) => {
    const column = columns[at] ?? null;
    if (column === null) {
      const hint = suggest(text, COLUMNS, 'columns');
      problems.push(
        locate(error('log-column-unknown', `A bake log has no column ${quote(text)}`, hint), place),
      );
    } else if (columns.indexOf(column) < at) {
      const message = `The column ${quote(text)} stands there twice`;
      problems.push(locate(error('log-column-repeated', message, 'Delete one of the two.'), place));
    }
  });
  const missing = NEEDED.filter((column) => !columns.includes(column));
  const place = head.fields[0]?.place;
  if (missing.length > 0 && place !== undefined && !columns.includes(null)) {
    const message = `The log has no column ${missing.map((column) => quote(column)).join(', ')}`;
    problems.push(locate(error('log-column-missing', message, `${EXAMPLE}.`), place));
  }
  return columns;
}

/** What keeps a row from being read at all, or null. */
function rowProblem({ fields }: CsvRow, length: number): Problem | null {
  const open = fields.find(({ unclosed }) => unclosed);
  if (open !== undefined) {
    const hint = 'Close it with a second " on the same line, or write the cell without any.';
    return locate(
      error('csv-quote-unclosed', 'This cell opens a quotation mark and never closes it', hint),
      open.place,
    );
  }
  const place = fields[0]?.place;
  if (fields.length === length || place === undefined) return null;
  const few = fields.length < length;
  const hint = few
    ? 'Leave a comma for every empty cell.'
    : 'Put quotation marks round a note that has a comma in it.';
  const message = `This row has ${fields.length} cells under ${length} columns`;
  return locate(error('log-row-length', message, hint), few ? place : (fields[length]?.place ?? place));
}

function cellsOf({ fields }: CsvRow, columns: readonly (LogColumn | null)[], problems: Problem[]): LogCells {
  const start = fields[0]?.place ?? { file: '' };
  const field = (column: LogColumn): CsvField => {
    const at = columns.indexOf(column);
    return fields[at] ?? { text: '', place: start };
  };
  const report = (problem: Problem, column: LogColumn): void => {
    problems.push(locate(problem, field(column).place));
  };
  const read = <T>(column: LogColumn, parse: (text: string) => Result<T>): T | undefined => {
    const result = parse(field(column).text);
    if (result.ok) return result.value;
    for (const problem of result.problems) report(problem, column);
    return undefined;
  };
  return {
    line: start.line ?? 0,
    start,
    text: (column) => field(column).text,
    needed(column, parse) {
      if (field(column).text !== '') return read(column, parse);
      const hint = 'Fill it in, or take the row out: a bake without it cannot teach anything.';
      if (columns.includes(column))
        report(error('log-value-missing', `${quote(column)} is empty in this row`, hint), column);
      return undefined;
    },
    optional: (column, parse) => (field(column).text === '' ? undefined : read(column, parse)),
    report,
  };
}

/** The rows of a log's text (plain line ends), with what is wrong with its header and with rows of the wrong shape. */
export function logTable(text: string, file: string): LogTable {
  const [head, ...rest] = csvRows(text, file);
  const problems: Problem[] = [];
  if (head === undefined) return { rows: [], problems };
  const columns = readHeader(head, problems);
  const rows = rest.flatMap((row) => {
    const problem = rowProblem(row, columns.length);
    if (problem === null) return [cellsOf(row, columns, problems)];
    problems.push(problem);
    return [];
  });
  return { rows, problems };
}
