/** A line to write on: what is to be written, and a rule to the edge. */
import { paragraph } from '../sheet/lines.ts';
import { hairline } from '../sheet/rules.ts';
import type { Block } from '../sheet/strip.ts';
import { drawText, setText } from '../sheet/text-block.ts';
import { type TypeStyle, typeScale } from '../sheet/type-scale.ts';

/** Room for a hand that writes; never less than 7 mm. */
const HEIGHT_MM = 8.5;
const GAP_MM = 2;
/** The label never takes more than this share of the line. */
const MOST_LABEL = 0.62;

/** One line; a label too long for its share goes over two. */
export const writeLine =
  (label: string, type: TypeStyle = typeScale.body, heightMm: number = HEIGHT_MM): Block =>
  (widthMm, context) => {
    const set = setText([paragraph(label, type)], widthMm * MOST_LABEL, context);
    const labelMm = Math.max(0, ...set.lines.map(({ line }) => line.widthMm));
    return [
      {
        heightMm: Math.max(heightMm, set.heightMm),
        spaceMm: 0.5,
        keepWithNext: false,
        draw(surface, xMm, yMm) {
          const textTop = yMm + Math.max(heightMm, set.heightMm) - set.heightMm;
          surface.within('P', {}, () => drawText(surface, context, set, xMm, textTop));
          const from = xMm + labelMm + GAP_MM;
          const ruleY = textTop + set.heightMm - 1;
          surface.artifact(() => hairline(surface, context, from, ruleY, xMm + widthMm - from));
        },
      },
    ];
  };
