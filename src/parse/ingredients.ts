/** ingredients.yaml: what is on the shelf, by id. */
import type { EggPart } from '../domain/egg.ts';
import { ALLERGENS, type Allergen, type Ingredient, ROLES } from '../domain/ingredient.ts';
import { type Currency, POUNDS } from '../domain/money.ts';
import type { Problem } from '../domain/problem.ts';
import { readTrade } from './ingredient-trade.ts';
import { parseId } from './names.ts';
import { suggest } from './nearest.ts';
import { error, warning } from './problems.ts';
import { quote } from './quote.ts';
import { ingredientsSchema } from './schemas/ingredients-schema.ts';
import { parseDensity } from './units/density.ts';
import { parseMass } from './units/mass.ts';
import { parseShare } from './units/share.ts';
import { plainLines } from './yaml/readable-text.ts';
import { complete, present, type YamlReader, yamlReader } from './yaml/yaml-reader.ts';
import { yamlSource } from './yaml/yaml-source.ts';

export interface IngredientsOutcome {
  /** Those that could be read, whatever else is wrong, by id. */
  ingredients: Ingredient[];
  /** Ids that are there but wrong; null when the file could not be read at all. */
  broken: string[] | null;
  problems: Problem[];
}

const PARTS: readonly EggPart[] = ['egg', 'yolk', 'white'];

function checkEgg(reader: YamlReader, id: string): void {
  const isEgg = reader.text(id, 'role') === 'egg';
  const hasPart = reader.has(id, 'part');
  if (isEgg && !hasPart) {
    const hint = "Add 'part: egg' for whole eggs, or 'part: yolk', 'part: white'.";
    reader.reportKey(
      error('egg-part-missing', `${quote(id)} does not say which part of an egg it is`, hint),
      id,
    );
  }
  if (!isEgg && hasPart) {
    const hint = "Delete 'part', or write 'role: egg'.";
    reader.reportKey(
      error('egg-part-unexpected', `${quote(id)} is not an egg but names a part of one`, hint),
      id,
      'part',
    );
  }
}

function readAllergens(reader: YamlReader, id: string): Allergen[] | undefined {
  const written = reader.texts(id, 'allergens');
  if (written === undefined) {
    if (reader.has(id, 'allergens')) return undefined;
    const hint = "Read the packet and add 'allergens: [milk]', or 'allergens: []' when it names none.";
    reader.reportKey(
      warning('allergens-not-filled-in', `Nobody has filled in the allergens of ${quote(id)}`, hint),
      id,
    );
    return undefined;
  }
  const allergens = ALLERGENS.filter((allergen) => written.includes(allergen));
  if (reader.text(id, 'role') === 'egg' && !allergens.includes('eggs')) {
    const hint = "Add it: 'allergens: [eggs]'.";
    reader.report(
      error('egg-allergen-missing', `${quote(id)} is egg, but its allergens do not name eggs`, hint),
      id,
      'allergens',
    );
  }
  return allergens;
}

function readAllergenNames(
  reader: YamlReader,
  id: string,
  allergens: readonly Allergen[],
): Ingredient['allergenNames'] {
  if (!reader.has(id, 'allergen_names')) return undefined;
  const names: Partial<Record<Allergen, string>> = {};
  for (const allergen of ALLERGENS) {
    const name = reader.text(id, 'allergen_names', allergen);
    if (name === undefined) continue;
    names[allergen] = name;
    if (allergens.includes(allergen)) continue;
    const hint = `Add ${allergen} to 'allergens', or delete this name.`;
    const message = `${quote(allergen)} is spelt out here, but is not among the allergens of ${quote(id)}`;
    reader.reportKey(error('allergen-name-without-allergen', message, hint), id, 'allergen_names', allergen);
  }
  return names;
}

function readSelfRaising(reader: YamlReader, id: string): Ingredient['selfRaising'] {
  if (!reader.has(id, 'self_raising')) return undefined;
  const whole = complete<NonNullable<Ingredient['selfRaising']>>({
    flourId: reader.text(id, 'self_raising', 'flour'),
    powderId: reader.text(id, 'self_raising', 'powder'),
    powderShare: reader.parsed((text) => parseShare(text), id, 'self_raising', 'share'),
  });
  return whole ?? undefined;
}

/** The flour and the powder in a self-raising flour must be such things on the same shelf. */
function checkSelfRaising(reader: YamlReader): void {
  const roleOf = { flour: 'flour', powder: 'raising' } as const;
  for (const id of reader.keys()) {
    for (const [key, role] of Object.entries(roleOf)) {
      const named = reader.text(id, 'self_raising', key);
      if (named === undefined) continue;
      const at = [id, 'self_raising', key];
      if (!reader.has(named)) {
        const hint = suggest(named, reader.keys(), 'ingredients');
        reader.report(
          error('ingredient-unknown', `There is no ingredient ${quote(named)} here`, hint),
          ...at,
        );
      } else if (named === id || reader.text(named, 'role') !== role) {
        const hint =
          "Name a plain flour and a raising agent: '{ flour: plain-flour, powder: baking-powder, share: 5 % }'.";
        const message = `${quote(named)} cannot be the ${key} in ${quote(id)}`;
        reader.report(error('self-raising-roles', message, hint), ...at);
      }
    }
  }
}

function readIngredient(reader: YamlReader, id: string, currency: Currency): Ingredient | null {
  const before = reader.problems.filter((problem) => problem.severity === 'error').length;
  const named = parseId(id);
  if (!named.ok) for (const problem of named.problems) reader.reportKey(problem, id);
  checkEgg(reader, id);
  const allergens = readAllergens(reader, id);
  const allergenNames = readAllergenNames(reader, id, allergens ?? []);
  const measured = present<Pick<Ingredient, 'eggPart' | 'densityGPerMl'>>({
    eggPart: reader.word(PARTS, id, 'part'),
    densityGPerMl: reader.parsed(parseDensity, id, 'density'),
  } as { [K in 'eggPart' | 'densityGPerMl']: Ingredient[K] | undefined });
  const optional = present<Ingredient>({
    ...measured,
    allergens,
    allergenNames,
    ...readTrade(reader, { id, ...measured }, currency),
    drinks: reader.parsed((text) => parseShare(text), id, 'drinks'),
    selfRaising: readSelfRaising(reader, id),
    waterShare: reader.parsed((text) => parseShare(text, { zero: true }), id, 'water'),
    teaspoonG: reader.parsed(parseMass, id, 'teaspoon'),
  } as { [K in keyof Ingredient]: Ingredient[K] | undefined });
  const whole = complete<Pick<Ingredient, 'name' | 'role'>>({
    name: reader.text(id, 'name'),
    role: reader.word(ROLES, id, 'role'),
  });
  const after = reader.problems.filter((problem) => problem.severity === 'error').length;
  if (whole === null || after > before) return null;
  const atOnce = reader.truth(id, 'acts_at_once') === true ? { actsAtOnce: true } : {};
  return { id, ...whole, fine: reader.truth(id, 'fine') ?? false, ...atOnce, ...optional };
}

function byId(a: Ingredient, b: Ingredient): number {
  return a.id < b.id ? -1 : a.id > b.id ? 1 : 0;
}

/** The ingredients of ingredients.yaml's text, sorted by id, and everything that is wrong with it. */
export function parseIngredientsYaml(
  text: string,
  file: string,
  currency: Currency = POUNDS,
): IngredientsOutcome {
  const source = yamlSource(plainLines(text), file);
  if (!source.ok) return { ingredients: [], broken: null, problems: source.problems };
  const reader = yamlReader(source.value, ingredientsSchema);
  checkSelfRaising(reader);
  const ingredients: Ingredient[] = [];
  const broken: string[] = [];
  for (const id of reader.keys()) {
    const ingredient = readIngredient(reader, id, currency);
    if (ingredient === null) broken.push(id);
    else ingredients.push(ingredient);
  }
  return { ingredients: ingredients.sort(byId), broken, problems: reader.problems };
}
