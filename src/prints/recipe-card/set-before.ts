/**
 * Faces of cards that were set before: those of a card one to a sheet stand on a sheet of several too, and those of
 * another recipe are as they were when one recipe has changed.
 */
import { setBefore } from '../sheet/set-before.ts';
import type { CardFace } from './card-parts.ts';

/** More cards than a kitchen of thirty charts has in all sizes. */
const MOST_SET = 200;

export const facesBefore = setBefore<CardFace[]>(MOST_SET);
