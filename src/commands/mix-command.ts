/** `mix`: the everyday question, answered in the terminal. */
import { formulaInKitchen } from '../compute/flavours/formula-in-kitchen.ts';
import { type Mix, planMix } from '../compute/mixes/plan-mix.ts';
import type { Content } from '../domain/content.ts';
import type { Flavour } from '../domain/flavour.ts';
import type { EggSetting } from '../domain/kitchen.ts';
import type { Problem } from '../domain/problem.ts';
import type { Recipe } from '../domain/recipe.ts';
import { fail, type Result, succeed } from '../domain/result.ts';
import type { TinCount } from '../domain/tin.ts';
import { suggest } from '../parse/nearest.ts';
import { quote } from '../parse/quote.ts';
import { parseSpec } from '../parse/spec.ts';
import { parseEggWeight } from '../parse/units/egg-size.ts';
import { parseLength } from '../parse/units/length.ts';
import { readContent } from '../read/content.ts';
import { mixJson } from '../views/mix-json.ts';
import { recipeBakes } from '../views/recipe-bakes.ts';
import { EXIT, type ExitCode } from './exit-codes.ts';
import { mixText } from './mix-text.ts';
import { repairIfNeeded } from './output/output-folder.ts';
import { refuseContent, refuseUsage, usageProblem } from './problem-report.ts';
import type { Terminal } from './terminal.ts';

export interface MixOptions {
  content: string;
  output: string;
  recipe: string;
  tins: string;
  flavour?: string;
  height?: string;
  eggSize?: string;
  json: boolean;
}

/** What was asked, all of it understood. */
interface MixQuestion {
  recipe: Recipe;
  /** In the order in which they are applied. */
  flavours: Flavour[];
  tins: TinCount[];
  heightMm: number | null;
  egg: EggSetting;
}

/** Runs the command; everything wrong with the question is said at once, with exit 2. */
export async function runMix(options: MixOptions, terminal: Terminal): Promise<ExitCode> {
  repairIfNeeded(options.output);
  const { content, problems } = await readContent(options.content);
  return content === null ? refuseContent(problems, terminal) : answerMix(options, content, terminal);
}

/** The command once the content is read. */
export function answerMix(options: MixOptions, content: Content, terminal: Terminal): ExitCode {
  const question = understood(options, content);
  if (!question.ok) return refuseUsage(question.problems, terminal);
  const { recipe, egg, heightMm } = question.value;
  const bakes = recipeBakes(recipe, content);
  const { locale } = content.kitchen;
  const asked = { finishedHeightMm: heightMm ?? recipe.finishedHeightMm, egg, bakes, locale };
  const kitchen = { ...content.kitchen, egg };
  const mix = plan(question.value, content);
  if (!mix.ok)
    return refuseUsage(
      mix.problems.map((problem) => ({ ...problem, file: '--tins' })),
      terminal,
    );
  if (options.json) terminal.say(JSON.stringify(mixJson(mix.value, asked), null, 2));
  else
    terminal.say(
      mixText(mix.value, {
        recipe,
        flavours: question.value.flavours,
        kitchen,
        ingredients: content.ingredients,
        bakes,
      }),
    );
  return EXIT.done;
}

function plan({ recipe, flavours, tins, heightMm, egg }: MixQuestion, content: Content): Result<Mix> {
  const asks = tins.map((ask) => (heightMm === null ? ask : { ...ask, heightMm }));
  const kitchen = { ...content.kitchen, egg };
  const { formula, ...applied } = formulaInKitchen(recipe, flavours, content);
  return planMix({ recipe, formula, flavours: applied, asks, kitchen });
}

function understood(options: MixOptions, content: Content): Result<MixQuestion> {
  const recipe = recipeNamed(options.recipe, content);
  const flavours = at('--flavour', flavoursNamed(options.flavour, content));
  const tins = at(
    '--tins',
    parseSpec(options.tins, { tins: content.kitchen.tins, outlines: content.outlines }),
  );
  const height = at('--height', heightMeant(options.height));
  const egg = at('--egg-size', eggMeant(options.eggSize, content.kitchen.egg));
  const problems = [recipe, flavours, tins, height, egg].flatMap((part) => (part.ok ? [] : part.problems));
  if (!recipe.ok || !flavours.ok || !tins.ok || !height.ok || !egg.ok || problems.length > 0)
    return fail(...problems);
  return succeed({
    recipe: recipe.value,
    flavours: flavours.value,
    tins: tins.value,
    heightMm: height.value,
    egg: egg.value,
  });
}

/** The option stands where a content problem has its file. */
function at<T>(option: string, result: Result<T>): Result<T> {
  return result.ok
    ? result
    : fail(...result.problems.map((problem): Problem => ({ ...problem, file: option })));
}

function recipeNamed(id: string, content: Content): Result<Recipe> {
  const recipe = content.recipes.find((candidate) => candidate.id === id);
  if (recipe !== undefined) return succeed(recipe);
  const ids = content.recipes.map((candidate) => candidate.id);
  return fail({
    ...usageProblem('recipe-unknown', `There is no recipe ${quote(id)}`, suggest(id, ids, 'recipes')),
    file: '--recipe',
  });
}

function flavoursNamed(ids: string | undefined, content: Content): Result<Flavour[]> {
  if (ids === undefined) return succeed([]);
  const known = content.flavours.map((flavour) => flavour.id);
  const found = ids.split(',').map((written): Result<Flavour> => {
    const id = written.trim();
    const flavour = content.flavours.find((candidate) => candidate.id === id);
    if (flavour !== undefined) return succeed(flavour);
    return fail(
      usageProblem('flavour-unknown', `There is no flavour ${quote(id)}`, suggest(id, known, 'flavours')),
    );
  });
  const problems = found.flatMap((flavour) => (flavour.ok ? [] : flavour.problems));
  if (problems.length > 0) return fail(...problems);
  return succeed(found.flatMap((flavour) => (flavour.ok ? [flavour.value] : [])));
}

function heightMeant(text: string | undefined): Result<number | null> {
  if (text === undefined) return succeed(null);
  const length = parseLength(text);
  return length.ok ? succeed(length.value.mm) : length;
}

function eggMeant(text: string | undefined, kitchen: EggSetting): Result<EggSetting> {
  if (text === undefined) return succeed(kitchen);
  const egg = parseEggWeight(text, kitchen.size?.scheme);
  return egg.ok ? succeed({ ...kitchen, ...egg.value }) : egg;
}
