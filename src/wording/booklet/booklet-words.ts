/** The words of the booklet; figures come as text. A missing key does not compile. */
import type { DateFormat } from '../date.ts';

export interface BookletWords {
  date: DateFormat;
  /** Said small above the kitchen's name on the cover. */
  coverLine: string;
  /** Alternative text of the picture on it. */
  coverPicture: string;
  subtitle: (tins: number, recipes: number) => string;
  by: (baker: string) => string;
  title: (kitchen: string) => string;
  subject: (kitchen: string) => string;
  contents: string;
  notes: string;
  caution: string;
  check: string;
  imprint: {
    heading: string;
    edition: (date: string, note: string) => string;
    figures: string;
    licence: string;
    preparedFor: string;
    site: (address: string) => string;
    siteCode: string;
    folding: string;
  };
  use: {
    heading: string;
    lead: string;
    points: {
      row: { head: string; text: string };
      pairs: { head: string; text: string };
      eggs: { head: string; text: (size: string, tolerance: string) => string };
      eggsWeighed: { head: string; text: (size: string, tolerance: string) => string };
      weights: { head: string; text: (step: string, fineStep: string) => string };
      ounces: { head: string; text: string };
      fill: { head: string; text: string };
      over: { head: string; text: string };
      letters: { head: string; text: string };
      oven: { head: string; text: string };
      code: { head: string; text: string };
    };
    allergens: string;
  };
  recipes: {
    heading: string;
    lead: (count: number) => string;
    name: string;
    height: string;
    heightUnit: string;
    oven: string;
    contains: string;
    noneWritten: string;
    unchecked: (count: number) => string;
  };
  recipe: {
    /** Where the code beside the name leads. */
    working: string;
    formula: string;
    amount: string;
    total: (grams: string) => string;
    facts: { oven: string; height: string; layers: string; eggs: string; suits: string };
    weights: string;
    tin: string;
    weightsIn: (unit: string) => string;
    batter: string;
    /** Of an ingredient that is also told in spoons. */
    inSpoons: string;
    fill: string;
    fillUnit: string;
    over: string;
    oven: string;
    ready: string;
    core: string;
    withCore: string;
    withBand: string;
    lowered: (recipeHeight: string, list: string) => string;
    loweredTin: (tin: string, height: string) => string;
    collar: string;
  };
  flavours: {
    heading: string;
    lead: string;
    inRecipe: (recipe: string) => string;
    ingredient: string;
    plain: string;
    flavoured: string;
    change: string;
    why: string;
    method: string;
    unchanged: (names: string) => string;
  };
  finishing: {
    heading: string;
    tin: string;
    rollTo: string;
    uses: Record<'between' | 'dams' | 'around' | 'over' | 'under', { title: string; about: string }>;
    under: {
      coated: string;
      high: string;
      board: string;
      boxSide: string;
      boxHeight: string;
      ribbon: string;
    };
    notes: string;
  };
  tables: { heading: string };
  tins: {
    heading: string;
    lead: (scale: number) => string;
    tin: string;
    holds: string;
    owned: string;
    note: string;
  };
  oven: { heading: string };
  eggs: {
    heading: string;
    lead: (own: string) => string;
    size: string;
    egg: string;
    yolk: string;
    white: string;
    forTen: string;
    ofOurs: string;
    scheme: (scheme: 'UK' | 'US', grade: string) => string;
    own: string;
    note: string;
    caution: string;
  };
  portions: { heading: string; lead: (sizes: string) => string; tin: string; rings: string; rows: string };
  allergens: { heading: string };
  index: { heading: string; tins: string; ingredients: string; lead: string };
  ruler: string;
  backLine: string;
  /** Title of the file to fold: what it is, and where to go to read it. */
  foldTitle: (title: string, paper: string, readingFile: string) => string;
  foldSubject: (sheets: number, gatherings: number) => string;
}
