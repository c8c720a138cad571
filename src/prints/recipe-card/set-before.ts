/**
 * Faces that were set before in the same type and look: those of a card one to a sheet stand on a sheet of several
 * too, and those of another recipe are as they were when one recipe has changed.
 */
import type { SheetContext } from '../sheet/sheet-context.ts';
import type { Metrics } from '../sheet/surface.ts';
import type { CardFace } from './card-parts.ts';

/** More cards than a kitchen of thirty charts has in all sizes. */
const MOST_SET = 200;

const known = new WeakMap<Metrics, Map<string, CardFace[]>>();

/** `told` is all that the faces are set from but the context. */
export function setBefore(
  told: unknown,
  { metrics, ...look }: SheetContext,
  set: () => CardFace[],
): CardFace[] {
  const faces = known.get(metrics) ?? new Map<string, CardFace[]>();
  known.set(metrics, faces);
  const key = JSON.stringify([look, told]);
  if (faces.size >= MOST_SET) faces.clear();
  const found = faces.get(key) ?? set();
  faces.set(key, found);
  return found;
}
