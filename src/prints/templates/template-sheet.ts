/**
 * Head and foot of a pattern sheet: what it is, which sheet, the bar of 100 mm to check the printer by, and the
 * caution. Margins are 8 mm, narrower than the house's: patterns need the room, and home printers reach 6 mm.
 */

import type { PaperName } from '../../domain/kitchen.ts';
import type { LiningTemplateView } from '../../views/lining-template.types.ts';
import type { TemplateLabels } from '../../wording/lining-template/sheet-words.ts';
import { paragraph } from '../sheet/lines.ts';
import { portraitSheet, type SheetSize } from '../sheet/paper.ts';
import { lineWeightPt } from '../sheet/rules.ts';
import type { SheetContext } from '../sheet/sheet-context.ts';
import type { PathStep, Surface } from '../sheet/surface.ts';
import { drawText, setText } from '../sheet/text-block.ts';
import { type TypeStyle, typeScale } from '../sheet/type-scale.ts';
import { straightLine } from './marks.ts';

const TEMPLATE_MARGIN_MM = 8;
const HEAD_MM = 12;
const FOOT_MM = 16;
const RULER_MM = 100;

export interface TemplateFrame {
  xMm: number;
  yMm: number;
  widthMm: number;
  heightMm: number;
}

/** The room for parts. */
export function templateFrame(paper: PaperName): TemplateFrame & { size: SheetSize } {
  const size = portraitSheet(paper);
  return {
    size,
    xMm: TEMPLATE_MARGIN_MM,
    yMm: TEMPLATE_MARGIN_MM + HEAD_MM,
    widthMm: size.widthMm - 2 * TEMPLATE_MARGIN_MM,
    heightMm: size.heightMm - 2 * TEMPLATE_MARGIN_MM - HEAD_MM - FOOT_MM,
  };
}

/** Every 10 mm a tick, longer at 0, 50 and 100. */
function rulerSteps(xMm: number, yMm: number): PathStep[] {
  const ticks = Array.from({ length: RULER_MM / 10 + 1 }, (_, index) => {
    const x = xMm + index * 10;
    return straightLine({ x, y: yMm }, { x, y: yMm - (index % 5 === 0 ? 4 : 2.2) });
  });
  return [...straightLine({ x: xMm, y: yMm }, { x: xMm + RULER_MM, y: yMm }), ...ticks.flat()];
}

const numberType: TypeStyle = { font: 'text', sizePt: 8, leadingPt: 9, colour: 'ink', tabular: true };

function drawRuler(surface: Surface, context: SheetContext, xMm: number, yMm: number): void {
  surface.path(rulerSteps(xMm, yMm), { stroke: context.inks.ink, lineWidthPt: lineWeightPt.outline });
  const { font, sizePt } = numberType;
  const place = (text: string, atMm: number, share: number) => {
    const width = context.metrics.widthMm(text, font, sizePt);
    surface.text({
      text,
      xMm: xMm + atMm - width * share,
      yMm: yMm + 3.4,
      font,
      sizePt,
      colour: context.inks.ink,
    });
  };
  place('0', 0, 0);
  place('50', RULER_MM / 2, 0.5);
  place('100 mm', RULER_MM, 1);
}

export interface SheetWords {
  view: Pick<
    LiningTemplateView,
    'title' | 'tinName' | 'edition' | 'sizeText' | 'otherSizeText' | 'kitchenName'
  >;
  labels: TemplateLabels;
  sheet: number;
  sheets: number;
}

function drawEnd(
  surface: Surface,
  context: SheetContext,
  text: string,
  type: TypeStyle,
  rightMm: number,
  yMm: number,
) {
  const width = context.metrics.widthMm(text, type.font, type.sizePt, type.tabular);
  const { font, sizePt, colour } = type;
  surface.text({ text, xMm: rightMm - width, yMm, font, sizePt, colour: context.inks[colour] });
}

const GAP_MM = 5;

/** The first wording that leaves room for what stands opposite; the last one is cut with an ellipsis. */
function fitting(
  wordings: readonly string[],
  type: TypeStyle,
  roomMm: number,
  { metrics }: SheetContext,
): string {
  const fits = (text: string) => metrics.widthMm(text, type.font, type.sizePt) <= roomMm;
  const whole = wordings.find(fits);
  if (whole !== undefined) return whole;
  let letters = Array.from(wordings.at(-1) ?? '');
  while (letters.length > 0 && !fits(`${letters.join('')}…`)) letters = letters.slice(0, -1);
  return `${letters.join('')}…`;
}

function drawHead(surface: Surface, context: SheetContext, size: SheetSize, words: SheetWords): void {
  const { view, labels, sheet, sheets } = words;
  const { metrics } = context;
  const right = size.widthMm - TEMPLATE_MARGIN_MM;
  const roomMm = right - TEMPLATE_MARGIN_MM - GAP_MM;
  const widthMm = (text: string, type: TypeStyle) => metrics.widthMm(text, type.font, type.sizePt);
  const [first, second] = [TEMPLATE_MARGIN_MM + 3.6, TEMPLATE_MARGIN_MM + 8];
  const start = (text: string, type: TypeStyle, yMm: number) => {
    const { font, sizePt, colour } = type;
    surface.text({ text, xMm: TEMPLATE_MARGIN_MM, yMm, font, sizePt, colour: context.inks[colour] });
  };
  const strong: TypeStyle = { ...typeScale.bodyStrong, colour: 'ink' };
  const quiet = typeScale.furniture;
  const number = labels.sheet(sheet, sheets);
  drawEnd(surface, context, number, strong, right, first);
  start(
    fitting([view.title, view.tinName], strong, roomMm - widthMm(number, strong), context),
    strong,
    first,
  );
  const dated = labels.edition(view.edition);
  const sizes = [`${view.sizeText} ${view.otherSizeText}`, view.sizeText];
  const sizeText = fitting(sizes, quiet, roomMm - widthMm(dated, quiet), context);
  const editions = [`${view.kitchenName}, ${dated}`, dated];
  start(sizeText, quiet, second);
  drawEnd(
    surface,
    context,
    fitting(editions, quiet, roomMm - widthMm(sizeText, quiet), context),
    quiet,
    right,
    second,
  );
}

function drawFoot(surface: Surface, context: SheetContext, size: SheetSize, labels: TemplateLabels): void {
  const bottom = size.heightMm - TEMPLATE_MARGIN_MM;
  drawRuler(surface, context, TEMPLATE_MARGIN_MM, bottom - 4.2);
  const left = TEMPLATE_MARGIN_MM + RULER_MM + 6;
  const type: TypeStyle = { ...typeScale.furniture, colour: 'ink' };
  const text = setText(
    [paragraph(labels.check, { ...type, font: 'textBold' }), paragraph(labels.notFoodSafe, type)],
    size.widthMm - TEMPLATE_MARGIN_MM - left,
    context,
  );
  drawText(surface, context, text, left, bottom - text.heightMm);
}

/** Everything around the parts of one sheet. */
export function drawTemplateFurniture(
  surface: Surface,
  context: SheetContext,
  size: SheetSize,
  words: SheetWords,
) {
  drawHead(surface, context, size, words);
  drawFoot(surface, context, size, words.labels);
}
