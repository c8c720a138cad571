/** The stack's drawing on a sheet: the finest scale that fits, cakes 0.5 pt, hidden things dotted, lengths 0.25 pt. */
import {
  type Elevation,
  type ElevationLook,
  type ElevationStroke,
  stackElevation,
} from '../../views/stack-elevation.ts';
import type { StackView } from '../../views/stack-sheet.types.ts';
import { lineWeightPt } from '../sheet/rules.ts';
import type { SheetContext } from '../sheet/sheet-context.ts';
import type { Block } from '../sheet/strip.ts';
import type { Paint, Surface } from '../sheet/surface.ts';
import { placed } from '../sheet/tin-drawing.ts';
import { type TypeStyle, typeScale } from '../sheet/type-scale.ts';
import { MM_PER_PT } from '../sheet/units.ts';

const PLAIN: TypeStyle = { ...typeScale.rowNote, tabular: true };
const STRONG: TypeStyle = typeScale.bodyStrong;

/** Scales that a ruler's reader can work with. */
const SCALES: readonly number[] = [2, 2.5, 4, 5, 6, 8, 10, 15, 20];

const DOTS_MM = [0.35, 0.75];
const DASHES_MM = [2.2, 1.1];

function lookAt(view: StackView, scale: number, { metrics }: SheetContext): ElevationLook {
  const nameMm = Math.max(
    ...view.tiers.flatMap(({ name, weight }) => [
      metrics.widthMm(name, STRONG.font, STRONG.sizePt),
      metrics.widthMm(`${weight.text}\u00a0${view.units.mass}`, PLAIN.font, PLAIN.sizePt, true),
    ]),
  );
  return { scale, textMm: STRONG.sizePt * MM_PER_PT, nameMm };
}

/** The drawing and its scale: the finest that stays within the room, the coarsest where none does. */
export function fittingElevation(
  view: StackView,
  room: { widthMm: number; heightMm: number },
  context: SheetContext,
): { scale: number; elevation: Elevation } {
  const all = SCALES.map((scale) => ({
    scale,
    elevation: stackElevation(view, lookAt(view, scale, context)),
  }));
  const fits = ({ elevation: { widthMm, heightMm } }: (typeof all)[number]): boolean =>
    widthMm <= room.widthMm && heightMm <= room.heightMm;
  const found = all.find(fits) ?? all.at(-1);
  if (found === undefined) throw new Error('There are no scales.');
  return found;
}

function paintOf(kind: ElevationStroke['kind'], { inks }: SheetContext): Paint {
  const stroke = inks.ink;
  switch (kind) {
    case 'drum':
    case 'card':
      return { fill: inks.tint, stroke, lineWidthPt: lineWeightPt.outline };
    case 'dummy':
      return { fill: inks.tint, stroke, lineWidthPt: lineWeightPt.cut };
    case 'cake':
    case 'dome':
      return { fill: inks.paper, stroke, lineWidthPt: lineWeightPt.cut };
    case 'support':
      return { stroke, lineWidthPt: lineWeightPt.outline, dashMm: DOTS_MM };
    case 'dowel':
      return { stroke, lineWidthPt: lineWeightPt.outline, dashMm: DASHES_MM };
    case 'ground':
      return { stroke, lineWidthPt: lineWeightPt.outline };
    case 'measure':
      return { stroke: inks.quietInk, lineWidthPt: lineWeightPt.thin };
  }
}

function drawElevation(
  surface: Surface,
  context: SheetContext,
  { strokes, words }: Elevation,
  xMm: number,
  yMm: number,
): void {
  for (const { kind, steps } of strokes) surface.path(placed(steps, 1, xMm, yMm), paintOf(kind, context));
  for (const { text, xMm: x, yMm: y, anchor, strong } of words) {
    const { font, sizePt, tabular } = strong ? STRONG : PLAIN;
    const width = context.metrics.widthMm(text, font, sizePt, tabular);
    const share = anchor === 'start' ? 0 : anchor === 'end' ? 1 : 0.5;
    surface.text({
      ...{ text, xMm: xMm + x - share * width, yMm: yMm + y, font, sizePt },
      colour: context.inks.ink,
      ...(tabular ? { tabular } : {}),
    });
  }
}

/** The drawing in the middle of its width, as one figure. */
export const elevationBlock =
  (elevation: Elevation, alt: string): Block =>
  (widthMm, context) => [
    {
      heightMm: elevation.heightMm,
      spaceMm: 4,
      keepWithNext: true,
      draw(surface, xMm, yMm) {
        const left = xMm + Math.max(0, (widthMm - elevation.widthMm) / 2);
        const box = { xMm: left, yMm, widthMm: elevation.widthMm, heightMm: elevation.heightMm };
        surface.within('Figure', { alt, box }, () => drawElevation(surface, context, elevation, left, yMm));
      },
    },
  ];
