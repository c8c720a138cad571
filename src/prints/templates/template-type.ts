/** Type and lines of the patterns: read at the table, 8 pt and more; no fills, so that they print in grey as well. */
import { lineWeightPt } from '../sheet/rules.ts';
import type { TypeStyle } from '../sheet/type-scale.ts';

const type = (font: TypeStyle['font'], sizePt: number, leadingPt: number): TypeStyle => ({
  font,
  sizePt,
  leadingPt,
  colour: 'ink',
});

export const templateType = {
  part: type('heading', 22, 25),
  piece: type('textBold', 11, 13.5),
  detail: type('text', 9, 11.5),
  guide: type('text', 8.5, 10.5),
  joint: type('textBold', 9.5, 11.5),
  map: type('text', 8, 9),
  mapHere: type('textBold', 8, 9),
} as const;

/** Solid lines are cut; short dashes guide; long dashes are joints. */
export const templateLines = {
  cut: { lineWidthPt: lineWeightPt.cut },
  guide: { lineWidthPt: lineWeightPt.outline, dashMm: [1.4, 1.1] },
  tick: { lineWidthPt: lineWeightPt.outline },
  joint: { lineWidthPt: lineWeightPt.outline, dashMm: [6, 1.8] },
  mark: { lineWidthPt: lineWeightPt.thin },
  map: { lineWidthPt: lineWeightPt.thin },
  mapHere: { lineWidthPt: lineWeightPt.outline },
} as const;
