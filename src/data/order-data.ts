/** Orders and weeks as data: a record is one figure with the part of the order it belongs to. */
import type { Figure } from '../views/figure.ts';
import type { BatterView, FinishView, OrderTier, OrderView } from '../views/order.types.ts';
import type { ShoppingView } from '../views/shopping.types.ts';
import type { StackView } from '../views/stack-sheet.types.ts';
import type { WeekView } from '../views/week.types.ts';
import { type Cell, csvText } from './csv.ts';
import { viewJson } from './view-json.ts';

const HEADER = ['part', 'of', 'item', 'what', 'value', 'unit', 'text'];

type Record = Cell[];

const record = (part: string, of: string, item: string, what: string, figure: Figure): Record => [
  ...[part, of, item, what],
  ...[figure.value, figure.unit, figure.text],
];

const some = (part: string, of: string, item: string, what: string, figure: Figure | null): Record[] =>
  figure === null ? [] : [record(part, of, item, what, figure)];

/** A cake or a dummy with its coats on, and what it stands on and in. */
const coveredRecords = (
  covered: Pick<
    OrderTier,
    'coatedHeight' | 'coatedAcross' | 'board' | 'boxSide' | 'boxHeight' | 'ribbon' | 'weight'
  >,
  one: (what: string, figure: Figure | null) => Record[],
): Record[] => [
  ...one('coated height', covered.coatedHeight),
  ...one('coated across', covered.coatedAcross),
  ...one('board', covered.board),
  ...one('box across', covered.boxSide),
  ...one('box height', covered.boxHeight),
  ...one('ribbon', covered.ribbon),
  ...one('weight', covered.weight),
];

const onRecords = (on: string, covered: Pick<OrderTier, 'id' | 'finishes'>): Record[] =>
  covered.finishes.flatMap((finish) => [
    record(on, covered.id, finish.finish.id, finish.use, finish.on),
    record('to make', covered.id, finish.finish.id, finish.use, finish.make),
  ]);

function tierRecords({ tiers }: OrderView): Record[] {
  return tiers.flatMap((tier) => {
    const one = (what: string, figure: Figure | null) => some('cake', tier.id, tier.tin.id, what, figure);
    return [
      ...one('count', tier.count),
      ...one('tins filled', tier.small?.tins ?? null),
      ...one('boxes', tier.small?.boxes ?? null),
      ...one('layers', tier.layers),
      ...one('batter in each', tier.receives),
      ...one('baked height', tier.bakedHeight),
      ...one('layer height', tier.layerHeight),
      ...one('cut off to level', tier.level?.cut ?? null),
      ...one('offcuts', tier.level?.offcuts ?? null),
      ...one('bakes', tier.bakes?.count ?? null),
      ...one('height of each bake', tier.bakes?.height ?? null),
      ...coveredRecords(tier, one),
      ...one('portions', tier.portions),
      ...one('portions in rings', tier.inRings),
      ...one('oven', tier.bake?.dial ?? null),
      ...one('first look', tier.bake?.firstLook ?? null),
      ...one('likely', tier.bake?.likely ?? null),
      ...one('out by', tier.bake?.expectedBy ?? null),
      ...onRecords('on the cake', tier),
    ];
  });
}

function dummyRecords({ dummies }: OrderView): Record[] {
  return dummies.flatMap((dummy) => {
    const one = (what: string, figure: Figure | null) => some('dummy', dummy.id, dummy.name, what, figure);
    return [...coveredRecords(dummy, one), ...onRecords('on the dummy', dummy)];
  });
}

function batterRecords(batters: readonly BatterView[]): Record[] {
  return batters.flatMap(({ id, name, batter, eggs, surplus, bowlfuls }) => [
    record('batter', id, name, 'batter', batter),
    ...some('batter', id, name, 'eggs', eggs),
    record('batter', id, name, 'surplus', surplus),
    ...bowlfuls.flatMap((bowl) => [
      record('bowl', `${id} ${bowl.id}`, name, 'batter', bowl.batter),
      record('bowl', `${id} ${bowl.id}`, name, 'surplus', bowl.surplus),
      ...bowl.eggs.flatMap(({ part, count, grams }) => [
        record('bowl', `${id} ${bowl.id}`, part, 'count', count),
        record('bowl', `${id} ${bowl.id}`, part, 'beaten', grams),
      ]),
      ...bowl.lines.map(({ ingredient, grams }) =>
        record('bowl', `${id} ${bowl.id}`, ingredient.id, 'weigh', grams),
      ),
      ...bowl.tins.flatMap((tin) => [
        record('bowl', `${id} ${bowl.id}`, tin.name, 'tins', tin.count),
        record('bowl', `${id} ${bowl.id}`, tin.name, 'in each', tin.each),
        ...some('bowl', `${id} ${bowl.id}`, tin.name, 'cups', tin.pieces),
      ]),
    ]),
  ]);
}

function stackRecords({ stack }: OrderView): Record[] {
  if (stack === null) return [];
  return [
    record('stack', '', '', 'height', stack.height),
    record('stack', '', '', 'weight', stack.weight),
    ...some('stack', '', '', 'dowel', stack.dowel),
    ...stack.tiers.flatMap((tier) => {
      const one = (what: string, figure: Figure | null) => some('stack', tier.id, tier.tin.id, what, figure);
      return [
        ...one('across', tier.across),
        ...one('deep', tier.deep),
        ...one('height', tier.height),
        ...one('foot', tier.foot),
        ...one('top', tier.top),
        ...one('weight', tier.weight),
        ...one('carries', tier.carries),
        ...one('board across', tier.board.across),
        ...one('board thickness', tier.board.thickness),
        ...one('card inside', tier.cardInside),
      ];
    }),
    ...stack.sets.flatMap(supportRecords),
  ];
}

function supportRecords({ id, count, length, carries, ledge, spots }: StackView['sets'][number]): Record[] {
  return [
    record('supports', id, '', 'count', count),
    record('supports', id, '', 'length', length),
    record('supports', id, '', 'carry', carries),
    ...some('supports', id, '', 'ledge', ledge),
    ...spots.flatMap((spot) => [
      record('support', id, spot.number.text, 'number', spot.number),
      record('support', id, spot.number.text, 'clock', spot.clock),
      record('support', id, spot.number.text, 'from the middle', spot.fromMiddle),
      record('support', id, spot.number.text, 'side', spot.side),
      record('support', id, spot.number.text, 'depth', spot.depth),
      record('support', id, spot.number.text, 'from the edge', spot.fromEdge),
    ]),
  ];
}

const finishRecords = (finishes: readonly FinishView[]): Record[] =>
  finishes.flatMap(({ finish, make, needed, lines, colours }) => [
    record('finish', finish.id, finish.name, 'make', make),
    record('finish', finish.id, finish.name, 'on the cakes', needed),
    ...colours.map(({ name, make: own }) => record('finish', finish.id, name, 'make in this colour', own)),
    ...lines.map(({ ingredient, grams }) => record('finish', finish.id, ingredient.id, 'weigh', grams)),
  ]);

function shoppingRecords({ rows, total }: ShoppingView): Record[] {
  return [
    ...rows.flatMap(({ ingredient: { id }, packs, ...row }) => [
      record('shopping', id, id, 'needed', row.needed),
      record('shopping', id, id, 'on hand', row.onHand),
      record('shopping', id, id, 'missing', row.missing),
      ...packs.flatMap(({ count, size, sizeText, price }) => [
        record('shopping', id, sizeText, 'packs', count),
        record('shopping', id, sizeText, 'size', size),
        record('shopping', id, sizeText, 'price', price),
      ]),
      ...some('shopping', id, id, 'cost', row.cost),
      record('shopping', id, id, 'left', row.left),
      ...some('shopping', id, id, 'as used', row.used),
    ]),
    record('shopping', '', '', 'total', total),
  ];
}

function costRecords({ cost, quote }: OrderView): Record[] {
  return [
    ...cost.rows.map(({ kind, name, cost: figure }) => record('cost', kind, name, 'cost', figure)),
    ...cost.jobs.flatMap(({ kind, name, times, minutes }) => [
      record('work', kind, name, 'times', times),
      record('work', kind, name, 'minutes', minutes),
    ]),
    record('cost', '', '', 'hands-on', cost.handsOn),
    record('cost', '', '', 'oven', cost.ovenEnergy),
    record('cost', '', '', 'total', cost.cost),
    record('cost', '', '', 'price', cost.price),
    record('cost', '', '', 'margin', cost.margin),
    ...quote.rows.flatMap(({ name, count, each, net, vat }) => [
      record('quote', '', name, 'count', count),
      record('quote', '', name, 'each', each),
      record('quote', '', name, 'before VAT', net),
      record('quote', '', name, 'VAT', vat),
    ]),
    record('quote', '', '', 'before VAT', quote.net),
    record('quote', '', '', 'VAT', quote.vat),
    record('quote', '', '', 'to pay', quote.total),
    ...quote.payments.map(({ kind, name, sum }) => record('quote', kind, name, 'due', sum)),
    ...(quote.perPiece === null ? [] : [record('quote', '', '', 'a piece', quote.perPiece.each)]),
  ];
}

/** The CSV file of an order. */
export function orderCsv(view: OrderView): string {
  return csvText(HEADER, [
    record('order', view.id, view.reference, 'portions', view.portions),
    ...some('order', view.id, view.reference, 'portions wanted', view.portionsWanted),
    record('order', view.id, view.reference, 'weight', view.weight),
    record('order', view.id, view.reference, 'height', view.height),
    ...tierRecords(view),
    ...dummyRecords(view),
    ...stackRecords(view),
    ...batterRecords(view.batters),
    ...finishRecords(view.finishes),
    ...shoppingRecords(view.shopping),
    ...costRecords(view),
  ]);
}

/** The CSV file of a week. */
export function weekCsv(view: WeekView): string {
  return csvText(HEADER, [
    ...view.orders.map(({ id, reference, portions }) => record('order', id, reference, 'portions', portions)),
    record('week', view.id, '', 'eggs', view.eggs),
    record('week', view.id, '', 'surplus', view.surplus),
    ...batterRecords(view.batters),
    ...shoppingRecords(view.shopping),
  ]);
}

export const orderJson = (view: OrderView): string => viewJson(view);
export const weekJson = (view: WeekView): string => viewJson(view);
