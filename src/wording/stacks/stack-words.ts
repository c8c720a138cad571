/** Everything that is said about a stack: its tiers, boards and supports, and what to mind when it is built and cut. */
export type StackCaution =
  | 'dummy-tier'
  | 'supports-not-food'
  | 'tell-the-cutter'
  | 'two-people-lift'
  | 'keep-level'
  | 'warm-and-cold'
  | 'warm-under-sheet'
  | 'warm-and-mixed'
  | 'practice-first';

/** What is in a stack and is not cake. */
export interface NotCake {
  supports: number;
  cards: number;
  /** Tiers that are polystyrene. */
  dummies: number;
  hasDowel: boolean;
}

/** What a stack is put together from. */
export interface StackSteps {
  hasDowel: boolean;
  travelsAssembled: boolean;
  hasDummy: boolean;
  hasSupports: boolean;
}

export interface StackWords {
  /** Over the section of a page. */
  heading: string;
  sheetTitle: (order: string) => string;
  summary: (tiers: number, heightMm: string, weight: string, hasDummy: boolean) => string;
  facts: Record<'height' | 'weight' | 'drum' | 'dowel' | 'inside' | 'travels', string>;
  heightText: (mm: string) => string;
  weightText: (grams: string, hasDummy: boolean) => string;
  drumText: (across: string, thicknessMm: string) => string;
  cardText: (across: string, thicknessMm: string) => string;
  insideText: (acrossMm: string, mm: string) => string;
  dowelText: (mm: string) => string;
  noDowel: string;
  /** What is in the stack, counted: '8 supports, 2 cards and a dowel'. */
  notCake: (what: NotCake) => string;
  travels: (assembled: boolean) => string;
  across: (mm: string) => string;
  by: (across: string, deep: string) => string;
  /** In place of a tin's name. */
  dummyTin: string;
  table: Record<
    | 'tier'
    | 'coated'
    | 'weighs'
    | 'carries'
    | 'standsOn'
    | 'number'
    | 'clock'
    | 'middle'
    | 'side'
    | 'depth'
    | 'edge',
    { name: string; unit: string }
  >;
  supportsTitle: string;
  /** 'In the bottom tier, under the middle tier'. */
  under: (tier: string, above: string) => string;
  /** In a tall tier, under the card inside. */
  underCard: (tier: string) => string;
  set: (count: number, lengthMm: string, carriesG: string) => string;
  ledge: (above: string, mm: string) => string;
  placesAbout: string;
  /** Where dummies hold all that stands. */
  noSupports: string;
  right: (mm: string) => string;
  left: (mm: string) => string;
  back: (mm: string) => string;
  front: (mm: string) => string;
  noPlaces: string;
  stepsTitle: string;
  steps: (stack: StackSteps) => string[];
  cautions: Record<Exclude<StackCaution, 'dummy-tier' | 'tell-the-cutter' | 'two-people-lift'>, string> & {
    /** Takes the names of the dummies. */
    'dummy-tier': (names: readonly string[]) => string;
    'tell-the-cutter': (inside: string) => string;
    'two-people-lift': (weight: string, limit: string, isHeavy: boolean) => string;
  };
  /** A tier that leaves too little of the one below, or reaches over it. */
  doesNotStand: (tier: string, below: string, stepMm: string) => string;
  unknownWidth: string;
  /** Supports that nobody can reckon, and how to count them by hand; takes the names of tins. */
  supportsByHand: (tins: readonly string[]) => string;
  picture: {
    title: (order: string) => string;
    tier: (name: string, across: string, highMm: string, supports: number) => string;
    description: (drum: string, tiers: readonly string[], heightMm: string, hasDowel: boolean) => string;
    scale: (scale: number) => string;
    key: (hasDowel: boolean, hasDummy: boolean) => string;
  };
  template: {
    title: (order: string) => string;
    /** Where its numbers are in words. */
    printTitle: (title: string) => string;
    subject: string;
    outline: (tier: string, size: string) => string;
    card: (tier: string, size: string) => string;
    /** The dashed line: the cake before its coats. */
    bare: (size: string) => string;
    /** How wide the supports may be that the circles are for, and where they are cut. */
    supports: (markMm: string) => string;
    notFood: string;
    middle: string;
    hole: string;
    backMark: string;
  };
}
