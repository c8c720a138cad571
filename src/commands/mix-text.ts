/**
 * A mix as a colleague would tell it: the eggs and the batter first, what to weigh, what goes into each tin,
 * how many bowlfuls, what is left over, and what to look out for.
 */

import type { LoadTin, Mix, MixEggs, MixLine, MixLoad, MixTin } from '../compute/mixes/plan-mix.ts';
import type { Flavour } from '../domain/flavour.ts';
import type { Ingredient } from '../domain/ingredient.ts';
import type { Kitchen } from '../domain/kitchen.ts';
import type { Recipe } from '../domain/recipe.ts';
import { bakeCautions, bakeFigures, chartBake } from '../views/bake-figures.ts';
import { chartCautions, madeWithoutCautions } from '../views/chart-cautions.ts';
import { eggSizeText } from '../views/chart-notes.ts';
import type { Caution } from '../views/figure.ts';
import type { RecipeBakes } from '../views/recipe-bakes.ts';
import { bakeWordsFor } from '../wording/bake/index.ts';
import { eggsInWords } from '../wording/eggs.ts';
import { formatLength } from '../wording/length.ts';
import { listInWords } from '../wording/list.ts';
import { wordsFor } from '../wording/locales/index.ts';
import { formatGrams, formatWholeGrams } from '../wording/mass.ts';
import { formatFixed } from '../wording/number.ts';
import { capitalised } from '../wording/sentence-case.ts';
import { spoonsFor } from '../wording/spoons.ts';
import { surplusInWords } from '../wording/surplus.ts';
import { tinSize } from '../wording/tin-size.ts';
import type { Words } from '../wording/words.ts';
import { textTable } from './text-table.ts';

export interface MixSetting {
  recipe: Recipe;
  flavours: readonly Flavour[];
  kitchen: Pick<Kitchen, 'locale' | 'egg' | 'fairyCaseG'>;
  ingredients: readonly Ingredient[];
  bakes: RecipeBakes;
}

/** The answer in lines of text. */
export function mixText(mix: Mix, setting: MixSetting): string {
  const words = wordsFor(setting.kitchen.locale);
  const { recipe, flavours, kitchen } = setting;
  return [
    `${[recipe.name, ...flavours.map(({ name }) => name)].join(', ')}: ${listInWords(
      mix.tins.map((tin) => `${tin.count} × ${tin.tin.name}`),
      words.and,
    )}`,
    '',
    headline(mix, setting, words),
    '',
    ...weighed(mix, setting, words),
    '',
    ...filled(mix.tins, words),
    '',
    ...inOven(mix.tins, setting),
    ...bowlfuls(mix, words),
    capitalised(`${surplusInWords(mix.surplusG, kitchen.fairyCaseG, words)}.`),
    ...mix.warnings.map(({ message }) => `Check: ${message}`),
    ...mixCautions(mix, setting, words).map(({ text }) => `${words.caution}: ${text}`),
  ].join('\n');
}

function mixCautions(mix: Mix, { recipe, ingredients, bakes, kitchen }: MixSetting, words: Words): Caution[] {
  return [
    ...madeWithoutCautions(recipe.formula, mix.lines, ingredients, words),
    ...chartCautions(mix.lines, ingredients, words),
    ...bakeCautions(
      mix.tins.map(({ tin, finishedHeightMm }) => bakeFigures(bakes, tin, finishedHeightMm, kitchen.locale)),
      kitchen.locale,
    ),
  ];
}

function headline(mix: Mix, { kitchen }: MixSetting, words: Words): string {
  const batter = `${formatWholeGrams(mix.batterG)} g of batter`;
  if (mix.eggs === null) return `${capitalised(batter)}, no eggs in it.`;
  const size = eggSizeText(kitchen.egg, words);
  return `${eggPhrase(mix.eggs, words)} and ${batter} in all. ${capitalised(size)}.`;
}

function eggPhrase(eggs: MixEggs, words: Words): string {
  if (eggs.rule !== 'weigh') return eggsInWords(eggs.parts, words);
  const parts = eggs.parts.map((part) => `${formatGrams(part.grams)} g ${words.eggPartWeighed[part.part]}`);
  return `${listInWords(parts, words.and)} (${eggsInWords(eggs.parts, words).toLowerCase()} to crack)`;
}

/** What goes into each bowl; a column for every kind of bowlful, and one for all when there are several. */
function weighed(mix: Mix, { ingredients }: MixSetting, words: Words): string[] {
  const bowls = alike(mix.loads);
  const several = mix.loads.length > 1;
  const head = [
    '',
    'in all',
    ...bowls.map(({ count }) => (count === 1 ? 'one bowl' : `${count} bowls, each`)),
  ];
  const rows = mix.lines.map((line) => [
    `  ${line.name}`,
    weight(line, mix.eggs),
    ...(several ? bowls.map(({ load }) => bowlWeight(line, load)) : []),
    beside(line, mix, ingredients, words),
  ]);
  const aligns = ['left' as const, 'right' as const, ...(several ? bowls.map(() => 'right' as const) : [])];
  return textTable(several ? [head, ...rows] : rows, [...aligns, 'left']);
}

/** Bowlfuls that are weighed alike, counted. */
function alike(loads: readonly MixLoad[]): { load: MixLoad; count: number }[] {
  const kinds = new Map<string, { load: MixLoad; count: number }>();
  for (const load of loads) {
    const key = load.lines.map((line) => line.grams).join(' ');
    kinds.set(key, { load, count: (kinds.get(key)?.count ?? 0) + 1 });
  }
  return [...kinds.values()];
}

function bowlWeight(line: MixLine, load: MixLoad): string {
  const own = load.lines.find(({ ingredientId }) => ingredientId === line.ingredientId);
  return own === undefined ? '–' : weight(own, load.eggs);
}

type Counted = { rule: string; parts: readonly { ingredientId: string; whole: number }[] } | null;

/** Eggs are counted, with what they weigh in brackets; all else is weighed. */
function weight(line: MixLine, eggs: Counted): string {
  const part = eggs?.parts.find(({ ingredientId }) => ingredientId === line.ingredientId);
  if (part === undefined || eggs?.rule === 'weigh') return `${formatGrams(line.grams)} g`;
  return `${part.whole} (${formatWholeGrams(line.grams)} g)`;
}

/** Beside the weight: the exact count of eggs, or spoons. */
function beside(line: MixLine, mix: Mix, shelf: readonly Ingredient[], words: Words): string {
  const part = mix.eggs?.parts.find((counted) => counted.ingredientId === line.ingredientId);
  if (part !== undefined) return `exactly ${formatFixed(part.exact, 2)}`;
  const item = shelf.find((ingredient) => ingredient.id === line.ingredientId);
  return (mix.loads.length > 1 ? null : spoonsFor(line.grams, item, words)) ?? '';
}

function filled(tins: readonly MixTin[], words: Words): string[] {
  const head = ['  Into each', 'batter', 'stands raw', 'bakes to', 'size'];
  const rows = tins.map((tin) => [
    `  ${tin.tin.name}`,
    `${formatWholeGrams(tin.receivesG)} g`,
    formatLength(Math.round(tin.rawFillMm), 'mm'),
    formatLength(Math.round(tin.finishedHeightMm), 'mm'),
    tinSize(tin.tin, words),
  ]);
  return textTable([head, ...rows], ['left', 'right', 'right', 'right', 'left']);
}

/** Dial and times of each tin, the advice beneath, and what they rest on; nothing for an oven too cool to bake in. */
function inOven(tins: readonly MixTin[], { bakes, kitchen }: MixSetting): string[] {
  const { locale } = kitchen;
  const { section, columns } = bakeWordsFor(locale);
  const told = tins.flatMap(({ tin, finishedHeightMm }) => {
    const bake = bakeFigures(bakes, tin, finishedHeightMm, locale);
    return bake === null ? [] : [{ name: tin.name, bake }];
  });
  if (told.length === 0) return [];
  const head = [`  ${section}`, columns.dial, columns.firstLook, columns.expectedBy, ''];
  const rows = told.map(({ name, bake: { dial, firstLook, expectedBy, advice } }) =>
    [`  ${name}`, dial.text, firstLook.text, expectedBy.text, advice].map(plainSpaces),
  );
  const basis = `  ${chartBake(bakes, locale).basisText}`;
  return [...textTable([head, ...rows], ['left', 'right', 'right', 'right', 'left']), basis, ''];
}

/** A terminal breaks lines where it likes: ordinary spaces serve it best. */
const plainSpaces = (text: string): string => text.replaceAll('\u00a0', ' ');

function bowlfuls({ loads, tins }: Mix, words: Words): string[] {
  if (loads.length < 2) return ['One bowlful.'];
  const each = loads.map((load, at) => {
    const eggs = load.eggs === null ? [] : [eggsInWords(load.eggs.parts, words).toLowerCase()];
    const parts = [`${formatWholeGrams(load.batterG)} g`, ...eggs].join(', ');
    return `  ${at + 1}. ${parts}: for ${listInWords(
      load.tins.map((part) => tinPart(part, tins)),
      words.and,
    )}`;
  });
  return [`In ${loads.length} bowlfuls:`, ...each];
}

/** '2 × Six-inch round', or a share of one tin that takes more than a bowl. */
function tinPart({ tin, count, ofParts, parts = 1 }: LoadTin, tins: readonly MixTin[]): string {
  const name = tins[tin]?.tin.name ?? '';
  return ofParts === undefined ? `${count} × ${name}` : `${parts} of ${ofParts} parts of ${name}`;
}
