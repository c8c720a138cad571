/** US English for labels. */
import { inAmerican } from '../american.ts';
import { americanDate } from '../date.ts';
import { withUsUnits } from '../us-units.ts';
import { enGbLabel } from './en-gb.ts';
import type { LabelWords } from './label-words.ts';

const gb = inAmerican(enGbLabel);

export const enUsLabel: LabelWords = {
  ...gb,
  date: americanDate,
  noneKnown: 'none of the nine major allergens among its ingredients',
  allergens: {
    ...gb.allergens,
    gluten: 'wheat',
    crustaceans: 'crustacean shellfish',
    soya: 'soy',
    nuts: 'tree nuts',
    sulphites: 'sulfites',
    molluscs: 'mollusks',
  },
  tooSmall: withUsUnits(gb.tooSmall),
  sheet: withUsUnits(gb.sheet),
  portions: (count) => (count === 1 ? '1 serving per container.' : `${count} servings per container.`),
  net: (amount) => `Net Wt ${amount}`,
  storage: {
    ...gb.storage,
    chilled: 'Keep refrigerated, at 40 °F or below.',
    'chilled-and-tempered': 'Keep refrigerated, at 40 °F or below; take out an hour before serving.',
    cool: 'Keep in a closed box in a cool room, below 68 °F, out of the sun.',
  },
  nutrition: {
    ...gb.nutrition,
    perPortion: (grams) => `per serving (${grams} g)`,
    noPortion:
      'Nutrition stands per 100 g alone, where US rules ask for figures per serving: how many servings are cut from this cake is not known.',
    figures: {
      energy: 'Calories',
      fat: 'Total fat',
      saturates: 'Saturated fat',
      carbohydrate: 'Total carbohydrate',
      sugars: 'Total sugars',
      polyols: 'Sugar alcohol',
      fibre: 'Dietary fiber',
      protein: 'Protein',
      salt: 'Sodium',
    },
    ofWhich: (what) => what,
  },
  exempt:
    'These are figures, not a Nutrition Facts panel: added sugars, trans fat, cholesterol, vitamins and minerals are not worked out.',
};
