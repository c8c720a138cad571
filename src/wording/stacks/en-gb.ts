/** British English for stacks. */

import { listInWords } from '../list.ts';
import { numberInWords } from '../locales/english-numbers.ts';
import { capitalised, uncapitalised } from '../sentence-case.ts';
import type { NotCake, StackSteps, StackWords } from './stack-words.ts';

const the = (tier: string): string => `the ${uncapitalised(tier)}`;
const ofCake = (hasDummy: boolean): string => (hasDummy ? 'of cake and dummy' : 'of cake');
const number = (count: number): string => numberInWords(count, 12);

function notCake({ supports, cards, dummies, hasDowel }: NotCake): string {
  const parts = [
    ...(dummies === 0 ? [] : [dummies === 1 ? 'a dummy tier' : `${number(dummies)} dummy tiers`]),
    ...(supports === 0 ? [] : [`${number(supports)} supports`]),
    `${number(cards)} ${cards === 1 ? 'card' : 'cards'}`,
    ...(hasDowel ? ['a dowel'] : []),
  ];
  return listInWords(parts, 'and');
}

const SUPPORT_STEPS: readonly string[] = [
  'Lay the template on baking paper on the tier, its back to the back, the same width free all round. Prick through the middle of each circle.',
  'Push one support straight down to the board and mark it level with the top. Cut all supports of the tier to that one mark: the lengths here are planned, your cake decides.',
  'Push them all in upright. No support stands proud and none lies deeper than its neighbours.',
];

const DUMMY_STEP =
  'A dummy takes no supports: what stands on it stands on its card. Under a dummy the cake has its supports like any other. Bore it for the dowel before it is covered.';

const DOWEL_STEP =
  'Last, drive the dowel, pointed at its lower end, through the middle of all tiers down to the drum. It ends out of sight below the top.';

function steps({ hasDowel, travelsAssembled, hasDummy, hasSupports }: StackSteps): string[] {
  const hole = hasDowel ? ', with a hole in the middle for the dowel' : '';
  const [there, level] = hasSupports
    ? [
        'Mark and cut the supports at home; they travel beside the tiers, which go in boxes. On the spot, push them in and set',
        'on the supports',
      ]
    : ['Carry the tiers in boxes. On the spot, set', 'on the one below'];
  return [
    `Fix the bottom tier to the drum. Every other tier stands on a card of its own, cut to the outline on the template${hole}.`,
    ...(hasSupports ? SUPPORT_STEPS : []),
    ...(hasDummy ? [DUMMY_STEP] : []),
    `${travelsAssembled ? 'At home, set' : there} each tier ${level} and lay a spirit level across before the next one.`,
    ...(hasDowel ? [DOWEL_STEP] : []),
  ];
}

const KEEP_COOL =
  'keep the car cool: in the sun, by a heater or above about 25\u00a0°C coats soften and tiers slide.';
const FROM_THE_COLD =
  'Coming from the cold it sweats: leave the box shut until it has warmed up. Fillings that must stay chilled set how long it may stand out.';

export const enGbStacks: StackWords = {
  heading: 'The stack',
  sheetTitle: (order) => `Stack sheet: ${order}`,
  summary: (tiers, heightMm, weight, hasDummy) =>
    `${capitalised(number(tiers))} tiers, ${heightMm}\u00a0mm high on the table, ${weight}\u00a0kg ${ofCake(hasDummy)}.`,
  facts: {
    height: 'Height',
    weight: 'Weight',
    drum: 'Below all',
    dowel: 'Centre dowel',
    inside: 'Inside it',
    travels: 'Travels',
  },
  heightText: (mm) => `${mm}\u00a0mm, drum and cards counted`,
  weightText: (grams, hasDummy) =>
    `${grams}\u00a0g ${ofCake(hasDummy)}. Drum, cards, supports, ribbon and flowers are not weighed in`,
  drumText: (across, thickness) => `Drum, ${across}, ${thickness}\u00a0mm thick`,
  cardText: (across, thickness) => `Card, ${across}, ${thickness}\u00a0mm thick`,
  insideText: (across, mm) => `a second card, ${across}, inside it at ${mm}\u00a0mm`,
  dowelText: (mm) => `${mm}\u00a0mm long, from the drum to below the top`,
  noDowel: 'None: two tiers put together where they stay',
  notCake,
  travels: (assembled) => (assembled ? 'Put together' : 'In boxes, put together on the spot'),
  across: (mm) => `${mm}\u00a0mm across`,
  by: (across, deep) => `${across} × ${deep}\u00a0mm`,
  dummyTin: 'Polystyrene, not food',
  table: {
    tier: { name: 'Tier', unit: 'bottom first' },
    coated: { name: 'With its coats', unit: 'across × high, mm' },
    weighs: { name: 'Weighs', unit: 'g' },
    carries: { name: 'Carries', unit: 'g' },
    standsOn: { name: 'Stands on', unit: '' },
    number: { name: 'Support', unit: '' },
    clock: { name: 'Clock face', unit: 'minutes' },
    middle: { name: 'From middle', unit: 'mm' },
    side: { name: 'Left or right', unit: 'mm' },
    depth: { name: 'Back or front', unit: 'mm' },
    edge: { name: 'In from edge', unit: 'mm' },
  },
  supportsTitle: 'Where the supports go',
  under: (tier, above) => `In ${the(tier)}, under ${the(above)}`,
  underCard: (tier) => `In ${the(tier)}, under the card inside it`,
  set: (count, length, carries) =>
    `${capitalised(number(count))} supports, ${length}\u00a0mm long, carry ${carries}\u00a0g.`,
  ledge: (above, mm) => `${capitalised(the(above))} leaves ${mm}\u00a0mm free where it is narrowest.`,
  placesAbout:
    'Clock face: seen from above, 0 points to the back, 15 to the right. Every place is the middle of a support; the edge is that of the coated tier it stands in.',
  noSupports: 'No tier needs supports: dummies hold what stands on them.',
  right: (mm) => `${mm} right`,
  left: (mm) => `${mm} left`,
  back: (mm) => `${mm} back`,
  front: (mm) => `${mm} front`,
  noPlaces: 'The tier above is too small for supports: nothing may stand here.',
  stepsTitle: 'Putting it together',
  steps,
  cautions: {
    'dummy-tier': (names) =>
      `${capitalised(listInWords(names.map(uncapitalised), 'and'))}: inedible, polystyrene under its cover. Tell the customer at hand-over, in writing; whoever cuts the cake lifts it off first, and nothing of its cover is served.`,
    'supports-not-food':
      'Supports, dowel, drum and cards are not food. Use only what is made for food contact; wash or wipe it first.',
    'tell-the-cutter': (inside) =>
      `Tell whoever cuts the cake, in writing, what is inside: ${inside}. Take it apart from the top, tier by tier, and count them all out before any of it is served.`,
    'two-people-lift': (weight, limit, isHeavy) =>
      `${isHeavy ? `Two people lift it, as any cake above ${limit}\u00a0kg` : `One person can lift it, two above ${limit}\u00a0kg`}; all hands under the drum: ${weight}\u00a0kg before boards and flowers, and it tips easily.`,
    'keep-level':
      'Keep it level. In a car it stands on the flat floor, not on a seat, on a mat that grips, with nothing loose beside it; at the place, on a table that does not rock.',
    'warm-and-cold': `Chill it through before it travels and ${KEEP_COOL} ${FROM_THE_COLD}`,
    'warm-under-sheet': `Not in a fridge: under sugarpaste it sweats and colours run. It stands in a cool, dry room until it travels; ${KEEP_COOL}`,
    'warm-and-mixed': `What has sugarpaste on it stands in a cool, dry room until it travels, not in a fridge; chill the other tiers through, and ${KEEP_COOL} ${FROM_THE_COLD}`,
    'practice-first':
      'Numbers and places of supports are common practice; no strength is worked out. Advice where you live, training and a trial of your own come first.',
  },
  doesNotStand: (tier, below, step) =>
    `${capitalised(the(tier))} leaves less than ${step}\u00a0mm of ${the(below)} free, or reaches over it: choose a smaller tin for it or a larger one below.`,
  unknownWidth:
    'There is no plan of this stack: a tin whose width nobody has measured cannot be a tier. Measure the tin across, or hand the cakes over side by side.',
  supportsByHand: (tins) =>
    `Supports under ${tins.length === 1 ? 'the cake' : 'cakes'} from ${listInWords(tins, 'and')} are not counted: nobody has measured how wide ${tins.length === 1 ? 'it is' : 'they are'}. Count them by hand, as common practice has it: half the width in inches, rounded up, at least four (three up to four inches), an even number under corners.`,
  picture: {
    title: (order) => `${order}, seen from the front`,
    tier: (name, across, high, supports) =>
      `${uncapitalised(name)}, ${across} and ${high}\u00a0mm high${supports === 0 ? '' : `, with ${number(supports)} supports inside`}`,
    description: (drum, tiers, height, hasDowel) =>
      `From the table up: ${uncapitalised(drum)}; ${tiers.join('; ')}. ${height}\u00a0mm in all${hasDowel ? ', with a dowel through the middle' : ''}.`,
    scale: (scale) => `Drawn 1 : ${scale}; the bar is 10 cm`,
    key: (hasDowel, hasDummy) =>
      `Dotted: supports.${hasDowel ? ' Dashed: the dowel.' : ''}${hasDummy ? ' Tinted: a dummy, not cake.' : ''} Lengths in mm.`,
  },
  template: {
    title: (order) => `Support template: ${order}`,
    printTitle: (title) => `${title} – sizes in words on the stack sheet`,
    subject: 'Where the supports go, at true size',
    outline: (tier, size) => `Outline: ${the(tier)} with its coats on, ${size}`,
    card: (tier, size) => `Outline: the card inside ${the(tier)}, ${size}`,
    bare: (size) => `Before its coats: ${size}`,
    supports: (markMm) =>
      `Cut all to one mark, level with the top of the tier they stand in. Circles are ${markMm}\u00a0mm across, for supports of 6 to 12\u00a0mm: their middle on the cross.`,
    notFood: 'Not food safe: keep baking paper between it and the cake.',
    middle: 'Middle',
    hole: 'Dowel',
    backMark: 'Back',
  },
};
