/** The words about time and heat. A missing key does not compile. */

import type { CoreKind, DoneTest } from '../../domain/bake-log.ts';
import type { BakeClass } from '../../domain/recipe.ts';
import type { DateFormat } from '../date.ts';
import type { DialWords } from './dial.ts';

export interface BakeWords {
  date: DateFormat;
  dial: DialWords;
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
  /** Leads from the times to the bakes behind them. */
  whence: string;
  coreIn: string;
  noCore: string;
  /** A ring tin: its own tube does it. */
  noCoreTube: string;
  /** An egg-white foam in a wide plain tin. */
  noCoreFoam: string;
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
  /** As `basisNone`, where the recipe starts from its make-up. */
  basisNoneMakeUp: string;
  /** After the others: bakes in other ovens gave the times their start. */
  basisElsewhere: (bakes: number) => string;
  /** Which oven, where there are several. */
  inOven: (name: string) => string;
  /** What a cake weighs when baked, beside its tin. */
  baked: (grams: string) => string;
  /** What that rests on. */
  water: (share: string, bakes: number, own: boolean) => string;
  classes: Record<BakeClass, string>;
  cores: Record<CoreKind, string>;
  tests: Record<DoneTest, string>;
  probe: (reading: string) => string;
  cautions: { core: string; door: string };
  odd: (bake: string, by: string, expected: string) => string;
  /** A bake whose batter went further or less far than the others' did. */
  oddYield: (bake: string, share: string, more: boolean) => string;
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
    temperature: (scale: string) => string;
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
    done: (heat: string) => string;
    log: string;
    logEmpty: string;
    odd: string;
    noOdd: string;
    ask: string;
    askLead: string;
    askEntry: (tin: string, dial: string) => string;
    askPromise: (share: string) => string;
    fromLog: string;
    steadyText: (sd: string, usual: string, bakes: number) => string;
    steadyNone: (usual: string) => string;
    yieldText: (bakes: number, joint: string, proven: string, difference: string) => string;
    yieldNone: (bakes: number, needed: number) => string;
    waterText: (share: string, sd: string, bakes: number) => string;
    waterNone: (share: string, sd: string, own: boolean) => string;
    ovenText: (offset: string, sd: string, bakes: number) => string;
    ovenNone: (apart: string) => string;
    offset: (degrees: string, above: boolean) => string;
    setting: (oven: string, batter: string) => string;
    makeUp: string;
    makeUpShares: (water: string, fat: string, protein: string, carbohydrate: string) => string;
    makeUpPace: (own: string, plain: string, share: string) => string;
    makeUpLogged: (fitted: string, share: string, bakes: number) => string;
    makeUpClass: (kind: string, share: string) => string;
    makeUpUsed: string;
    makeUpUnused: string;
    makeUpLimits: string;
    makeUpWorking: string;
    working: string;
    /** `sized`: the time grows with the tin beyond what heat alone would say, so that it is told for one size. */
    factorText: (share: string, low: string, high: string, kind: string, sized: boolean) => string;
    factorNone: (share: string, low: string, high: string, kind: string, sized: boolean) => string;
    /** The plainest case, told first. */
    answer: (tin: string, dial: string, firstLook: string, doneBy: string, cored: boolean) => string;
    /** Beneath the bakes that disagree. */
    oddHint: string;
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
    oven: string;
  };
  /** The list of all guides. */
  list: { title: string; description: string; lead: string; file: string };
}
