/** What stands on every inner page: the part at its head, the number at its foot, both at the outer edge. */
import { hairline } from '../sheet/rules.ts';
import type { SheetContext } from '../sheet/sheet-context.ts';
import type { Surface } from '../sheet/surface.ts';
import type { TypeStyle } from '../sheet/type-scale.ts';
import type { BookletForm } from './booklet-form.ts';
import { bookletType } from './booklet-type.ts';

/** Draws on the page's own surface; `number` counts from the cover. */
export function drawFurniture(
  surface: Surface,
  form: BookletForm,
  context: SheetContext,
  number: number,
  running: string,
): void {
  const { page, outerMm, innerMm, topMm, bottomMm } = form;
  const onRight = number % 2 === 1;
  const left = onRight ? innerMm : outerMm;
  const right = page.widthMm - (onRight ? outerMm : innerMm);
  const draw = (text: string, { font, sizePt, colour }: TypeStyle, yMm: number) => {
    const widthMm = context.metrics.widthMm(text, font, sizePt);
    const xMm = onRight ? right - widthMm : left;
    surface.text({ text, xMm, yMm, font, sizePt, colour: context.inks[colour] });
  };
  const { furniture, folio } = bookletType;
  const headMm = topMm + context.metrics.ascentMm(furniture.font, furniture.sizePt);
  surface.artifact(() => {
    draw(running, furniture, headMm);
    hairline(surface, context, left, headMm + 1.7, right - left);
    draw(
      String(number),
      folio,
      page.heightMm - bottomMm - context.metrics.descentMm(folio.font, folio.sizePt),
    );
  });
}
