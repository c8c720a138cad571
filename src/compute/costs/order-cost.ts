/**
 * What does an order cost, and what is asked for it? Every line is rounded to a whole minor unit first and only
 * then added, so that the sheet adds up on paper.
 *
 *   cost = ingredients as used + materials + packaging + energy + labour + overhead;  price = cost ÷ (1 − margin), rounded up
 *   energy = oven kWh × rate;  labour and overhead by hands-on time
 *   extras have their own price; VAT is worked out line by line
 */
import type { CostSettings, PackagingPer } from '../../domain/costs.ts';
import { type Minor, wholeMinor } from '../../domain/money.ts';
import type { OrderExtra } from '../../domain/order.ts';
import { quantiseRatio } from '../../domain/quantise.ts';
import type { OrderPieces } from './order-pieces.ts';
import { priceMinor } from './price.ts';
import { type SizedPackaging, sizedPackaging } from './sized-packaging.ts';

/** What the other computations know of an order. */
export interface CostBasis {
  /** Each ingredient as used, rounded. */
  ingredients: readonly { name: string; usedMinor: Minor }[];
  /** What is bought for the order and is no ingredient: dummy tiers. */
  materials: readonly { name: string; eachMinor: Minor; count: number }[];
  /** How often each thing that packaging is counted by is there. */
  pieces: Readonly<Record<PackagingPer, number>>;
  /** How wide boards and boxes are; left out: one price for every width. */
  widthsMm?: OrderPieces['widthsMm'];
  ovenKwh: number;
  handsOnMin: number;
  extras: readonly OrderExtra[];
}

export interface CostLine {
  kind: 'ingredients' | 'materials' | 'packaging' | 'energy' | 'labour' | 'overhead';
  name: string;
  /** How much of it: pieces, kWh or hours; null for ingredients. */
  amount: number | null;
  /** What one costs, in minor units and parts of one; null for ingredients. */
  eachMinor: number | null;
  minor: Minor;
  /** Set where the price goes by width: the size that is taken, and for which widths. */
  sized?: Pick<SizedPackaging, 'sizeMm' | 'forMm'>;
}

/** A line of the quote: what the customer pays. */
export interface PriceLine {
  kind: 'cake' | 'extra';
  name: string;
  count: number;
  eachMinor: Minor;
  netMinor: Minor;
  vatShare: number;
  vatMinor: Minor;
  inedible: boolean;
  /** Set where it is hired out. */
  comesBack?: true;
  /** ISO date by which it is to be back. */
  backBy?: string;
  /** Set where it pays for the drive. */
  delivery?: true;
}

export interface OrderCost {
  lines: CostLine[];
  costMinor: Minor;
  /** Before it goes up to the step; in parts of a minor unit. */
  exactPriceMinor: number;
  prices: PriceLine[];
  netMinor: Minor;
  vatMinor: Minor;
  totalMinor: Minor;
  /** Price of the cake less its cost. */
  marginMinor: Minor;
}

const sum = (values: readonly Minor[]): Minor => values.reduce((all, one) => all + one, 0);

/** Packaging that this order takes none of has no line. */
const packagingLines = ({ packaging }: CostSettings, { pieces: counts, widthsMm }: CostBasis): CostLine[] =>
  packaging.flatMap((item) =>
    sizedPackaging(item, { counts, ...(widthsMm === undefined ? {} : { widthsMm }) }).map(
      ({ eachMinor, count, sizeMm, forMm }): CostLine => ({
        ...{ kind: 'packaging', name: item.name, amount: count, eachMinor, minor: count * eachMinor },
        ...(item.sizes === undefined ? {} : { sized: { sizeMm, forMm } }),
      }),
    ),
  );

const materialLines = ({ materials }: CostBasis): CostLine[] =>
  materials.map(({ name, eachMinor, count }) => ({
    ...{ kind: 'materials', name, amount: count, eachMinor, minor: count * eachMinor },
  }));

function rateLine(kind: CostLine['kind'], amount: number, eachMinor: number): CostLine {
  return {
    kind,
    name: kind,
    amount: quantiseRatio(amount),
    eachMinor,
    minor: wholeMinor(amount * eachMinor),
  };
}

function costLines(basis: CostBasis, settings: CostSettings): CostLine[] {
  const hours = basis.handsOnMin / 60;
  const ingredients = sum(basis.ingredients.map(({ usedMinor }) => usedMinor));
  return [
    { kind: 'ingredients', name: 'ingredients', amount: null, eachMinor: null, minor: ingredients },
    ...materialLines(basis),
    ...packagingLines(settings, basis),
    rateLine('energy', basis.ovenKwh, settings.electricityMinorPerKwh),
    rateLine('labour', hours, settings.labourMinorPerH),
    rateLine('overhead', hours, settings.overheadMinorPerH),
  ];
}

function extraLine(extra: OrderExtra, settings: CostSettings): PriceLine {
  const netMinor = extra.count * extra.eachMinor;
  const vatShare = extra.vatShare ?? settings.vatShare;
  return {
    kind: 'extra',
    name: extra.name,
    count: extra.count,
    eachMinor: extra.eachMinor,
    netMinor,
    vatShare,
    vatMinor: wholeMinor(netMinor * vatShare),
    inedible: extra.inedible,
    ...(extra.comesBack === undefined ? {} : { comesBack: extra.comesBack }),
    ...(extra.backBy === undefined ? {} : { backBy: extra.backBy }),
    ...(extra.delivery === undefined ? {} : { delivery: extra.delivery }),
  };
}

/** Cost and price of an order; `name` is what the cake is called on the quote. */
export function orderCost(name: string, basis: CostBasis, settings: CostSettings): OrderCost {
  const lines = costLines(basis, settings);
  const costMinor = sum(lines.map(({ minor }) => minor));
  const cakeMinor = priceMinor(costMinor, settings.margin, settings.roundUpToMinor);
  const cake: PriceLine = {
    kind: 'cake',
    name,
    count: 1,
    eachMinor: cakeMinor,
    netMinor: cakeMinor,
    vatShare: settings.vatShare,
    vatMinor: wholeMinor(cakeMinor * settings.vatShare),
    inedible: false,
  };
  const prices = [cake, ...basis.extras.map((extra) => extraLine(extra, settings))];
  const netMinor = sum(prices.map((price) => price.netMinor));
  const vatMinor = sum(prices.map((price) => price.vatMinor));
  return {
    lines,
    costMinor,
    exactPriceMinor: quantiseRatio(costMinor / (1 - settings.margin)),
    prices,
    netMinor,
    vatMinor,
    totalMinor: netMinor + vatMinor,
    marginMinor: cakeMinor - costMinor,
  };
}
