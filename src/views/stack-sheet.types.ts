/** A stacked order as its sheet, its page and its data show it: tiers, boards and supports from the table up. */
import type { Warning } from '../domain/problem.ts';
import type { StackCaution } from '../wording/stacks/index.ts';
import type { Caution, Figure, Named } from './figure.ts';
import type { TemplatePiece } from './lining-template.types.ts';

export interface StackFact {
  id: string;
  label: string;
  text: string;
}

export interface StackBoard {
  across: Figure;
  thickness: Figure;
  /** 'Drum, 14 in (35.6 cm), 12 mm thick'. */
  text: string;
}

export interface StackTierView {
  /** 'tier-1' or 'dummy-1', as in the order. */
  id: string;
  name: string;
  /** Not cake: polystyrene under its cover. */
  dummy: boolean;
  tin: Named;
  /** Seen from the front, with coats. */
  across: Figure;
  /** From front to back. */
  deep: Figure;
  height: Figure;
  /** Of its foot and its top above the table. */
  foot: Figure;
  top: Figure;
  weight: Figure;
  /** All that stands on it; null on top. */
  carries: Figure | null;
  board: StackBoard;
  /** Of a card inside above the tier's foot; null where the tier is not tall. */
  cardInside: Figure | null;
  /** What it stands on, and the card inside where it has one. */
  standsOnText: string;
  /** Whether it may stand on the tier below. */
  stands: boolean;
}

/** The middle of one support. */
export interface SupportSpotView {
  number: Figure;
  clock: Figure;
  fromMiddle: Figure;
  /** '44 right', '44 left'. */
  side: Figure;
  /** '61 back', '61 front'. */
  depth: Figure;
  fromEdge: Figure;
}

/** Supports of one length that end under one board. */
export interface SupportSet {
  /** 'tier-1-top'; 'tier-1-inside' up to the card inside a tall tier. */
  id: string;
  tierId: string;
  /** 'In the bottom tier, under the middle tier'. */
  title: string;
  setText: string;
  count: Figure;
  length: Figure;
  carries: Figure;
  /** Free all round the tier above, at the narrowest; null for a card inside, or where the tier may not stand. */
  ledge: Figure | null;
  ledgeText: string | null;
  spots: SupportSpotView[];
  /** The template at true size. */
  picture: TemplatePiece;
}

export type StackPartKind = 'drum' | 'card' | 'cake' | 'dome' | 'dummy' | 'support' | 'dowel';

/** A part seen from the front: a box, or a half sphere on its rim. */
export interface StackPart {
  kind: StackPartKind;
  /** Its middle from the stack's middle, mm. */
  atMm: number;
  /** Above the table. */
  footMm: number;
  widthMm: number;
  heightMm: number;
}

export interface StackPicture {
  title: string;
  /** What the drawing shows, for who cannot see it. */
  alt: string;
  widthMm: number;
  heightMm: number;
  parts: StackPart[];
  keyText: string;
}

export interface StackView {
  heading: string;
  /** What stands beside bare weights and heights. */
  units: { mass: string; height: 'mm' | 'in' };
  sheetTitle: string;
  summary: string;
  facts: StackFact[];
  /** On the table, drum and cards counted. */
  height: Figure;
  /** Of the cakes. */
  weight: Figure;
  /** Null where none is called for. */
  dowel: Figure | null;
  /** Bottom first. */
  tiers: StackTierView[];
  sets: SupportSet[];
  placesAbout: string;
  steps: string[];
  cautions: (Caution & { code: StackCaution })[];
  warnings: Warning[];
  picture: StackPicture;
}
