/** One tin of a mix: how tall, how much cake, how much batter, how high it stands raw. */
import type { Problem, Warning } from '../../domain/problem.ts';
import { quantiseMl, quantiseMm, quantiseMm2 } from '../../domain/quantise.ts';
import type { Recipe } from '../../domain/recipe.ts';
import { fail, type Result, succeed } from '../../domain/result.ts';
import { finishedHeight } from '../batter/finished-height.ts';
import { fillWarnings, rawFill } from '../batter/raw-fill.ts';
import { batterG } from '../batter/yield-density.ts';
import { perimeterMm, planAreaMm2, volumeMl, volumeToHeightMl } from '../shapes/index.ts';
import type { MixTin, TinAsk } from './mix.types.ts';

function countProblems(ask: TinAsk): Problem[] {
  if (Number.isSafeInteger(ask.count) && ask.count >= 1) return [];
  return [
    {
      code: 'tin-count',
      severity: 'error',
      message: `${ask.tin.name} is asked for ${String(ask.count)} times; expected 1, 2, 3 …`,
      hint: 'Leave out tins that are not filled.',
    },
  ];
}

function secondBake({ tin, count }: TinAsk): Warning[] {
  if (tin.owned === 0 || count <= tin.owned) return [];
  const message = `${count} of ${tin.name} are asked for and ${tin.owned} owned: bake in turns, washing and cooling the tin between, and keep waiting batter cool.`;
  return [{ code: 'second-bake', message }];
}

/** Figures of one kind of tin in a mix; `receivesG` is what it asks for until the mix is rounded. */
export function mixTin(recipe: Recipe, gPerMl: number, ask: TinAsk): Result<MixTin> {
  const { settled } = ask;
  const height =
    settled === undefined
      ? finishedHeight(recipe, ask.tin, ask.heightMm)
      : succeed({ heightMm: settled.heightMm, from: 'asked' as const, warnings: [] });
  const wrongCount = countProblems(ask);
  if (!height.ok) return fail(...wrongCount, ...height.problems);
  if (wrongCount.length > 0) return fail(...wrongCount);
  const { heightMm, from, warnings } = height.value;
  const finishedVolumeMl = quantiseMl(volumeToHeightMl(ask.tin, heightMm));
  const batterGEach = settled?.batterG ?? batterG(gPerMl, finishedVolumeMl);
  const fill = rawFill(ask.tin, batterGEach, recipe.rawDensityGPerMl, gPerMl);
  const area = planAreaMm2(ask.tin);
  const perimeter = perimeterMm(ask.tin);
  return succeed({
    tin: ask.tin,
    count: ask.count,
    ...(settled === undefined ? {} : { pieces: settled.pieces }),
    finishedHeightMm: heightMm,
    heightFrom: from,
    planAreaMm2: area === null ? null : quantiseMm2(area),
    perimeterMm: perimeter === null ? null : quantiseMm(perimeter),
    volumeMl: quantiseMl(volumeMl(ask.tin)),
    finishedVolumeMl,
    batterGEach,
    receivesG: batterGEach,
    ...fill,
    warnings: settled ? [] : [...warnings, ...fillWarnings(ask.tin, fill, heightMm), ...secondBake(ask)],
  });
}
