/** The words about time and heat. A missing key does not compile. */
import type { CoreKind, DoneTest } from '../../domain/bake-log.ts';
import type { BakeClass } from '../../domain/recipe.ts';

export interface BakeWords {
  section: string;
  lead: string;
  doneTests: string;
  columns: {
    tin: string;
    dial: string;
    firstLook: string;
    expectedBy: string;
    advice: string;
    behind: string;
  };
  coreIn: string;
  noCore: string;
  /** A core would help and the kitchen owns none. */
  coreWouldHelp: string;
  /** With a core in: what it would be without. */
  without: (dial: string, firstLook: string, expectedBy: string) => string;
  bandOn: string;
  /** The edge would like one and the kitchen owns none. */
  bandWouldHelp: string;
  lowered: string;
  likely: (minutes: string) => string;
  restsOn: (behind: string) => string;
  behind: (bakes: number) => string;
  basis: (bakes: number, cored: number) => string;
  basisNone: (kind: string) => string;
  classes: Record<BakeClass, string>;
  cores: Record<CoreKind, string>;
  tests: Record<DoneTest, string>;
  probe: (reading: string) => string;
  cautions: { core: string; door: string };
  odd: (bake: string, by: string, expected: string) => string;
  late: (minutes: string) => string;
  early: (minutes: string) => string;
  heeded: (share: string) => string;
  guide: {
    title: (recipe: string) => string;
    tinTime: string;
    tinTimeText: (height: string) => string;
    tinTimeEnds: (least: string, leastSpan: string, most: string, mostSpan: string) => string;
    across: (unit: string) => string;
    minutes: string;
    hours: string;
    temperature: string;
    likely: string;
    window: string;
    withCore: string;
    withoutCore: string;
    yourBakes: string;
    yourBakesCore: string;
    middle: string;
    edge: string;
    middleCore: string;
    between: string;
    curves: (tin: string) => string;
    curvesText: (tin: string, dial: string) => string;
    edgeAgainstMiddle: (tin: string) => string;
    edgeText: (tin: string, dial: string) => string;
    done: (celsius: string) => string;
    log: string;
    logEmpty: string;
    odd: string;
    noOdd: string;
    ask: string;
    askLead: string;
    askEntry: (tin: string, dial: string) => string;
    askPromise: (share: string) => string;
    fromLog: string;
    yieldText: (log: string, bakes: number, proven: string, difference: string) => string;
    yieldNone: string;
    waterText: (share: string, sd: string, bakes: number) => string;
    waterNone: (share: string, sd: string) => string;
    ovenText: (offset: string, sd: string, bakes: number) => string;
    ovenNone: string;
    offset: (degrees: string, above: boolean) => string;
    factorText: (share: string, low: string, high: string, kind: string) => string;
    conduction: string;
    band: string;
    date: string;
    tin: string;
    dial: string;
    took: string;
    expected: string;
    batter: string;
    note: string;
    tableOf: (title: string) => string;
  };
}
