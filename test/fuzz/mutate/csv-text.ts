/** Changes that know CSV: cells exchanged, added, left out, quoted and not closed. */
import type { Dice } from '../dice.ts';
import type { Change } from './any-text.ts';
import { NASTY_VALUES } from './nasty.ts';

function onCells(change: (cells: string[], dice: Dice, text: string) => string[]): Change {
  return (text, dice) => {
    const lines = text.split('\n');
    const at = dice.below(lines.length);
    return lines.with(at, change((lines[at] ?? '').split(','), dice, text).join(',')).join('\n');
  };
}

const nastyCell = onCells((cells, dice) => cells.with(dice.below(cells.length), dice.pick(NASTY_VALUES)));
const cellOfAnother = onCells((cells, dice, text) =>
  cells.with(dice.below(cells.length), dice.pick(text.split(/[,\n]/)).trim()),
);
const addedCell = onCells((cells, dice) =>
  cells.toSpliced(dice.below(cells.length), 0, dice.pick(NASTY_VALUES)),
);
const struckCell = onCells((cells, dice) => cells.toSpliced(dice.below(cells.length), 1));
const openQuote = onCells((cells, dice) => {
  const at = dice.below(cells.length);
  return cells.with(at, `"${cells[at] ?? ''}`);
});

export const CSV_TEXT: readonly Change[] = [
  ...[
    nastyCell,
    nastyCell,
    nastyCell,
    cellOfAnother,
    cellOfAnother,
    cellOfAnother,
    addedCell,
    struckCell,
    openQuote,
  ],
];
