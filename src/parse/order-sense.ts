/** Does a whole order make sense in this kitchen? Tins owned, stacks that narrow upwards, decisions in time. */
import { tierBakes } from '../compute/orders/tier-bakes.ts';
import { tinBoundsMm } from '../compute/shapes/index.ts';
import { type DummyTier, isDummy, type Order, stackOf, type TierAsk } from '../domain/order.ts';
import type { OrderContext } from './orders.ts';
import { error, warning } from './problems.ts';
import { quote } from './quote.ts';
import type { YamlReader } from './yaml/yaml-reader.ts';
import type { YamlPath } from './yaml/yaml-source.ts';

/** Where the cakes and the tiers of the stack stand in the file, in the order's own order. */
export interface OrderPlaces {
  cakes: readonly YamlPath[];
  /** Bottom first, dummies counted. */
  stack: readonly YamlPath[];
}

function checkOwned(reader: YamlReader, order: Order, { found }: OrderContext, { cakes }: OrderPlaces): void {
  const told = new Set<string>();
  order.tiers.forEach(({ tinId, small }, index) => {
    const tin = found.tins.find(({ id }) => id === tinId);
    const same = order.tiers.filter((tier) => tier.tinId === tinId);
    const filled = (tier: TierAsk): number => {
      const recipe = found.recipes.find(({ id }) => id === tier.recipeId);
      return (
        tier.count * (tin === undefined || recipe === undefined ? 1 : tierBakes(tier, tin, recipe).bakes)
      );
    };
    const wanted = same.reduce((sum, tier) => sum + filled(tier), 0);
    // Small cakes are baked tray after tray, which is no surprise.
    if (small !== undefined || tin === undefined || wanted <= tin.owned || told.has(tinId)) return;
    told.add(tinId);
    const times = Math.ceil(wanted / Math.max(1, tin.owned));
    const message = `${wanted} of ${quote(tinId)} are needed and ${tin.owned} owned: baked in ${times} turns, the tin washed and cooled between`;
    const hint = 'Leave it so, or choose another tin.';
    reader.report(warning('tin-owned-too-few', message, hint), ...(cakes[index] ?? []), 'tin');
  });
}

/** A tier as its neighbours see it: how it is called and how wide it is. */
interface Standing {
  name: string;
  acrossMm: number | null;
  count: number;
  key: 'tin' | 'dummy';
}

function standing(part: TierAsk | DummyTier, { found }: OrderContext): Standing {
  const form = isDummy(part) ? part.form : found.tins.find(({ id }) => id === part.tinId);
  const bounds = form === undefined ? null : tinBoundsMm(form);
  const acrossMm = bounds === null ? null : Math.max(bounds.widthMm, bounds.heightMm);
  return isDummy(part)
    ? { name: 'The dummy', acrossMm, count: 1, key: 'dummy' }
    : { name: quote(part.tinId), acrossMm, count: part.count, key: 'tin' };
}

function checkStack(reader: YamlReader, order: Order, context: OrderContext, { stack }: OrderPlaces): void {
  if (order.arrangement !== 'stacked') {
    for (const { at } of order.dummies ?? []) {
      const hint = "Write 'arrangement: stacked', or delete the dummy.";
      reader.report(
        error('dummy-apart', 'A dummy tier has its place only in a stack', hint),
        ...(stack[at] ?? []),
        'dummy',
      );
    }
    return;
  }
  const parts = stackOf(order).map((part) => standing(part, context));
  parts.forEach(({ count, name, acrossMm, key }, index) => {
    const path = stack[index] ?? [];
    if (count > 1) {
      const message = `${count} cakes of one kind cannot be one tier of a stack`;
      const hint = "Write each as a tier of its own, or 'arrangement: separate'.";
      reader.report(error('stack-count', message, hint), ...path, 'count');
    }
    const below = parts[index - 1];
    if (below === undefined || acrossMm === null || below.acrossMm === null || acrossMm < below.acrossMm)
      return;
    const under = below.key === 'dummy' ? 'a dummy' : below.name;
    const message = `${name} stands on ${under}, which is no wider`;
    const hint = 'Write the tiers bottom first, each narrower than the one below.';
    reader.report(error('stack-overhangs', message, hint), ...path, key);
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

/** What is hired is back after the hand-over, and a day to be back by belongs to what is hired. */
function checkHired(reader: YamlReader, { extras, handOver }: Order): void {
  const handedOver = handOver.localTime.slice(0, 10);
  extras.forEach(({ name, comesBack, backBy }, index) => {
    if (backBy === undefined) return;
    const at = ['extras', index, 'back_by'] as const;
    if (comesBack === undefined) {
      const message = `${quote(name)} is to be back by ${backBy}, but is not hired out`;
      reader.report(
        error('comes-back', message, "Write 'comes_back: yes' beside it, or delete 'back_by'."),
        ...at,
      );
    } else if (backBy < handedOver) {
      const message = `${quote(name)} is to be back by ${backBy}, before the hand-over on ${handedOver}`;
      reader.report(error('comes-back', message, `Write ${handedOver} or a later day.`), ...at);
    }
  });
}

/** A quote comes before what it quotes for. */
function checkQuote(reader: YamlReader, { quote: own, handOver }: Order): void {
  const handedOver = handOver.localTime.slice(0, 10);
  if (own?.dated === undefined || own.dated <= handedOver) return;
  const message = `The quote is dated ${own.dated}, after the hand-over on ${handedOver}`;
  reader.report(error('quote-late', message, `Write ${handedOver} or an earlier day.`), 'quote', 'dated');
}

/** Reports what the tiers together, or the order as a whole, cannot be. */
export function checkOrder(
  reader: YamlReader,
  order: Order,
  context: OrderContext,
  places: OrderPlaces,
): void {
  checkOwned(reader, order, context, places);
  checkStack(reader, order, context, places);
  checkDecisions(reader, order);
  checkHired(reader, order);
  checkQuote(reader, order);
}
