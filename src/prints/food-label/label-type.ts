/**
 * How large is a label's type? So large that a lower-case x is as high as asked, in every cut that the label uses,
 * measured in the very fonts. Least x-heights: src/compute/labels/rule-set.ts. Where there is room everything grows
 * together; it never shrinks below.
 */
import type { FontRole } from '../../domain/house-style.ts';
import type { Metrics } from '../sheet/surface.ts';
import type { TypeStyle } from '../sheet/type-scale.ts';

export interface LabelType {
  title: TypeStyle;
  text: TypeStyle;
  /** Between two paragraphs. */
  spaceMm: number;
}

const CUTS: readonly FontRole[] = ['text', 'textBold', 'textItalic', 'heading'];
const STEP_PT = 0.05;
const LEADING = 1.2;
const TITLE = 1.45;
const MM_PER_PT = 25.4 / 72;

/** Up to the next twentieth of a point: sizes are told in few digits, and never fall short. */
const upToStep = (pt: number): number => Math.ceil(pt / STEP_PT - 1e-9) * STEP_PT;

/** The least size at which every cut's x is `xHeightMm` high, pt. */
export function leastSizePt(xHeightMm: number, metrics: Metrics): number {
  const lowest = Math.min(...CUTS.map((font) => metrics.xHeightMm(font, 1)));
  return upToStep(xHeightMm / lowest);
}

/** Type for a label, `growth` times the least. */
export function labelType(xHeightMm: number, growth: number, metrics: Metrics): LabelType {
  const sizePt = upToStep(leastSizePt(xHeightMm, metrics) * growth);
  const leadingPt = sizePt * LEADING;
  const titlePt = upToStep(sizePt * TITLE);
  return {
    title: { font: 'heading', sizePt: titlePt, leadingPt: titlePt * 1.12, colour: 'ink' },
    text: { font: 'text', sizePt, leadingPt, colour: 'ink' },
    spaceMm: leadingPt * MM_PER_PT * 0.32,
  };
}
