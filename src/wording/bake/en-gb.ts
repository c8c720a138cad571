import { britishDate } from '../date.ts';
import { numberInWords } from '../locales/english-numbers.ts';
import { capitalised } from '../sentence-case.ts';
import type { BakeWords } from './bake-words.ts';
import { countOf } from './count-of.ts';

const bakes = (count: number): string => countOf(count, 'logged bake', 'logged bakes');

export const enGbBake: BakeWords = {
  date: britishDate,
  dial: { fan: (heat) => `${heat} fan`, gas: (mark) => `gas ${mark}` },
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
  whence: 'Where these times come from',
  coreIn: 'Heating core in.',
  noCore: 'No core.',
  noCoreTube: 'No core: the tube of the tin does that work.',
  noCoreFoam: 'No core: an egg-white foam climbs bare walls, so bake a wide one in a ring tin.',
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
  basisNoneMakeUp:
    'Nothing is logged for this recipe yet, so times start from what its batter is made of and the windows are wide. Three logged bakes narrow them most.',
  basisElsewhere: (count) =>
    `${capitalised(bakes(count))} in another oven gave ${count === 1 ? 'its' : 'their'} say first, less firmly.`,
  inOven: (name) => `In ${name}.`,
  baked: (grams) => `about ${grams} g when baked`,
  water: (share, count, own) =>
    count === 0
      ? `Weights when baked leave out ${share} for steam (${own ? 'the recipe’s own word' : 'common practice'}; the log has weighed no cake of it yet).`
      : `Weights when baked leave out ${share} for steam, from your log: ${countOf(count, 'cake', 'cakes')} weighed.`,
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
  oddYield: (bake, share, more) =>
    `${bake}: ${share} ${more ? 'more' : 'less'} batter for its size than the others took.`,
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
    temperature: (scale) => `Temperature, °${scale}`,
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
    done: (heat) => `Done at ${heat}`,
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
    fromLog: 'What the log says',
    steadyText: (sd, usual, count) =>
      `How steady: after ${bakes(count)}, two in three should be done within ${sd} minutes of what the others lead one to expect, where ${usual} is usual. The windows allow for just that.`,
    steadyNone: (usual) =>
      `How steady your bakes are is not known yet: windows allow for the usual ${usual} minutes either way in calling it done.`,
    yieldText: (count, joint, proven, difference) =>
      `From your log: ${bakes(count)} with the height measured ${count === 1 ? 'has' : 'have'} joined the proven ones. A millilitre of finished cake takes ${joint} g of batter, where the proven bakes alone say ${proven} (${difference}). Every weight on the chart follows.`,
    yieldNone: (count, needed) =>
      `The weights on the chart rest on the proven bakes alone. ${capitalised(countOf(needed, 'bake', 'bakes'))} of the plain recipe, height measured, no core, and not among the proven ones, would give the log a say in them; so far there ${count === 1 ? 'is' : 'are'} ${count === 0 ? 'none' : numberInWords(count, 12)}.`,
    waterText: (share, sd, count) =>
      `From your log: ${share} of the batter leaves as steam, give or take ${sd}, over ${bakes(count)}.`,
    waterNone: (share, sd, own) =>
      `The log has weighed no cake after baking. ${own ? 'The recipe says that' : 'Common practice:'} ${share} of the batter leaves as steam, give or take ${sd}.`,
    ovenText: (offset, sd, count) =>
      `Probe readings of ${bakes(count)} put the oven ${offset} its dial, give or take ${sd}.`,
    ovenNone: (apart) =>
      `Whether the oven runs hot or cool cannot be told yet: that takes four bakes with a probe, at settings at least ${apart} apart.`,
    offset: (degrees, above) => `${degrees} ${above ? 'above' : 'below'}`,
    setting: (oven, batter) => `Worked out for ${oven}, with the batter at ${batter} when it goes in.`,
    makeUp: 'What the batter is made of',
    makeUpShares: (water, fat, protein, carbohydrate) =>
      `By weight it is ${water} water, ${fat} fat, ${protein} protein, and ${carbohydrate} sugar and starch.`,
    makeUpPace: (own, plain, share) =>
      `Still and without air, such a batter lets heat through at ${own} mm² a second; a plain sponge’s at ${plain}. By that alone it would take ${share} of a plain sponge’s time.`,
    makeUpLogged: (fitted, share, count) =>
      `In the oven it also rises and steams: ${bakes(count)} put it at ${fitted} mm² a second, and at ${share} of a plain sponge’s time.`,
    makeUpClass: (kind, share) =>
      `Experience with ${kind} says ${share} instead, since rising and steaming count for more.`,
    makeUpUsed:
      'This recipe asks to start from its make-up (‘bake_start: composition’). The further that is from what its kind of cake usually takes, the wider the windows start.',
    makeUpUnused:
      'It is here to compare, and moves no time on the chart. ‘bake_start: composition’ in the recipe’s file would make it the starting point.',
    makeUpLimits:
      'It knows nothing of air, fruit or crust, and ingredients without a packet’s figures count with round ones for their kind: believe your log before it.',
    makeUpWorking: 'The working of these figures',
    working: 'The working',
    factorText: (share, low, high, kind, sized) =>
      `Treated as ${kind}. Your bakes put it at ${share} of the time a plain sponge takes in ${sized ? 'an eight-inch' : 'the same'} tin, nine times in ten between ${low} and ${high}.`,
    factorNone: (share, low, high, kind, sized) =>
      `Treated as ${kind}: some ${share} of the time a plain sponge takes in ${sized ? 'an eight-inch' : 'the same'} tin, but anything from ${low} to ${high} would be no surprise.`,
    answer: (tin, dial, firstLook, doneBy, cored) =>
      `${tin}${cored ? ', with the core in' : ''}: ${dial}, first look at ${firstLook}, done by ${doneBy}.`,
    oddHint:
      'If something was amiss that day, leave the row as it is: it counts for little. If it was a slip of the pen, put it right.',
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
    oven: 'your oven',
  },
  list: {
    title: 'Bake times',
    description: 'How long each cake takes in each size of tin, and which logged bakes say so.',
    lead: 'When to look first, and by when it is done, cake by cake. Every bake written in the log makes the windows narrower.',
    file: 'Write them in bake-log.csv, a line a bake; the page of each cake says what is worth noting.',
  },
};
