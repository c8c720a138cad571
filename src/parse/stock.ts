/** stock.csv: what is on the shelf: 'caster-sugar,1.2 kg', 'egg,18'. One ingredient a row. */

import type { StockLine } from '../domain/pack.ts';
import type { Place, Problem } from '../domain/problem.ts';
import { amountOnShelf } from './amount-on-shelf.ts';
import { type CsvField, csvRows } from './csv/csv-rows.ts';
import { type Shelf, shelfItem } from './formula.ts';
import { error, locate } from './problems.ts';
import { quote } from './quote.ts';
import { hiddenCharacter, lineColumn, plainLines } from './yaml/readable-text.ts';

export interface StockOutcome {
  stock: StockLine[];
  problems: Problem[];
}

const COLUMNS = ['ingredient', 'on hand'];

/** A problem's own column counts from the start of its cell. */
const at = (place: Place, problem: Problem): Problem => locate(problem, place);

function headProblem(head: readonly CsvField[] | undefined, file: string): Problem | null {
  const names = (head ?? []).map(({ text }) => text.toLowerCase());
  if (names.join() === COLUMNS.join()) return null;
  const message = `The first row is ${quote(names.join(','))}`;
  const hint = `Write '${COLUMNS.join(',')}' above the first ingredient.`;
  return at(head?.[0]?.place ?? { file, line: 1, column: 1 }, error('stock-columns', message, hint));
}

interface Row {
  line: StockLine | null;
  problems: Problem[];
}

function readRow(fields: readonly CsvField[], shelf: Shelf): Row {
  const [name, amount] = fields;
  if (name === undefined || amount === undefined || fields.length !== COLUMNS.length) {
    const hint = "Write an ingredient, a comma and how much of it there is: 'caster-sugar,1.2 kg'.";
    const message = `This row has ${fields.length === 1 ? 'one cell' : `${fields.length} cells`} where two belong`;
    return { line: null, problems: name ? [at(name.place, error('stock-row-length', message, hint))] : [] };
  }
  const item = shelfItem(name.text, shelf);
  if (!item.ok) return { line: null, problems: item.problems.map((one) => at(name.place, one)) };
  if (item.value === null) return { line: null, problems: [] };
  const found = amountOnShelf(amount.text, item.value, true);
  if (!found.ok) return { line: null, problems: found.problems.map((one) => at(amount.place, one)) };
  return { line: { ingredientId: name.text, amount: found.value }, problems: [] };
}

function repeated(rows: readonly (readonly CsvField[])[]): Problem[] {
  const lines = new Map<string, number>();
  return rows.flatMap((fields) => {
    const [name] = fields;
    if (name === undefined) return [];
    const earlier = lines.get(name.text);
    if (earlier === undefined) {
      lines.set(name.text, name.place.line ?? 0);
      return [];
    }
    const message = `${quote(name.text)} stands on line ${earlier} already`;
    return [at(name.place, error('stock-repeated', message, 'Write one row with all there is of it.'))];
  });
}

/** The stock of a file's text, or everything that is wrong with it. */
export function parseStockCsv(written: string, file: string, shelf: Shelf): StockOutcome {
  const text = plainLines(written);
  const hidden = hiddenCharacter(text);
  if (hidden !== null)
    return { stock: [], problems: [{ ...hidden.problem, file, ...lineColumn(text, hidden.index) }] };
  const [head, ...rows] = csvRows(text, file).map(({ fields }) => fields);
  const wrong = headProblem(head, file);
  if (wrong !== null) return { stock: [], problems: [wrong] };
  const read = rows.map((fields) => readRow(fields, shelf));
  return {
    stock: read.flatMap(({ line }) => line ?? []),
    problems: [...read.flatMap(({ problems }) => problems), ...repeated(rows)],
  };
}
