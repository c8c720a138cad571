/**
 * What does raw batter of this method weigh, g/mL, where the baker has not weighed it? Creamed and whisked and
 * angel: American Society of Baking, Specific Gravity page (seen); all-in-one and rich fruit: common practice;
 * oil and melted: that page's chocolate batter, 0.90 to 1.10.
 */
import type { MixingMethod } from '../domain/recipe.ts';

export const RAW_DENSITY_G_PER_ML: Readonly<Record<MixingMethod, number>> = {
  creamed: 0.85,
  'all-in-one': 0.9,
  whisked: 0.5,
  oil: 0.95,
  melted: 0.95,
  'rich fruit': 1.2,
  angel: 0.3,
};
