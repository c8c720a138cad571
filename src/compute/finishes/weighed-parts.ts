/** A finish's parts as the scale can weigh them: to its step, none moved by more than 2 %. */
import type { Finish } from '../../domain/finish.ts';
import type { ScaleSetting } from '../../domain/kitchen.ts';
import { roundLines } from '../rounding/round-lines.ts';

/** g of each part, rounded to the scale's steps, in the finish's own order. */
export function weighedPartsG(
  { parts }: Pick<Finish, 'parts'>,
  partsG: readonly number[],
  scale: ScaleSetting,
): number[] {
  const lines = parts.map((part, at) => ({ exactG: partsG[at] ?? 0, fine: part.fine }));
  return roundLines(lines, scale).map(({ grams }) => grams);
}
