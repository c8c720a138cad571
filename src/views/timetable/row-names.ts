/** What a step is about, in words: cakes by their tins, finishes and batters by name. */

import type { Step, StepKind } from '../../compute/timeline/plan.types.ts';
import { PLAIN_OVEN } from '../../domain/kitchen.ts';
import { bakeWordsFor } from '../../wording/bake/index.ts';
import { listInWords } from '../../wording/list.ts';
import { uncapitalised } from '../../wording/sentence-case.ts';
import type { RowNames } from '../../wording/timetable/index.ts';
import { dialTextsOf } from '../bake-figures.ts';
import type { TimetableSource } from './timetable-input.ts';

/** Steps on small cakes that no longer stand in their tins. */
const BY_PIECES = new Set<StepKind>(['top', 'pack']);

/** 'ten-inch round and 2 × two-pound loaf tin'. */
export function cakesText(step: Pick<Step, 'tiers' | 'kind'>, source: TimetableSource): string {
  const counts = new Map<string, number>();
  const whole: string[] = [];
  for (const { orderId, tierId, count } of step.tiers) {
    const tier = source.tierOf(orderId, tierId);
    if (tier?.small !== undefined && BY_PIECES.has(step.kind)) {
      whole.push(source.words.small(tier.small.pieces, tier.small.kind));
      continue;
    }
    const tin = tier !== undefined && 'tin' in tier ? tier.tin.name : source.words.dummy;
    counts.set(tin, (counts.get(tin) ?? 0) + count);
  }
  const names = [...counts].map(([name, count]) =>
    count === 1 ? uncapitalised(name) : `${count} × ${uncapitalised(name)}`,
  );
  return listInWords([...names, ...whole], source.words.and);
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
