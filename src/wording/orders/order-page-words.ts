/** The words around an order: its steps as headings, the heads of its tables, and what only pages say. */

/** The steps from order to hand-over, as headings. */
/** The steps of an order in their turn, as headings; `numbered` puts a step's place before it. */
export interface OrderSteps {
  glance: string;
  settle: string;
  shop: string;
  mix: string;
  bake: string;
  finish: string;
  pack: string;
  handOver: string;
  money: string;
  numbered(place: number, step: string): string;
}

export interface OrderTableWords {
  tier: string;
  tin: string;
  cakes: string;
  batter: string;
  dial: string;
  firstLook: string;
  by: string;
  height: string;
  layers: string;
  use: string;
  make: string;
  on: string;
  roll: string;
  coated: string;
  board: string;
  box: string;
  ribbon: string;
  weight: string;
  portions: string;
  ingredient: string;
  grams: string;
  needed: string;
  onHand: string;
  buy: string;
  cost: string;
  left: string;
  used: string;
  item: string;
  amount: string;
  each: string;
  price: string;
  vat: string;
  net: string;
  work: string;
  times: string;
  minutes: string;
  question: string;
  answer: string;
  settledBy: string;
  day: string;
  order: string;
  bake_on: string;
  forWhom: string;
}

export interface OrderPageWords {
  /** Over links to prints and data, by the names in files; '' for figures and the calendar. */
  files: Record<string, string>;
  toPrint: string;
  when: string;
  ovenPlan: string;
  labels: string;
  /** What labels say of keeping: title, heads of the table, and what stands where there is no label. */
  keeping: {
    title: string;
    food: string;
    date: string;
    store: string;
    none: (food: string, why: string) => string;
  };
  bowl: string;
  makes: (grams: string) => string;
  eggs: string;
  toRecipe: string;
  ofWeek: (week: string) => string;
  allOrders: string;
  toOrder: string;
  howFinishes: string;
  customerSees: string;
  bakerSees: string;
  description: (title: string) => string;
  weekDescription: (week: string) => string;
  noFinish: string;
  total: string;
  refused: string;
  /** Head of where a tier begins and ends above the table. */
  footTop: { name: string; unit: string };
  weeks: string;
}
