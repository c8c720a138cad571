/** One adjustment of a flavour: exactly one of replace, add, multiply and split_self_raising. */
import { selfRaisingSplit } from '../compute/flavours/self-raising.ts';
import type { Adjustment, Basis } from '../domain/flavour.ts';
import { formulaEntry } from '../domain/formula-entry.ts';
import { type Ingredient, ROLES } from '../domain/ingredient.ts';
import { fail, type Result, succeed } from '../domain/result.ts';
import { type Shelf, shelfItem } from './formula.ts';
import { suggest } from './nearest.ts';
import { error } from './problems.ts';
import { quote } from './quote.ts';
import { parseMass } from './units/mass.ts';
import { parseProportion, parseShare } from './units/share.ts';
import type { YamlReader } from './yaml/yaml-reader.ts';
import type { YamlPath } from './yaml/yaml-source.ts';

const G_PER_KG = 1000;
const KINDS = ['replace', 'add', 'multiply', 'split_self_raising'] as const;

/** What a share is taken of: a role, the whole batter, or an ingredient; a role wins over an ingredient's id. */
function parseBasis(text: string, shelf: Shelf): Result<Basis | null> {
  const role = ROLES.find((known) => known === text);
  if (role !== undefined) return succeed({ role });
  if (text === 'batter') return succeed({ whole: 'batter' });
  if (shelf.ingredients.has(text)) return succeed({ ingredientId: text });
  if (shelf.broken === null || shelf.broken.includes(text)) return succeed(null);
  const known = [...ROLES, 'batter', ...shelf.ingredients.keys()];
  const message = `${quote(text)} is neither a role, nor batter, nor an ingredient`;
  return fail(error('basis-unknown', message, suggest(text, known, 'bases')));
}

function item(reader: YamlReader, shelf: Shelf, path: YamlPath): Ingredient | undefined {
  return reader.parsed((text) => shelfItem(text, shelf), ...path) ?? undefined;
}

function readReplace(reader: YamlReader, path: YamlPath, shelf: Shelf): Adjustment | null {
  const share = reader.parsed((text) => parseShare(text), ...path, 'share');
  const basis = reader.parsed((text) => parseBasis(text, shelf), ...path, 'of');
  const ingredient = item(reader, shelf, [...path, 'with']);
  const portion = reader.has(...path, 'portion') ? reader.parsed(parseProportion, ...path, 'portion') : 1;
  if (!share || !basis || !ingredient || portion === undefined) return null;
  if ('ingredientId' in basis && basis.ingredientId === ingredient.id) {
    const message = `${quote(ingredient.id)} takes its own place`;
    const hint = "Use 'multiply' to change how much there is of it, or name another ingredient.";
    reader.report(error('replace-same', message, hint), ...path, 'with');
    return null;
  }
  return { kind: 'replace', basis, share, entry: formulaEntry(ingredient), portion };
}

function readAdd(reader: YamlReader, path: YamlPath, shelf: Shelf): Adjustment | null {
  const ingredient = item(reader, shelf, [...path, 'ingredient']);
  const perKg = reader.has(...path, 'per_kg');
  const whole = reader.has(...path, 'amount') && reader.has(...path, 'of');
  const part = reader.has(...path, 'amount') || reader.has(...path, 'of');
  if (perKg ? part : !whole) {
    const hint = "Write 'amount: 100 %' with 'of: cocoa', or 'per_kg: 30 g' alone.";
    const message = perKg
      ? 'This says how much twice: per_kg, and amount or of'
      : 'This does not say how much to add';
    reader.report(error('add-amount', message, hint), ...path);
    return null;
  }
  const perKgG = reader.parsed(parseMass, ...path, 'per_kg');
  const share = perKg
    ? perKgG === undefined
      ? undefined
      : perKgG / G_PER_KG
    : reader.parsed(parseProportion, ...path, 'amount');
  const basis: Basis | null | undefined = perKg
    ? { whole: 'batter' }
    : reader.parsed((text) => parseBasis(text, shelf), ...path, 'of');
  if (!ingredient || share === undefined || !basis) return null;
  return { kind: 'add', basis, share, entry: formulaEntry(ingredient) };
}

function readMultiply(reader: YamlReader, path: YamlPath, shelf: Shelf): Adjustment | null {
  const basis = reader.parsed((text) => parseBasis(text, shelf), ...path, 'of');
  const by = reader.parsed(parseProportion, ...path, 'by');
  return basis && by !== undefined ? { kind: 'multiply', basis, by } : null;
}

function readSplit(reader: YamlReader, path: YamlPath, shelf: Shelf): Adjustment | null {
  const flour = item(reader, shelf, path);
  if (flour === undefined) return null;
  if (flour.selfRaising === undefined) {
    const message = `Nobody has said what ${quote(flour.id)} is made of`;
    const hint = `Add 'self_raising: { flour: plain-flour, powder: baking-powder, share: 5 % }' to it in ingredients.yaml.`;
    reader.report(error('self-raising-missing', message, hint), ...path);
    return null;
  }
  return selfRaisingSplit(flour, [...shelf.ingredients.values()]);
}

/** The adjustment at a path; null when it could not be read, whose reason is kept in the reader. */
export function readAdjustment(reader: YamlReader, path: YamlPath, shelf: Shelf): Adjustment | null {
  const kinds = KINDS.filter((kind) => reader.has(...path, kind));
  const [kind] = kinds;
  if (kind === undefined || kinds.length > 1) {
    const found = kinds.length === 0 ? 'none of them' : kinds.join(' and ');
    const message = `An adjustment has exactly one of ${KINDS.join(', ')}; this has ${found}`;
    const hint = "Give each its own line with a hyphen: '- multiply: { of: sugar, by: 90 % }'.";
    if (reader.keys(...path).length > 0) reader.report(error('adjustment-kind', message, hint), ...path);
    return null;
  }
  const at = [...path, kind];
  if (kind === 'replace') return readReplace(reader, at, shelf);
  if (kind === 'add') return readAdd(reader, at, shelf);
  if (kind === 'multiply') return readMultiply(reader, at, shelf);
  return readSplit(reader, at, shelf);
}
