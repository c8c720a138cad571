/** The papers of a tin at the usual allowances, as its page, its template and the finishing chart all ask for them. */
import { type LiningPiece, liningPieces } from '../compute/lining/index.ts';
import type { Tin } from '../domain/tin.ts';
import { LINING } from './lining-allowances.ts';

/** An outline that is followed all round takes far longer than asking whether it has been done. */
const linedBefore = new WeakMap<Tin, LiningPiece[]>();

/** Worked out once a tin; shared, never changed. */
export function tinLining(tin: Tin): readonly LiningPiece[] {
  const known = linedBefore.get(tin);
  if (known !== undefined) return known;
  const pieces = liningPieces(tin, LINING);
  linedBefore.set(tin, pieces);
  return pieces;
}
