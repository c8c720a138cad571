/**
 * Why a label cannot be made. No label is better than one that leaves an allergen out: whatever is not known about
 * an ingredient stops it, all reasons at once.
 */
import { claimIn } from '../../domain/claim.ts';
import type { Ingredient } from '../../domain/ingredient.ts';
import type { Problem } from '../../domain/problem.ts';
import { finishClashes } from '../finishes/clashes.ts';
import { lawfulNames, mustBeNamed, singular, tellingWords, unlawfulNames } from './allergen-words.ts';
import { finishWeighedIn } from './bowl.ts';
import { durabilityOf, isPastKeeping } from './durability.ts';
import { toldAllergens } from './ingredient-list.ts';
import type { LabelInput } from './label-input.ts';
import { leftOutIn } from './left-out.ts';
import { ruleSet } from './rule-set.ts';
import { usedFinishes } from './used-finishes.ts';

const refusal = (code: string, message: string, hint: string): Problem => ({
  code,
  severity: 'error',
  message,
  hint,
});

/** Everything that weighs something, each id once. */
function weighedIds({ sponges, finishes }: LabelInput): string[] {
  const weighed = [...sponges.flatMap(({ formula }) => formula), ...finishes.flatMap(finishWeighedIn)];
  return [...new Set(weighed.filter(({ grams }) => grams !== 0).map(({ ingredientId }) => ingredientId))];
}

function nameProblems({ foodName }: LabelInput): Problem[] {
  const claim = claimIn(foodName);
  if (foodName.trim() === '')
    return [refusal('label-name-missing', 'The food has no name.', 'Say what it is: Lemon sponge cake.')];
  if (claim === null) return [];
  const message = `The name promises '${claim}', which no kitchen that handles the allergen can know.`;
  return [refusal('label-claim', message, "Write 'made without … ingredients' instead.")];
}

/** 'Made without milk ingredients' above a cake with butter would be worse than no name at all. */
function untrueNames(input: LabelInput): Problem[] {
  const words = leftOutIn(input.foodName)
    .flatMap((text) => text.toLowerCase().split(/[^\p{L}]+/u))
    .map(singular);
  const { rules } = input.settings;
  const shelf = new Map(input.ingredients.map((one) => [one.id, one]));
  return weighedIds(input).flatMap((id): Problem[] => {
    const ingredient = shelf.get(id);
    const told =
      ingredient === undefined
        ? []
        : [ingredient, ...(ingredient.compound ?? [])].flatMap((one) => toldAllergens(one, rules));
    const named = told.filter(({ allergen, name }) =>
      tellingWords(allergen, name)
        .concat(singular(allergen))
        .some((word) => words.includes(word)),
    );
    if (named.length === 0) return [];
    const message = `The name says 'without ${named[0]?.name}', but ${ingredient?.name} brings ${named[0]?.name}.`;
    return [refusal('label-name-untrue', message, 'Change the name, or leave out what brings it.')];
  });
}

function namingProblems(ingredient: Ingredient, input: LabelInput): Problem[] {
  const { rules } = input.settings;
  const told: Pick<Ingredient, 'name' | 'allergens' | 'allergenNames'>[] = [
    ingredient,
    ...(ingredient.compound ?? []),
  ];
  const { emphasised } = ruleSet(rules);
  return told.flatMap(({ name, allergens = [], allergenNames }) =>
    allergens
      .filter((allergen) => emphasised.includes(allergen) && mustBeNamed(allergen, rules))
      .flatMap((allergen): Problem[] => {
        const written = allergenNames?.[allergen];
        const lawful = lawfulNames(allergen, rules);
        const list = lawful.length === 0 ? 'the kind, as the packet has it' : lawful.join(', ');
        if (written === undefined) {
          const message = `${name} contains ${allergen}, but nobody has said which: a label must name it.`;
          return [refusal('label-allergen-unnamed', message, `Add it to 'allergen_names': ${list}.`)];
        }
        const wrong = unlawfulNames(allergen, written, rules);
        if (wrong.length === 0) return [];
        const message = `${name} names '${wrong.join("', '")}' as ${allergen}, which the ${rules} list does not have.`;
        return [refusal('label-allergen-name', message, `Use ${list}.`)];
      }),
  );
}

function ingredientProblems(input: LabelInput): Problem[] {
  return weighedIds(input).flatMap((id): Problem[] => {
    const ingredient = input.ingredients.find((one) => one.id === id);
    if (ingredient === undefined) {
      const hint = 'Add it to ingredients.yaml with its allergens.';
      return [refusal('label-ingredient-unknown', `There is no ingredient '${id}' on the shelf.`, hint)];
    }
    if (ingredient.allergens === undefined) {
      const hint = "Read the packet and write 'allergens: [milk]', or 'allergens: []' when it names none.";
      const message = `Nobody has filled in the allergens of ${ingredient.name}: no label without them.`;
      return [refusal('label-allergens-missing', message, hint)];
    }
    return namingProblems(ingredient, input);
  });
}

const isWeight = (grams: number): boolean => Number.isFinite(grams) && grams >= 0;

function weightProblems({ sponges, finishes, portions }: LabelInput): Problem[] {
  const weights = [
    ...sponges.flatMap(({ formula }) => formula.map(({ grams }) => grams)),
    ...finishes.map(({ onCakeG }) => onCakeG),
  ];
  const hint = 'Give grams, 0 or more, and a share of steam below 100 %.';
  const boiledAway = finishes.some(
    ({ finish }) => !(finish.cookingLossShare >= 0 && finish.cookingLossShare < 1),
  );
  if (
    boiledAway ||
    !weights.every(isWeight) ||
    sponges.some(({ waterLossShare: share }) => !(share >= 0 && share < 1))
  )
    return [refusal('label-weight', 'A weight or a loss is not one that a cake can have.', hint)];
  if (!(weights.reduce((sum, grams) => sum + grams, 0) > 0))
    return [refusal('label-empty', 'Nothing has been weighed in.', 'Give at least one ingredient.')];
  if (portions !== null && !(Number.isFinite(portions) && portions > 0))
    return [refusal('label-portions', 'A cake has more than no portions.', 'Give a count, or leave it out.')];
  return [];
}

function clashProblems({ finishes }: LabelInput): Problem[] {
  return finishClashes(usedFinishes(finishes))
    .filter(({ code }) => code === 'cream-under-sheet')
    .map(({ message }) =>
      refusal('label-cream-under-sheet', message, 'There is no way to keep it that a label could give.'),
    );
}

/** Baked or filled so early that it is past its keeping when the customer gets it. */
function keepingProblems(input: LabelInput): Problem[] {
  if (!isPastKeeping(input)) return [];
  const { decidedBy, keepsDays, countsFrom, date } = durabilityOf(input);
  const what = `${decidedBy ?? input.foodName}, made on ${countsFrom}, keeps ${keepsDays} days, to ${date}`;
  const message = `${what}: before the cake changes hands on ${input.facts.handOverOn ?? input.facts.madeOn}.`;
  return [refusal('label-past-keeping', message, 'Make it later: free the hands or the oven on those days.')];
}

/** Every reason against this label; none when it can be made. */
export function labelProblems(input: LabelInput): Problem[] {
  const weights = weightProblems(input);
  const rest =
    weights.length > 0
      ? []
      : [...ingredientProblems(input), ...untrueNames(input), ...keepingProblems(input)];
  return [...nameProblems(input), ...weights, ...rest, ...clashProblems(input)];
}
