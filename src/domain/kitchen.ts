import type { EggSize } from './egg.ts';
import type { Tin } from './tin.ts';

export type Locale = 'en-GB' | 'en-US';
export type PaperName = 'A4' | 'Letter';

export interface EggSetting {
  /** Null when the kitchen only says what its own eggs weigh. */
  size: EggSize | null;
  /** Mean shelled mass of one egg, g. */
  shelledG: number;
  source: 'weighed' | 'table';
  /** Largest share by which the whole number of eggs may differ from the exact one. */
  tolerance: number;
  /** What to do beyond the tolerance. */
  otherwise: 'step-up' | 'weigh';
}

export interface ScaleSetting {
  stepG: number;
  fineStepG: number;
}

export interface MixerSetting {
  bowlMl: number;
  /** Shares of the bowl that mixed batter may fill. */
  maxFill: number;
  minFill: number;
}

/** The baker's own settings. */
export interface Kitchen {
  name: string;
  place: string;
  baker?: string;
  /** ISO date printed as the edition; dates every output unless SOURCE_DATE_EPOCH is set. */
  edition: string;
  locale: Locale;
  siteUrl?: string;
  paper: PaperName[];
  egg: EggSetting;
  scale: ScaleSetting;
  mixer: MixerSetting;
  /** Batter for one fairy-cake case, g: surplus is told in these. */
  fairyCaseG: number;
  tins: Tin[];
}
