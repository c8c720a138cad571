/** The words of the portions chart and the cutting guides; figures come as text. A missing key does not compile. */
import type { PortionSize } from '../../domain/portion.ts';

export interface PortionsWords {
  title: string;
  guides: string;
  summary: string;
  /** 'Dessert, 1 × 2 in' */
  size: (name: string, short: string, long: string) => string;
  sizeNames: Record<PortionSize['id'], string>;
  inRows: string;
  inRings: string;
  /** Of which so many are whole. */
  whole: (count: string) => string;
  /** '24 + 6 + 1': slices ring by ring, and the piece in the middle. */
  ringDetail: (slices: readonly string[], hasCore: boolean) => string;
  guideAlt: (tin: string, count: string, size: string) => string;
  ringAlt: (tin: string, count: string, circles: readonly string[]) => string;
  circles: (radii: readonly string[]) => string;
  stacksTitle: string;
  stacksAbout: (recipe: string) => string;
  wanted: string;
  stackOf: string;
  portions: string;
  over: string;
  exactly: string;
  batter: string;
  eggs: string;
  height: string;
  /** What the batter's ingredients come to. */
  ingredients: string;
  noStack: string;
  /** 'Twelve-inch round, then Eight-inch round' bottom first */
  stack: (tins: readonly string[]) => string;
  more: string;
  /** The question, told back: '60 portions (dessert) in Plain sponge:' */
  asked: (wanted: string, size: string, recipe: string, keepsTopTier: boolean) => string;
  caution: string;
  notes: {
    counted: string;
    rings: string;
    stacks: (step: string) => string;
    bakes: string;
    owned: string;
  };
  cautions: { inside: string; supports: string };
  leftOut: (tin: string) => string;
  leftOutDome: (tin: string) => string;
  tin: string;
  howToRead: string;
  toTins: string;
  /** The link to this page from the tins. */
  fromTins: string;
  scale: (scale: number) => string;
}
