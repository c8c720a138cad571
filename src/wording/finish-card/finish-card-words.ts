/** The words of finish cards beyond those of recipe cards. A missing key does not compile. */

export interface FinishCardWords {
  /** Over the row of what a batch comes to. */
  makes: string;
  /** Takes the unit of weights. */
  batches: (unit: 'g' | 'oz') => string;
  /** Over the ways it is used. */
  uses: string;
  /** What is made beyond what goes on the cakes: 'Made with 10 % to spare: …' */
  spare: (share: string) => string;
  /** The same of what is poured. */
  spareOfPoured: (share: string) => string;
  /** What leaves in the pan; stands below the batches. */
  boilsAway: (share: string) => string;
  /** A finish that comes in packets: nothing is weighed for it. */
  bought: string;
  /** Over the rows of tins. */
  forTins: (unit: 'g' | 'oz') => string;
  /** The same where it is rolled out and nothing else. */
  toRoll: (unit: 'g' | 'oz') => string;
  forTinsAbout: (height: string, layers: number) => string;
  sheet: (size: string) => string;
  /** Under the code that leads to the finish's page, and read aloud for it. */
  everyTin: string;
  everyTinOf: (name: string) => string;
  title: (name: string, size: string) => string;
  subject: (name: string) => string;
  /** A caution of the method that already tells of heat. */
  tellsOfHeat: RegExp;
}
