/** One file sets the look of every page and print: nothing is hard-wired elsewhere. */
import type { LogoDrawing } from './logo.ts';

export type FontRole = 'text' | 'textBold' | 'textItalic' | 'heading';

export interface Palette {
  paper: string;
  ink: string;
  quietInk: string;
  rule: string;
  accent: string;
  accentInk: string;
  tint: string;
  caution: string;
}

export interface HouseStyle {
  name: string;
  colours: { light: Palette; dark: Palette };
  /** Font files: a path below the content folder, or a bundled family's name and cut. */
  fonts: Record<FontRole, string>;
  /** CSS family names for the site, in the order of preference. */
  logo?: string;
  /** The logo's shapes for prints; left out where it cannot be drawn as vectors. */
  logoDrawing?: LogoDrawing;
  headingCase: 'as written' | 'small capitals';
  marginMm: { top: number; right: number; bottom: number; left: number };
}
