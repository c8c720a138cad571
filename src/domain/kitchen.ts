import type { BunTin } from './bun-tin.ts';
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

/** What an oven's dial is marked in. */
export type DialScale = 'C' | 'F' | 'gas';

/** An oven of the kitchen, and what there is to even the heat in it. */
export interface OvenSetting {
  /** Left out: the main one, MAIN_OVEN. */
  id?: string;
  name?: string;
  /** Whether its heat is driven by a fan when cakes are in. */
  fan: boolean;
  dial: DialScale;
  /** Heating core in the drawer: hollow ones stand open to the oven at both ends. */
  core: 'none' | 'hollow' | 'solid';
  /** Whether there are insulated bands to put round tins. */
  band: boolean;
}

/** An oven nobody has described. */
export const PLAIN_OVEN: OvenSetting = { fan: false, dial: 'C', core: 'none', band: false };

/** What dials are marked in where nobody says otherwise. */
export const USUAL_DIAL: Record<Locale, DialScale> = { 'en-GB': 'C', 'en-US': 'F' };

/** What the oven is called that the kitchen gives no id. */
export const MAIN_OVEN = 'main';

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
  /** Left out: a conventional oven with a dial in °C, no core, no bands; reading fills it in where dials are in °F. */
  oven?: OvenSetting;
  /** Further ovens, each with an id; cores and bands are shared by all. */
  furtherOvens?: OvenSetting[];
  /** Temperature of batter when it goes in, °C, where it is not the usual room's. */
  batterC?: number;
  tins: Tin[];
  /** Tins of several cups, for small cakes; left out: none. */
  bunTins?: BunTin[];
}

export const ovenIdOf = ({ id = MAIN_OVEN }: OvenSetting): string => id;

/** All ovens, the main one first. */
const ovensOf = ({ oven, furtherOvens = [] }: Pick<Kitchen, 'oven' | 'furtherOvens'>): OvenSetting[] => [
  oven ?? PLAIN_OVEN,
  ...furtherOvens,
];

/** The oven of that id; the main one for none, or for one that is not there. */
export function ovenNamed(kitchen: Pick<Kitchen, 'oven' | 'furtherOvens'>, id?: string): OvenSetting {
  const [main = PLAIN_OVEN, ...others] = ovensOf(kitchen);
  return others.find((oven) => ovenIdOf(oven) === id) ?? main;
}
