/** The columns of a finishing chart: each finish in each use, kind by kind. */

import type { FinishUseName } from '../compute/finishes/finishing.ts';
import { isPoured } from '../compute/finishes/poured.ts';
import { FINISH_KINDS, type Finish } from '../domain/finish.ts';
import type { FinishingSettings } from '../domain/finishing.ts';
import type { FinishingWords } from '../wording/finishing/index.ts';
import { formatLength } from '../wording/length.ts';
import { formatNumber } from '../wording/number.ts';
import type { FinishingColumn } from './finishing-chart.types.ts';

const mm = (length: number): string => formatLength(length, 'mm');

function uses(
  { kind, use }: Finish,
  settings: FinishingSettings,
  words: FinishingWords,
): [FinishUseName, string][] {
  const { filling, coating, rolled, brushed } = use;
  const coatText =
    coating === undefined
      ? ''
      : isPoured({ kind })
        ? words.uses.poured(mm(coating.finalMm))
        : words.uses.coating(coating.crumbMm === 0 ? '' : mm(coating.crumbMm), mm(coating.finalMm));
  const hasDam = kind === 'buttercream' && filling !== undefined && settings.damMm > 0;
  return [
    ...(filling ? [['filling', words.uses.filling(mm(filling.thicknessMm))] as [FinishUseName, string]] : []),
    ...(hasDam ? [['dam', words.uses.dam(mm(settings.damMm))] as [FinishUseName, string]] : []),
    ...(coating ? [['coating', coatText] as [FinishUseName, string]] : []),
    ...(rolled ? [['rolled', words.uses.rolled(mm(rolled.thicknessMm))] as [FinishUseName, string]] : []),
    ...(brushed
      ? [
          ['brushed', words.uses.brushed(`${formatNumber(brushed.gPerCm2, 2)} g/cm²`)] as [
            FinishUseName,
            string,
          ],
        ]
      : []),
  ];
}

/** Finishes by kind, then by name of the file. */
export function finishesInOrder(finishes: readonly Finish[]): Finish[] {
  const rank = ({ kind }: Finish): number => FINISH_KINDS.indexOf(kind);
  return [...finishes].sort((a, b) => rank(a) - rank(b) || (a.id < b.id ? -1 : 1));
}

/** Columns for the finishes in the order given. */
export function finishingColumns(
  finishes: readonly Finish[],
  settings: FinishingSettings,
  words: FinishingWords,
): FinishingColumn[] {
  return finishes.flatMap((finish) =>
    uses(finish, settings, words).map(([use, useText]) => ({
      id: `${finish.id}--${use}`,
      finish: { id: finish.id, name: finish.name },
      kind: finish.kind,
      use,
      useText,
      parts: finish.parts.map(({ ingredientId, name }) => ({ id: ingredientId, name })),
      isBought: finish.packG !== undefined,
    })),
  );
}
