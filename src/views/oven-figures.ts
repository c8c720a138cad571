/** The minutes of a cake in an order as figures: the same on its sheet, on the oven plan and in data. */
import type { TierOven } from '../compute/orders/tier-oven.ts';
import { formatLoggedMinutes } from '../wording/bake/index.ts';
import type { BakeFigures } from './bake-figures.types.ts';
import type { Figure } from './figure.ts';

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
