/** How does the stack stand: tiers from the table up, what each carries, where supports go, and what to mind? */
import { isDummyPart, type OrderStack } from '../compute/orders/order-stack.ts';
import type { PlannedOrder } from '../compute/orders/planned-order.types.ts';
import type { StackedTier } from '../compute/stacks/stack-plan.ts';
import { TIER_STEP_MM } from '../compute/stacks/tier-stands.ts';
import type { Content } from '../domain/content.ts';
import type { Warning } from '../domain/problem.ts';
import { wordsFor } from '../wording/locales/index.ts';
import { formatNumber } from '../wording/number.ts';
import { orderWordsFor } from '../wording/orders/index.ts';
import { type StackWords, stackWordsFor } from '../wording/stacks/index.ts';
import type { Figure } from './figure.ts';
import { heightFigure, totalFigure } from './figures.ts';
import { boardFigure } from './finishing-figures.ts';
import { partId, partName } from './order-names.ts';
import { stackPicture } from './stack-picture.ts';
import type { StackBoard, StackFact, StackTierView, StackView, SupportSet } from './stack-sheet.types.ts';
import { supportSets } from './support-sets.ts';

const KG_G = 1000;
const kg = (grams: number): string => formatNumber(grams / KG_G, 1);

/** Thickness of a board, to the tenth. */
const thicknessFigure = (mm: number): Figure => ({ value: mm, unit: 'mm', text: formatNumber(mm, 1) });

function boardView({ board }: StackedTier, at: number, words: StackWords): StackBoard {
  const across = boardFigure(board.acrossMm);
  const thickness = thicknessFigure(board.thicknessMm);
  const text = at === 0 ? words.drumText : words.cardText;
  return { across, thickness, text: text(across.text, thickness.text) };
}

function tierView(stack: OrderStack, at: number, name: string, words: StackWords): StackTierView[] {
  const [tier, plan, own] = [stack.tiers[at], stack.plans[at], stack.parts[at]];
  if (tier === undefined || plan === undefined || own === undefined) return [];
  const coatMm = stack.coatsMm[at] ?? 0;
  const board = boardView(tier, at, words);
  const cardInside = tier.innerBoardMm === null ? null : heightFigure(tier.innerBoardMm);
  const bare = boardFigure(Math.max(plan.widthMm, plan.heightMm));
  const inside = cardInside === null ? [] : [words.insideText(bare.text, cardInside.text)];
  return [
    {
      id: partId(own),
      name,
      dummy: isDummyPart(own),
      tin: { id: own.tin.id, name: isDummyPart(own) ? words.dummyTin : own.tin.name },
      across: heightFigure(plan.widthMm + 2 * coatMm),
      deep: heightFigure(plan.heightMm + 2 * coatMm),
      height: heightFigure(own.coatedHeightMm),
      foot: heightFigure(tier.footMm),
      top: heightFigure(tier.topMm),
      weight: totalFigure(tier.weightG),
      carries: tier.carriesG === null ? null : totalFigure(tier.carriesG),
      board,
      cardInside,
      standsOnText: [board.text, ...inside].join('; '),
      stands: stack.stands[at] ?? true,
    },
  ];
}

/** What stands in the cake and must come out of it, in words. */
function insideText(
  { tiers, parts, dowel }: OrderStack,
  sets: readonly SupportSet[],
  words: StackWords,
): string {
  const cards = tiers.length - 1 + tiers.filter(({ innerBoardMm }) => innerBoardMm !== null).length;
  const dummies = parts.filter(isDummyPart).length;
  const supports = sets.reduce((sum, { count }) => sum + count.value, 0);
  return words.notCake({ supports, cards, dummies, hasDowel: dowel !== null });
}

function factsOf(view: Omit<StackView, 'facts'>, inside: string, assembled: boolean, words: StackWords) {
  const { height, weight, dowel, tiers } = view;
  const fact = (id: keyof StackWords['facts'], text: string): StackFact => ({
    id,
    label: words.facts[id],
    text,
  });
  return [
    fact('height', words.heightText(height.text)),
    fact(
      'weight',
      words.weightText(
        weight.text,
        tiers.some(({ dummy }) => dummy),
      ),
    ),
    fact('drum', tiers[0]?.board.text ?? ''),
    fact('dowel', dowel === null ? words.noDowel : words.dowelText(dowel.text)),
    fact('inside', inside),
    fact('travels', words.travels(assembled)),
  ];
}

/** As labels have it: nothing under a rolled sheet goes into a fridge. */
function warmth(parts: OrderStack['parts']): 'warm-and-cold' | 'warm-under-sheet' | 'warm-and-mixed' {
  const cakes = parts.filter((part) => !isDummyPart(part));
  const sheeted = cakes.filter(({ finishes }) => finishes.some(({ use }) => use === 'rolled')).length;
  if (sheeted === 0) return 'warm-and-cold';
  return sheeted === cakes.length ? 'warm-under-sheet' : 'warm-and-mixed';
}

const cautionsOf = (
  { cautions }: StackWords,
  inside: string,
  { weightG, liftTwoAboveG }: { weightG: number; liftTwoAboveG: number },
  warm: ReturnType<typeof warmth>,
): StackView['cautions'] => [
  { code: 'supports-not-food', text: cautions['supports-not-food'] },
  { code: 'tell-the-cutter', text: cautions['tell-the-cutter'](inside) },
  {
    code: 'two-people-lift',
    text: cautions['two-people-lift'](kg(weightG), kg(liftTwoAboveG), weightG > liftTwoAboveG),
  },
  { code: 'keep-level', text: cautions['keep-level'] },
  { code: warm, text: cautions[warm] },
  { code: 'practice-first', text: cautions['practice-first'] },
];

/** First of all: what looks like cake and is not. */
function dummyCautions(tiers: readonly StackTierView[], { cautions }: StackWords): StackView['cautions'] {
  const names = tiers.filter(({ dummy }) => dummy).map(({ name }) => name);
  return names.length === 0 ? [] : [{ code: 'dummy-tier', text: cautions['dummy-tier'](names) }];
}

function warningsOf(tiers: readonly StackTierView[], words: StackWords): Warning[] {
  return tiers.flatMap(({ stands, name }, at) => {
    const below = tiers[at - 1];
    if (stands || below === undefined) return [];
    const message = words.doesNotStand(name, below.name, formatNumber(TIER_STEP_MM / 2, 0));
    return [{ code: 'tier-does-not-stand', message }];
  });
}

/** The view of a stack that belongs to a planned order. */
export function stackView(
  planned: PlannedOrder,
  stack: OrderStack,
  { kitchen: { locale }, work: { liftTwoAboveG } }: Pick<Content, 'kitchen' | 'work'>,
): StackView {
  const words = stackWordsFor(locale);
  const { order } = planned;
  const names = stack.parts.map((part) => partName(planned, part, orderWordsFor(locale)));
  const tiers = names.flatMap((name, at) => tierView(stack, at, name, words));
  const sets = supportSets(stack, names, words);
  const inside = insideText(stack, sets, words);
  const hasDummy = stack.parts.some(isDummyPart);
  const hasSupports = sets.length > 0;
  const height = heightFigure(stack.totalHeightMm);
  const view = {
    heading: words.heading,
    units: wordsFor(locale).units,
    sheetTitle: words.sheetTitle(order.title),
    summary: words.summary(tiers.length, height.text, kg(stack.totalWeightG), hasDummy),
    height,
    weight: totalFigure(stack.totalWeightG),
    dowel: stack.dowel === null ? null : heightFigure(stack.dowel.lengthMm),
    tiers,
    sets,
    placesAbout: hasSupports ? words.placesAbout : words.noSupports,
    steps: words.steps({
      ...{ hasDummy, hasSupports, hasDowel: stack.dowel !== null },
      travelsAssembled: order.travelsAssembled,
    }),
    cautions: [
      ...dummyCautions(tiers, words),
      ...cautionsOf(words, inside, { weightG: stack.totalWeightG, liftTwoAboveG }, warmth(stack.parts)),
    ],
    warnings: warningsOf(tiers, words),
    picture: stackPicture(order.title, stack, tiers, words),
  };
  return { ...view, facts: factsOf(view, inside, order.travelsAssembled, words) };
}
