/** The cover: whose booklet it is, and the kitchen's own tins from above, all to one scale. */
import { outlineBounds, outlinePath } from '../../compute/outline/index.ts';
import type { Outline } from '../../domain/outline.ts';
import type { BookletView } from '../../views/booklet/booklet.types.ts';
import type { BookletWords } from '../../wording/booklet/index.ts';
import { paragraph } from '../sheet/lines.ts';
import { drawLogo, logoWidthMm } from '../sheet/logo.ts';
import { hairline, lineWeightPt } from '../sheet/rules.ts';
import type { SheetContext } from '../sheet/sheet-context.ts';
import type { Surface } from '../sheet/surface.ts';
import { drawText, type SetText, setText } from '../sheet/text-block.ts';
import { placed } from '../sheet/tin-drawing.ts';
import type { PageFrame } from './booklet-form.ts';
import { bookletType } from './booklet-type.ts';

interface Plan {
  outline: Outline;
  widthMm: number;
  heightMm: number;
}

interface Shelf {
  plans: Plan[];
  heightMm: number;
}

const GAP_MM = 4;
const LOGO_MM = 17;
const SCALES = [2, 2.5, 3, 4, 5, 6, 7, 8, 9, 10, 12, 14, 16, 18, 20, 25, 30, 40, 50, 80];

function shelves(plans: readonly Plan[], widthMm: number, scale: number): Shelf[] {
  const rows: Shelf[] = [];
  let used = 0;
  for (const plan of plans) {
    const wide = plan.widthMm / scale;
    const row = rows.at(-1);
    if (row && used + GAP_MM + wide <= widthMm) {
      row.plans.push(plan);
      row.heightMm = Math.max(row.heightMm, plan.heightMm / scale);
      used += GAP_MM + wide;
    } else {
      rows.push({ plans: [plan], heightMm: plan.heightMm / scale });
      used = wide;
    }
  }
  return rows;
}

const heightOf = (rows: readonly Shelf[]): number =>
  rows.reduce((sum, { heightMm }, index) => sum + heightMm + (index === 0 ? 0 : GAP_MM), 0);

function drawPlan(
  surface: Surface,
  context: SheetContext,
  plan: Plan,
  scale: number,
  xMm: number,
  yMm: number,
) {
  const { minX, maxX, minY, maxY } = outlineBounds(plan.outline);
  const centreX = xMm + plan.widthMm / 2 / scale - (minX + maxX) / 2 / scale;
  const centreY = yMm + (minY + maxY) / 2 / scale;
  surface.path(placed(outlinePath(plan.outline), scale, centreX, centreY), {
    fill: context.inks.tint,
    stroke: context.inks.accent,
    lineWidthPt: lineWeightPt.cut,
    evenOdd: true,
  });
}

interface Field {
  xMm: number;
  yMm: number;
  widthMm: number;
  heightMm: number;
}

/** Plans in rows, each row in the middle and spread over the field's width. */
function drawPlate(
  surface: Surface,
  context: SheetContext,
  plans: readonly Plan[],
  field: Field,
  alt: string,
): void {
  const scale = SCALES.find(
    (one) =>
      plans.every(({ widthMm }) => widthMm / one <= field.widthMm) &&
      heightOf(shelves(plans, field.widthMm, one)) <= field.heightMm,
  );
  if (scale === undefined || plans.length === 0) return;
  const rows = shelves(plans, field.widthMm, scale);
  let yMm = field.yMm + (field.heightMm - heightOf(rows)) / 2;
  surface.within('Figure', { alt, box: field }, () => {
    for (const row of rows) {
      const wide = row.plans.reduce((sum, { widthMm }) => sum + widthMm / scale, 0);
      const gap = (field.widthMm - wide) / (row.plans.length + 1);
      let xMm = field.xMm + gap;
      for (const plan of row.plans) {
        drawPlan(surface, context, plan, scale, xMm, yMm + row.heightMm / 2);
        xMm += plan.widthMm / scale + gap;
      }
      yMm += row.heightMm + GAP_MM;
    }
  });
}

function plansOf({ tins }: BookletView): Plan[] {
  return tins.flatMap(({ picture: { plan, widthMm, heightMm } }) =>
    plan === null ? [] : [{ outline: plan, widthMm, heightMm }],
  );
}

/** Draws the cover into the body's frame. */
export function drawCover(
  surface: Surface,
  view: BookletView,
  words: BookletWords,
  frame: PageFrame,
  context: SheetContext,
  xMm: number,
): void {
  const { widthMm, heightMm } = frame;
  const { cover, coverLine, lead, body } = bookletType;
  const logoMm = logoWidthMm(context, LOGO_MM);
  const besideLogoMm = logoMm === 0 ? widthMm : widthMm - logoMm - GAP_MM;
  const set = (text: string, type: typeof cover): SetText =>
    setText([paragraph(text, type)], besideLogoMm, context);
  const draw = (tag: 'H1' | 'P', text: SetText, yMm: number) =>
    surface.within(tag, {}, () => drawText(surface, context, text, xMm, yMm));
  const top = frame.yMm;
  const line = set(words.coverLine, coverLine);
  const title = set(view.kitchenName, cover);
  const subtitle = set(words.subtitle(view.tins.length, view.recipes.length), lead);
  const people = [...(view.baker === null ? [] : [words.by(view.baker)]), view.place].join(', ');
  const edition = words.imprint.edition(words.date(view.edition), view.editionNote);
  const foot = setText([paragraph(people, body), paragraph(edition, bookletType.quiet)], widthMm, context);
  const plateTop = top + line.heightMm + title.heightMm + subtitle.heightMm + 14;
  const footTop = top + heightMm - foot.heightMm;
  surface.within('Sect', { key: 'cover' }, () => {
    surface.artifact(() => drawLogo(surface, context, xMm + widthMm - logoMm, top, LOGO_MM));
    draw('P', line, top);
    draw('H1', title, top + line.heightMm + 1);
    draw('P', subtitle, top + line.heightMm + title.heightMm + 4);
    const field = { xMm, yMm: plateTop, widthMm, heightMm: footTop - 8 - plateTop };
    drawPlate(surface, context, plansOf(view), field, words.coverPicture);
    surface.artifact(() => hairline(surface, context, xMm, footTop - 4, widthMm));
    draw('P', foot, footTop);
  });
}
