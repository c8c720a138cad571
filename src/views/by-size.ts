/** The order that tins stand in on every chart: smallest volume first, by id where two hold the same. */
import { volumeMl } from '../compute/shapes/index.ts';
import type { Tin } from '../domain/tin.ts';

export function bySize(a: Tin, b: Tin): number {
  const difference = volumeMl(a) - volumeMl(b);
  return difference === 0 ? (a.id < b.id ? -1 : 1) : difference;
}
