/** Eggs of a mix, ready to print. */
import type { MixEggs, MixLine } from '../compute/mixes/mix.types.ts';
import { quantiseG } from '../domain/quantise.ts';
import { eggsInWords } from '../wording/eggs.ts';
import { listInWords } from '../wording/list.ts';
import { formatWholeGrams } from '../wording/mass.ts';
import type { Words } from '../wording/words.ts';
import { deviationFigure, exactEggsFigure, totalFigure, wholeEggsFigure } from './figures.ts';
import type { EggFigures } from './tin-chart.types.ts';

function eggLines(eggs: MixEggs, lines: readonly MixLine[]): MixLine[] {
  const ids = new Set(eggs.parts.map((part) => part.ingredientId));
  return lines.filter((line) => ids.has(line.ingredientId));
}

function weighedInWords(lines: readonly MixLine[], words: Words): string {
  const amounts = lines.map(
    (line) => `${formatWholeGrams(line.grams)} g ${words.eggPartWeighed[line.eggPart ?? 'egg']}`,
  );
  return listInWords(amounts, words.and);
}

/** Egg figures of a mix; null when it has none. */
export function eggFigures(eggs: MixEggs | null, lines: readonly MixLine[], words: Words): EggFigures | null {
  if (eggs === null) return null;
  const own = eggLines(eggs, lines);
  return {
    rule: eggs.rule,
    exact: exactEggsFigure(eggs.exact),
    whole: wholeEggsFigure(eggs.whole),
    deviation: deviationFigure(eggs.deviation),
    ...(eggs.rule === 'weigh'
      ? {}
      : { parts: eggs.parts.map(({ part, whole }) => ({ part, whole: wholeEggsFigure(whole) })) }),
    grams: totalFigure(quantiseG(own.reduce((sum, line) => sum + line.grams, 0))),
    text: eggs.rule === 'weigh' ? weighedInWords(own, words) : eggsInWords(eggs.parts, words),
  };
}
