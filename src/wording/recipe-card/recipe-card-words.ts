/** The words of recipe cards and cut sheets. A missing key does not compile. */
import type { DateFormat } from '../date.ts';

export interface RecipeCardWords {
  date: DateFormat;
  oven: string;
  finishedHeight: string;
  eggs: string;
  batter: string;
  fill: string;
  dial: string;
  firstLook: string;
  doneBy: string;
  core: string;
  coreIn: string;
  coreOut: string;
  band: string;
  bandOn: string;
  /** A tin's oven in one line, where there is no room for a column. */
  inOven: (
    tin: string,
    dial: string,
    firstLook: string,
    doneBy: string,
    core: boolean,
    band: boolean,
  ) => string;
  inTheOven: string;
  /** Which of two times to heed. */
  earlierLook: string;
  ready: string;
  notes: string;
  caution: string;
  check: string;
  method: string;
  weightsIn: (unit: 'g' | 'oz') => string;
  /** Under the code that leads to the derivation. */
  working: string;
  workingOf: (name: string) => string;
  card: (card: number, cards: number) => string;
  continued: (name: string) => string;
  edition: (date: string) => string;
  subject: (recipe: string) => string;
  title: (recipe: string, size: string) => string;
  sizes: Record<'A5' | 'A6' | 'index 3 x 5 in' | 'index 4 x 6 in' | 'index 5 x 8 in', string>;
  /** A method that gives minutes of its own. */
  givesTimes: RegExp;
  /** A sentence of the method that lists allergens: the front lists those of the very mix. */
  listsAllergens: RegExp;
  /** Which of the chart's cautions a caution of the method already gives, by code: every pattern must be found. */
  alreadySaid: Record<string, readonly RegExp[]>;
  sheets: {
    title: (size: string, paper: string, ending: string) => string;
    subject: (size: string, files: string) => string;
    front: string;
    back: string;
    turn: Record<'long' | 'short', string>;
  };
}
