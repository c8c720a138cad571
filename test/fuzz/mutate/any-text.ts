/** Changes that know nothing of the text: signs and lines struck out, doubled, swapped, put in. */
import type { Dice } from '../dice.ts';
import { NASTY_VALUES } from './nasty.ts';

export type Change = (text: string, dice: Dice) => string;

function changedLines(change: (lines: string[], dice: Dice) => string[]): Change {
  return (text, dice) => change(text.split('\n'), dice).join('\n');
}

const cut: Change = (text, dice) => text.slice(0, dice.below(text.length + 1));

const strike: Change = (text, dice) => {
  const at = dice.below(text.length + 1);
  return text.slice(0, at) + text.slice(at + 1 + dice.below(12));
};

const putIn: Change = (text, dice) => {
  const at = dice.below(text.length + 1);
  return text.slice(0, at) + dice.pick(NASTY_VALUES) + text.slice(at);
};

const otherSign: Change = (text, dice) => {
  const at = dice.below(text.length + 1);
  return (
    text.slice(0, at) +
    String.fromCharCode(dice.below(dice.below(2) === 0 ? 128 : 65_536)) +
    text.slice(at + 1)
  );
};

const otherNumber: Change = (text, dice) => {
  const numbers = [...text.matchAll(/\d+(?:\.\d+)?/g)];
  if (numbers.length === 0) return text;
  const { 0: found, index } = dice.pick(numbers);
  const written = [
    '0',
    '1',
    '9'.repeat(1 + dice.below(30)),
    `${found}0`,
    `-${found}`,
    `${found}.5`,
    `0.${found}`,
    '½',
  ];
  return text.slice(0, index) + dice.pick(written) + text.slice(index + found.length);
};

const strikeLine = changedLines((lines, dice) => lines.toSpliced(dice.below(lines.length), 1));
const doubleLine = changedLines((lines, dice) => {
  const at = dice.below(lines.length);
  return lines.toSpliced(dice.below(lines.length), 0, lines[at] ?? '');
});
const swapLines = changedLines((lines, dice) => {
  const [one, other] = [dice.below(lines.length), dice.below(lines.length)];
  return lines.with(one, lines[other] ?? '').with(other, lines[one] ?? '');
});
const otherEnds: Change = (text, dice) => text.replaceAll('\n', dice.pick(['\r\n', '\r', '\n\n', '\u2028']));

export const ANY_TEXT: readonly Change[] = [
  ...[cut, strike, strike, putIn, putIn, otherSign, otherNumber, otherNumber],
  ...[strikeLine, doubleLine, swapLines, otherEnds],
];
