/** One tin's row of the finishing chart. */
import type { FinishAmount } from '../compute/finishes/amount.ts';
import { damAmount } from '../compute/finishes/dam.ts';
import { type Finishing, finishingFor } from '../compute/finishes/finishing.ts';
import { weighedPartsG } from '../compute/finishes/weighed-parts.ts';
import { liningPieces } from '../compute/lining/index.ts';
import { PART_SHARE } from '../domain/egg.ts';
import type { Finish, FinishPart } from '../domain/finish.ts';
import type { FinishingSettings } from '../domain/finishing.ts';
import type { Ingredient } from '../domain/ingredient.ts';
import type { Kitchen } from '../domain/kitchen.ts';
import { quantiseMm, quantiseRatio } from '../domain/quantise.ts';
import type { Tin } from '../domain/tin.ts';
import type { FinishingWords } from '../wording/finishing/index.ts';
import { formatNumber } from '../wording/number.ts';
import { spoonsFor } from '../wording/spoons.ts';
import { tinOtherSize, tinSize } from '../wording/tin-size.ts';
import type { Words } from '../wording/words.ts';
import { heightFigure, totalFigure, weighedFigure } from './figures.ts';
import type {
  FinishingCell,
  FinishingColumn,
  FinishingRow,
  FinishingSheet,
} from './finishing-chart.types.ts';
import { boardFigure, cutFigure } from './finishing-figures.ts';
import { LINING } from './lining-allowances.ts';
import { pictureOfTin } from './picture-of-tin.ts';
import type { Amount } from './tin-chart.types.ts';

export interface FinishingRowInput {
  kitchen: Kitchen;
  ingredients: readonly Ingredient[];
  settings: FinishingSettings;
  words: Words;
  finishingWords: FinishingWords;
}

/** How many eggs a part comes from, or its spoons. */
function beside(part: FinishPart, grams: number, input: FinishingRowInput): string | null {
  const { kitchen, words, finishingWords, ingredients } = input;
  if (part.eggPart === undefined) {
    const teaspoonG = ingredients.find(({ id }) => id === part.ingredientId)?.teaspoonG;
    return spoonsFor(grams, teaspoonG, words.pinch);
  }
  const eachG = kitchen.egg.shelledG * PART_SHARE[part.eggPart];
  const count = Math.ceil(quantiseRatio(grams / eachG));
  const { one, many } = words.eggParts[part.eggPart];
  return finishingWords.fromEggs(count, count === 1 ? one : many);
}

function partAmounts(finish: Finish, amount: FinishAmount, input: FinishingRowInput): Amount[] {
  const grams = weighedPartsG(finish, amount.partsG, input.kitchen.scale);
  return finish.parts.map((part, at) => ({
    figure: weighedFigure(grams[at] ?? 0),
    spoons: beside(part, grams[at] ?? 0, input),
  }));
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

function amountFor(
  column: FinishingColumn,
  finish: Finish,
  finishing: Finishing,
  settings: FinishingSettings,
): FinishAmount | null {
  if (column.use === 'dam') return damAmount(finishing.plan, finish, settings);
  return finishing.amounts.find(({ finishId, use }) => finishId === finish.id && use === column.use) ?? null;
}

/** The strip that lines the outside wall: straight, or the outer edge of a sloping one. */
function paperStrip(tin: Tin, words: FinishingWords): FinishingRow['paperStrip'] {
  for (const piece of liningPieces(tin, LINING)) {
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
    const amount = finish && amountFor(column, finish, finishing, settings);
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
    layers: { value: finishing.layers, unit: 'count', text: formatNumber(finishing.layers, 0) },
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
