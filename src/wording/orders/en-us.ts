/** American English for orders: what differs from British. */
import { inAmerican } from '../american.ts';
import { americanDate } from '../date.ts';
import { enUsTimetable } from '../timetable/en-us.ts';
import { withUsHeads } from '../us-heads.ts';
import { usUnitsInSentence } from '../us-units.ts';
import { enGbOrders } from './en-gb.ts';
import type { OrderWords } from './order-words.ts';

const gb = withUsHeads(inAmerican(enGbOrders));

export const enUsOrders: OrderWords = {
  ...gb,
  date: americanDate,
  weekdayAndDate: (weekday, date) => `${weekday}, ${date}`,
  table: { ...gb.table, tin: 'Pan', vat: 'Tax', net: 'Before tax' },
  clock(time) {
    const [hours = 0, minutes = 0] = time.split(':').map(Number);
    return enUsTimetable.clock(hours * 60 + minutes);
  },
  portionsOver: (over) => (over < 0 ? `${-over} short` : over === 0 ? 'none extra' : `${over} extra`),
  inEach: (ounces) => `${ounces}\u00a0oz in each`,
  sheet: {
    ...gb.sheet,
    fill: 'Into the pans',
    beaten: (part, ounces) => `${part}, ${ounces}\u00a0oz beaten`,
    batterIn: 'oz of batter in the bowl',
    intoTin: (...named) => gb.sheet.intoTin(...named).replace(/^g /, 'oz '),
    finishMade: (name, ounces) => `${name}, ${ounces}\u00a0oz`,
    rollTo: (size, ounces) => `roll out ${ounces}\u00a0oz to ${size}`,
  },
  page: { ...gb.page, makes: (ounces) => `${ounces}\u00a0oz to make` },
  cost: {
    ...gb.cost,
    jobs: { ...gb.cost.jobs, 'fill-tins': 'Filling pans' },
    load: (tins, dial, minutes) => `${tins === 1 ? 'one pan' : `${tins} pans`} at ${dial} for ${minutes}`,
  },
  beside: {
    ...gb.beside,
    cuttingCake: (at, of) => (of === 1 ? 'Kitchen cake' : `Kitchen cake ${at}`),
  },
  cautions: {
    ...gb.cautions,
    heavy: (kg) => usUnitsInSentence(gb.cautions.heavy(kg)),
    kept: {
      ...gb.cautions.kept,
      frozen: (freezeOn, eatBy) =>
        gb.cautions.kept.frozen(freezeOn, eatBy).replace('film twice', 'plastic wrap twice'),
    },
    hot: 'Pans, racks and heating cores stay hot: dry cloths, both hands.',
    chilled:
      'Something in this order must be refrigerated, at 41 °F or below: say so at hand-over, and for how long it may stand out.',
    vat: 'Sales tax on cake and on what goes with it differs from place to place: check before the quote goes out.',
  },
  quote: {
    ...gb.quote,
    vatAt: (share) => `Tax at ${share}`,
    noVat: 'no tax',
    subtotal: 'Before tax',
    vatNote: 'Tax is worked out line by line.',
  },
};
