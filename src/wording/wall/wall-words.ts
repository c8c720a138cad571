/** The words of wall references. A missing key does not compile. */
import type { DateFormat } from '../date.ts';

export interface WallWords {
  date: DateFormat;
  eggLadder: {
    title: (recipe: string) => string;
    lead: (eggSize: string) => string;
    eggs: string;
    batter: string;
    fills: string;
    note: string;
  };
  oven: {
    title: string;
    lead: string;
    conventional: string;
    fan: string;
    fahrenheit: string;
    gas: string;
    celsiusUnit: string;
    fahrenheitUnit: string;
    gasUnit: string;
    note: string;
    caution: string;
  };
  tins: {
    title: string;
    lead: (recipe: string) => string;
    volumeUnit: string;
    batterUnit: string;
    note: string;
  };
  finish: {
    title: (finish: string) => string;
    lead: (height: string, layers: number) => string;
    tin: string;
    filling: string;
    dam: string;
    coating: string;
    make: string;
    note: string;
  };
  allergens: {
    title: string;
    lead: string;
    what: string;
    otherwise: string;
    unknown: string;
    unknownColumn: string;
    notThere: string;
    all: string;
    notes: { dash: string; unknown: string; flavours: string };
    caution: string;
  };
  grams: string;
  caution: string;
  working: string;
  wherePage: string;
  edition: (date: string) => string;
  sheet: (sheet: number, sheets: number) => string;
  scale: (scale: number) => string;
  titleOf: (title: string, sheet: number, sheets: number) => string;
  types: (keyPt: string, wordPt: string, notePt: string | null) => string;
}
