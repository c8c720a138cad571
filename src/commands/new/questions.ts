/** The questions of `new`, in the order in which a baker would tell it; Enter alone takes the usual answer. */
import type { Locale, PaperName } from '../../domain/kitchen.ts';
import type { Result } from '../../domain/result.ts';
import { parseVolume } from '../../parse/units/volume.ts';
import { hiddenCharacter } from '../../parse/yaml/readable-text.ts';
import { type FirstRecipe, type KitchenAnswers, type OwnedTin, usualAnswers } from './answers.ts';
import type { Asking, Choice } from './asking.ts';
import { USUAL_TINS } from './usual-tins.ts';

const LONGEST_LINE = 300;
const MOST_OF_A_TIN = 99;
/** Mixers' bowls, in mL: from a toy to a factory. */
const BOWL_ML = { least: 500, most: 200_000 };

const LOCALES: Choice<Locale>[] = [
  { value: 'en-GB', label: 'British: tins, grams, caster sugar' },
  { value: 'en-US', label: 'American: pans, inches first, granulated sugar' },
];
const PAPERS: Choice<PaperName>[] = [
  { value: 'A4', label: 'A4' },
  { value: 'Letter', label: 'US Letter' },
];
const EGG_SIZES: Record<Locale, string[]> = {
  'en-GB': ['UK small', 'UK medium', 'UK large', 'UK extra large'],
  'en-US': ['US medium', 'US large', 'US extra large', 'US jumbo'],
};
const RECIPES: Choice<FirstRecipe>[] = [
  { value: 'butter-sponge', label: 'Butter sponge, creamed' },
  { value: 'cocoa-oil-cake', label: 'Cocoa cake with oil, one bowl' },
  { value: 'fruit-cake', label: 'Fruit cake, low and long' },
];

/** What is wrong with a line of text, or null. */
export function lineFault(text: string): string | null {
  if (text.length > LONGEST_LINE) return `At most ${LONGEST_LINE} characters, please.`;
  return /[\n\r\t]/.test(text) || hiddenCharacter(text) !== null
    ? 'Letters, figures and signs only, please.'
    : null;
}

/** What is wrong with a bowl's volume, or null. */
export function bowlFault(text: string): string | null {
  const volume = parseVolume(text);
  if (!volume.ok) return faultText(volume);
  const { ml } = volume.value;
  return ml >= BOWL_ML.least && ml <= BOWL_ML.most ? null : 'From 0.5 l to 200 l, please: like 4.8 l.';
}

/** What is wrong with a number of tins, or null. */
export function countFault(text: string): string | null {
  return /^[1-9]\d?$/.test(text) ? null : `A whole number from 1 to ${MOST_OF_A_TIN}, please.`;
}

function faultText(result: Result<unknown>): string {
  const [problem] = result.ok ? [] : result.problems;
  return problem === undefined ? 'That cannot be read.' : `${problem.message}. ${problem.hint ?? ''}`.trim();
}

async function tinsOwned(asking: Asking, usual: readonly OwnedTin[]): Promise<OwnedTin[] | null> {
  const choices = USUAL_TINS.map(({ id, name, size }) => ({
    value: id,
    label: `${name} (${size.replace(/^shape: \w+, /, '')})`,
  }));
  const ids = await asking.some(
    'Which of these tins do you own? Others are a line each, later.',
    choices,
    usual.map(({ id }) => id),
  );
  if (ids === null) return null;
  const tins: OwnedTin[] = [];
  for (const { id, name } of USUAL_TINS.filter((tin) => ids.includes(tin.id))) {
    const owned = usual.find((tin) => tin.id === id)?.owned ?? 1;
    const count = await asking.line(`${name}: how many?`, String(owned), countFault);
    if (count === null) return null;
    tins.push({ id, owned: Number(count) });
  }
  return tins;
}

/** Asks everything; null when the baker gives up on the way. */
export async function askKitchen(asking: Asking): Promise<KitchenAnswers | null> {
  const name = await asking.line('What is the bakery called?', usualAnswers().name, lineFault);
  if (name === null) return null;
  const place = await asking.line('Where is it?', usualAnswers().place, lineFault);
  if (place === null) return null;
  const locale = await asking.one('Whose words shall it use?', LOCALES, 'en-GB');
  if (locale === null) return null;
  const usual = usualAnswers(locale);
  const paper = await asking.some('Which paper do you print on?', PAPERS, usual.paper);
  if (paper === null) return null;
  const sizes = EGG_SIZES[locale].map((size) => ({ value: size, label: size }));
  const eggSize = await asking.one('Which eggs do you buy?', sizes, usual.eggSize);
  if (eggSize === null) return null;
  const bowl = await asking.line('What does the mixer’s bowl hold, to its rim?', usual.bowl, bowlFault);
  if (bowl === null) return null;
  const tins = await tinsOwned(asking, usual.tins);
  if (tins === null) return null;
  const recipe = await asking.one('Which recipe shall it begin with?', RECIPES, usual.recipe);
  return recipe === null ? null : { name, place, locale, paper, eggSize, bowl, tins, recipe };
}
