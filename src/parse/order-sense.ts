/** Does a whole order make sense in this kitchen? Tins owned, stacks that narrow upwards, decisions in time. */
import { tinBoundsMm } from '../compute/shapes/index.ts';
import type { Order } from '../domain/order.ts';
import type { OrderContext } from './orders.ts';
import { error, warning } from './problems.ts';
import { quote } from './quote.ts';
import type { YamlReader } from './yaml/yaml-reader.ts';

function checkOwned(reader: YamlReader, { tiers }: Order, { found }: OrderContext): void {
  const told = new Set<string>();
  tiers.forEach(({ tinId }, index) => {
    const tin = found.tins.find(({ id }) => id === tinId);
    const wanted = tiers.filter((tier) => tier.tinId === tinId).reduce((sum, { count }) => sum + count, 0);
    if (tin === undefined || wanted <= tin.owned || told.has(tinId)) return;
    told.add(tinId);
    const times = Math.ceil(wanted / Math.max(1, tin.owned));
    const message = `${wanted} of ${quote(tinId)} are needed and ${tin.owned} owned: baked in ${times} turns, the tin washed and cooled between`;
    const hint = 'Leave it so, or choose another tin.';
    reader.report(warning('tin-owned-too-few', message, hint), 'tiers', index, 'tin');
  });
}

const acrossMm = (tinId: string, { found }: OrderContext): number | null => {
  const tin = found.tins.find(({ id }) => id === tinId);
  const bounds = tin === undefined ? null : tinBoundsMm(tin);
  return bounds === null ? null : Math.max(bounds.widthMm, bounds.heightMm);
};

function checkStack(reader: YamlReader, { arrangement, tiers }: Order, context: OrderContext): void {
  if (arrangement !== 'stacked') return;
  tiers.forEach(({ count, tinId }, index) => {
    if (count > 1) {
      const message = `${count} cakes of one kind cannot be one tier of a stack`;
      const hint = "Write each as a tier of its own, or 'arrangement: separate'.";
      reader.report(error('stack-count', message, hint), 'tiers', index, 'count');
    }
    const below = tiers[index - 1];
    const [mine, under] = [
      acrossMm(tinId, context),
      below === undefined ? null : acrossMm(below.tinId, context),
    ];
    if (below === undefined || mine === null || under === null || mine < under) return;
    const message = `${quote(tinId)} stands on ${quote(below.tinId)}, which is no wider`;
    reader.report(
      error('stack-overhangs', message, 'Write the tiers bottom first, each narrower than the one below.'),
      'tiers',
      index,
      'tin',
    );
  });
}

function checkDecisions(reader: YamlReader, { decisions, handOver }: Order): void {
  decisions.forEach(({ by, answer, question }, index) => {
    if (by === undefined || answer !== null || by <= handOver.localTime.slice(0, 10)) return;
    const message = `${quote(question)} is to be settled on ${by}, after the hand-over on ${handOver.localTime.slice(0, 10)}`;
    reader.report(
      warning('decision-late', message, 'Settle it before there is anything to shop for.'),
      'decisions',
      index,
      'by',
    );
  });
}

/** Reports what the tiers together, or the order as a whole, cannot be. */
export function checkOrder(reader: YamlReader, order: Order, context: OrderContext): void {
  checkOwned(reader, order, context);
  checkStack(reader, order, context);
  checkDecisions(reader, order);
}
