/** What a step is about, in words: cakes by their tins, finishes and batters by name. */

import type { Step, StepKind } from '../../compute/timeline/plan.types.ts';
import { jointsOf } from '../../compute/timeline/process.ts';
import type { FinishWork } from '../../compute/timeline/work.ts';
import { PLAIN_OVEN } from '../../domain/kitchen.ts';
import { bakeWordsFor } from '../../wording/bake/index.ts';
import { listInWords } from '../../wording/list.ts';
import { uncapitalised } from '../../wording/sentence-case.ts';
import type { RowNames } from '../../wording/timetable/index.ts';
import { dialTextsOf } from '../bake-figures.ts';
import type { TimetableSource } from './timetable-input.ts';

/** Names of nothing, for a line that is about none. */
export const NO_NAMES: RowNames = {
  ...{ cakes: '', finish: '', batter: '', load: '', dial: '' },
  ...{ kneaded: false, layers: 1, brushed: '', filling: '', stackedThere: false },
};

/** Bought as a paste. */
const KNEADED = new Set<FinishWork['finish']['kind']>(['sugarpaste', 'marzipan']);

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
    const name = tier !== undefined && 'tin' in tier ? tier.tin.name : source.words.dummy;
    // A cake for cutting may be of a tier's own tin.
    const tin =
      tier !== undefined && 'apart' in tier && tier.apart && tier.small === undefined
        ? source.words.forCutting(name)
        : name;
    counts.set(tin, (counts.get(tin) ?? 0) + count);
  }
  const names = [...counts].map(([name, count]) =>
    count === 1 ? uncapitalised(name) : `${count} × ${uncapitalised(name)}`,
  );
  return listInWords([...names, ...whole], source.words.and);
}

const tiersOf = ({ tiers }: Pick<Step, 'tiers'>, source: TimetableSource) =>
  tiers.flatMap(({ orderId, tierId }) => source.tierOf(orderId, tierId) ?? []);

/** Finishes of one use by name, from the inside out. */
function usedText(use: FinishWork['use'], step: Step, source: TimetableSource): string {
  const uses = tiersOf(step, source).flatMap(({ finishes }) => finishes.filter((each) => each.use === use));
  const names = new Set(uses.map(({ finish }) => uncapitalised(finish.name)));
  return listInWords([...names], source.words.and);
}

function finishOf(step: Step, source: TimetableSource) {
  const uses = tiersOf(step, source).flatMap(({ finishes }) => finishes);
  return uses.find(({ finish }) => finish.id === step.finishId)?.finish;
}

function isStackedThere(orderId: string, { work }: TimetableSource): boolean {
  const order = work.orders.find(({ id }) => id === orderId);
  return order !== undefined && !order.travelsAssembled && jointsOf(order) > 0;
}

export function rowNames(step: Step, source: TimetableSource): RowNames {
  const { plan, kitchen, words } = source;
  const load = plan.loads.find(({ id }) => id === step.loadId);
  const finish = finishOf(step, source);
  return {
    cakes: cakesText(step, source),
    finish: uncapitalised(finish?.name ?? ''),
    batter: uncapitalised(source.bowlfulOf(step.bowlfulId)?.name ?? ''),
    load: words.load(source.loadNumber(step.loadId)),
    dial:
      load === undefined
        ? ''
        : dialTextsOf(load.ovenC, kitchen.oven ?? PLAIN_OVEN, bakeWordsFor(kitchen.locale)).set,
    kneaded: finish !== undefined && KNEADED.has(finish.kind),
    layers: Math.max(1, ...tiersOf(step, source).map(({ layers }) => layers)),
    brushed: usedText('brushed', step, source),
    filling: usedText('filling', step, source),
    stackedThere: step.orderIds.some((id) => isStackedThere(id, source)),
  };
}
