/** Where do I prick? The outline of the tier above with a circle for each support, at true size, back uppermost. */
import { cakePlan } from '../compute/finishes/cake-plan.ts';
import { grownOutline } from '../compute/finishes/grown-outline.ts';
import { type OutlineStep, outlinePath } from '../compute/outline/index.ts';
import { tinOutline } from '../compute/shapes/index.ts';
import type { Outline, Point } from '../domain/outline.ts';
import { quantiseMm } from '../domain/quantise.ts';
import type { Tin } from '../domain/tin.ts';
import type { StackWords } from '../wording/stacks/index.ts';
import type { TemplateGuide, TemplatePiece } from './lining-template.types.ts';
import { mmText } from './lining-template-pieces.ts';
import { guide, lineSteps, type PieceShape, shapeOf } from './lining-template-steps.ts';

/** Supports are 6 to 12 mm across, common practice; what matters is the cross in the middle of the circle. */
export const SUPPORT_MARK_MM = 10;
/** A dowel with room to turn. */
const DOWEL_HOLE_MM = 12;
const CROSS_MM = 3;
const BACK_MARK_MM = 12;
/** Of the back mark below the outline. */
const BACK_GAP_MM = 1;

export interface SupportTemplateInput {
  id: string;
  tin: Tin;
  /** What the cake's coats add on every side; 0 for a card that lies inside it. */
  coatMm: number;
  title: string;
  setText: string;
  /** Which outline it is, by its size. */
  outlineText: (size: string) => string;
  /** About the middle of the outline's box, y up. */
  places: readonly Point[];
  hasDowel: boolean;
  words: StackWords;
}

/** A circle as strokes, y down. */
function circleSteps({ x, y }: Point, acrossMm: number): OutlineStep[] {
  const radius = acrossMm / 2;
  const arc = { kind: 'arc', to: { x: x + radius, y }, centre: { x, y }, rx: radius, ry: radius } as const;
  const ring: Outline['rings'][number] = {
    start: { x: x + radius, y },
    segments: [{ ...arc, rotation: 0, startAngle: 0, sweep: 2 * Math.PI }],
  };
  return outlinePath({ rings: [ring] });
}

function supportMark({ x, y }: Point): OutlineStep[] {
  return [
    ...circleSteps({ x, y }, SUPPORT_MARK_MM),
    ...lineSteps(x - CROSS_MM, -y, x + CROSS_MM, -y),
    ...lineSteps(x, -y - CROSS_MM, x, -y + CROSS_MM),
  ];
}

/** Down from the outline at the back, over the middle; where the outline dips there, from its dip. */
function backMark({ heightMm }: PieceShape): OutlineStep[] {
  const top = quantiseMm(-heightMm / 2 + BACK_GAP_MM);
  return lineSteps(0, top, 0, top + BACK_MARK_MM);
}

/** The cake before its coats, within them; none where the outline is a card's. */
function bareGuides({ tin, coatMm, words }: SupportTemplateInput): TemplateGuide[] {
  const outline = coatMm === 0 ? null : tinOutline(tin);
  if (outline === null) return [];
  const shape = shapeOf(outline);
  return [guide('cake', words.template.bare(sizeOf(tin, shape, words)), shape.cut)];
}

function guidesOf(shape: PieceShape, input: SupportTemplateInput): TemplateGuide[] {
  const { places, hasDowel, words } = input;
  return [
    ...bareGuides(input),
    ...places.map((place, at) => guide('support', String(at + 1), supportMark(place))),
    ...(hasDowel ? [guide('hole', words.template.hole, circleSteps({ x: 0, y: 0 }, DOWEL_HOLE_MM))] : []),
    guide('back', words.template.backMark, backMark(shape)),
  ];
}

function sizeOf({ shape }: Tin, { widthMm, heightMm }: PieceShape, words: StackWords): string {
  const isRound = shape.kind === 'round' || shape.kind === 'dome';
  return isRound ? words.across(mmText(widthMm)) : words.by(mmText(widthMm), mmText(heightMm));
}

/** The cake as it stands, coats and all; a round stays a true circle. */
function coatedOutline({ tin, coatMm }: SupportTemplateInput): Outline | null {
  const { shape } = tin;
  if (coatMm === 0) return tinOutline(tin);
  if (shape.kind === 'round') {
    return tinOutline({ ...tin, shape: { ...shape, acrossMm: shape.acrossMm + 2 * coatMm } });
  }
  const plan = cakePlan(tin);
  return plan === null ? null : grownOutline(plan.rings, coatMm);
}

/** The piece of one joint. Throws for a tin without an outline: such a tin is never a tier. */
export function supportTemplate(input: SupportTemplateInput): TemplatePiece {
  const { id, tin, title, setText, outlineText, words } = input;
  const outline = coatedOutline(input);
  if (outline === null) throw new Error(`${tin.id} has no outline.`);
  const shape = shapeOf(outline);
  return {
    id,
    group: 'supports',
    name: title,
    count: 1,
    ...shape,
    guides: guidesOf(shape, input),
    centreText: words.template.middle,
    sizeText: outlineText(sizeOf(tin, shape, words)),
    cutText:
      input.places.length === 0 ? setText : `${setText} ${words.template.supports(mmText(SUPPORT_MARK_MM))}`,
    mirrored: { leftRight: false, topBottom: false },
  };
}
