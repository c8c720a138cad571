/** What a chart row says in words: the tin's name and size, how deep to fill it, what is over, what to check. */

import type { LadderRung, TinChartRow } from '../../views/tin-chart.types.ts';
import { eggsInWords } from '../../wording/eggs.ts';
import { leftOver } from '../../wording/left-over.ts';
import { capitalised } from '../../wording/sentence-case.ts';
import { type Paragraph, paragraph, type Span } from '../sheet/lines.ts';
import { typeScale } from '../sheet/type-scale.ts';
import type { ChartContext } from './chart-context.ts';

const sentence = (text: string): string => {
  const capital = capitalised(text);
  return /[.!?]$/.test(capital) ? capital : `${capital}.`;
};

export const rowName = (row: TinChartRow, { labels }: ChartContext): string =>
  row.count > 1 ? labels.countOf(row.count, row.tinName) : row.tinName;

export function tinParagraphs(row: TinChartRow, context: ChartContext): Paragraph[] {
  const other = row.otherSizeText === '' ? '' : ` ${row.otherSizeText}`;
  return [
    paragraph(rowName(row, context), typeScale.rowName),
    paragraph(`${row.sizeText}${other}`, typeScale.rowDetail),
  ];
}

/** 'Three eggs and two yolks' where the count alone would mislead; null for plain eggs. */
function eggPartsText({ eggs }: TinChartRow, { words }: ChartContext): string | null {
  if (eggs === null) return null;
  const plain = eggsInWords([{ part: 'egg', whole: eggs.whole.value }], words);
  return eggs.text === plain ? null : eggs.text;
}

/** How to fill, what is over, and warnings, each warning with its word. */
export function fillingParagraphs(row: TinChartRow, context: ChartContext): Paragraph[] {
  const { labels, view } = context;
  const fill = labels.fillDeep(row.rawFill.text, row.rawFillShare.text);
  const pour = row.count > 1 ? labels.inEach : labels.inTin;
  const each = `${pour(row.receives.text)} `;
  const height =
    row.finishedHeight.text === view.finishedHeight.text ? '' : ` ${labels.bakesTo(row.finishedHeight.text)}`;
  const warnings = row.warnings.map((warning): Paragraph => {
    const word: Span = { text: `${labels.check}: `, font: 'textBold', colour: 'caution' };
    return { spans: [word, { text: sentence(warning.message) }], type: typeScale.rowNote };
  });
  const parts = eggPartsText(row, context);
  const spans: Span[] = [
    ...(parts === null ? [] : [{ text: `${sentence(parts)} `, font: 'textBold' as const }]),
    { text: `${each}${fill}${height} ${sentence(row.surplusText)} ` },
    { text: labels.holds(row.volume.text), colour: 'quietInk' },
  ];
  return [{ spans, type: typeScale.rowNote }, ...warnings];
}

/** The tins that a rung of the ladder fills, a line each, with what is left. */
export function fillParagraphs(rung: LadderRung, { labels, words }: ChartContext): Paragraph[] {
  if (rung.fills.length === 0)
    return [paragraph(words.chart.noFill, { ...typeScale.rowNote, colour: 'quietInk' })];
  return rung.fills.map((fill) => ({
    spans: [{ text: fill.text }, { text: `, ${leftOver(fill.left, labels)}`, colour: 'quietInk' }],
    type: typeScale.rowNote,
  }));
}
