/** What the dummy tiers of an order cost: bought ones are the baker's cost, hired ones a line of the quote. */
import type { CostBasis } from '../compute/costs/order-cost.ts';
import type { PlannedOrder } from '../compute/orders/plan-order.ts';
import type { Content } from '../domain/content.ts';
import type { OrderExtra } from '../domain/order.ts';
import { wordsFor } from '../wording/locales/index.ts';
import { orderWordsFor } from '../wording/orders/index.ts';
import { tinSize } from '../wording/tin-size.ts';

type Dummies = Pick<PlannedOrder, 'dummies'>;
type Kitchen = Pick<Content, 'kitchen'>;

/** Bought for the order, by size. */
export function dummyCosts({ dummies }: Dummies, { kitchen }: Kitchen): CostBasis['materials'][number][] {
  const { beside } = orderWordsFor(kitchen.locale);
  return dummies.flatMap(({ ask, tin }) =>
    ask.supply === 'bought'
      ? [
          {
            name: beside.dummyBought(tinSize(tin, wordsFor(kitchen.locale))),
            eachMinor: ask.eachMinor,
            count: 1,
          },
        ]
      : [],
  );
}

/** Hired out to the customer, each with its own VAT: a hire is not cake. */
export function dummyHires({ dummies }: Dummies, { kitchen }: Kitchen): OrderExtra[] {
  const { beside } = orderWordsFor(kitchen.locale);
  return dummies.flatMap(({ ask, tin }): OrderExtra[] => {
    if (ask.supply !== 'hired') return [];
    const name = beside.dummyHired(tinSize(tin, wordsFor(kitchen.locale)));
    const vat = ask.vatShare === undefined ? {} : { vatShare: ask.vatShare };
    return [{ name, count: 1, eachMinor: ask.eachMinor, inedible: true, comesBack: true, ...vat }];
  });
}
