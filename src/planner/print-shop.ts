/**
 * Prints made on the device, with the build's own print code and fonts: the same question gives the same bytes as
 * the build. Loaded only when somebody asks to print.
 */
import { instantOf } from '../domain/edition.ts';
import type { FontRole, HouseStyle } from '../domain/house-style.ts';
import type { PaperName } from '../domain/kitchen.ts';
import { fail, type Result, succeed } from '../domain/result.ts';
import { type LoadedFonts, loadFonts } from '../pdf/fonts.ts';
import { renderPdf } from '../pdf/render-pdf.ts';
import { liningTemplatePrint } from '../prints/lining-template.ts';
import { planSheetPrint } from '../prints/plan-sheet.ts';
import type { Print } from '../prints/sheet/surface.ts';
import { tinChartPrint } from '../prints/tin-chart.ts';
import { chartInput } from '../views/chart-inputs.ts';
import { chartIn } from '../views/in-ounces.ts';
import { liningTemplateView } from '../views/lining-template.ts';
import type { PlanView } from '../views/plan.types.ts';
import type { OrderHouse, PlannerContent } from '../views/planner-content.ts';
import { recipeBakes } from '../views/recipe-bakes.ts';
import { tinChartView } from '../views/tin-chart.ts';
import type { ReadOrder } from './kitchen-reader.ts';
import { orderContent, orderLabelSheets, orderSheets } from './order-prints.ts';

/** Written by the build beside the code. */
export interface PrintShopData {
  style: HouseStyle;
  producer: string;
  /** Font files as base64: they must also load from disk, where no page may fetch. */
  fonts: Record<FontRole, { name: string; base64: string }>;
  /** For orders and labels. */
  house: OrderHouse;
}

/** A print that was made, by the name the build gives its file. */
export interface MadePrint {
  title: string;
  fileName: string;
  bytes: Uint8Array;
}

export interface MadeOrder {
  prints: MadePrint[];
  /** What could not be made, and why. */
  refusals: string[];
}

export interface ChartAsk {
  recipeId: string;
  flavourIds: readonly string[];
  paper: PaperName;
  mass: 'g' | 'oz';
}

export interface PlanAsk {
  /** As it stands behind the # of the planner's address. */
  address: string;
  paper: PaperName;
  mass: 'g' | 'oz';
}

export interface PrintShop {
  /** The sheet of a plan, with boxes to tick; `view` in the unit asked for. */
  plan(content: PlannerContent, view: PlanView, ask: PlanAsk): Result<Uint8Array>;
  /** The tin chart of a recipe for the tins of this device's kitchen. */
  chart(content: PlannerContent, ask: ChartAsk): Result<Uint8Array>;
  /** The lining templates of one tin. */
  template(content: PlannerContent, tinId: string, paper: PaperName): Result<Uint8Array>;
  /** How this house works, to read an order by. */
  house: OrderHouse;
  /** The sheet to work an order from. */
  orderSheet(content: PlannerContent, order: ReadOrder, paper: PaperName): Result<MadeOrder>;
  /** Labels and allergen cards of its cakes. */
  labels(content: PlannerContent, order: ReadOrder, paper: PaperName): Result<MadeOrder>;
}

const bytesOf = (base64: string): Uint8Array => Uint8Array.from(atob(base64), (sign) => sign.charCodeAt(0));

function fontsOf({ fonts, style }: PrintShopData): Result<LoadedFonts> {
  const file = (role: FontRole) => ({ name: fonts[role].name, bytes: bytesOf(fonts[role].base64) });
  const files = {
    text: file('text'),
    textBold: file('textBold'),
    textItalic: file('textItalic'),
    heading: file('heading'),
  };
  return loadFonts(files, style.headingCase);
}

const unknown = (what: string): Result<Uint8Array> =>
  fail({ code: 'not-on-device', severity: 'error', message: `There is no ${what} here` });

function chartPrint(
  content: PlannerContent,
  ask: ChartAsk,
  data: PrintShopData,
  fonts: LoadedFonts,
): Print | null {
  const recipe = content.recipes.find(({ id }) => id === ask.recipeId);
  if (recipe === undefined) return null;
  const flavours = ask.flavourIds.flatMap((id) => content.flavours.find((one) => one.id === id) ?? []);
  const { kitchen } = content;
  const view = tinChartView(chartInput(content, recipe, flavours, recipeBakes(recipe, content)));
  const shown = chartIn(view, kitchen, ask.mass);
  const site = kitchen.siteUrl === undefined ? {} : { siteUrl: kitchen.siteUrl };
  return tinChartPrint(shown, data.style, fonts.metrics, ask.paper, kitchen.locale, {
    mass: ask.mass,
    ...site,
  });
}

/** Opens the shop: reads the fonts once. */
export function openPrintShop(data: PrintShopData): Result<PrintShop> {
  const fonts = fontsOf(data);
  if (!fonts.ok) return fonts;
  const rendered = (print: Print, { kitchen }: PlannerContent): Result<Uint8Array> =>
    renderPdf(print, fonts.value, {
      dated: instantOf(kitchen.edition),
      author: kitchen.name,
      producer: data.producer,
    });
  const whole = (content: PlannerContent, order: ReadOrder) =>
    orderContent(content, data.house, data.style, order);
  const made = (
    prints: readonly Print[],
    content: PlannerContent,
    refusals: string[] = [],
  ): Result<MadeOrder> => {
    const all = prints.map((print) => ({ print, file: rendered(print, content) }));
    const problems = all.flatMap(({ file }) => (file.ok ? [] : file.problems));
    if (problems.length > 0) return fail(...problems);
    const files = all.flatMap(({ print: { title, path }, file }) =>
      file.ok ? [{ title, fileName: `${path.split('/').at(-1)}.pdf`, bytes: file.value }] : [],
    );
    return succeed({ prints: files, refusals });
  };
  return {
    ok: true,
    value: {
      house: data.house,
      orderSheet: (content, order, paper) =>
        made(orderSheets(whole(content, order), fonts.value.metrics, paper), content),
      labels(content, order, paper) {
        const { prints, refusals } = orderLabelSheets(whole(content, order), fonts.value.metrics, paper);
        return made(prints, content, refusals);
      },
      plan(content, view, { paper, ...ask }) {
        const { kitchen } = content;
        const { name: kitchenName, edition, siteUrl } = kitchen;
        const site = siteUrl === undefined ? {} : { siteUrl };
        const options = { kitchenName, edition, ...ask, ...site };
        const { metrics } = fonts.value;
        return rendered(planSheetPrint(view, data.style, metrics, paper, kitchen.locale, options), content);
      },
      chart(content, ask) {
        const print = chartPrint(content, ask, data, fonts.value);
        return print === null ? unknown(`recipe '${ask.recipeId}'`) : rendered(print, content);
      },
      template(content, tinId, paper) {
        const tin = content.kitchen.tins.find(({ id }) => id === tinId);
        if (tin === undefined) return unknown(`tin '${tinId}'`);
        const view = liningTemplateView(tin, content);
        const print = liningTemplatePrint(
          view,
          data.style,
          fonts.value.metrics,
          paper,
          content.kitchen.locale,
        );
        return rendered(print, content);
      },
    },
  };
}
