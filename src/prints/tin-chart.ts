/**
 * The tin chart on paper: what goes into every tin, the egg ladder, how to read it, and the cautions. A table where
 * the ingredients fit across a sheet at a readable size (upright before lengthwise), else a block for each tin.
 */
import type { HouseStyle } from '../domain/house-style.ts';
import type { Locale, PaperName } from '../domain/kitchen.ts';
import type { EggLadder, TinChartView } from '../views/tin-chart.types.ts';
import { labelsFor } from './labels/labels.ts';
import { caution, heading, list, textParagraph } from './sheet/blocks.ts';
import type { Section } from './sheet/flow.ts';
import { paragraph } from './sheet/lines.ts';
import { landscapeSheet, portraitSheet, type SheetSize } from './sheet/paper.ts';
import { frameOf, sheetPages } from './sheet/sheet.ts';
import { sheetContext } from './sheet/sheet-context.ts';
import type { Block } from './sheet/strip.ts';
import type { Metrics, Print } from './sheet/surface.ts';
import { table, tableFits } from './sheet/table/table.ts';
import { commonScale } from './sheet/tin-drawing.ts';
import { typeScale } from './sheet/type-scale.ts';
import type { ChartContext } from './tin-chart/chart-context.ts';
import { chartTable, drawingField } from './tin-chart/chart-table.ts';
import { fillsTable, ladderTable, turnedLadderTable } from './tin-chart/ladder-table.ts';
import { factRow } from './tin-chart/masthead.ts';
import { tinEntry } from './tin-chart/tin-entry.ts';

const MOST_COLUMNS = 8;
const SCALE_BAR_MM = 200;

export interface TinChartOptions {
  /** Address of the site's root, with a slash at its end; rows then link to their working. */
  siteUrl?: string;
}

interface Layout {
  size: SheetSize;
  form: 'table' | 'entries';
}

function layoutFor(context: ChartContext, paper: PaperName): Layout {
  const upright = portraitSheet(paper);
  if (context.view.columns.length > MOST_COLUMNS) return { size: upright, form: 'entries' };
  const spec = chartTable(context);
  const size = [upright, landscapeSheet(paper)].find((sheet) =>
    tableFits(spec, frameOf(sheet, context.sheet).widthMm, context.sheet),
  );
  return size ? { size, form: 'table' } : { size: upright, form: 'entries' };
}

function chartSection(context: ChartContext, form: Layout['form']): Section {
  const { view, labels } = context;
  const facts = [
    { label: labels.finishedHeight, text: view.finishedHeightText, share: 1 },
    { label: labels.eggSize, text: view.eggSizeText, share: 1 },
    { label: labels.provenIn, text: view.basisText, share: 2 },
  ];
  const rows =
    form === 'table' ? [table(chartTable(context))] : view.rows.map((row) => tinEntry(row, context));
  return {
    key: 'chart',
    blocks: [
      heading(view.title, { level: 1, type: typeScale.title, bookmark: labels.chart, anchor: 'chart' }),
      textParagraph('summary', paragraph(view.summary, typeScale.lead)),
      factRow(facts),
      ...view.warnings.map((warning) => caution(labels.check, warning.message)),
      ...rows,
    ],
  };
}

function ladderBlocks(ladder: EggLadder, context: ChartContext, widthMm: number): Block[] {
  const across = ladderTable(ladder, context);
  if (ladder.columns.length <= MOST_COLUMNS && tableFits(across, widthMm, context.sheet))
    return [table(across)];
  return [table(turnedLadderTable(ladder, context)), table(fillsTable(ladder, context))];
}

function ladderSection(context: ChartContext, widthMm: number): Section[] {
  const { view, labels } = context;
  if (view.ladder === null) return [];
  return [
    {
      key: 'ladder',
      startsPage: true,
      blocks: [
        heading(labels.ladder, {
          level: 2,
          type: typeScale.section,
          bookmark: labels.ladder,
          anchor: 'ladder',
        }),
        textParagraph('lead', paragraph(labels.ladderLead, typeScale.body), 1),
        ...ladderBlocks(view.ladder, context, widthMm),
      ],
    },
  ];
}

function notesSection({ view, labels }: ChartContext): Section {
  return {
    key: 'notes',
    blocks: [
      heading(labels.notes, { level: 2, type: typeScale.section, bookmark: labels.notes, anchor: 'notes' }),
      list('notes', view.notes),
      ...view.cautions.map((entry) => caution(labels.caution, entry.text)),
    ],
  };
}

/** Draws nothing yet: gives the pages for a renderer. */
export function tinChartPrint(
  view: TinChartView,
  style: HouseStyle,
  metrics: Metrics,
  paper: PaperName,
  lang: Locale,
  options: TinChartOptions = {},
): Print {
  const sheet = sheetContext(style, metrics);
  const labels = labelsFor(lang);
  const scale = commonScale(
    view.rows.map((row) => row.picture),
    drawingField,
  );
  const { siteUrl } = options;
  const workingUrl = (rowId: string) => (siteUrl ? `${siteUrl}working/${view.id}.html#${rowId}` : null);
  const context: ChartContext = { view, labels, sheet, scale, workingUrl };
  const { size, form } = layoutFor(context, paper);
  const { widthMm } = frameOf(size, sheet);
  const sections = [chartSection(context, form), ...ladderSection(context, widthMm), notesSection(context)];
  return {
    path: `tin-charts/${view.id}-${paper.toLowerCase()}`,
    title: `${view.title} – ${view.kitchenName}`,
    lang,
    subject: view.summary,
    pages: sheetPages(sections, size, sheet, {
      kitchenName: view.kitchenName,
      title: view.title,
      edition: labels.edition(view.edition),
      pageText: labels.page,
      scaleBar: { scale, lengthMm: SCALE_BAR_MM, text: labels.scale(scale) },
    }),
  };
}
