/** A line of words beside the line it names, upright or turned with it. */
import type { SheetContext } from '../sheet/sheet-context.ts';
import type { Surface } from '../sheet/surface.ts';
import type { TypeStyle } from '../sheet/type-scale.ts';
import type { Spot } from './curves.ts';
import type { FreePlaces } from './free-places.ts';

export interface Label {
  /** Moved by (dx, dy). */
  draw(surface: Surface, dx: number, dy: number): void;
}

const FARTHEST_MM = 90;

/** Null when there is no room within 90 mm of where it belongs. `turnDeg` is 0 or 270 (reads downwards). */
export function setLabel(
  text: string,
  type: TypeStyle,
  turnDeg: 0 | 270,
  near: Spot,
  clearMm: number,
  places: FreePlaces,
  context: SheetContext,
  /** How far aside of its line a name may stand before it seems to belong to another. */
  asideMm = Number.POSITIVE_INFINITY,
): Label | null {
  const { metrics, inks } = context;
  const { font, sizePt, colour } = type;
  const lengthMm = metrics.widthMm(text, font, sizePt);
  const ascentMm = metrics.capHeightMm(font, sizePt) + 0.5;
  const highMm = ascentMm + metrics.descentMm(font, sizePt);
  const [widthMm, heightMm] = turnDeg === 0 ? [lengthMm, highMm] : [highMm, lengthMm];
  const aside = ({ x, y }: Spot) => Math.abs(turnDeg === 0 ? y - near.y : x - near.x);
  const dislikeMm = (middle: Spot) => (aside(middle) > asideMm ? FARTHEST_MM : 0);
  const box = places.take({ widthMm, heightMm, near, clearMm, dislikeMm, farthestMm: FARTHEST_MM });
  if (box === null) return null;
  const xMm = turnDeg === 0 ? box.xMm : box.xMm + highMm - ascentMm;
  const yMm = turnDeg === 0 ? box.yMm + ascentMm : box.yMm;
  const run = { text, font, sizePt, colour: inks[colour], ...(turnDeg === 0 ? {} : { turnDeg }) };
  return { draw: (surface, dx, dy) => surface.text({ ...run, xMm: xMm + dx, yMm: yMm + dy }) };
}
