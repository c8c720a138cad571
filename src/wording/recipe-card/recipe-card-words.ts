/** The words of recipe cards and cut sheets. A missing key does not compile. */
export interface RecipeCardWords {
  oven: string;
  finishedHeight: string;
  eggs: string;
  batter: string;
  fill: string;
  tin: string;
  firstLook: string;
  doneBy: string;
  ready: string;
  notes: string;
  caution: string;
  check: string;
  method: string;
  weightsFor: string;
  card: (card: number, cards: number) => string;
  continued: (name: string) => string;
  edition: (date: string) => string;
  subject: (recipe: string) => string;
  title: (recipe: string, size: string) => string;
  sizes: Record<'A5' | 'A6' | 'index 3 x 5 in' | 'index 4 x 6 in' | 'index 5 x 8 in', string>;
  sheets: {
    title: (size: string, paper: string, accessible: string) => string;
    subject: (size: string) => string;
    front: string;
    back: string;
    turn: Record<'long' | 'short', string>;
  };
}
