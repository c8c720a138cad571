/**
 * The list of ingredients: what goes by one name on a label stands once, heaviest first as weighed into the bowl
 * (Regulation (EU) No 1169/2011 Article 18(1), seen), with what a bought ingredient is made of in brackets.
 * Where two weigh the same to a thousandth of a gram, the one that went in first stands first, and the label says
 * that they tie.
 */
import type { CompoundPart, Ingredient } from '../../domain/ingredient.ts';
import type { LabelRules } from '../../domain/label-settings.ts';
import { quantiseG, quantiseRatio } from '../../domain/quantise.ts';
import { shownNames } from './allergen-words.ts';
import type { Bowl, BowlLine } from './bowl.ts';
import { allergenPieces, emphasised } from './emphasis.ts';
import type { LabelEntry, TextPiece, ToldAllergen } from './label.types.ts';
import { ruleSet } from './rule-set.ts';

/** What a label calls an ingredient: its own label name, else its name with a small letter. */
export function labelNameOf({ labelName, name }: Pick<Ingredient, 'labelName' | 'name'>): string {
  if (labelName !== undefined) return labelName;
  const second = name.charAt(1);
  return second === second.toLowerCase() ? name.charAt(0).toLowerCase() + name.slice(1) : name;
}

/** The allergens of an ingredient, or of one part of it, by the names that these rules want. */
export function toldAllergens(
  { allergens = [], allergenNames }: Pick<Ingredient, 'allergens' | 'allergenNames'>,
  rules: LabelRules,
): ToldAllergen[] {
  const { emphasised: known } = ruleSet(rules);
  return allergens
    .filter((allergen) => known.includes(allergen))
    .flatMap((allergen) => shownNames(allergen, allergenNames, rules).map((name) => ({ allergen, name })));
}

const plain = (text: string): TextPiece => ({ text, allergen: null });
const isSame = (one: ToldAllergen) => (other: ToldAllergen) =>
  one.allergen === other.allergen && one.name === other.name;
const distinct = (all: readonly ToldAllergen[]): ToldAllergen[] =>
  all.filter((one, at) => all.findIndex(isSame(one)) === at);

interface Group {
  name: string;
  lines: BowlLine[];
}

function groupsOf(lines: readonly BowlLine[]): Group[] {
  const groups = new Map<string, Group>();
  for (const line of lines) {
    const name = labelNameOf(line.ingredient);
    const group = groups.get(name) ?? { name, lines: [] };
    group.lines.push(line);
    groups.set(name, group);
  }
  return [...groups.values()];
}

interface WeighedPart extends CompoundPart {
  grams: number;
}

/** What a group is made of, heaviest first; parts of one name together. */
function partsOf({ lines }: Group): WeighedPart[] {
  const parts = new Map<string, WeighedPart>();
  for (const { ingredient, grams } of lines) {
    for (const part of ingredient.compound ?? []) {
      const known = parts.get(part.name);
      if (known === undefined) parts.set(part.name, { ...part, grams: grams * part.share });
      else known.grams += grams * part.share;
    }
  }
  const byWeight = [...parts.values()].map((part) => ({ ...part, grams: quantiseG(part.grams) }));
  return byWeight.sort((a, b) => b.grams - a.grams);
}

function bracketed(
  parts: readonly WeighedPart[],
  whole: readonly ToldAllergen[],
  rules: LabelRules,
): { pieces: TextPiece[]; named: ToldAllergen[] } {
  const pieces: TextPiece[] = [];
  const named: ToldAllergen[] = [];
  for (const [index, part] of parts.entries()) {
    const own = toldAllergens(part, rules);
    const told = emphasised(part.name, distinct([...own, ...whole]));
    const untold = own.filter((one) => !told.named.some(isSame(one)));
    if (index > 0) pieces.push(plain(', '));
    pieces.push(...told.pieces);
    if (untold.length > 0) pieces.push(plain(' ('), ...allergenPieces(untold), plain(')'));
    named.push(...told.named, ...own);
  }
  return { pieces, named };
}

/** What the list must name without emphasis and does not name yet. */
function quietNames(group: Group, rules: LabelRules): string[] {
  const texts = [group.name, ...partsOf(group).map(({ name }) => name)];
  const listed = group.lines.flatMap(({ ingredient: { allergens = [] } }) =>
    allergens.filter((allergen) => ruleSet(rules).alsoListed.includes(allergen)),
  );
  const names = listed.flatMap((allergen) =>
    shownNames(allergen, undefined, rules).map((name) => ({ allergen, name })),
  );
  return distinct(names)
    .filter((one) => texts.every((text) => emphasised(text, [one]).named.length === 0))
    .map(({ name }) => name);
}

/** Name, then what it is made of, then allergens that neither has told. */
function entryPieces(group: Group, rules: LabelRules): Pick<LabelEntry, 'pieces' | 'namePieces'> {
  const whole = distinct(group.lines.flatMap(({ ingredient }) => toldAllergens(ingredient, rules)));
  const head = emphasised(group.name, whole);
  const inside = bracketed(partsOf(group), whole, rules);
  const told = [...head.named, ...inside.named];
  const untold = whole.filter((one) => !told.some(isSame(one)));
  const quiet = quietNames(group, rules);
  const namePieces = head.pieces.length;
  const bracket = [
    ...inside.pieces,
    ...(inside.pieces.length > 0 && untold.length > 0 ? [plain(', ')] : []),
    ...allergenPieces(untold),
    ...quiet.map((name, at) =>
      plain(at === 0 && inside.pieces.length + untold.length === 0 ? name : `, ${name}`),
    ),
  ];
  if (bracket.length === 0) return { pieces: head.pieces, namePieces };
  return { pieces: [...head.pieces, plain(' ('), ...bracket, plain(')')], namePieces };
}

const sumOf = (lines: readonly BowlLine[], pick: (line: BowlLine) => number): number =>
  lines.reduce((sum, line) => sum + pick(line), 0);

function entryOf(group: Group, bowlG: number, rules: LabelRules): LabelEntry {
  const grams = sumOf(group.lines, (line) => line.grams);
  return {
    name: group.name,
    ingredientIds: [...new Set(group.lines.map(({ ingredientId }) => ingredientId))],
    bowlG: quantiseG(grams),
    share: quantiseRatio(grams / bowlG),
    rankG: quantiseG(sumOf(group.lines, (line) => line.rankG)),
    ...entryPieces(group, rules),
    quid: null,
  };
}

/** The list in its order. Added water of which nothing is left is not in the finished food and not in the list. */
export function ingredientList({ lines, bowlG }: Bowl, rules: LabelRules): LabelEntry[] {
  return groupsOf(lines)
    .map((group) => entryOf(group, bowlG, rules))
    .filter(({ rankG }) => rankG > 0)
    .sort((a, b) => b.rankG - a.rankG);
}

/** Names that weigh the same, in the order they stand. */
export function tiesIn(entries: readonly LabelEntry[]): string[][] {
  const byWeight = new Map<number, string[]>();
  for (const { name, rankG } of entries) byWeight.set(rankG, [...(byWeight.get(rankG) ?? []), name]);
  return [...byWeight.values()].filter((names) => names.length > 1);
}

/** Every allergen that the list tells of, each name once, in the order of the list. */
export function allergensTold(
  { lines }: Bowl,
  entries: readonly LabelEntry[],
  rules: LabelRules,
): ToldAllergen[] {
  const inOrder = entries.flatMap(({ ingredientIds }) =>
    lines.filter(({ ingredientId }) => ingredientIds.includes(ingredientId)),
  );
  return distinct(
    inOrder.flatMap(({ ingredient }) => [
      ...toldAllergens(ingredient, rules),
      ...(ingredient.compound ?? []).flatMap((part) => toldAllergens(part, rules)),
    ]),
  );
}
