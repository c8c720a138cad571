/**
 * How long each piece of work takes when nobody has timed it. Minutes; common practice, no source: time your own
 * and write them under `times:` in kitchen.yaml. Hands-on times are for one person.
 */
import type { FinishKind } from './finish.ts';
import type { MixingMethod } from './recipe.ts';

/** Times that are one figure. Hands-on unless the list below says it is waiting. */
export interface SingleTimes {
  shopMin: number;
  weighOutMin: number;
  softenMin: number;
  lineTinMin: number;
  preheatMin: number;
  fillTinMin: number;
  washBowlMin: number;
  ovenDoorMin: number;
  turnOutMin: number;
  wrapMin: number;
  levelMin: number;
  layerMin: number;
  fillingSettlesMin: number;
  crumbCoatMin: number;
  chillMin: number;
  finalCoatMin: number;
  coatSetsMin: number;
  rollOutMin: number;
  rolledSetsMin: number;
  marzipanDriesMin: number;
  marzipanHardensMin: number;
  royalIcingDriesMin: number;
  pourMin: number;
  glazeSetsMin: number;
  brushMin: number;
  boreHoleMin: number;
  cutSupportsMin: number;
  stackMin: number;
  stackSettlesMin: number;
  packMin: number;
  deliverMin: number;
  setUpMin: number;
  bakeTogetherMin: number;
  coolSmallMin: number;
  topDozenMin: number;
  cutDozenMin: number;
  packBoxMin: number;
  smallKeepsMin: number;
}

/** Times that depend on how a batter is mixed. */
interface MethodTimes {
  /** Mixing one bowlful, hands-on. */
  mixMin: Record<MixingMethod, number>;
  /** Cooling in the tin before turning out, waiting: rich fruit stays in its tin till next day. */
  coolInTinMin: Record<MixingMethod, number>;
  /** Cooling on the rack before anything is done to the cake, waiting. */
  coolMin: Record<MixingMethod, number>;
  /** Resting wrapped before it is cut, waiting; 0 where it is not wrapped. */
  restMin: Record<MixingMethod, number>;
  /** Longest from the oven to the hand-over. */
  cakeKeepsMin: Record<MixingMethod, number>;
}

/** Times that depend on what a finish is. */
interface FinishTimes {
  /** Making one finish for an order, hands-on; 0 for what is bought ready. */
  makeMin: Record<FinishKind, number>;
  /** From making it until it can be used, waiting. */
  standsMin: Record<FinishKind, number>;
}

export interface KitchenTimes extends SingleTimes, MethodTimes, FinishTimes {}

/** One time of the list that kitchen.yaml may set: its key there, and what it is in words. */
export interface TimeEntry<Field extends keyof KitchenTimes = keyof SingleTimes> {
  key: string;
  field: Field;
  what: string;
  kind: 'hands-on' | 'waiting' | 'limit';
}

const entry = <Field extends keyof KitchenTimes>(
  key: string,
  field: Field,
  kind: TimeEntry['kind'],
  what: string,
): TimeEntry<Field> => ({ key, field, what, kind });

/** Every single time, in the order of the work. */
export const TIME_ENTRIES: readonly TimeEntry[] = [
  entry('shop', 'shopMin', 'hands-on', 'Shopping for the week'),
  entry('weigh_out', 'weighOutMin', 'hands-on', 'Weighing out one bowlful'),
  entry('soften', 'softenMin', 'waiting', 'Butter and eggs out of the refrigerator before mixing'),
  entry('line_tin', 'lineTinMin', 'hands-on', 'Greasing and lining one tin'),
  entry('preheat', 'preheatMin', 'waiting', 'Oven on before the first load'),
  entry('fill_tin', 'fillTinMin', 'hands-on', 'Weighing batter into one tin and levelling it'),
  entry('wash_bowl', 'washBowlMin', 'hands-on', 'Washing the bowl between mixes'),
  entry('oven_door', 'ovenDoorMin', 'hands-on', 'Putting a load in, or taking some of it out'),
  entry('turn_out', 'turnOutMin', 'hands-on', 'Turning out one cake and washing its tin'),
  entry('wrap', 'wrapMin', 'hands-on', 'Wrapping one cake to rest'),
  entry('level', 'levelMin', 'hands-on', 'Levelling one cake'),
  entry('layer', 'layerMin', 'hands-on', 'Cutting and filling one layer'),
  entry('filling_settles', 'fillingSettlesMin', 'waiting', 'Filled cake settling'),
  entry('crumb_coat', 'crumbCoatMin', 'hands-on', 'First coat on one cake'),
  entry('chill', 'chillMin', 'waiting', 'First coat firming in the refrigerator'),
  entry('final_coat', 'finalCoatMin', 'hands-on', 'Final coat on one cake'),
  entry(
    'coat_sets',
    'coatSetsMin',
    'waiting',
    'Final coat firming in the refrigerator before stacking or boxing',
  ),
  entry('roll_out', 'rollOutMin', 'hands-on', 'Rolling out and covering one cake'),
  entry('rolled_sets', 'rolledSetsMin', 'waiting', 'Sugarpaste drying at room temperature'),
  entry('marzipan_dries', 'marzipanDriesMin', 'waiting', 'Marzipan drying before the next coat'),
  entry('marzipan_hardens', 'marzipanHardensMin', 'waiting', 'Marzipan drying hard before royal icing'),
  entry('royal_icing_dries', 'royalIcingDriesMin', 'waiting', 'Each coat of royal icing drying'),
  entry('pour', 'pourMin', 'hands-on', 'Pouring a glaze over one cake, on a rack over a tray'),
  entry('glaze_sets', 'glazeSetsMin', 'waiting', 'Poured glaze setting before the cake is moved'),
  entry('brush', 'brushMin', 'hands-on', 'Brushing the layers of one cake'),
  entry('bore_hole', 'boreHoleMin', 'hands-on', 'Boring one card or dummy tier for the centre dowel'),
  entry(
    'cut_supports',
    'cutSupportsMin',
    'hands-on',
    'Cutting the supports of one tier, or the centre dowel',
  ),
  entry('stack', 'stackMin', 'hands-on', 'Setting supports and stacking, one tier on the one below'),
  entry('stack_settles', 'stackSettlesMin', 'waiting', 'Stack settling before it moves'),
  entry('pack', 'packMin', 'hands-on', 'Boxing an order'),
  entry('deliver', 'deliverMin', 'hands-on', 'Driving to the place'),
  entry('set_up', 'setUpMin', 'hands-on', 'Setting up at the place'),
  entry(
    'bake_together',
    'bakeTogetherMin',
    'limit',
    'Cakes needed this close together may share an oven load',
  ),
  entry(
    'cool_small',
    'coolSmallMin',
    'waiting',
    'Small cakes cooling on the rack before they are topped or boxed',
  ),
  entry('top_dozen', 'topDozenMin', 'hands-on', 'Topping a dozen small cakes with one finish'),
  entry('cut_dozen', 'cutDozenMin', 'hands-on', 'Cutting a cake that is sold by the piece, a dozen pieces'),
  entry('pack_box', 'packBoxMin', 'hands-on', 'Filling one box of small cakes'),
  entry('small_keeps', 'smallKeepsMin', 'limit', 'Longest from the oven to the hand-over for small cakes'),
];

/** What kitchen.yaml may set with one time for every method, or method by method. */
export const METHOD_TIMES: readonly TimeEntry<keyof MethodTimes>[] = [
  entry('mix', 'mixMin', 'hands-on', 'Mixing one bowlful'),
  entry('cool_in_tin', 'coolInTinMin', 'waiting', 'Cooling in the tin before turning out'),
  entry('cool', 'coolMin', 'waiting', 'Cooling on the rack before anything is done to the cake'),
  entry('rest', 'restMin', 'waiting', 'Resting wrapped before it is cut; 0 min where it is not wrapped'),
  entry('cake_keeps', 'cakeKeepsMin', 'limit', 'Longest from the oven to the hand-over'),
];

/** The same by what a finish is. */
export const FINISH_TIMES: readonly TimeEntry<keyof FinishTimes>[] = [
  entry('make', 'makeMin', 'hands-on', 'Making one finish for an order; 0 min for what is bought ready'),
  entry('stands', 'standsMin', 'waiting', 'From making a finish until it can be used'),
];

const HOUR = 60;
export const DAY_MIN = 24 * HOUR;
const DAY = DAY_MIN;

/**
 * Days that a sponge keeps, wrapped or in a closed box at cool room temperature, uncut: common practice, no source,
 * and on the careful side. Labels count them from the oven.
 */
const USUAL_KEEPS_DAYS: Readonly<Record<MixingMethod, number>> = {
  creamed: 4,
  'all-in-one': 4,
  whisked: 2,
  oil: 4,
  melted: 7,
  'rich fruit': 90,
  angel: 3,
};

/** The same in minutes: what leaves the house later has nothing left to keep. */
const keepsOf = (method: MixingMethod): number => USUAL_KEEPS_DAYS[method] * DAY;

export const USUAL_TIMES: KitchenTimes = {
  shopMin: 60,
  weighOutMin: 10,
  softenMin: 60,
  lineTinMin: 5,
  preheatMin: 20,
  fillTinMin: 3,
  washBowlMin: 5,
  ovenDoorMin: 3,
  turnOutMin: 3,
  wrapMin: 5,
  levelMin: 5,
  layerMin: 5,
  fillingSettlesMin: 2 * HOUR,
  crumbCoatMin: 15,
  chillMin: 30,
  finalCoatMin: 30,
  coatSetsMin: HOUR,
  rollOutMin: 40,
  rolledSetsMin: 8 * HOUR,
  marzipanDriesMin: DAY,
  marzipanHardensMin: 2 * DAY,
  royalIcingDriesMin: DAY,
  pourMin: 15,
  glazeSetsMin: 2 * HOUR,
  brushMin: 5,
  boreHoleMin: 5,
  cutSupportsMin: 10,
  stackMin: 10,
  stackSettlesMin: 30,
  packMin: 15,
  deliverMin: 45,
  setUpMin: 30,
  bakeTogetherMin: 12 * HOUR,
  coolSmallMin: 45,
  topDozenMin: 15,
  cutDozenMin: 3,
  packBoxMin: 2,
  smallKeepsMin: 2 * DAY,
  mixMin: {
    creamed: 20,
    'all-in-one': 10,
    whisked: 20,
    oil: 10,
    melted: 15,
    'rich fruit': 25,
    angel: 20,
  },
  coolInTinMin: {
    creamed: 10,
    'all-in-one': 10,
    whisked: 10,
    oil: 10,
    melted: 10,
    'rich fruit': 12 * HOUR,
    angel: 10,
  },
  coolMin: {
    creamed: 2 * HOUR,
    'all-in-one': 2 * HOUR,
    whisked: HOUR,
    oil: 2 * HOUR,
    melted: 3 * HOUR,
    'rich fruit': 0,
    angel: 2 * HOUR,
  },
  restMin: {
    creamed: 8 * HOUR,
    'all-in-one': 8 * HOUR,
    whisked: 0,
    oil: 8 * HOUR,
    melted: 12 * HOUR,
    'rich fruit': 7 * DAY,
    angel: 0,
  },
  cakeKeepsMin: {
    creamed: keepsOf('creamed'),
    'all-in-one': keepsOf('all-in-one'),
    whisked: keepsOf('whisked'),
    oil: keepsOf('oil'),
    melted: keepsOf('melted'),
    'rich fruit': keepsOf('rich fruit'),
    angel: keepsOf('angel'),
  },
  makeMin: {
    buttercream: 20,
    ganache: 15,
    'poured glaze': 15,
    sugarpaste: 10,
    marzipan: 10,
    'royal icing': 20,
    jam: 30,
    curd: 25,
    cream: 10,
    syrup: 10,
  },
  standsMin: {
    buttercream: 0,
    ganache: 4 * HOUR,
    'poured glaze': 20,
    sugarpaste: 0,
    marzipan: 0,
    'royal icing': 0,
    jam: 3 * HOUR,
    curd: 3 * HOUR,
    cream: 0,
    syrup: HOUR,
  },
};
