/** The egg ladder, ready to print. */

import type { Fill } from '../compute/fills/best-fills.ts';
import { eggLadder, eggStep, type LadderStep } from '../compute/ladder/egg-ladder.ts';
import type { Tin } from '../domain/tin.ts';
import { eggsInWords } from '../wording/eggs.ts';
import { listInWords } from '../wording/list.ts';
import type { Words } from '../wording/words.ts';
import { chartAmounts, chartColumns } from './chart-columns.ts';
import { type ChartInput, chartFormula } from './chart-mixes.ts';
import { totalFigure, wholeEggsFigure } from './figures.ts';
import type { ChartColumn, EggLadder, LadderRung } from './tin-chart.types.ts';

function fillText(fill: Fill, tins: readonly Tin[], words: Words): string {
  const named = fill.tins.map(({ id, count }) => {
    const name = tins.find((tin) => tin.id === id)?.name ?? id;
    return words.chart.countOfTin(count, name);
  });
  return listInWords(named, words.and);
}

function rung(step: LadderStep, columns: ChartColumn[], input: ChartInput, words: Words): LadderRung {
  return {
    eggs: wholeEggsFigure(step.eggs),
    eggText: eggsInWords(step.parts, words),
    batter: totalFigure(step.batterG),
    amounts: chartAmounts(columns, step.lines, input.ingredients, words),
    fills: step.fills.map((fill) => ({
      text: fillText(fill, input.kitchen.tins, words),
      used: totalFigure(fill.usedG),
      left: totalFigure(fill.leftG),
    })),
  };
}

/** So many eggs: what they make, and the tins of each fill. */
export interface EggRung {
  columns: ChartColumn[];
  rung: LadderRung;
  /** Tins of each fill, in the order of the rung's fills. */
  fills: { id: string; count: number }[][];
}

/** The answer to 'I have 7 eggs'; null for a recipe without eggs. */
export function eggRung(input: ChartInput, eggs: number, best: number, words: Words): EggRung | null {
  const formula = chartFormula(input);
  const { recipe, kitchen, flavours } = input;
  const step = eggStep({ recipe, formula, kitchen, growth: flavours?.growth ?? 1 }, eggs, best);
  if (step === null) return null;
  const columns = chartColumns(formula, { ...kitchen.egg, otherwise: 'step-up' });
  return {
    columns,
    rung: rung(step, columns, input, words),
    fills: step.fills.map(({ tins }) => tins.map(({ id, count }) => ({ id, count }))),
  };
}

/** Rungs from one egg up; null for a recipe without eggs. Eggs are counted here, never weighed. */
export function eggLadderView(input: ChartInput, words: Words): EggLadder | null {
  const formula = chartFormula(input);
  const { recipe, kitchen, flavours } = input;
  const steps = eggLadder({ recipe, formula, kitchen, growth: flavours?.growth ?? 1 });
  if (steps === null) return null;
  const columns = chartColumns(formula, { ...kitchen.egg, otherwise: 'step-up' });
  return { columns, rungs: steps.map((step) => rung(step, columns, input, words)) };
}
