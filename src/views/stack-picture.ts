/** The stack seen from the front, to scale: every part as a box in mm from the middle and above the table. */
import { isDummyPart, type OrderStack } from '../compute/orders/order-stack.ts';
import type { HeldBy, StackedTier } from '../compute/stacks/stack-plan.ts';
import { quantiseMm } from '../domain/quantise.ts';
import type { StackWords } from '../wording/stacks/index.ts';
import type { StackPart, StackPicture, StackTierView } from './stack-sheet.types.ts';
import { SUPPORT_MARK_MM } from './support-template.ts';

function boxes(kind: StackPart['kind'], held: HeldBy | null, footMm: number): StackPart[] {
  if (held === null) return [];
  // Two supports behind one another are one in the drawing.
  const xs = [...new Set(held.places.map(({ x }) => quantiseMm(Math.round(x * 10) / 10)))];
  const size = { footMm, widthMm: SUPPORT_MARK_MM, heightMm: held.lengthMm };
  return xs.map((atMm) => ({ kind, atMm, ...size }));
}

function insideOf(tier: StackedTier, cardMm: number, bareMm: number): StackPart[] {
  const { footMm, innerBoardMm, innerSupports, supports } = tier;
  if (innerBoardMm === null) return boxes('support', supports, footMm);
  const cardFootMm = quantiseMm(footMm + innerBoardMm);
  return [
    { kind: 'card', atMm: 0, footMm: cardFootMm, widthMm: bareMm, heightMm: cardMm },
    ...boxes('support', innerSupports, footMm),
    ...boxes('support', supports, quantiseMm(cardFootMm + cardMm)),
  ];
}

function partsOf(stack: OrderStack): StackPart[] {
  return stack.tiers.flatMap((tier, at): StackPart[] => {
    const [plan, own] = [stack.plans[at], stack.parts[at]];
    if (plan === undefined || own === undefined) return [];
    const { thicknessMm } = tier.board;
    const isDome = own.tin.shape.kind === 'dome';
    return [
      {
        kind: at === 0 ? 'drum' : 'card',
        atMm: 0,
        footMm: quantiseMm(tier.footMm - thicknessMm),
        // A card under a tier that is deeper than wide shows its width.
        widthMm: at === 0 ? tier.board.acrossMm : quantiseMm(plan.widthMm + 2 * (stack.coatsMm[at] ?? 0)),
        heightMm: thicknessMm,
      },
      {
        kind: isDummyPart(own) ? 'dummy' : isDome ? 'dome' : 'cake',
        atMm: 0,
        footMm: tier.footMm,
        widthMm: quantiseMm(plan.widthMm + 2 * (stack.coatsMm[at] ?? 0)),
        heightMm: quantiseMm(tier.topMm - tier.footMm),
      },
      ...insideOf(tier, stack.cardThicknessMm, quantiseMm(plan.widthMm)),
    ];
  });
}

function dowelPart({ tiers, dowel }: OrderStack): StackPart[] {
  const footMm = tiers[0]?.footMm ?? 0;
  if (dowel === null) return [];
  return [{ kind: 'dowel', atMm: 0, footMm, widthMm: SUPPORT_MARK_MM, heightMm: dowel.lengthMm }];
}

/** Parts in the order in which they are drawn: cakes and boards, then what is hidden in them. */
export function stackPicture(
  order: string,
  stack: OrderStack,
  tiers: readonly StackTierView[],
  words: StackWords,
): StackPicture {
  const parts = [...partsOf(stack), ...dowelPart(stack)];
  const { picture } = words;
  const said = tiers.map(({ name, across, deep, height }, at) => {
    const size = across.text === deep.text ? words.across(across.text) : words.by(across.text, deep.text);
    const supports = stack.tiers[at];
    const count = (supports?.supports?.places.length ?? 0) + (supports?.innerSupports?.places.length ?? 0);
    return picture.tier(name, size, height.text, count);
  });
  const drum = tiers[0]?.board.text ?? '';
  return {
    title: picture.title(order),
    alt: picture.description(drum, said, String(Math.round(stack.totalHeightMm)), stack.dowel !== null),
    widthMm: Math.max(...parts.map(({ widthMm }) => widthMm)),
    heightMm: stack.totalHeightMm,
    parts,
    keyText: picture.key(stack.dowel !== null, stack.parts.some(isDummyPart)),
  };
}
