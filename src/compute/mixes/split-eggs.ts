/**
 * A tin too big for the bowl is mixed in parts. Equal parts would each be rounded to whole eggs, and four and
 * four eggs come out where seven were wanted: so the eggs are made whole for the tin first and then dealt
 * out, and each part is as large as its eggs.
 */
import { quantiseG } from '../../domain/quantise.ts';
import type { Formula } from '../../domain/recipe.ts';
import { planEggs } from '../eggs/whole-eggs.ts';
import type { LoadTin, MixKitchen } from './mix.types.ts';
import { formulaG, sumG } from './mix-load.ts';

type Share = Omit<LoadTin, 'receivesG'>;

/** `total` things dealt to `hands` as evenly as whole things allow, the larger hands first. */
function dealt(total: number, hands: number): number[] {
  const least = Math.floor(total / hands);
  return Array.from({ length: hands }, (_, hand) => least + (hand < total - least * hands ? 1 : 0));
}

/** Whole eggs for each part; null when there are none to count or a part would not fit the bowl. */
function eggsByPart(parts: Share[], formula: Formula, kitchen: MixKitchen, limitG: number): number[] | null {
  const askedG = sumG(parts.map((part) => part.askedG));
  const eggs = planEggs(formula, askedG / formulaG(formula), kitchen.egg);
  if (eggs === null || eggs.rule === 'weigh' || eggs.whole % parts.length === 0) return null;
  const counts = dealt(eggs.whole, parts.length);
  const largestG = (askedG * Math.max(...counts)) / eggs.whole;
  return eggs.whole < parts.length || largestG > limitG ? null : counts;
}

/** The parts by their eggs; the last takes what is left, so that no milligram is lost. */
function resized(parts: Share[], counts: number[]): Share[] {
  const askedG = sumG(parts.map((part) => part.askedG));
  const ofParts = counts.reduce((sum, count) => sum + count, 0);
  const sizes = counts.slice(0, -1).map((count) => quantiseG((askedG * count) / ofParts));
  return parts.map((part, index) => {
    const size = sizes[index] ?? quantiseG(askedG - sumG(sizes));
    return { ...part, ofParts, parts: counts[index] ?? 0, askedG: size };
  });
}

/** Whether a load holds nothing but one part of a tin that is split. */
const isLonePart = (load: Share[]): boolean => load.length === 1 && load[0]?.ofParts !== undefined;

/** Loads with the lone parts of every split tin resized so that their eggs come out whole together. */
export function splitByEggs(
  loads: Share[][],
  formula: Formula,
  kitchen: MixKitchen,
  limitG: number,
): Share[][] {
  const result = [...loads];
  const lone = loads.flatMap((load, at) => (isLonePart(load) ? load.map((share) => ({ share, at })) : []));
  for (const tin of new Set(lone.map(({ share }) => share.tin))) {
    const here = lone.filter(({ share }) => share.tin === tin);
    const parts = here.map(({ share }) => share);
    const counts = eggsByPart(parts, formula, kitchen, limitG);
    if (counts === null) continue;
    resized(parts, counts).forEach((part, index) => {
      result[here[index]?.at ?? 0] = [part];
    });
  }
  return result;
}
