/**
 * Which rules a label follows: whose allergens are emphasised, how small type may be, what each kind of sale needs.
 * UK and EU: Regulation (EU) No 1169/2011, Articles 9, 13, 18, 21, 44 and Annexes II, IV (articles on the list and
 * on emphasis seen, the rest from memory); prepacked for direct sale: SI 2019/1218 and its counterparts (from
 * memory). US: FALCPA 2004, FASTER Act 2021, 21 CFR 101.2 and 101.105 (from memory). Home bakers in the US come
 * under their state's cottage food law, which is not here.
 */
import { ALLERGENS, type Allergen } from '../../domain/ingredient.ts';
import type { KindOfSale, LabelElement, LabelRules } from '../../domain/label-settings.ts';

export interface RuleSet {
  rules: LabelRules;
  /** ISO date from which the newest rule named here applies. */
  since: string;
  /** The rules by name, as a label's small print gives them. */
  named: string;
  emphasised: readonly Allergen[];
  /** In the list by name, without emphasis: sulphites of 10 mg/kg or more in the US, 21 CFR 101.100(a)(4). */
  alsoListed: readonly Allergen[];
  /** Whether a 'Contains:' line follows the list of ingredients; where the list is emphasised it must not. */
  containsLine: boolean;
  /** Least height of a lower-case x, mm. */
  leastXHeightMm: number;
  /** The same where the pack's largest side is under 80 cm². */
  leastXHeightSmallMm: number;
  needs: Record<KindOfSale, readonly LabelElement[]>;
}

const ALL: readonly LabelElement[] = [
  'name',
  'ingredients',
  'allergens',
  'percentages',
  'net-quantity',
  'date',
  'storage',
  'business',
];

/** Nutrition is left out of what is needed: small makers who sell to the eater are exempt, Annex V point 19. */
const needsUk: RuleSet['needs'] = {
  'made to order': ['allergens'],
  'prepacked for direct sale': ['name', 'ingredients', 'allergens'],
  prepacked: ALL,
  distance: ['allergens'],
};

const RULE_SETS: Record<LabelRules, RuleSet> = {
  UK: {
    rules: 'UK',
    since: '2021-10-01',
    named: 'Regulation (EU) 1169/2011 as assimilated, SI 2019/1218',
    emphasised: ALLERGENS,
    alsoListed: [],
    containsLine: false,
    leastXHeightMm: 1.2,
    leastXHeightSmallMm: 0.9,
    needs: needsUk,
  },
  EU: {
    rules: 'EU',
    since: '2016-12-13',
    named: 'Regulation (EU) 1169/2011',
    emphasised: ALLERGENS,
    alsoListed: [],
    containsLine: false,
    leastXHeightMm: 1.2,
    leastXHeightSmallMm: 0.9,
    // What else direct sale needs is each member state's own: Article 44(1)(b).
    needs: { ...needsUk, 'prepacked for direct sale': ['allergens'] },
  },
  US: {
    rules: 'US',
    since: '2023-01-01',
    named: 'FALCPA 2004, FASTER Act 2021, 21 CFR 101',
    emphasised: ['milk', 'eggs', 'fish', 'crustaceans', 'nuts', 'peanuts', 'gluten', 'soya', 'sesame'],
    alsoListed: ['sulphites'],
    containsLine: true,
    // One sixteenth of an inch, measured on a lower-case o: 21 CFR 101.2(c).
    leastXHeightMm: 1.5875,
    leastXHeightSmallMm: 1.5875,
    needs: {
      'made to order': [],
      'prepacked for direct sale': ['name', 'ingredients', 'allergens', 'net-quantity', 'business'],
      prepacked: ['name', 'ingredients', 'allergens', 'net-quantity', 'business'],
      distance: ['name', 'ingredients', 'allergens', 'net-quantity', 'business'],
    },
  },
};

/** The rules of a country. */
export const ruleSet = (rules: LabelRules): RuleSet => RULE_SETS[rules];

const SMALL_PACK_CM2 = 80;

/** Least x-height for a pack, mm; a pack of unknown size is a large one. */
export function leastXHeightMm(rules: LabelRules, packSurfaceCm2: number | undefined): number {
  const set = RULE_SETS[rules];
  return packSurfaceCm2 !== undefined && packSurfaceCm2 < SMALL_PACK_CM2
    ? set.leastXHeightSmallMm
    : set.leastXHeightMm;
}
