/** Words of a plan: bowlfuls and what they fill, and what cannot be said of a tin. A missing key does not compile. */
export interface PlanWords {
  /** 'Bowl 1 of 2' */
  bowl: (number: number, of: number) => string;
  onlyBowl: string;
  /** 'one of 3 parts of Twelve-inch round' */
  partOf: (parts: number, of: number, tin: string) => string;
  /** Title of the working's part that all tins share. */
  mixTitle: string;
  unfinished: (tin: string) => string;
  perCake: (tin: string, weight: string) => string;
  /** On paper. Weights come with their unit's name apart: 'g' or 'oz'. */
  sheet: {
    /** 'Plan: Equal-weights vanilla sponge' */
    title: (plan: string) => string;
    batter: (weight: string, unit: string) => string;
    /** 'UK medium eggs, 51 g each without the shell. 7.22 exactly' */
    exactly: (eggSize: string, exact: string) => string;
    weigh: string;
    ingredient: string;
    /** Beside the weight that the cracked eggs should come to. */
    eggs: (eggs: string) => string;
    /** The bowl's contents, before they are shared out. */
    bowlHolds: string;
    fills: (what: string) => string;
    left: (what: string) => string;
    tins: string;
    tin: string;
    inEach: (unit: string) => string;
    stands: string;
    standsAt: (mm: string, share: string) => string;
    dial: string;
    firstLook: string;
    doneBy: string;
    portions: (portions: string, each: boolean) => string;
    finishes: string;
    finish: string;
    buy: (weight: string, unit: string) => string;
    part: (name: string, weight: string, unit: string, beside: string | null) => string;
    /** Read aloud for a box. */
    toTick: string;
    /** Beside the code that opens this plan. */
    code: string;
    check: string;
  };
}
