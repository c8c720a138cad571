/** The head of the first page: title, one sentence, and what the figures hold for. */
import { paragraph } from '../sheet/lines.ts';
import type { SheetContext } from '../sheet/sheet-context.ts';
import type { Block } from '../sheet/strip.ts';
import { drawText, setText } from '../sheet/text-block.ts';
import { typeScale } from '../sheet/type-scale.ts';

export interface Fact {
  label: string;
  text: string;
  /** Share of the width. */
  share: number;
}

const GAP_MM = 6;

function factTexts(facts: Fact[], widthMm: number, context: SheetContext) {
  const room = widthMm - GAP_MM * (facts.length - 1);
  const whole = facts.reduce((sum, fact) => sum + fact.share, 0);
  let x = 0;
  return facts.map((fact) => {
    const width = (room * fact.share) / whole;
    const label = paragraph(fact.label, { ...typeScale.furnitureStrong, sizePt: 9, leadingPt: 12 });
    const placed = { xMm: x, text: setText([label, paragraph(fact.text, typeScale.body)], width, context) };
    x += width + GAP_MM;
    return placed;
  });
}

/** Facts side by side, each a paragraph: label above value. */
export const factRow =
  (facts: Fact[]): Block =>
  (widthMm, context) => {
    const placed = factTexts(facts, widthMm, context);
    return [
      {
        heightMm: Math.max(0, ...placed.map(({ text }) => text.heightMm)),
        spaceMm: 3.5,
        keepWithNext: true,
        draw(surface, xMm, yMm) {
          for (const fact of placed)
            surface.within('P', {}, () => drawText(surface, context, fact.text, xMm + fact.xMm, yMm));
        },
      },
    ];
  };
