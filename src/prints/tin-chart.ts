/**
 * The tin chart on paper: what goes into every tin, the egg ladder, how to read it, and the cautions. A table where
 * the ingredients fit across a sheet at a readable size (upright before lengthwise), else a block for each tin.
 */
import type { HouseStyle } from '../domain/house-style.ts';
import type { Locale, PaperName } from '../domain/kitchen.ts';
import { workingPath } from '../views/nav.ts';
import type { EggLadder, TinChartView } from '../views/tin-chart.types.ts';
import { wordsFor } from '../wording/locales/index.ts';
import { scaleBarMm } from '../wording/scale-bar.ts';
import { furnitureOf } from './labels/furniture.ts';
import { labelsInOunces } from './labels/in-ounces.ts';
import { labelsFor } from './labels/labels.ts';
import { beside, caution, heading, list, textParagraph, together } from './sheet/blocks.ts';
import type { Section } from './sheet/flow.ts';
import { paragraph } from './sheet/lines.ts';
import { besideCode, type PageCode, pageCode } from './sheet/page-code.ts';
import { landscapeSheet, portraitSheet, type SheetSize } from './sheet/paper.ts';
import { frameOf, sheetPages } from './sheet/sheet.ts';
import { sheetContext } from './sheet/sheet-context.ts';
import type { Block } from './sheet/strip.ts';
import type { Metrics, Print } from './sheet/surface.ts';
import { table, tableFits } from './sheet/table/table.ts';
import { type Arrangement, commonScale } from './sheet/tin-drawing.ts';
import { typeScale } from './sheet/type-scale.ts';
import type { ChartContext } from './tin-chart/chart-context.ts';
import { chartTable } from './tin-chart/chart-table.ts';
import { fillsTable, ladderTable, turnedLadderTables } from './tin-chart/ladder-table.ts';
import { factRow } from './tin-chart/masthead.ts';
import { ovenSection } from './tin-chart/oven-table.ts';
import { tinEntry } from './tin-chart/tin-entry.ts';

const MOST_COLUMNS = 8;
/** From this width on, notes and cautions stand side by side. */
const TWO_COLUMNS_MM = 230;
const drawingFields = { beside: { widthMm: 31, heightMm: 15 }, below: { widthMm: 17, heightMm: 17 } };

export interface TinChartOptions {
  /** Address of the site's root, with or without a slash at its end; rows then link to their working. */
  siteUrl?: string;
  /** The unit that the view's weights are shown in; grams when left out. */
  mass?: 'g' | 'oz';
}

interface Layout {
  size: SheetSize;
  form: 'table' | 'entries';
  context: ChartContext;
}

type Parts = Omit<ChartContext, 'drawings'>;

function withDrawings(parts: Parts, arrangement: Arrangement): ChartContext {
  const field = drawingFields[arrangement];
  const pictures = parts.view.rows.map((row) => row.picture);
  return { ...parts, drawings: { arrangement, field, scale: commonScale(pictures, field, arrangement) } };
}

/** The first that fits: upright, lengthwise, lengthwise with narrow columns, a block for each tin. */
function layoutFor(parts: Parts, paper: PaperName): Layout {
  const roomy = withDrawings(parts, 'beside');
  const narrow = withDrawings(parts, 'below');
  const upright = portraitSheet(paper);
  const lengthwise = landscapeSheet(paper);
  const tables: Layout[] = [
    { size: upright, form: 'table', context: roomy },
    { size: lengthwise, form: 'table', context: roomy },
    { size: lengthwise, form: 'table', context: narrow },
  ];
  const fits = ({ size, context }: Layout) =>
    tableFits(chartTable(context), frameOf(size, context.sheet).widthMm, context.sheet);
  const asTable = parts.view.columns.length <= MOST_COLUMNS ? tables.find(fits) : undefined;
  return asTable ?? { size: upright, form: 'entries', context: roomy };
}

/** The last entry takes the one before it along, rather than stand on a page of its own. */
const noneAlone = (entries: Block[]): Block[] =>
  entries.length < 2 ? entries : [...entries.slice(0, -2), together(...entries.slice(-2))];

function chartSection(context: ChartContext, form: Layout['form'], code: PageCode | null): Section {
  const { view, labels } = context;
  const hasEggs = view.rows.some((row) => row.eggs !== null);
  const facts = [
    { label: labels.finishedHeight, text: view.finishedHeightText, share: 1 },
    ...(hasEggs ? [{ label: labels.eggSize, text: view.eggSizeText, share: 1 }] : []),
    { label: labels.provenIn, text: view.basisText, share: 2 },
  ];
  const rows =
    form === 'table'
      ? [table(chartTable(context))]
      : noneAlone(view.rows.map((row, index) => tinEntry(row, context, index === 0)));
  return {
    key: 'chart',
    blocks: [
      besideCode(
        heading(view.title, { level: 1, type: typeScale.title, bookmark: labels.chart, anchor: 'chart' }),
        code,
      ),
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
  return [...turnedLadderTables(ladder, context, widthMm), fillsTable(ladder, context)].map(table);
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

function notesSection({ view, labels }: ChartContext, widthMm: number): Section {
  const notes = list('notes', view.notes);
  const cautions = view.cautions.map((entry) => caution(labels.caution, entry.text));
  return {
    key: 'notes',
    blocks: [
      heading(labels.notes, { level: 2, type: typeScale.section, bookmark: labels.notes, anchor: 'notes' }),
      ...(widthMm >= TWO_COLUMNS_MM ? [beside([notes], cautions)] : [notes, ...cautions]),
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
  const labels = options.mass === 'oz' ? labelsInOunces(labelsFor(lang)) : labelsFor(lang);
  const site = options.siteUrl?.replace(/\/*$/, '');
  const workingUrl = (rowId: string) => (site ? `${site}/${workingPath(view.id)}#${rowId}` : null);
  const { size, form, context } = layoutFor(
    { view, labels, words: wordsFor(lang), sheet, workingUrl },
    paper,
  );
  const { scale } = context.drawings;
  const { widthMm } = frameOf(size, sheet);
  const sections = [
    chartSection(context, form, pageCode(options.siteUrl, workingPath(view.id), labels.allWorking)),
    ...ovenSection(view, lang),
    notesSection(context, widthMm),
    ...ladderSection(context, widthMm),
  ];
  return {
    path: `tin-charts/${view.id}-${paper.toLowerCase()}`,
    title: `${view.title} – ${view.kitchenName}`,
    lang,
    subject: view.summary,
    pages: sheetPages(sections, size, sheet, {
      ...furnitureOf(view, labels),
      scaleBar: { scale, lengthMm: scaleBarMm(lang, 'long'), text: labels.scale(scale) },
    }),
  };
}
