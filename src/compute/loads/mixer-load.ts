/** From the search's counts back to the tins that were asked for. */
import { quantiseG } from '../../domain/quantise.ts';
import { type GroupCounts, type LoadItems, loadMg, type Piece } from './items.ts';

/** Tins of one ask in one load. */
export interface LoadShare {
  /** Index into the asks. */
  ask: number;
  /** Whole tins filled from this load. */
  tins: number;
  /** Set when the load holds an equal part of a tin that exceeds the bowl: this part in `ofParts`. */
  ofParts?: number;
  batterG: number;
}

/** One bowlful. */
export interface MixerLoad {
  batterG: number;
  shares: LoadShare[];
}

/** Loads, heaviest first; shares in the order of the asks. */
export function mixerLoads(items: LoadItems, packing: readonly GroupCounts[]): MixerLoad[] {
  const next = items.groups.map(() => 0);
  const heaviestFirst = packing
    .map((counts) => ({ counts, mg: loadMg(items, counts) }))
    .sort((a, b) => b.mg - a.mg);
  return heaviestFirst.map(({ counts, mg }) => {
    const held = counts.flatMap((count, group) => {
      const from = next[group] ?? 0;
      next[group] = from + count;
      return items.groups[group]?.pieces.slice(from, from + count) ?? [];
    });
    return { batterG: quantiseG(mg / 1000), shares: shares(held) };
  });
}

function shares(held: Piece[]): LoadShare[] {
  const asks = [...new Set(held.map((piece) => piece.ask))].sort((a, b) => a - b);
  return asks.flatMap((ask) => {
    const own = held.filter((piece) => piece.ask === ask);
    const whole = own.filter((piece) => piece.parts === 1);
    const parts = own.filter((piece) => piece.parts > 1);
    const tins = whole.length > 0 ? [{ ask, tins: whole.length, batterG: sumG(whole) }] : [];
    return [...tins, ...parts.map((part) => ({ ask, tins: 0, ofParts: part.parts, batterG: sumG([part]) }))];
  });
}

const sumG = (pieces: Piece[]): number => quantiseG(pieces.reduce((sum, piece) => sum + piece.mg, 0) / 1000);
