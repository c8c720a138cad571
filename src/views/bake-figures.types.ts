/** What a tin chart says of the oven, row by row. */
import type { Figure } from './figure.ts';

export interface BakeFigures {
  /** Conventional °C; as shown, on this kitchen's own dial. */
  dial: Figure;
  /** The same heat on other dials: '160 °C, 320 °F, gas 3'. */
  dialOthers: string;
  firstLook: Figure;
  /** Most likely. */
  likely: Figure;
  expectedBy: Figure;
  core: boolean;
  band: boolean;
  /** Core, band and heat in a sentence or two. */
  advice: string;
  /** Logged bakes that stand behind the window. */
  bakes: Figure;
}

export interface ChartBake {
  /** How many bakes the times rest on, and how sure that makes them. */
  basisText: string;
  /** What the weights of baked cakes rest on. */
  waterText: string;
  /** Where the baker's own bakes are shown, from the site's root. */
  path: string;
}
