import type { BakeWords } from './bake-words.ts';
import { countOf } from './count-of.ts';

const bakes = (count: number): string => countOf(count, 'logged bake', 'logged bakes');

export const enGbBake: BakeWords = {
  section: 'In the oven',
  lead: 'Set the dial, start the clock when the door shuts, and leave the door alone until the first look.',
  doneTests:
    'Ready when it springs back under a fingertip, a skewer comes out clean and the edge draws away from the tin. If it is not, give it five minutes more and look again.',
  columns: {
    tin: 'Tin',
    dial: 'Dial',
    firstLook: 'First look',
    expectedBy: 'Done by',
    advice: 'Core and band',
    behind: 'Rests on',
  },
  coreIn: 'Heating core in.',
  noCore: 'No core.',
  coreWouldHelp: 'No core on the shelf; one would help in a tin this wide.',
  without: (dial, firstLook, expectedBy) =>
    `Without it ${dial}, first look ${firstLook}, done by ${expectedBy}.`,
  bandOn: 'Band round the tin.',
  bandWouldHelp: 'A band would spare the edge.',
  lowered: 'Cooler than the recipe says, for the sake of the edge.',
  likely: (minutes) => `most likely ${minutes}`,
  restsOn: (behind) => `Rests on: ${behind}.`,
  behind: (count) => (count === 0 ? 'nothing logged yet' : bakes(count)),
  basis: (plain, cored) =>
    cored === 0
      ? `Times rest on ${bakes(plain)} of this recipe. Nine in ten should fall inside the window.`
      : `Times rest on ${bakes(plain)} of this recipe without a heating core, and on ${countOf(cored, 'with it', 'with it')}. Nine in ten should fall inside the window.`,
  basisNone: (kind) =>
    `Nothing is logged for this recipe yet, so times are those of ${kind} in general and the windows are wide. Three logged bakes narrow them most.`,
  classes: {
    sponge: 'a sponge',
    'very light': 'a very light sponge',
    'dense butter': 'a dense butter cake',
    'dense chocolate': 'a dense, moist cake',
    'rich fruit': 'a rich fruit cake',
  },
  cores: { none: 'no core', hollow: 'hollow core', solid: 'solid core' },
  tests: { skewer: 'skewer', spring: 'springs back', edge: 'edge drew away' },
  probe: (reading) => `probe ${reading}`,
  cautions: {
    core: 'A heating core stays as hot as the tin, inside and out: lift it with a dry cloth, stand it on a rack, and keep it away from children until it is cold.',
    door: 'Do not open the door before the first look: a cake that has not set sinks, and the steam that comes out scalds.',
  },
  odd: (bake, by, expected) => `${bake}: ${by} than the others lead one to expect (${expected}).`,
  late: (minutes) => `${minutes} later`,
  early: (minutes) => `${minutes} sooner`,
  heeded: (share) => `It counts for ${share} of an ordinary bake.`,
  guide: {
    title: (recipe) => `Baking times: ${recipe}`,
    tinTime: 'How long in which tin',
    tinTimeText: (height) =>
      `Round tins, ${height} high when baked, each at the dial that suits its size. Logged bakes are brought to this height and heat, so that all can stand in one picture.`,
    tinTimeEnds: (least, leastSpan, most, mostSpan) =>
      `Without a core: ${leastSpan} at ${least} across, ${mostSpan} at ${most}.`,
    across: (unit) => `Tin across, ${unit}`,
    minutes: 'Minutes',
    hours: 'Hours',
    temperature: 'Temperature, °C',
    likely: 'most likely',
    window: 'first look to done by',
    withCore: 'With a heating core',
    withoutCore: 'Without a core',
    yourBakes: 'Logged bakes',
    yourBakesCore: 'Logged, with a core',
    middle: 'Middle',
    edge: 'Edge, 5 mm in from the wall',
    middleCore: 'Middle, with a heating core',
    between: 'Between the two',
    curves: (tin) => `How the middle warms: ${tin}`,
    curvesText: (tin, dial) =>
      `The middle of ‘${tin}’ from the moment the door shuts, at ${dial}. It hardly moves for the first few minutes, then climbs steadily; while there is water in it, crumb stays at or below boiling.`,
    edgeAgainstMiddle: (tin) => `The edge against the middle: ${tin}`,
    edgeText: (tin, dial) =>
      `‘${tin}’ at ${dial}, without a core. The edge is done long before the middle; the wider the room between the two, the drier the edge.`,
    done: (celsius) => `Done at ${celsius} °C`,
    log: 'The bakes behind it',
    logEmpty:
      'Nothing is logged yet. Write each bake down in bake-log.csv on the day; times on every chart then follow your oven.',
    odd: 'Bakes that disagree',
    noOdd: 'None of them disagrees with the rest.',
    ask: 'Three bakes that would teach most',
    askLead: 'If one of these is on the order book anyway, log it:',
    askEntry: (tin, dial) => `${tin}, at ${dial}`,
    askPromise: (share) =>
      `Together they should bring the windows down to about ${share} of their present width.`,
    fromLog: 'What else the log says',
    yieldText: (log, count, proven, difference) =>
      `From your log: ${log} g of batter for each millilitre of finished cake, over ${bakes(count)}. The proven bakes, which the weights on the chart come from, say ${proven} (${difference}).`,
    yieldNone:
      'No logged bake gives the finished height, so the log says nothing of how far the batter goes.',
    waterText: (share, sd, count) =>
      `From your log: ${share} of the batter leaves as steam, give or take ${sd}, over ${bakes(count)}.`,
    waterNone: (share, sd) =>
      `No cake was weighed after baking. Common practice: ${share} of the batter leaves as steam, give or take ${sd}.`,
    ovenText: (offset, sd, count) =>
      `Probe readings of ${bakes(count)} put the oven ${offset} its dial, give or take ${sd} °C.`,
    ovenNone:
      'Whether the oven runs hot or cool cannot be told yet: that takes four bakes with a probe, at settings at least 15 °C apart.',
    offset: (degrees, above) => `${degrees} °C ${above ? 'above' : 'below'}`,
    factorText: (share, low, high, kind) =>
      `Treated as ${kind}. In an eight-inch tin it takes ${share} of a plain sponge’s time, and nine times in ten between ${low} and ${high}.`,
    conduction:
      'Worked out from heat soaking in from all sides, on this recipe’s own clock. A real middle lags a little at first and then catches up; the crust, which gets hotter, is left out.',
    band: 'band',
    date: 'Date',
    tin: 'Tin',
    dial: 'Dial',
    took: 'Took',
    expected: 'Expected',
    batter: 'Batter',
    note: 'Notes',
    tableOf: (title) => `The same as a table: ${title}`,
  },
};
