/** The head of every page: whose sheet it is, with the logo, and from the second page on what it is. */
import { drawLogo, logoWidthMm } from './logo.ts';
import type { SheetContext } from './sheet-context.ts';
import type { Surface } from './surface.ts';
import { typeScale } from './type-scale.ts';

/** Room between the margin and the text of the page. */
export const HEAD_MM = 9;
const LOGO_MM = 7;
const LOGO_GAP_MM = 2;

/** From the margin down; in the middle of the logo where there is one. */
export function headBaselineMm({ logo, metrics }: SheetContext): number {
  const { font, sizePt } = typeScale.furnitureStrong;
  if (logo === null) return metrics.ascentMm(font, sizePt);
  return (LOGO_MM + metrics.capHeightMm(font, sizePt)) / 2;
}

export function drawRunningHead(
  surface: Surface,
  context: SheetContext,
  { kitchenName, title }: { kitchenName: string; title: string | null },
  { left, right }: { left: number; right: number },
): void {
  const { marginMm, metrics, inks } = context;
  const yMm = marginMm.top + headBaselineMm(context);
  drawLogo(surface, context, left, marginMm.top, LOGO_MM);
  const strong = typeScale.furnitureStrong;
  const logoMm = logoWidthMm(context, LOGO_MM);
  surface.text({
    text: kitchenName,
    xMm: left + (logoMm === 0 ? 0 : logoMm + LOGO_GAP_MM),
    yMm,
    font: strong.font,
    sizePt: strong.sizePt,
    colour: inks[strong.colour],
  });
  if (title === null) return;
  const { font, sizePt, colour } = typeScale.furniture;
  const xMm = right - metrics.widthMm(title, font, sizePt);
  surface.text({ text: title, xMm, yMm, font, sizePt, colour: inks[colour] });
}
