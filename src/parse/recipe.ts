/** recipes/ID.md: formula, oven, finished height and proven bakes above, the method in Markdown below. */
import type { EggSize } from '../domain/egg.ts';
import { tableShelledG } from '../domain/egg.ts';
import type { EggSetting } from '../domain/kitchen.ts';
import type { Problem } from '../domain/problem.ts';
import {
  BAKE_CLASSES,
  BAKE_STARTS,
  type FormulaLine,
  MIXING_METHODS,
  type Recipe,
} from '../domain/recipe.ts';
import { checkClaim } from './claims.ts';
import { parseWithin } from './finishing-settings.ts';
import { type CountedEgg, formulaLine, type Shelf, shelfItem } from './formula.ts';
import { type KnownNames, OVENS, oneName } from './known-names.ts';
import { RAW_DENSITY_G_PER_ML } from './method-density.ts';
import { ONE_OVEN } from './ovens.ts';
import { error, warning } from './problems.ts';
import { readProvenBakes } from './proven-bakes.ts';
import { recipeSchema } from './schemas/recipe-schema.ts';
import type { SpecContext } from './spec.ts';
import { parseBatterTemperature } from './units/batter-temperature.ts';
import { parseDays } from './units/days.ts';
import { parseDensity } from './units/density.ts';
import { parseEggSize } from './units/egg-size.ts';
import { parseFinishedHeight, parseLength } from './units/length.ts';
import { parseShare } from './units/share.ts';
import { parseTemperature } from './units/temperature.ts';
import { frontMatter } from './yaml/front-matter.ts';
import { plainLines } from './yaml/readable-text.ts';
import { complete, isSound, present, type YamlReader, yamlReader } from './yaml/yaml-reader.ts';

export interface RecipeContext {
  shelf: Shelf;
  spec: SpecContext;
  /** The kitchen's eggs; null when they could not be read. */
  egg: EggSetting | null;
  /** The ovens a recipe may name; the main one alone when left out. */
  ovens?: KnownNames;
}

export interface RecipeOutcome {
  recipe: Recipe | null;
  problems: Problem[];
}

type OptionalKey =
  | 'bakingLossShare'
  | 'keepsDays'
  | 'levelMm'
  | 'suits'
  | 'bakeClass'
  | 'bakeStart'
  | 'ovenId'
  | 'batterC'
  | 'loggedFills'
  | 'weighings';

/** More than this is not levelling but cutting a cake in two. */
const LEVEL_MM = { leastMm: 0.5, mostMm: 30 };

const DEFAULT_LAYERS = 2;
/** Stands in the record of a recipe that neither counts eggs nor names a size. */
const UNCOUNTED: EggSize = { scheme: 'UK', grade: 'medium' };

interface RecipeEggs {
  size: EggSize | null;
  counted: CountedEgg | null;
}

function readEggs(reader: YamlReader, kitchen: EggSetting | null): RecipeEggs {
  const size = reader.parsed((text) => parseEggSize(text, kitchen?.size?.scheme), 'egg_size');
  if (size !== undefined) {
    return { size, counted: { shelledG: tableShelledG(size) ?? 0, scheme: size.scheme } };
  }
  // A kitchen that weighed its eggs without naming a size cannot say what a recipe from elsewhere counts.
  const own = kitchen?.size ?? null;
  if (own !== null && kitchen !== null)
    return { size: own, counted: { shelledG: kitchen.shelledG, scheme: own.scheme } };
  // Broken settings have their own problem: count on with a stand-in, whose result is never used.
  const known = kitchen === null || reader.has('egg_size');
  return { size: null, counted: known ? { shelledG: tableShelledG(UNCOUNTED) ?? 0 } : null };
}

function readFormula(reader: YamlReader, shelf: Shelf, egg: CountedEgg | null): FormulaLine[] {
  const lines: FormulaLine[] = [];
  for (const id of reader.keys('formula')) {
    const item = shelfItem(id, shelf);
    if (!item.ok) {
      for (const problem of item.problems) reader.reportKey(problem, 'formula', id);
      continue;
    }
    const ingredient = item.value;
    if (ingredient === null) continue;
    const line = reader.parsed((text) => formulaLine(text, ingredient, egg), 'formula', id);
    if (line !== undefined) lines.push(line);
  }
  checkFormula(reader, lines);
  return lines;
}

function checkFormula(reader: YamlReader, lines: readonly FormulaLine[]): void {
  const written = reader.keys('formula').length;
  if (reader.has('formula') && written === 0) {
    const hint = "Write one ingredient a line below it: '  butter: 250 g'.";
    if (reader.source.value !== null)
      reader.report(error('value-empty', "'formula' has no ingredients", hint), 'formula');
    return;
  }
  if (lines.length < written || lines.some((line) => line.role === 'flour')) return;
  const hint =
    "Fine for a cake made without flour; otherwise give the flour 'role: flour' in ingredients.yaml.";
  reader.reportKey(
    warning('recipe-without-flour', 'No ingredient of this formula is a flour', hint),
    'formula',
  );
}

function checkMethod(reader: YamlReader, body: string): void {
  if (body !== '') return;
  const hint = "Write below the second '---' line how the cake is made.";
  reader.problems.push({
    ...error('method-missing', 'The recipe has no method', hint),
    file: reader.source.file,
    line: 1,
    column: 1,
  });
}

function read(reader: YamlReader, id: string, body: string, context: RecipeContext): Recipe | null {
  const method = reader.word(MIXING_METHODS, 'method');
  const eggs = readEggs(reader, context.egg);
  const formula = readFormula(reader, context.shelf, eggs.counted);
  const rawDensity = reader.parsed(parseDensity, 'raw_density');
  const allowedRise = reader.parsed((text) => parseLength(text, { zero: true }), 'allowed_rise');
  const allowedRiseMm = reader.has('allowed_rise') ? allowedRise?.mm : 0;
  const provenBakes = readProvenBakes(reader, formula, allowedRiseMm, context.spec);
  checkMethod(reader, body);
  checkClaim(reader, 'name');
  checkClaim(reader, 'summary');
  const whole = complete<Omit<Recipe, OptionalKey>>({
    id,
    name: reader.text('name'),
    summary: reader.text('summary'),
    method,
    formula,
    eggSize: eggs.size ?? UNCOUNTED,
    provenBakes,
    finishedHeightMm: reader.parsed(parseFinishedHeight, 'finished_height')?.mm,
    allowedRiseMm,
    rawDensityGPerMl: rawDensity ?? (method === undefined ? undefined : RAW_DENSITY_G_PER_ML[method]),
    rawDensitySource: rawDensity === undefined ? 'method' : 'own',
    ovenC: reader.parsed(parseTemperature, 'oven')?.ovenC,
    methodMarkdown: body,
    layers: reader.number('layers') ?? DEFAULT_LAYERS,
  });
  const ovenId = reader.parsed((text) => oneName(text, OVENS, context.ovens ?? ONE_OVEN), 'which_oven');
  const batterC = reader.parsed(parseBatterTemperature, 'batter_temperature');
  const bakingLossShare = reader.parsed((text) => parseShare(text, { zero: true }), 'baking_loss');
  const keepsDays = reader.parsed(parseDays, 'keeps');
  const levelMm = reader.parsed((text) => parseWithin(text, LEVEL_MM), 'level');
  if (whole === null || !isSound(reader.problems)) return null;
  const optional = present({
    suits: reader.text('suits'),
    bakeClass: reader.word(BAKE_CLASSES, 'bake_class'),
    bakingLossShare,
    keepsDays,
    levelMm,
    bakeStart: reader.word(BAKE_STARTS, 'bake_start'),
    ovenId,
    batterC,
  });
  return { ...whole, ...optional };
}

/** The recipe of a Markdown file's text, or everything that is wrong with it. The id is the file's name. */
export function parseRecipeMarkdown(
  text: string,
  file: string,
  id: string,
  context: RecipeContext,
): RecipeOutcome {
  const parts = frontMatter(plainLines(text), file);
  if (!parts.ok) return { recipe: null, problems: parts.problems };
  const reader = yamlReader(parts.value.source, recipeSchema);
  const recipe = read(reader, id, parts.value.body, context);
  return { recipe, problems: reader.problems };
}
