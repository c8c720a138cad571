/** How a cake of an order is baked, as its sheet, the week's, the oven plan and data show it. */

import type { PlannedTier } from '../compute/orders/planned-order.types.ts';
import { type TierOven, tierOven } from '../compute/orders/tier-oven.ts';
import type { Locale } from '../domain/kitchen.ts';
import { bakeWordsFor, formatLoggedMinutes } from '../wording/bake/index.ts';
import { orderWordsFor } from '../wording/orders/index.ts';
import type { BakeFigures } from './bake-figures.types.ts';
import type { Caution, Figure } from './figure.ts';

/** Minutes that are worked by, to the minute. */
export const workedMinutes = (minutes: number): Figure => ({
  value: minutes,
  unit: 'min',
  text: formatLoggedMinutes(minutes),
});

/** What the oven does with a cake, without the dial. */
export const ovenFigures = ({
  bake,
  core,
  band,
}: Pick<TierOven, 'bake' | 'core' | 'band'>): Pick<
  BakeFigures,
  'firstLook' | 'likely' | 'expectedBy' | 'core' | 'band'
> => ({
  firstLook: workedMinutes(bake.firstLook),
  likely: workedMinutes(bake.expected),
  expectedBy: workedMinutes(bake.by),
  core,
  band,
});

/** What helps a cake through; left out or no: nothing does. */
export interface OvenAids {
  core?: boolean;
  band?: boolean;
}

/** 'with the heating core'; '' where nothing helps. */
export function aidText({ core, band }: OvenAids, locale: Locale): string {
  const { withCore, withBand } = orderWordsFor(locale).sheet;
  if (core === true) return withCore;
  return band === true ? withBand : '';
}

/** The same of a tier. */
export const bakedWith = (tier: PlannedTier | undefined, locale: Locale): string =>
  aidText((tier === undefined ? null : tierOven(tier)) ?? {}, locale);

/** The caution of the hot core, where one of these has it. */
export const hotCoreCaution = (baked: readonly (OvenAids | null)[], locale: Locale): Caution[] =>
  baked.some((one) => one?.core === true)
    ? [{ code: 'hot-core', text: bakeWordsFor(locale).cautions.core }]
    : [];
