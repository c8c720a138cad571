/** A glaze to be poured, which the demo bakery does not make: chocolate, butter and syrup, two fifths of it to run off. */
import type { Finish } from '../../src/domain/finish.ts';

const part = (ingredientId: string, name: string, parts: number): Finish['parts'][number] => ({
  ...{ ingredientId, name, parts },
  fine: false,
});

export const CHOCOLATE_GLAZE: Finish = {
  id: 'chocolate-glaze',
  name: 'Chocolate glaze',
  kind: 'poured glaze',
  densityGPerMl: 1.2,
  parts: [
    part('dark-chocolate', 'Dark chocolate', 100),
    part('butter', 'Butter', 50),
    part('golden-syrup', 'Golden syrup', 20),
    part('water', 'Water', 20),
  ],
  use: { coating: { crumbMm: 0, finalMm: 3, corners: 'rounded' } },
  lossShare: 0.4,
  cookingLossShare: 0,
  keepsDays: 3,
  chilled: false,
  methodMarkdown: 'Cool it to 32 to 35 °C and pour it in one go.',
};

/** The same with egg in it, which nothing cooks. */
export const EGG_GLAZE: Finish = {
  ...CHOCOLATE_GLAZE,
  ...{ id: 'egg-glaze', name: 'Egg glaze' },
  parts: [...CHOCOLATE_GLAZE.parts, { ...part('egg-yolk', 'Egg yolk', 20), eggPart: 'yolk' }],
};
