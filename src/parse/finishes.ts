/** finishes/ID.yaml: what goes between the layers and around the cake, how thick, and what it is made of. */
import { FINISH_KINDS, type Finish, type FinishPart } from '../domain/finish.ts';
import type { Problem } from '../domain/problem.ts';
import { checkClaim } from './claims.ts';
import { finishUse } from './finishes-use.ts';
import { type Shelf, shelfItem } from './formula.ts';
import { error } from './problems.ts';
import { quote } from './quote.ts';
import { finishSchema } from './schemas/finish-schema.ts';
import { parseDays } from './units/days.ts';
import { parseDensity } from './units/density.ts';
import { parseMass } from './units/mass.ts';
import { parseShare } from './units/share.ts';
import { plainLines } from './yaml/readable-text.ts';
import { complete, isSound, present, type YamlReader, yamlReader } from './yaml/yaml-reader.ts';
import { yamlSource } from './yaml/yaml-source.ts';

export interface FinishOutcome {
  finish: Finish | null;
  problems: Problem[];
}

const MOST_LOST = 0.6;
const MOST_PARTS = 100_000;

function readPart(reader: YamlReader, id: string, shelf: Shelf): FinishPart | null {
  const item = shelfItem(id, shelf);
  if (!item.ok) {
    for (const problem of item.problems) reader.reportKey(problem, 'formula', id);
    return null;
  }
  const parts = reader.number('formula', id);
  if (parts !== undefined && !(parts > 0)) {
    const hint = 'Parts are weights against one another: 1 and 2 for twice as much.';
    const found = Number.isFinite(parts) ? `${parts}` : 'no number of';
    const message = `${quote(id)} has ${found} parts, which is not more than nothing`;
    reader.report(error('quantity-not-positive', message, hint), 'formula', id);
    return null;
  }
  if (parts !== undefined && parts > MOST_PARTS) {
    const message = `${quote(id)} has more than ${MOST_PARTS} parts`;
    const hint = 'Divide all parts by the same number: 1 and 2 say as much as 1000 and 2000.';
    reader.report(error('quantity-out-of-range', message, hint), 'formula', id);
    return null;
  }
  if (parts === undefined || item.value === null) return null;
  const { name, fine, eggPart } = item.value;
  return { ingredientId: id, name, parts, fine, ...(eggPart === undefined ? {} : { eggPart }) };
}

function readParts(reader: YamlReader, shelf: Shelf): FinishPart[] | undefined {
  const ids = reader.keys('formula');
  if (reader.has('formula') && ids.length === 0 && reader.source.value !== null) {
    const hint = "Write one ingredient a line below it, with its parts by weight: '  butter: 1'.";
    reader.report(error('value-empty', "'formula' has no ingredients", hint), 'formula');
  }
  const parts = ids.map((id) => readPart(reader, id, shelf)).filter((part) => part !== null);
  return parts.length === ids.length && parts.length > 0 ? parts : undefined;
}

function share(reader: YamlReader, key: string): number | undefined {
  if (!reader.has(key)) return 0;
  const found = reader.parsed((text) => parseShare(text, { zero: true }), key);
  if (found === undefined || found <= MOST_LOST) return found;
  const hint = `Use 0 % to ${MOST_LOST * 100} %.`;
  const message = `${quote(key)} is ${Math.round(found * 100)} %: hardly anything would be left`;
  reader.report(error('quantity-out-of-range', message, hint), key);
  return undefined;
}

/** A glaze runs over the cake in one go. */
function checkPoured(reader: YamlReader, kind: Finish['kind'] | undefined, crumbMm: number): void {
  if (kind !== 'poured glaze' || crumbMm === 0) return;
  const message = 'A poured glaze has no first coat, and this one has a crumb coat';
  const hint = "Delete 'crumb', and let another finish, as buttercream, lie under the glaze.";
  reader.report(error('glaze-with-first-coat', message, hint), 'coating', 'crumb');
}

function read(reader: YamlReader, id: string, shelf: Shelf): Finish | null {
  checkClaim(reader, 'name');
  const kind = reader.word(FINISH_KINDS, 'kind');
  const use = finishUse(reader);
  checkPoured(reader, kind, use?.coating?.crumbMm ?? 0);
  const whole = complete<Omit<Finish, 'packG'>>({
    id,
    name: reader.text('name'),
    kind,
    densityGPerMl: reader.parsed(parseDensity, 'density'),
    parts: readParts(reader, shelf),
    use,
    lossShare: share(reader, 'loss'),
    cookingLossShare: share(reader, 'cooking_loss'),
    keepsDays: reader.parsed(parseDays, 'keeps'),
    chilled: reader.word(['yes'] as const, 'chilled') === 'yes',
    methodMarkdown: reader.text('method')?.trim(),
  });
  const optional = present({ packG: reader.parsed(parseMass, 'pack') });
  return whole !== null && isSound(reader.problems) ? { ...whole, ...optional } : null;
}

/** The finish of a file's text, or everything that is wrong with it. The id is the file's name. */
export function parseFinishYaml(text: string, file: string, id: string, shelf: Shelf): FinishOutcome {
  const source = yamlSource(plainLines(text), file);
  if (!source.ok) return { finish: null, problems: source.problems };
  const reader = yamlReader(source.value, finishSchema);
  const finish = read(reader, id, shelf);
  return { finish, problems: reader.problems };
}
