/** One tin's row of the finishing chart. */

import type { FinishAmount } from '../compute/finishes/amount.ts';
import { finishingFor } from '../compute/finishes/finishing.ts';
import { useAmount } from '../compute/finishes/use-amount.ts';
import { weighedPartsG } from '../compute/finishes/weighed-parts.ts';
import type { Finish } from '../domain/finish.ts';
import type { FinishingSettings } from '../domain/finishing.ts';
import type { Ingredient } from '../domain/ingredient.ts';
import type { Kitchen } from '../domain/kitchen.ts';
import { quantiseMm } from '../domain/quantise.ts';
import type { Tin } from '../domain/tin.ts';
import type { FinishingWords } from '../wording/finishing/index.ts';
import { tinOtherSize, tinSize } from '../wording/tin-size.ts';
import type { Words } from '../wording/words.ts';
import { countFigure, heightFigure, totalFigure } from './figures.ts';
import type {
  FinishingCell,
  FinishingColumn,
  FinishingRow,
  FinishingSheet,
} from './finishing-chart.types.ts';
import { boardFigure, cutFigure } from './finishing-figures.ts';
import { partAmount } from './part-amount.ts';
import { pictureOfTin } from './picture-of-tin.ts';
import type { Amount } from './tin-chart.types.ts';
import { tinLining } from './tin-lining.ts';

export interface FinishingRowInput {
  kitchen: Kitchen;
  ingredients: readonly Ingredient[];
  settings: FinishingSettings;
  words: Words;
  finishingWords: FinishingWords;
}

function partAmounts(finish: Finish, amount: FinishAmount, input: FinishingRowInput): Amount[] {
  const grams = weighedPartsG(finish, amount.partsG, input.kitchen.scale);
  return finish.parts.map((part, at) => partAmount(part, grams[at] ?? 0, input));
}

function sheetOf({ sheet }: FinishAmount, words: FinishingWords): FinishingSheet | null {
  if (sheet === null) return null;
  const across = cutFigure(sheet.acrossMm);
  const otherAcross = cutFigure(sheet.otherAcrossMm);
  const text =
    sheet.form === 'round' ? words.sheetRound(across.text) : words.sheetOblong(across.text, otherAcross.text);
  return { form: sheet.form, across, otherAcross, text };
}

function cell(finish: Finish, amount: FinishAmount, input: FinishingRowInput): FinishingCell {
  return {
    needed: totalFigure(amount.neededG),
    make: totalFigure(amount.makeG),
    buy: finish.packG === undefined ? null : totalFigure(amount.buyG),
    parts: partAmounts(finish, amount, input),
    sheet: sheetOf(amount, input.finishingWords),
  };
}

/** The strip that lines the outside wall: straight, or the outer edge of a sloping one. */
function paperStrip(tin: Tin, words: FinishingWords): FinishingRow['paperStrip'] {
  for (const piece of tinLining(tin)) {
    if (piece.kind !== 'strip' || piece.wall !== 'side') continue;
    const length = cutFigure(quantiseMm(piece.lengthMm));
    const height = cutFigure(quantiseMm(piece.heightMm));
    return { length, height, text: words.strip(length.text, height.text) };
  }
  return null;
}

/** The row of one tin; null for a tin known only by the water it holds. */
export function finishingRow(
  tin: Tin,
  finishes: readonly Finish[],
  columns: readonly FinishingColumn[],
  input: FinishingRowInput,
): FinishingRow | null {
  const { settings, words, finishingWords } = input;
  const finishing = finishingFor(tin, [...finishes], settings);
  if (finishing === null) return null;
  const cells = columns.map((column) => {
    const finish = finishes.find(({ id }) => id === column.finish.id);
    const amount = finish && useAmount(finishing, finish, column.use, settings);
    return finish && amount && amount.makeG > 0 ? cell(finish, amount, input) : null;
  });
  return {
    id: tin.id,
    tinName: tin.name,
    sizeText: tinSize(tin, words),
    otherSizeText: tinOtherSize(tin, words),
    owned: tin.owned,
    picture: pictureOfTin(tin, words),
    cakeHeight: heightFigure(finishing.cakeHeightMm),
    layers: countFigure(finishing.layers),
    cells,
    coatedAcross: cutFigure(finishing.coatedAcrossMm),
    coatedHeight: cutFigure(finishing.coatedHeightMm),
    board: boardFigure(finishing.boardAcrossMm),
    boxSide: boardFigure(finishing.boardAcrossMm),
    boxHeight: cutFigure(finishing.boxHeightMm),
    ribbon: cutFigure(finishing.ribbonMm),
    paperStrip: paperStrip(tin, finishingWords),
  };
}
