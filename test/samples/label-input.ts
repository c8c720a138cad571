/** A label's input with little in it: tests change what they are about. */
import type { LabelFinish, LabelInput, WeighedIn } from '../../src/compute/labels/label-input.ts';
import { NO_FACTS } from '../../src/compute/labels/label-input.ts';
import type { Finish } from '../../src/domain/finish.ts';
import type { Ingredient } from '../../src/domain/ingredient.ts';
import { USUAL_LABEL } from '../../src/domain/label-settings.ts';

export const shelfItem = (id: string, more: Partial<Ingredient> = {}): Ingredient => ({
  id,
  name: id,
  role: 'inclusion',
  fine: false,
  allergens: [],
  ...more,
});

export const SHELF: Ingredient[] = [
  shelfItem('self-raising-flour', {
    name: 'Self-raising flour',
    allergens: ['gluten'],
    allergenNames: { gluten: 'wheat' },
  }),
  shelfItem('butter', { name: 'Butter', allergens: ['milk'] }),
  shelfItem('caster-sugar', { name: 'Caster sugar', labelName: 'sugar' }),
  shelfItem('icing-sugar', { name: 'Icing sugar', labelName: 'sugar' }),
  shelfItem('egg', { name: 'Egg', role: 'egg', eggPart: 'egg', allergens: ['eggs'] }),
  shelfItem('strawberry-jam', {
    name: 'Strawberry jam',
    compound: [
      { name: 'sugar', share: 0.54 },
      { name: 'strawberry', share: 0.45 },
      { name: 'pectin', share: 0.01 },
    ],
  }),
  shelfItem('water', { name: 'Water', role: 'liquid', waterShare: 1 }),
];

export const SPONGE: WeighedIn[] = [
  { ingredientId: 'self-raising-flour', grams: 250 },
  { ingredientId: 'butter', grams: 250 },
  { ingredientId: 'caster-sugar', grams: 250 },
  { ingredientId: 'egg', grams: 250 },
];

export const finishOf = (id: string, parts: Record<string, number>, more: Partial<Finish> = {}): Finish => ({
  id,
  name: id,
  kind: 'buttercream',
  densityGPerMl: 1,
  parts: Object.entries(parts).map(([ingredientId, share]) => ({
    ingredientId,
    name: ingredientId,
    parts: share,
    fine: false,
  })),
  use: { filling: { thicknessMm: 8 } },
  lossShare: 0,
  cookingLossShare: 0,
  keepsDays: 3,
  chilled: false,
  methodMarkdown: '',
  ...more,
});

export const BUTTERCREAM: LabelFinish = {
  finish: finishOf('buttercream', { butter: 1, 'icing-sugar': 2 }, { name: 'Buttercream' }),
  use: 'filling',
  onCakeG: 450,
};

export const JAM: LabelFinish = {
  finish: finishOf(
    'jam-filling',
    { 'strawberry-jam': 1 },
    { name: 'Jam filling', kind: 'jam', keepsDays: 30 },
  ),
  use: 'filling',
  onCakeG: 100,
};

export const labelInput = (more: Partial<LabelInput> = {}): LabelInput => ({
  id: 'victoria',
  foodName: 'Sponge cake with jam',
  sponges: [{ name: 'Sponge', formula: SPONGE, waterLossShare: 0.1, keepsDays: 4 }],
  finishes: [JAM, BUTTERCREAM],
  ingredients: SHELF,
  settings: USUAL_LABEL,
  business: { name: 'Dunnock Stair Cakes', address: ['3 Dunnock Stair, Orlenwick'] },
  portions: null,
  named: [],
  facts: NO_FACTS,
  ...more,
});
