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
}
