/** Oven loads on paper: shelves from above to one scale, and when to look at each tin in 14 pt below them. */
import type { HouseStyle } from '../domain/house-style.ts';
import type { Locale, PaperName } from '../domain/kitchen.ts';
import type { LookRow, OvenLoadView, OvenPlanView } from '../views/timetable/timetable.types.ts';
import { scaleBarMm } from '../wording/scale-bar.ts';
import { type TimetableWords, timetableWordsFor } from '../wording/timetable/index.ts';
import { furnitureOf } from './labels/furniture.ts';
import { labelsFor } from './labels/labels.ts';
import { caution, heading, textParagraph, together } from './sheet/blocks.ts';
import type { Section } from './sheet/flow.ts';
import { paragraph } from './sheet/lines.ts';
import { portraitSheet } from './sheet/paper.ts';
import { frameOf, sheetPages } from './sheet/sheet.ts';
import { sheetContext } from './sheet/sheet-context.ts';
import type { Block } from './sheet/strip.ts';
import type { Metrics, Print } from './sheet/surface.ts';
import { table } from './sheet/table/table.ts';
import type { Cell, Column, TableSpec } from './sheet/table/types.ts';
import { typeScale } from './sheet/type-scale.ts';
import { shelfScale, shelvesBlock } from './timetable/shelf-drawing.ts';

const CLOCK = { ...typeScale.key, sizePt: 14, leadingPt: 17 };
/** Shelves side by side, more of them below. */
const ABREAST = 2;

const body = (key: string, text: string): Block => textParagraph(key, paragraph(text, typeScale.body), 1.5);

const column = (text: string, rest: Partial<Column> = {}): Column => ({
  heading: [paragraph(text, typeScale.columnHead)],
  align: 'left',
  ...rest,
});

const clock = (text: string, ...below: string[]): Cell => ({
  paragraphs: [paragraph(text, CLOCK), ...below.map((minutes) => paragraph(minutes, typeScale.rowNote))],
});

function looksTable(load: OvenLoadView, { table: heads }: TimetableWords): TableSpec {
  const row = (look: LookRow) => ({
    cells: [
      clock(String(look.number)),
      {
        heading: true,
        paragraphs: [
          paragraph([look.name, look.aidText].filter((text) => text !== '').join(', '), typeScale.rowName),
          paragraph(
            [look.shelfText, look.forText].filter((text) => text !== '').join(' · '),
            typeScale.rowDetail,
          ),
        ],
      },
      clock(look.firstLook, look.firstLookMinutes.text),
      clock(look.likely, look.likelyMinutes.text),
      clock(look.by, look.byMinutes.text),
    ],
  });
  return {
    key: `looks-${load.id}`,
    whole: true,
    paddingMm: 0.9,
    columns: [
      column(heads.number),
      column(heads.tin, { narrowestMm: 50, widestMm: 80 }),
      column(heads.firstLook, { narrowestMm: 24 }),
      column(heads.likely, { narrowestMm: 24 }),
      column(heads.by, { narrowestMm: 24 }),
    ],
    rows: load.looks.map(row),
  };
}

function shelfRows(load: OvenLoadView, scale: number, words: TimetableWords): Block[] {
  const rows = Array.from({ length: Math.ceil(load.shelves.length / ABREAST) }, (_, at) =>
    load.shelves.slice(at * ABREAST, (at + 1) * ABREAST),
  );
  return rows.map((shelves) => shelvesBlock(shelves, scale, words));
}

function loadSection(load: OvenLoadView, scale: number, words: TimetableWords): Section {
  const { id, name, dial, dialOthers, whenText, heatNote, shelvesNote } = load;
  const title = `${name}: ${dial}`;
  return {
    key: id,
    blocks: [
      together(
        heading(title, { level: 2, type: typeScale.section, bookmark: title, anchor: id }),
        textParagraph('when', paragraph(whenText, typeScale.bodyStrong), 1),
        body('heat', `${heatNote} ${words.elsewhere(dialOthers)}`),
        ...(shelvesNote === '' ? [] : [body('shelves', shelvesNote)]),
        ...shelfRows(load, scale, words),
        table(looksTable(load, words)),
      ),
    ],
  };
}

/** Draws nothing yet: gives the pages for a renderer. */
export function ovenPlanPrint(
  view: OvenPlanView,
  style: HouseStyle,
  metrics: Metrics,
  paper: PaperName,
  lang: Locale,
): Print {
  const context = sheetContext(style, metrics);
  const labels = labelsFor(lang);
  const words = timetableWordsFor(lang);
  const size = portraitSheet(paper);
  const shelves = view.loads.flatMap((load) => load.shelves);
  const scale = shelfScale(shelves, ABREAST, frameOf(size, context).widthMm);
  const opening: Section = {
    key: 'opening',
    blocks: [
      heading(view.title, { level: 1, type: typeScale.title, bookmark: view.title, anchor: 'oven-plan' }),
      textParagraph('lead', paragraph(`${view.loadsText} ${view.lead}`, typeScale.lead)),
      body('gaps', view.gapText),
      body('done', view.doneTests),
      ...view.cautions.map(({ text }) => caution(labels.caution, text)),
    ],
  };
  const sections = [opening, ...view.loads.map((load) => loadSection(load, scale, words))];
  const lengthMm = scaleBarMm(lang, 'short');
  const scaleBar = { scale, lengthMm, text: words.scale(scale, lengthMm) };
  return {
    path: `orders/${view.id}-oven-plan-${paper.toLowerCase()}`,
    title: `${view.title} – ${view.kitchenName}`,
    lang,
    subject: view.lead,
    pages: sheetPages(sections, size, context, { ...furnitureOf(view, labels), scaleBar }),
  };
}
