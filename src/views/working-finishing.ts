/**
 * How did an amount of filling or coating come about? For every tin the plan, the volume of each use, and from
 * there to what is on the cake, what to make and what to buy; then board, box and ribbon.
 */

import { type FinishAmount, type Finishing, finishingFor } from '../compute/finishes/finishing.ts';
import { outsideWallMm } from '../compute/finishes/outside-wall.ts';
import { syrupG } from '../compute/finishes/syrup.ts';
import { useAmount } from '../compute/finishes/use-amount.ts';
import type { Finish } from '../domain/finish.ts';
import { quantiseG } from '../domain/quantise.ts';
import type { Tin } from '../domain/tin.ts';
import { finishingWorkingWordsFor } from '../wording/finishing/working.ts';
import { wordsFor } from '../wording/locales/index.ts';
import { uncapitalised } from '../wording/sentence-case.ts';
import { tinSize } from '../wording/tin-size.ts';
import type { Figure } from './figure.ts';
import type { FinishingContent } from './finishing-chart.ts';
import type { FinishingChartView, FinishingColumn } from './finishing-chart.types.ts';
import type { WorkingRow, WorkingView } from './working.types.ts';
import { aroundSteps } from './working-finishing-around.ts';
import type { CakeAtWork } from './working-finishing-cake.ts';
import { areaFigure, planSteps } from './working-finishing-plan.ts';
import { type FinishingParts, finishingStep } from './working-finishing-step.ts';
import { useWorking } from './working-finishing-use.ts';
import { computed, given } from './working-numbers.ts';

const g = (grams: number): Figure => computed(grams, 'g');

/** What is made of what is on the cake or rolled out, and what is bought. */
function madeSteps(
  finish: Finish,
  amount: FinishAmount,
  from: { label: 'needed' | 'volume'; figure: Figure; text: string },
  of: string,
  about: string,
): FinishingParts[] {
  const [loss, made] = [given(finish.lossShare, 'share'), g(amount.makeG)];
  const density = given(finish.densityGPerMl, 'g/mL');
  const make: FinishingParts = {
    kind: 'made',
    about,
    of,
    inputs: [
      [from.label, from.figure],
      ...(from.label === 'volume' ? ([['density', density]] as FinishingParts['inputs']) : []),
      ['loss', loss],
    ],
    operation: `${from.text} × (1 + ${loss.text})`,
    output: ['made', made],
  };
  if (finish.packG === undefined) return [make];
  const pack = given(finish.packG, 'g');
  const buy: FinishingParts = {
    kind: 'bought',
    about,
    of,
    inputs: [
      ['made', made],
      ['pack', pack],
    ],
    operation: `up(${made.text} ÷ ${pack.text}) × ${pack.text}`,
    output: ['bought', g(amount.buyG)],
  };
  return [make, buy];
}

function syrupSteps(cake: CakeAtWork, column: FinishingColumn, finish: Finish, amount: FinishAmount) {
  const { brushed } = finish.use;
  if (!brushed) return [];
  const { plan } = cake.finishing;
  const [layers, area] = [given(cake.settings.layers, 'count'), areaFigure(plan.areaMm2)];
  const perFace = given(brushed.gPerCm2, 'ratio');
  const needed = g(quantiseG(syrupG(plan, cake.settings.layers, brushed.gPerCm2)));
  const of = finish.name;
  const step: FinishingParts = {
    kind: 'syrup',
    about: column.id,
    of,
    inputs: [
      ['layers', layers],
      ['area', area],
      ['per-face', perFace],
    ],
    operation: `${layers.text} × ${area.text} × ${perFace.text} ÷ 100`,
    output: ['needed', needed],
  };
  const from = { label: 'needed' as const, figure: needed, text: needed.text };
  return [step, ...madeSteps(finish, amount, from, of, column.id)];
}

/** All steps of one column for one cake; the chart leaves out what comes to nothing, and so does its working. */
function columnSteps(column: FinishingColumn, finish: Finish, cake: CakeAtWork): FinishingParts[] {
  const amount = useAmount(cake.finishing, finish, column.use, cake.settings);
  if (amount === null || amount.makeG <= 0) return [];
  if (column.use === 'brushed') return syrupSteps(cake, column, finish, amount);
  const worked = useWorking(cake, finish, column.use, amount);
  if (worked === null) return [];
  const of = `${finish.name}, ${uncapitalised(column.useText)}`;
  const density = given(finish.densityGPerMl, 'g/mL');
  const needed = g(amount.neededG);
  const step: FinishingParts = {
    kind: 'needed',
    about: column.id,
    of,
    inputs: [
      ['volume', worked.onCake],
      ['density', density],
    ],
    operation: `${worked.onCake.text} × ${density.text}`,
    output: ['needed', needed],
  };
  const from =
    column.use === 'rolled'
      ? {
          label: 'volume' as const,
          figure: worked.made,
          text: `${worked.made.text} × ${density.text}`,
        }
      : { label: 'needed' as const, figure: needed, text: needed.text };
  return [...worked.steps, step, ...madeSteps(finish, amount, from, of, column.id)];
}

/** Finishes spread alike share their volume: a step that stands already is not said again. */
function withoutRepeats(steps: readonly FinishingParts[]): FinishingParts[] {
  const said = new Set<string>();
  return steps.filter(({ kind, about }) => {
    const key = `${kind} ${about ?? ''}`;
    if (said.has(key)) return false;
    said.add(key);
    return true;
  });
}

/** What a gram of the finish is made of: the same for every tin. */
function partSteps({ id, name, parts, cookingLossShare }: Finish): FinishingParts[] {
  if (parts.length < 2) return [];
  const all = parts.map((part) => given(part.parts, 'ratio'));
  const whole = given(
    parts.reduce((sum, part) => sum + part.parts, 0),
    'ratio',
  );
  const away = given(cookingLossShare, 'share');
  return parts.map((part, at): FinishingParts => {
    const own = all[at] ?? whole;
    const plain = `${own.text} ÷ ${whole.text}`;
    const share = part.parts / whole.value / (1 - cookingLossShare);
    return {
      kind: 'part-share',
      about: `${id}-${part.ingredientId}`,
      of: `${name}, ${part.name.toLowerCase()}`,
      inputs: [
        ['part', own],
        ['parts', whole],
        ...(cookingLossShare === 0 ? [] : ([['cooking-loss', away]] as FinishingParts['inputs'])),
      ],
      operation: cookingLossShare === 0 ? plain : `${plain} ÷ (1 − ${away.text})`,
      output: ['share', computed(share, 'share')],
    };
  });
}

/**
 * The working behind a finishing chart; anchors are its rows' tins.
 * @example finishingWorkingView(content, finishingChartView(content)).rows[0]?.steps.length
 */
export function finishingWorkingView(content: FinishingContent, view: FinishingChartView): WorkingView {
  const { kitchen, finishing: settings } = content;
  const words = finishingWorkingWordsFor(kitchen.locale);
  const finishOf = (id: string) => content.finishes.find((finish) => finish.id === id);
  const finishes = view.finishes.flatMap(({ id }) => finishOf(id) ?? []);
  const rowOf = (tin: Tin, finishing: Finishing): WorkingRow => {
    const cake: CakeAtWork = { tin, finishing, settings, words };
    const columns = view.columns.flatMap((column) => {
      const finish = finishOf(column.finish.id);
      return finish ? columnSteps(column, finish, cake) : [];
    });
    const ribbonMm = outsideWallMm(finishing.plan, settings.undercoatMm);
    const steps = [
      ...planSteps(tin.shape, finishing.plan),
      ...columns,
      ...aroundSteps(finishing, settings, ribbonMm, words),
    ];
    return {
      anchor: tin.id,
      title: `${tin.name}, ${tinSize(tin, wordsFor(kitchen.locale))}`,
      steps: withoutRepeats(steps).map((parts) => finishingStep(words, parts)),
    };
  };
  return {
    chartId: view.id,
    title: words.title,
    shared: finishes.flatMap(partSteps).map((parts) => finishingStep(words, parts)),
    rows: view.rows.flatMap(({ id }) => {
      const tin = kitchen.tins.find((owned) => owned.id === id);
      const finishing = tin && finishingFor(tin, finishes, settings);
      return tin && finishing ? [rowOf(tin, finishing)] : [];
    }),
  };
}
