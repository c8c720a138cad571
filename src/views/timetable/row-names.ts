/** What a step is about, in words: cakes by their tins, finishes and batters by name. */

import type { Step } from '../../compute/timeline/plan.types.ts';
import { PLAIN_OVEN } from '../../domain/kitchen.ts';
import { bakeWordsFor } from '../../wording/bake/index.ts';
import { listInWords } from '../../wording/list.ts';
import { uncapitalised } from '../../wording/sentence-case.ts';
import type { RowNames } from '../../wording/timetable/index.ts';
import { dialTextsOf } from '../bake-figures.ts';
import type { TimetableSource } from './timetable-input.ts';

/** 'ten-inch round and 2 × two-pound loaf tin'. */
export function cakesText(step: Pick<Step, 'tiers'>, source: TimetableSource): string {
  const counts = new Map<string, number>();
  for (const { orderId, tierId, count } of step.tiers) {
    const tin = source.tierOf(orderId, tierId)?.tin.name ?? tierId;
    counts.set(tin, (counts.get(tin) ?? 0) + count);
  }
  const names = [...counts].map(([name, count]) =>
    count === 1 ? uncapitalised(name) : `${count} × ${uncapitalised(name)}`,
  );
  return listInWords(names, source.words.and);
}

function finishOf(step: Step, source: TimetableSource) {
  const uses = step.tiers.flatMap(({ orderId, tierId }) => source.tierOf(orderId, tierId)?.finishes ?? []);
  return uses.find(({ finish }) => finish.id === step.finishId)?.finish;
}

export function rowNames(step: Step, source: TimetableSource): RowNames {
  const { plan, kitchen, words } = source;
  const load = plan.loads.find(({ id }) => id === step.loadId);
  const filled = step.tiers.some(({ orderId, tierId }) =>
    source.tierOf(orderId, tierId)?.finishes.some(({ use }) => use === 'filling'),
  );
  return {
    cakes: cakesText(step, source),
    finish: uncapitalised(finishOf(step, source)?.name ?? ''),
    batter: uncapitalised(source.bowlfulOf(step.bowlfulId)?.name ?? ''),
    load: words.load(source.loadNumber(step.loadId)),
    dial:
      load === undefined
        ? ''
        : dialTextsOf(load.ovenC, kitchen.oven ?? PLAIN_OVEN, bakeWordsFor(kitchen.locale)).set,
    filled,
  };
}
