/** The bake log: dated real bakes, as the baker wrote them down, with the tin looked up. */
import type { Tin } from './tin.ts';

/** A heating core stood in the middle of the batter; hollow means open to the oven's air at both ends. */
export type CoreKind = 'none' | 'hollow' | 'solid';
export const CORE_KINDS: readonly CoreKind[] = ['none', 'hollow', 'solid'];

/** How a baker tells that a cake is done, other than by a probe. */
export type DoneTest = 'skewer' | 'spring' | 'edge';
export const DONE_TESTS: readonly DoneTest[] = ['skewer', 'spring', 'edge'];

/** One bake: some tins alike, baked together. */
export interface BakeLogRow {
  /** ISO date. */
  date: string;
  recipeId: string;
  flavourIds: string[];
  /** An owned tin, or one described on the spot (owned 0). */
  tin: Tin;
  /** How many such tins stood in the oven. */
  count: number;
  /** Batter in each tin, g. */
  batterG: number;
  /** Oven setting, conventional, °C (a fan setting has been converted when read). */
  ovenC: number;
  /** Minutes from the door shut to the done test passed, or to the probe's reading when there is one. */
  minutes: number;
  /** Which oven; the main one when left out. */
  ovenId?: string;
  /** Temperature of the batter when it went in, °C; the recipe's or the kitchen's when nobody noted it. */
  batterC?: number;
  core: CoreKind;
  /** Whether an insulated band was round the tin. */
  band: boolean;
  finishedHeightMm?: number;
  /** Baked cake from each tin, g. */
  massOutG?: number;
  /** Which test said that it was done; absent with a probe, or when nobody noted it. */
  doneBy?: DoneTest;
  /** Reading of a probe in the middle at `minutes`, °C. */
  probeC?: number;
  notes?: string;
  /** Line in the log's file, so that a report can point at it. */
  line?: number;
}
