/** What must the label of this cake say? One pure function from weights and settings; refuses with every reason. */
import type { LabelElement } from '../../domain/label-settings.ts';
import type { Warning } from '../../domain/problem.ts';
import { quantiseG, quantiseRatio } from '../../domain/quantise.ts';
import { fail, type Result, succeed } from '../../domain/result.ts';
import { finishClashes } from '../finishes/clashes.ts';
import { nutritionOf } from '../nutrition/nutrition.ts';
import { type Bowl, labelBowl } from './bowl.ts';
import { durabilityOf, storageOf } from './durability.ts';
import { allergensTold, ingredientList, tiesIn } from './ingredient-list.ts';
import type { Label } from './label.types.ts';
import type { LabelInput } from './label-input.ts';
import { labelProblems } from './label-problems.ts';
import { alcoholIn, coloursIn } from './notices.ts';
import { withQuids } from './quid.ts';
import { ruleSet } from './rule-set.ts';
import { usedFinishes } from './used-finishes.ts';

export type * from './label.types.ts';
export type * from './label-input.ts';
export { NO_FACTS } from './label-input.ts';

/** Declared cross-contact that the food does not contain anyway; of cereals and nuts there are several. */
function mayContain({ settings }: LabelInput, contained: ReadonlySet<string>): Label['mayContain'] {
  return settings.mayContain.filter(
    (allergen) => allergen === 'gluten' || allergen === 'nuts' || !contained.has(allergen),
  );
}

function warningsOf({ finishes }: LabelInput): Warning[] {
  return finishClashes(usedFinishes(finishes)).filter(({ code }) => code !== 'cream-under-sheet');
}

/** Of what the rules need, what this label cannot say yet. */
function gapsOf(needs: readonly LabelElement[], { business, facts }: LabelInput): LabelElement[] {
  return needs.filter(
    (element) =>
      (element === 'business' && (business === null || business.address.length === 0)) ||
      (element === 'date' && facts.madeOn === null),
  );
}

function assembled(input: LabelInput, bowl: Bowl): Label {
  const { id, foodName, settings, portions, facts } = input;
  const rules = ruleSet(settings.rules);
  const list = ingredientList(bowl, settings.rules);
  const { entries, loose } = withQuids(list, input, bowl);
  const allergens = allergensTold(bowl, entries, settings.rules);
  const { nutrition, missing } = nutritionOf({
    weighedIn: bowl.lines,
    ingredients: input.ingredients,
    finishedG: bowl.finishedG,
    portions,
  });
  const needs = [...rules.needs[settings.sale]];
  return {
    id,
    foodName,
    reference: facts.reference,
    rules: settings.rules,
    rulesSince: rules.since,
    rulesNamed: rules.named,
    sale: settings.sale,
    entries,
    looseQuids: loose,
    ties: tiesIn(entries),
    goneShare: quantiseRatio(bowl.goneG / bowl.bowlG),
    allergens,
    mayContain: mayContain(input, new Set(allergens.map(({ allergen }) => allergen))),
    containsLine: rules.containsLine,
    bowlG: quantiseG(bowl.bowlG),
    finishedG: quantiseG(bowl.finishedG),
    durability: durabilityOf(input),
    storage: storageOf(input),
    colours: coloursIn(bowl),
    alcohol: alcoholIn(bowl),
    inedible: [...facts.inedible],
    nutrition,
    nutritionMissing: missing,
    portions,
    needs,
    gaps: gapsOf(needs, input),
    warnings: warningsOf(input),
  };
}

/**
 * The label of a cake. Fails with every reason at once: `label-allergens-missing`, `label-allergen-unnamed`,
 * `label-allergen-name`, `label-ingredient-unknown`, `label-cream-under-sheet`, `label-claim`,
 * `label-name-missing`,
 * `label-name-untrue`, `label-weight`, `label-empty`, `label-portions`, `label-past-keeping`.
 * @example labelOf({ …, foodName: 'Orange sponge cake' }) // { ok: true, value: { entries, allergens, … } }
 */
export function labelOf(input: LabelInput): Result<Label> {
  const problems = labelProblems(input);
  return problems.length > 0 ? fail(...problems) : succeed(assembled(input, labelBowl(input)));
}
