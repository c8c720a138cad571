/** The supports of a stack, joint by joint: how many, how long, where each goes, and the template to mark them by. */
import type { OrderStack } from '../compute/orders/order-stack.ts';
import { outlineBounds } from '../compute/outline/index.ts';
import { tinOutline } from '../compute/shapes/index.ts';
import type { HeldBy } from '../compute/stacks/stack-plan.ts';
import { clockwise, type SupportSpot, supportSpots, toRingsMm } from '../compute/stacks/support-spots.ts';
import type { Point } from '../domain/outline.ts';
import { quantiseMm } from '../domain/quantise.ts';
import type { Tin } from '../domain/tin.ts';
import { formatNumber } from '../wording/number.ts';
import type { StackWords } from '../wording/stacks/index.ts';
import type { Figure } from './figure.ts';
import { heightFigure, totalFigure } from './figures.ts';
import { countFigure } from './order-batters.ts';
import { partId } from './order-names.ts';
import type { SupportSet, SupportSpotView } from './stack-sheet.types.ts';
import { supportTemplate } from './support-template.ts';

/** A length to one side of the middle or the other, told in words; nothing to tell on the middle itself. */
function sidedFigure(mm: number, positive: (mm: string) => string, negative: (mm: string) => string): Figure {
  const text = formatNumber(Math.abs(mm), 0);
  return { value: mm, unit: 'mm', text: text === '0' ? '0' : (mm > 0 ? positive : negative)(text) };
}

const spotView = (spot: SupportSpot, at: number, words: StackWords): SupportSpotView => ({
  number: countFigure(at + 1),
  clock: { value: spot.clockMin, unit: 'min', text: formatNumber(spot.clockMin, 1) },
  fromMiddle: heightFigure(spot.fromMiddleMm),
  side: sidedFigure(spot.rightMm, words.right, words.left),
  depth: sidedFigure(spot.backMm, words.back, words.front),
  fromEdge: heightFigure(spot.fromEdgeMm),
});

interface Joint {
  id: string;
  tierId: string;
  at: number;
  held: HeldBy;
  /** The cake whose outline the supports lie within. */
  over: Tin;
  /** Of that cake's coats, one side; 0 where the outline is a card's inside it. */
  coatMm: number;
  title: string;
  /** Which outline the template has; takes its size. */
  outlineText: (size: string) => string;
  ledgeMm: number | null;
  /** How the tier above is named; '' for a card inside. */
  above: string;
}

/** The narrowest ring of the lower tier's top that stays free, coat to coat. */
function ledgeMm({ plans, coatsMm, stands }: OrderStack, at: number): number | null {
  const [lower, upper] = [plans[at], plans[at + 1]];
  if (lower === undefined || upper === undefined || stands[at + 1] !== true) return null;
  const bareMm = Math.min(...upper.rings.flat().map((point) => toRingsMm(point, lower.rings)));
  return quantiseMm(bareMm + (coatsMm[at] ?? 0) - (coatsMm[at + 1] ?? 0));
}

function jointsOf(
  stack: OrderStack,
  names: readonly string[],
  { under, underCard, template }: StackWords,
): Joint[] {
  return stack.tiers.flatMap((tier, at): Joint[] => {
    const [name = '', above = ''] = [names[at], names[at + 1]];
    const part = stack.parts[at];
    const [own, over] = [part?.tin, stack.parts[at + 1]?.tin];
    const id = part === undefined ? '' : partId(part);
    const inside: Joint[] =
      tier.innerSupports === null || own === undefined
        ? []
        : [
            {
              ...{
                id: `${id}-inside`,
                tierId: id,
                at,
                held: tier.innerSupports,
                over: own,
                title: underCard(name),
              },
              ...{ outlineText: (size) => template.card(name, size), coatMm: 0, ledgeMm: null, above: '' },
            },
          ];
    if (tier.supports === null || over === undefined) return inside;
    return [
      ...inside,
      {
        ...{ id: `${id}-top`, tierId: id, at, held: tier.supports, over, title: under(name, above) },
        ...{ outlineText: (size) => template.outline(above, size), coatMm: stack.coatsMm[at + 1] ?? 0 },
        ...{ ledgeMm: ledgeMm(stack, at), above },
      },
    ];
  });
}

/** Places about the middle of the outline's box, where a template has its own middle. */
function centredPlaces(places: readonly Point[], tin: Tin): Point[] {
  const outline = tinOutline(tin);
  if (outline === null) return [...places];
  const { minX, maxX, minY, maxY } = outlineBounds(outline);
  return places.map(({ x, y }) => ({ x: x - (minX + maxX) / 2, y: y - (minY + maxY) / 2 }));
}

/** Every set of supports from the bottom up; a tall tier's inner ones first. */
export function supportSets(stack: OrderStack, names: readonly string[], words: StackWords): SupportSet[] {
  return jointsOf(stack, names, words).map((joint) => {
    const { id, tierId, at, held, over, title, outlineText, above } = joint;
    const plan = stack.plans[at] ?? { rings: [] };
    const places = clockwise(held.places);
    const [length, carries] = [heightFigure(held.lengthMm), totalFigure(held.carriesG)];
    const setText =
      held.places.length === 0 ? words.noPlaces : words.set(held.count, length.text, carries.text);
    const ledge = joint.ledgeMm === null ? null : heightFigure(joint.ledgeMm);
    return {
      id,
      tierId,
      title,
      setText,
      count: countFigure(held.places.length),
      length,
      carries,
      ledge,
      ledgeText: ledge === null ? null : words.ledge(above, ledge.text),
      spots: supportSpots(places, plan, stack.coatsMm[at] ?? 0).map((spot, index) =>
        spotView(spot, index, words),
      ),
      picture: supportTemplate({
        ...{ id, tin: over, coatMm: joint.coatMm, title, setText, outlineText, words },
        places: centredPlaces(places, over),
        hasDowel: stack.dowel !== null,
      }),
    };
  });
}
