/**
 * Fillings and coatings on paper: a table by use, tins down and finishes across, then what each finish is made
 * of, how to read it, and the cautions.
 */
import type { HouseStyle } from '../domain/house-style.ts';
import type { Locale, PaperName } from '../domain/kitchen.ts';
import type { FinishingChartView } from '../views/finishing-chart.types.ts';
import {
  type FinishingTable,
  type FinishingTableCell,
  type FinishingTableRow,
  finishingTables,
} from '../views/finishing-tables.ts';
import { workingPath } from '../views/nav.ts';
import { finishingTableWordsFor } from '../wording/finishing/tables.ts';
import { keptUnits } from '../wording/kept-units.ts';
import { furnitureOf } from './labels/furniture.ts';
import { labelsFor } from './labels/labels.ts';
import { beside, caution, heading, list, textParagraph } from './sheet/blocks.ts';
import type { Section } from './sheet/flow.ts';
import { type Paragraph, paragraph } from './sheet/lines.ts';
import { besideCode, pageCode } from './sheet/page-code.ts';
import { portraitSheet } from './sheet/paper.ts';
import { frameOf, sheetPages } from './sheet/sheet.ts';
import { sheetContext } from './sheet/sheet-context.ts';
import type { Metrics, Print, PrintPage } from './sheet/surface.ts';
import { table, tableFits } from './sheet/table/table.ts';
import type { Cell, Column, TableSpec } from './sheet/table/types.ts';
import { type TypeStyle, typeScale } from './sheet/type-scale.ts';

interface TableLook {
  /** Above and below each row. */
  paddingMm: number;
  /** The weight to make is what one works from. */
  strong: TypeStyle;
  small: TypeStyle;
  name: TypeStyle;
  size: TypeStyle;
}

const AIRY: TableLook = {
  paddingMm: 0.35,
  strong: { ...typeScale.key, sizePt: 14, leadingPt: 16 },
  small: typeScale.figureNote,
  name: typeScale.rowName,
  size: typeScale.rowDetail,
};
/** Closer where that keeps twenty tins on the page of their heading. */
const LOOKS: readonly TableLook[] = [
  AIRY,
  { ...AIRY, paddingMm: 0.1 },
  {
    paddingMm: 0,
    strong: { ...AIRY.strong, leadingPt: 14 },
    small: { ...AIRY.small, leadingPt: 9.8 },
    name: { ...AIRY.name, leadingPt: 12.6 },
    size: { ...AIRY.size, sizePt: 8.5, leadingPt: 10 },
  },
];

function figureCell({ main, small }: FinishingTableCell, look: TableLook): Cell {
  return {
    number: { text: main, type: look.strong },
    paragraphs: small.map((text) => paragraph(text, look.small)),
  };
}

/** Sizes such as '46 × 46 cm' are words, not figures to line up. */
function wordsCell({ main, small }: FinishingTableCell, look: TableLook): Cell {
  return {
    paragraphs: [paragraph(main, typeScale.figure), ...small.map((text) => paragraph(text, look.small))],
  };
}

function tinCell({ tinName, sizeText }: FinishingTableRow, { name, size }: TableLook): Cell {
  return {
    heading: true,
    paragraphs: [paragraph(tinName, name), paragraph(keptUnits(sizeText), size)],
  };
}

function columnHeading(name: string, small: string): Paragraph[] {
  return [
    paragraph(name, typeScale.columnHead),
    ...(small === '' ? [] : [paragraph(small, typeScale.columnUnit)]),
  ];
}

interface Setting {
  tinLabel: string;
  look: TableLook;
}

/** Some columns of a table, so that a wide one can go on several pages. */
function spec(source: FinishingTable, { tinLabel, look }: Setting, from: number, to: number): TableSpec {
  const ofFinishes = source.columns.some(({ finishId }) => finishId !== null);
  const columns = source.columns.slice(from, to).map(
    ({ name, small }): Column => ({
      heading: columnHeading(name, small),
      align: ofFinishes ? 'right' : 'left',
      ...(ofFinishes ? {} : { narrowestMm: 30, widestMm: 45 }),
    }),
  );
  const cell = ofFinishes ? figureCell : wordsCell;
  return {
    key: `${source.id}-${from}`,
    zebra: true,
    paddingMm: look.paddingMm,
    whole: true,
    columns: [
      { heading: columnHeading(tinLabel, ''), align: 'left', narrowestMm: 44, widestMm: 58 },
      ...columns,
    ],
    rows: source.rows.map((row) => ({
      cells: [tinCell(row, look), ...row.cells.slice(from, to).map((one) => cell(one, look))],
    })),
  };
}

/** As many columns as fit at a time, all of the same number or one fewer. */
function specs(source: FinishingTable, setting: Setting, fits: (table: TableSpec) => boolean): TableSpec[] {
  const all = source.columns.length;
  for (let parts = 1; parts <= all; parts += 1) {
    const each = Math.ceil(all / parts);
    const cut = Array.from({ length: Math.ceil(all / each) }, (_, part) =>
      spec(source, setting, part * each, Math.min(all, (part + 1) * each)),
    );
    if (cut.every(fits)) return cut;
  }
  throw new Error(`table '${source.id}' does not fit the sheet`);
}

export interface FinishingOptions {
  /** Address of the site's root; the sheet then carries a code that leads to its page. */
  siteUrl?: string;
}

/** Draws nothing yet: gives the pages for a renderer. */
export function finishingChartPrint(
  view: FinishingChartView,
  style: HouseStyle,
  metrics: Metrics,
  paper: PaperName,
  lang: Locale,
  { siteUrl }: FinishingOptions = {},
): Print {
  const sheet = sheetContext(style, metrics);
  const labels = labelsFor(lang);
  const words = finishingTableWordsFor(lang);
  const size = portraitSheet(paper);
  const { widthMm } = frameOf(size, sheet);
  const fits = (table: TableSpec): boolean => tableFits(table, widthMm, sheet);
  const cautions = view.cautions.map(({ text }) => caution(labels.caution, text));
  const first: Section = {
    key: 'notes',
    blocks: [
      besideCode(
        heading(view.title, { level: 1, type: typeScale.title, bookmark: view.title }),
        pageCode(siteUrl, workingPath(view.id), labels.allWorking),
      ),
      textParagraph('summary', paragraph(view.summary, typeScale.lead)),
      textParagraph(
        'settings',
        paragraph(
          `${view.settings.map(({ label, text }) => `${label}: ${text}`).join('. ')}.`,
          typeScale.body,
        ),
      ),
      ...view.warnings.map(({ message }) => caution(labels.check, message)),
      heading(labels.notes, { level: 2, type: typeScale.section, bookmark: labels.notes, anchor: 'notes' }),
      beside([list('how-to-read', [...view.notes, ...view.leftOut.map(({ text }) => text)])], cautions),
      heading(words.madeOf, { level: 2, type: typeScale.section, bookmark: words.madeOf }),
      list(
        'made-of',
        view.finishes.map(({ name, partsText, keepsText }) => `${name}. ${partsText} ${keepsText}`),
      ),
    ],
  };
  const uses = (setting: Setting): Section[] =>
    finishingTables(view, words).map((source) => ({
      key: source.id,
      startsPage: true,
      blocks: [
        heading(source.title, {
          level: 2,
          type: typeScale.section,
          bookmark: source.title,
          anchor: source.id,
        }),
        textParagraph('about', paragraph(source.about, typeScale.body), 1),
        ...specs(source, setting, fits).map(table),
      ],
    }));
  const tried = LOOKS.map((look): PrintPage[] => {
    const sections = [first, ...uses({ tinLabel: labels.tin, look })];
    return sheetPages(sections, size, sheet, furnitureOf(view, labels));
  });
  return {
    path: `finishing/${view.id}-${paper.toLowerCase()}`,
    title: `${view.title} – ${view.kitchenName}`,
    lang,
    subject: view.summary,
    pages: tried.reduce((best, pages) => (pages.length < best.length ? pages : best)),
  };
}
