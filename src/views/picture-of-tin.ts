/** The drawing of a tin, from the same outline that its volume comes from. */
import { tinBaseOutline, tinBoundsMm, tinOutline } from '../compute/shapes/index.ts';
import { quantiseMm } from '../domain/quantise.ts';
import type { Tin } from '../domain/tin.ts';
import { tinAlt } from '../wording/tin-size.ts';
import type { Words } from '../wording/words.ts';
import type { TinPicture } from './tin-picture.ts';

/** Plan, base, depth and alternative text of a tin. */
export function pictureOfTin(tin: Tin, words: Words): TinPicture {
  const basePlan = tinBaseOutline(tin);
  const bounds = tinBoundsMm(tin);
  return {
    plan: tinOutline(tin),
    basePlan,
    widthMm: quantiseMm(bounds?.widthMm ?? 0),
    heightMm: quantiseMm(bounds?.heightMm ?? 0),
    depthMm: quantiseMm(tin.depthMm),
    profile: tin.shape.kind === 'dome' ? 'dome' : basePlan === null ? 'straight' : 'tapered',
    alt: tinAlt(tin, words),
  };
}
