/** The timetable on paper: a day's work line by line with boxes to tick, and a picture of the day above it. */
import type { HouseStyle } from '../domain/house-style.ts';
import type { Locale, PaperName } from '../domain/kitchen.ts';
import type { DayView, TimetableView } from '../views/timetable/timetable.types.ts';
import { type TimetableWords, timetableWordsFor } from '../wording/timetable/index.ts';
import { furnitureOf } from './labels/furniture.ts';
import { labelsFor } from './labels/labels.ts';
import { beside, caution, heading, textParagraph, together } from './sheet/blocks.ts';
import type { Section } from './sheet/flow.ts';
import { paragraph } from './sheet/lines.ts';
import { portraitSheet } from './sheet/paper.ts';
import { frameOf, sheetPages } from './sheet/sheet.ts';
import { type SheetContext, sheetContext } from './sheet/sheet-context.ts';
import type { Block } from './sheet/strip.ts';
import type { Metrics, Print, PrintPage } from './sheet/surface.ts';
import { table } from './sheet/table/table.ts';
import { typeScale } from './sheet/type-scale.ts';
import { dayBarsBlock } from './timetable/day-bars.ts';
import { dayTable } from './timetable/day-table.ts';

const body = (key: string, text: string): Block => textParagraph(key, paragraph(text, typeScale.body), 1.5);

function opening(
  view: TimetableView,
  words: TimetableWords,
  labels: { caution: string; check: string },
): Section {
  const { title, lead, loadsText, boundText, cautions, warnings } = view;
  const cautionBlocks = (some: typeof cautions): Block[] =>
    some.map(({ text }) => caution(labels.caution, text));
  return {
    key: 'opening',
    blocks: [
      heading(title, { level: 1, type: typeScale.title, bookmark: title, anchor: 'timetable' }),
      textParagraph('lead', paragraph(lead, typeScale.lead)),
      body('how', `${words.daySheetLead} ${loadsText} ${boundText}`),
      ...warnings.map(({ message }) => caution(labels.check, message)),
      beside(
        cautionBlocks(cautions.filter((_, at) => at % 2 === 0)),
        cautionBlocks(cautions.filter((_, at) => at % 2 === 1)),
      ),
    ],
  };
}

interface Sheet {
  showOrder: boolean;
  words: TimetableWords;
  context: SheetContext;
  widthMm: number;
  paddingMm: number;
}

function daySection(day: DayView, sheet: Sheet): Section {
  const { title, isoDate, summary, clockNote, bars } = day;
  return {
    key: isoDate,
    blocks: [
      together(
        heading(title, { level: 2, type: typeScale.section, bookmark: title, anchor: `day-${isoDate}` }),
        body('summary', summary),
        ...(clockNote === null ? [] : [body('clock', clockNote)]),
        dayBarsBlock(bars),
      ),
      table(dayTable(day, sheet)),
    ],
  };
}

/** Air above and below each line; less where that saves a page with a line or two. */
const AIRY_MM = 1.1;
const TIGHT_MM = 0.55;

/** Draws nothing yet: gives the pages for a renderer. */
export function daySheetPrint(
  view: TimetableView,
  style: HouseStyle,
  metrics: Metrics,
  paper: PaperName,
  lang: Locale,
): Print {
  const context = sheetContext(style, metrics);
  const labels = labelsFor(lang);
  const words = timetableWordsFor(lang);
  const orders = new Set(view.days.flatMap(({ rows }) => rows.map(({ forText }) => forText)));
  const size = portraitSheet(paper);
  const { widthMm } = frameOf(size, context);
  const pagesWith = (paddingMm: number): PrintPage[] => {
    const sheet = { showOrder: orders.size > 1, words, context, widthMm, paddingMm };
    const sections = [opening(view, words, labels), ...view.days.map((day) => daySection(day, sheet))];
    return sheetPages(sections, size, context, furnitureOf(view, labels));
  };
  const [airy, tight] = [pagesWith(AIRY_MM), pagesWith(TIGHT_MM)];
  const title = `${words.daySheet}: ${view.title}`;
  return {
    path: `orders/${view.id}-day-sheet-${paper.toLowerCase()}`,
    title: `${title} – ${view.kitchenName}`,
    lang,
    subject: view.lead,
    pages: tight.length < airy.length ? tight : airy,
  };
}
