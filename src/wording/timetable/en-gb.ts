/** British English for timetables and oven plans. */
import { monthName } from '../date.ts';
import { numberInWords } from '../locales/english-numbers.ts';
import { enGbBeside } from '../orders/en-gb-beside.ts';
import { capitalised } from '../sentence-case.ts';
import type { RowNames, TimetableWords } from './timetable-words.ts';

const two = (value: number): string => String(value).padStart(2, '0');
const loadsOf = (count: number): string =>
  count === 1 ? 'one oven load' : `${numberInWords(count, 12)} oven loads`;

/** 'Level and cut into three layers: eight-inch round; brush with sugar syrup; fill with raspberry jam'. */
function builtText({ cakes, layers, layerHigh, brushed, filling }: RowNames): string {
  const high = layerHigh === '' ? '' : ` of ${layerHigh}`;
  const cut =
    layers > 1 ? `Level and cut into ${numberInWords(layers, 12)} layers${high}: ${cakes}` : `Level ${cakes}`;
  return [
    cut,
    ...(brushed === '' ? [] : [`brush with ${brushed}`]),
    ...(filling === '' ? [] : [`fill with ${filling}`]),
  ].join('; ');
}

export const enGbTimetable: TimetableWords = {
  title: (orders) => `Timetable: ${orders}`,
  and: 'and',
  weekdays: ['Monday', 'Tuesday', 'Wednesday', 'Thursday', 'Friday', 'Saturday', 'Sunday'],
  day: (weekday, dayOfMonth, month) => `${weekday} ${dayOfMonth} ${monthName(month)}`,
  clock: (minuteOfDay) => `${two(Math.floor(minuteOfDay / 60))}:${two(minuteOfDay % 60)}`,
  what: {
    shop: () => 'Shop',
    'make-finish': ({ finish, kneaded }) => `${kneaded ? 'Knead' : 'Make'} the ${finish}`,
    'weigh-out': ({ batter, cakes }) => `Weigh out ${batter}; grease and line ${cakes}`,
    'oven-on': ({ dial }) => `Oven on, ${dial}`,
    mix: ({ batter }) => `Mix ${batter}`,
    'fill-tins': ({ cakes }) => `Fill ${cakes}`,
    'wash-bowl': () => 'Wash the bowl',
    'oven-in': ({ load, dial }) => `${load} into the oven, ${dial}`,
    look: ({ cakes }) => `First look: ${cakes}`,
    'oven-out': ({ cakes }) => `By now out of the oven: ${cakes}`,
    'turn-out': ({ cakes }) => `Turn out ${cakes}; wash the tins`,
    wrap: ({ cakes }) => `Wrap ${cakes}`,
    build: builtText,
    'crumb-coat': ({ cakes, finish }) => `First coat of ${finish} on ${cakes}`,
    'final-coat': ({ cakes, finish, oneCoat }) =>
      oneCoat ? `Coat ${cakes} with ${finish}` : `Final coat of ${finish} on ${cakes}`,
    pour: ({ cakes, finish }) => `Pour ${finish} over ${cakes}, on a rack over a tray`,
    cover: ({ cakes, finish }) => `Cover ${cakes} with ${finish}`,
    top: ({ cakes, finish }) => `Top ${cakes} with ${finish}`,
    'bore-holes': ({ dummy }) =>
      `Bore the hole for the centre dowel: in the middle of every card above the drum${dummy ? ', and through the dummy tier' : ''}`,
    'cut-pieces': ({ pieces }) => `Cut into pieces: ${pieces}`,
    'cut-supports': ({ dowel }) =>
      `Measure and cut the supports of each tier that carries another${dowel ? ', and the centre dowel' : ''}`,
    stack: ({ dowel }) => `Set the supports and stack the tiers${dowel ? '; last the centre dowel' : ''}`,
    pack: () => 'Board, box and label',
    deliver: () => 'Drive to the place',
    'set-up': ({ stackedThere, dowel }) => {
      if (!stackedThere) return 'Set up';
      return dowel
        ? 'Set the supports, stack the tiers, drive in the centre dowel and set up'
        : 'Set the supports, stack the tiers and set up';
    },
    'drive-back': () => 'Drive back',
    'hand-over': () => 'Hand over',
    'comes-back': ({ hired }) => `To come back: ${hired}`,
  },
  wait: {
    'finish-stands': (until) => `Then it stands until ${until}.`,
    soften: (until) => `Then butter and eggs come to the warmth of the room until ${until}.`,
    'cool-in-tin': (until) => `Then cool in the tin until ${until}.`,
    cool: (until) => `Then cool on the rack until ${until} or longer.`,
    rest: (until) => `Then rest until ${until} or longer.`,
    'filling-settles': (until) => `Then settle until ${until}.`,
    chill: (until) => `Then in the fridge until ${until}, so that the coat is firm.`,
    'coat-chills': (until) =>
      `Then in the fridge until ${until}: firm before it is covered, stacked or boxed.`,
    'coat-sets': (until) => `Then dry at room temperature until ${until}, not in the fridge.`,
    'glaze-sets': (until) =>
      `Then set at room temperature until ${until}: not moved, and not in the fridge, where it dulls.`,
    'cover-sets': (until) => `Then dry at room temperature until ${until}, not in the fridge.`,
    'stack-settles': (until) => `Then leave to settle until ${until}.`,
  },
  untilOn: (clock, weekday) => `${clock} on ${weekday}`,
  part: ({ at, of, now, whole, share }) =>
    `Go ${at} of ${of}: ${now} of the bowlful’s ${whole}, because its tins do not go into the oven together. Weigh ${share} of every amount; of the eggs too, beaten first.`,
  lookAt: (likely, by) => `Likely done at ${likely}, out by ${by}.`,
  keepCold: (until) => `Mixed much later: eggs, milk and the like stay in the fridge until ${until}.`,
  seePlan: (load) => `Places on the shelves: oven plan, ${load.toLowerCase()}.`,
  coreIn: (cakes) => `Grease the heating core too and stand it in the middle: ${cakes}.`,
  bandOn: (cakes) => `Put the insulated band round: ${cakes}.`,
  coreOut: (cakes) =>
    `The heating core in ${cakes} is as hot as the tin, inside and out: lift it out with a dry cloth and onto a rack.`,
  cutByGuide: 'Lines and sizes: the cutting guide. Wipe the knife after every cut.',
  supportsByTemplate: (there) =>
    `Places: support template; lengths: stack sheet, and mark them at the firm coat. All of one tier the same length. ${there ? 'They travel beside the cake and are set at the place.' : 'They are set when the tiers are stacked.'}`,
  builtOnCards:
    'Cards are cut to the outline on the support template. Every tier is built on its own card, the bottom one on the drum.',
  keepWrapped: 'Wrap it airtight until it is rolled out: it dries and cracks.',
  labelForSale:
    'What is wrapped or boxed before anybody asks for it has a full label on every pack; beside what is sold loose stands its allergen card.',
  cameBack: 'Back, whole and clean, on: ………………',
  backBy: (name, day) => `${name}, by ${day}`,
  backOpen: (name) => `${name}, day to be agreed`,
  inTin: (tin, tier) => `${tin} (${tier})`,
  inPieces: (cakes, pieces) => `${cakes}, ${pieces} pieces`,
  inPiecesEach: (cakes, pieces) => `${cakes}, ${pieces} pieces each`,
  bowlfulOfWeek: (batter, at, of) => `${batter}, bowlful ${at} of the week’s ${of}`,
  bowlfulOfOrder: (batter, at, of) => `${batter}, bowlful ${at} of ${of}`,
  damFirst: (finish) => `On each layer first the dam of ${finish}, then the filling inside it.`,
  shared: 'Shared with other orders of the week, whose tins it fills too: see the week’s day sheet.',
  putOn: (names) => `Put on what goes with it, and say what is not eaten: ${names}.`,
  along: {
    take: (things) => `Take along: ${things}.`,
    forOrder: ['order sheet', 'allergen cards'],
    forStall: ['allergen cards', 'clean tongs', 'a thermometer'],
    forStack: (dowel) => [
      'stack sheet',
      dowel ? 'the supports and the centre dowel' : 'the supports',
      'a small spirit level',
    ],
    stackSheet: 'stack sheet',
    forCovered: (stackedThere) =>
      stackedThere ? ['ribbon for every tier', 'a little of the cover to mend with'] : [],
    ribbonThere: 'When they are stacked, ribbon round the foot of every tier: lengths on the order sheet.',
    ribbonOn: 'Ribbon first, round the foot of every covered cake: lengths on the order sheet.',
  },
  lead: (day, clock, handsOn, days, ovenOn) =>
    `Begin on ${day} at ${clock}. ${handsOn} of work by hand, the shopping and the road included, on ${days === 1 ? 'one day' : `${numberInWords(days, 12)} days`}, ${ovenOn} with cakes in the oven; the rest is waiting, and nights are free.`,
  daySummary: (handsOn, from, to) => `${handsOn} by hand, from ${from} to ${to}.`,
  dayWaiting: 'Nothing by hand: the cakes rest.',
  clocksForward:
    'Clocks go forward an hour early this morning; times are as the clock shows them afterwards.',
  clocksBack: 'Clocks go back an hour early this morning; times are as the clock shows them afterwards.',
  bound: (later) => `With these oven loads no timetable could begin more than ${later} later.`,
  boundReached: 'With these oven loads no timetable could begin later.',
  loadsProven: (loads) => `${capitalised(loadsOf(loads))}; fewer are not possible.`,
  loadsBound: (loads, least) =>
    `${capitalised(loadsOf(loads))}; no fewer were found, and fewer than ${numberInWords(least, 12)} are not possible.`,
  loadsOfWeek: (own, all) => `${capitalised(loadsOf(own))} of the week’s ${numberInWords(all, 12)}.`,
  allOrders: 'all',
  small: enGbBeside.pieces,
  dummy: 'dummy tier',
  forCutting: (tin) => `${tin} (cutting cake)`,
  load: (number) => `Load ${number}`,
  planTitle: (orders) => `Oven plan: ${orders}`,
  planLead: 'Seen from above, with the door in front. Each tin has its number in the list below its load.',
  gaps: (air, wall, width, depth) =>
    `Shelves of ${width} × ${depth} mm; ${air} mm of air between tins, ${wall} mm to walls, door and fan.`,
  when: (day, inAt, outBy) => `${day}: in at ${inAt}, the last out by ${outBy}.`,
  heatCold: (clock) => `Switch on by ${clock}.`,
  heatHot: 'The oven is still hot from the load before: let it come back to heat.',
  shelves: (fan) =>
    fan
      ? 'More than one shelf is in use: the upper one is often ahead, look there first.'
      : 'More than one shelf is in use and the oven has no fan: look at the upper one first, and change the shelves over then if they have set.',
  elsewhere: (dials) => `The same heat on other dials: ${dials}.`,
  shelf: (fromBottom, shelves) => {
    if (shelves === 1) return 'Shelf';
    if (fromBottom === 0) return 'Lower shelf';
    return fromBottom === shelves - 1 ? 'Upper shelf' : 'Middle shelf';
  },
  shelfAlt: (shelf, tins) => `${shelf}, seen from above, door in front: ${tins}`,
  shelfEmpty: 'empty',
  door: 'door',
  back: 'back',
  scale: (scale, lengthMm) => `Shelves drawn 1 : ${scale}; the bar is ${lengthMm / 10} cm`,
  toTick: 'to tick',
  table: {
    time: 'Time',
    what: 'What',
    lasts: 'Lasts',
    order: 'Order',
    number: 'No.',
    tin: 'Tin',
    firstLook: 'First look',
    likely: 'Likely',
    by: 'Done by',
    shelf: 'Shelf',
  },
  lanes: { hands: 'Hands', mixer: 'Mixer', oven: 'Oven' },
  tones: { hands: 'by hand', heat: 'in the oven', waiting: 'waiting' },
  barsAlt: (day) => `${day} as bars; the table below says the same.`,
  barText: (what, from, to) => `${what}, ${from} to ${to}`,
  daySheet: 'Day sheet',
  daySheetLead: 'Tick each line as it is done. Times by the clock; what a line waits for stands below it.',
  ovenPlan: 'Oven plan',
  timetable: 'Timetable',
  calendar: 'Calendar file',
  cautions: {
    hot: 'Tins, shelves and heating cores stay hot: dry cloths, both hands, children away.',
    raw: 'Batter holds raw egg and raw flour: nobody tastes it; wash hands, bowls and surfaces after it.',
    cool: 'Cool cakes fully before they are wrapped, filled or boxed: warm cake sweats and spoils.',
    supports:
      'Supports and boards are not food: they must be made for food, and all come out before the cake is cut.',
    chilled: (finishes) =>
      `${capitalised(finishes)}: in the fridge, at 8 °C or below, from when it has cooled until it is used, and what is left after.`,
  },
};
