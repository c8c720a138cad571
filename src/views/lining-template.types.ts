/** What a lining template shows: pieces at true size in mm, y down as on paper, each about its own middle. */
import type { OutlineStep } from '../compute/outline/index.ts';
import type { Caution } from './figure.ts';
import type { TinPicture } from './tin-picture.ts';

/** Pieces of one group share sheets; a baker prints the groups she wants. */
export type TemplateGroup = 'lining' | 'levelling' | 'board' | 'supports';

export interface TemplateGuide {
  kind: 'rim' | 'lap' | 'foot' | 'level' | 'baked' | 'cake' | 'support' | 'hole' | 'back';
  steps: OutlineStep[];
  /** False where the guide names an edge that is cut anyway. */
  drawn: boolean;
  text: string;
}

export interface TemplatePiece {
  /** Its own within the template: 'base', 'side', 'levels'. */
  id: string;
  group: TemplateGroup;
  name: string;
  count: number;
  cut: OutlineStep[];
  guides: TemplateGuide[];
  /** Named cross in the middle of the piece; null for strips. */
  centreText: string | null;
  sizeText: string;
  cutText: string;
  /** Whether the left half mirrors the right, and the upper the lower. */
  mirrored: { leftRight: boolean; topBottom: boolean };
  widthMm: number;
  heightMm: number;
}

export interface LiningTemplateView {
  /** The tin's. */
  id: string;
  kitchenName: string;
  edition: string;
  tinName: string;
  title: string;
  summary: string;
  sizeText: string;
  otherSizeText: string;
  picture: TinPicture;
  pieces: TemplatePiece[];
  /** What there is no pattern for, and how to use what there is. */
  notes: string[];
  cautions: Caution[];
}
