/** British English for cutting cakes, small cakes and dummy tiers. */
import { numberInWords } from '../locales/english-numbers.ts';
import { capitalised, uncapitalised } from '../sentence-case.ts';
import type { BesideWords, MadeOf } from './beside-words.ts';

const number = (count: number): string => numberInWords(count, 12);

const ONE: Record<string, string> = {
  cupcakes: 'cupcake',
  'fairy cakes': 'fairy cake',
  muffins: 'muffin',
  'mini cakes': 'mini cake',
};

function tiersText({ stacked, tiers, dummies }: MadeOf): string[] {
  const all = tiers + dummies;
  if (all === 0) return [];
  if (!stacked) return [all === 1 ? 'one cake' : `${number(all)} cakes`];
  const standing = all === 1 ? 'one tier' : `${number(all)} tiers, stacked`;
  return [
    dummies === 0
      ? standing
      : `${standing}, ${tiers === 0 ? 'all' : number(dummies)} of them ${dummies === 1 ? 'a dummy' : 'dummies'}`,
  ];
}

function summary(made: MadeOf): string {
  const { cuttingCakes, small, portions } = made;
  const cutting =
    cuttingCakes === 0
      ? []
      : [cuttingCakes === 1 ? 'a cutting cake' : `${number(cuttingCakes)} cutting cakes`];
  return `${capitalised([...tiersText(made), ...cutting, ...small].join('; '))}: ${portions}.`;
}

export const enGbBeside: BesideWords = {
  cuttingCake: (at, of) => (of === 1 ? 'Cutting cake' : `Cutting cake ${at}`),
  small: {
    cupcakes: 'Cupcakes',
    'fairy cakes': 'Fairy cakes',
    muffins: 'Muffins',
    'mini cakes': 'Mini cakes',
  },
  smallOf: (name, at) => `${name} ${at}`,
  pieces: (count, kind) => `${count} ${count === 1 ? (ONE[kind] ?? kind) : kind}`,
  summary,
  besideFact: 'Besides',
  intoCups: (cakes, pieces, tins) => `g into each of ${pieces} cups, ${uncapitalised(cakes)}: ${tins}`,
  cups: (tins, cups, size) => {
    if (cups === 1) return size;
    return `${tins === 1 ? '' : `${tins} × `}${cups} cups, ${size}`;
  },
  boxes: (boxes, size, last) => {
    const whole = boxes === 1 ? `one box of ${size}` : `${boxes} boxes of ${size}`;
    return last === size ? whole : `${whole}, ${boxes === 1 ? '' : 'the last '}with ${last}`;
  },
  topping: (each) => `On each, ${each}\u00a0g`,
  ownMinutes: 'By the kitchen’s own watch: bake times are not worked out for small cakes.',
  dummy: (tier) => `${tier} (dummy)`,
  dummyBought: (size) => `Dummy tier, ${size}`,
  dummyHired: (size) => `Hire of a dummy tier, ${size}`,
  notCake: 'polystyrene, not food',
  supply: { bought: 'bought for the order', hired: 'hired, and comes back' },
  dummyCaution: (tiers, hired) =>
    `${capitalised(tiers)}: polystyrene, not food, covered like cake. Tell the customer and whoever cuts it at hand-over, in writing; it is lifted off before cutting, and nothing of its cover is served.${hired ? ' Hired: agree when it comes back.' : ''}`,
};
