/** American English for orders: what differs from British. */
import { americanDate } from '../date.ts';
import { enGbOrders } from './en-gb.ts';
import type { OrderWords } from './order-words.ts';

export const enUsOrders: OrderWords = {
  ...enGbOrders,
  date: americanDate,
  weekdayAndDate: (weekday, date) => `${weekday}, ${date}`,
  table: { ...enGbOrders.table, tin: 'Pan', vat: 'Tax', net: 'Before tax' },
  sheet: { ...enGbOrders.sheet, fill: 'Into the pans' },
  cost: {
    ...enGbOrders.cost,
    jobs: { ...enGbOrders.cost.jobs, 'fill-tins': 'Filling pans' },
    load: (tins, dial, minutes) =>
      `${tins === 1 ? 'one pan' : `${tins} pans`} at ${dial} for ${minutes}\u00a0min`,
  },
  cautions: {
    ...enGbOrders.cautions,
    hot: 'Pans, racks and heating cores stay hot: dry cloths, both hands.',
    chilled:
      'Something in this order must be refrigerated, at 41 °F or below: say so at hand-over, and for how long it may stand out.',
    vat: 'Sales tax on cake and on what goes with it differs from place to place: check before the quote goes out.',
  },
  quote: {
    ...enGbOrders.quote,
    vatAt: (share) => `Tax at ${share}`,
    noVat: 'no tax',
    subtotal: 'Before tax',
    vatNote: 'Tax is worked out line by line.',
  },
};
