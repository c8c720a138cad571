/**
 * A mix as a colleague would tell it: the eggs and the batter first, what to weigh, what goes into each tin,
 * how many bowlfuls, what is left over, and what to look out for.
 */
import type { Mix, MixEggs, MixLine, MixLoad, MixTin } from '../compute/mixes/plan-mix.ts';
import type { Ingredient } from '../domain/ingredient.ts';
import type { Kitchen } from '../domain/kitchen.ts';
import type { Recipe } from '../domain/recipe.ts';
import { eggSizeText } from '../views/chart-notes.ts';
import { eggsInWords } from '../wording/eggs.ts';
import { formatLength } from '../wording/length.ts';
import { listInWords } from '../wording/list.ts';
import { wordsFor } from '../wording/locales/index.ts';
import { formatGrams, formatWholeGrams } from '../wording/mass.ts';
import { formatFixed } from '../wording/number.ts';
import { spoonsFor } from '../wording/spoons.ts';
import { surplusInWords } from '../wording/surplus.ts';
import { tinSize } from '../wording/tin-size.ts';
import type { Words } from '../wording/words.ts';
import { textTable } from './text-table.ts';

export interface MixSetting {
  recipe: Recipe;
  kitchen: Pick<Kitchen, 'locale' | 'egg' | 'fairyCaseG'>;
  ingredients: readonly Ingredient[];
}

/** The answer in lines of text. */
export function mixText(mix: Mix, setting: MixSetting): string {
  const words = wordsFor(setting.kitchen.locale);
  const { recipe, kitchen } = setting;
  return [
    `${recipe.name}: ${listInWords(
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
    ...bowlfuls(mix.loads, words),
    capitalised(`${surplusInWords(mix.surplusG, kitchen.fairyCaseG, words)}.`),
    ...mix.warnings.map(({ message }) => `Check: ${message}`),
    `${words.caution}: ${words.cautions['raw-batter']}`,
  ].join('\n');
}

function headline(mix: Mix, { kitchen }: MixSetting, words: Words): string {
  const batter = `${formatGrams(mix.batterG)} g of batter`;
  if (mix.eggs === null) return `${capitalised(batter)}, no eggs in it.`;
  const size = eggSizeText(kitchen.egg, words);
  return `${eggPhrase(mix.eggs, words)} and ${batter} in all. ${capitalised(size)}.`;
}

function eggPhrase(eggs: MixEggs, words: Words): string {
  if (eggs.rule !== 'weigh') return eggsInWords(eggs.parts, words);
  const parts = eggs.parts.map((part) => `${formatGrams(part.grams)} g ${words.eggPartWeighed[part.part]}`);
  return `${listInWords(parts, words.and)} (${eggsInWords(eggs.parts, words).toLowerCase()} to crack)`;
}

function weighed({ lines, eggs }: Mix, { ingredients }: MixSetting, words: Words): string[] {
  const rows = lines.map((line) => [
    `  ${line.name}`,
    `${formatGrams(line.grams)} g`,
    beside(line, eggs, ingredients, words),
  ]);
  return textTable(rows, ['left', 'right', 'left']);
}

/** Beside the grams: the count of eggs with the exact one, or spoons. */
function beside(line: MixLine, eggs: MixEggs | null, shelf: readonly Ingredient[], words: Words): string {
  const part = eggs?.parts.find((counted) => counted.ingredientId === line.ingredientId);
  if (part !== undefined) return `${part.whole} (exactly ${formatFixed(part.exact, 2)})`;
  const teaspoonG = shelf.find((ingredient) => ingredient.id === line.ingredientId)?.teaspoonG;
  return spoonsFor(line.grams, teaspoonG, words.pinch) ?? '';
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

function bowlfuls(loads: readonly MixLoad[], words: Words): string[] {
  if (loads.length < 2) return ['One bowlful.'];
  const each = loads.map((load, at) => {
    const eggs = load.eggs === null ? [] : [eggsInWords(load.eggs.parts, words).toLowerCase()];
    return `  ${at + 1}. ${[`${formatGrams(load.batterG)} g`, ...eggs].join(', ')}`;
  });
  return [`In ${loads.length} bowlfuls:`, ...each];
}

function capitalised(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
