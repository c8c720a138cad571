/** Warnings of a chart's rows as lettered remarks: said once below the table, however many tins they concern. */
import type { BookletWords } from '../../wording/booklet/index.ts';
import type { TinChartRow } from '../tin-chart.types.ts';

/** Letters by the id of the row. */
export type RemarkLetters = ReadonlyMap<string, string[]>;

interface Remark {
  /** What rows share to share the remark. */
  key: string;
  text(rows: readonly TinChartRow[]): string;
}

const LETTERS = 'abcdefghijklmnopqrstuvwxyz';

/** 'a' to 'z', then 'aa'. */
const letterOf = (index: number): string =>
  index < LETTERS.length
    ? LETTERS.charAt(index)
    : `${letterOf(Math.floor(index / LETTERS.length) - 1)}${LETTERS.charAt(index % LETTERS.length)}`;

function loweredText(rows: readonly TinChartRow[], recipeHeight: string, words: BookletWords): string {
  const tins = new Map(rows.map((row) => [row.tinId, row]));
  const list = [...tins.values()].map(({ tinName, finishedHeight }) =>
    words.recipe.loweredTin(tinName, `${finishedHeight.text}\u00a0${words.recipe.fillUnit}`),
  );
  return words.recipe.lowered(recipeHeight, list.join(', '));
}

function remarkOf(
  { code, message }: TinChartRow['warnings'][number],
  recipeHeight: string,
  words: BookletWords,
): Remark {
  if (code === 'height-limited') return { key: code, text: (rows) => loweredText(rows, recipeHeight, words) };
  if (code === 'fill-high') return { key: code, text: () => words.recipe.collar };
  return { key: `${code} ${message}`, text: () => message };
}

/** Remarks in the order they are met, and their letters row by row. */
export function remarksOf(
  rows: readonly TinChartRow[],
  recipeHeight: string,
  words: BookletWords,
): { remarks: { letter: string; text: string }[]; letters: RemarkLetters } {
  const found = new Map<string, { remark: Remark; rows: TinChartRow[] }>();
  for (const row of rows) {
    for (const warning of row.warnings) {
      const remark = remarkOf(warning, recipeHeight, words);
      const known = found.get(remark.key);
      if (known) known.rows.push(row);
      else found.set(remark.key, { remark, rows: [row] });
    }
  }
  const lettered = [...found.values()].map((entry, index) => ({ ...entry, letter: letterOf(index) }));
  const letters = new Map(
    rows.map((row) => [
      row.id,
      lettered.filter((entry) => entry.rows.includes(row)).map(({ letter }) => letter),
    ]),
  );
  return {
    remarks: lettered.map(({ letter, remark, rows: concerned }) => ({
      letter,
      text: remark.text(concerned),
    })),
    letters,
  };
}
