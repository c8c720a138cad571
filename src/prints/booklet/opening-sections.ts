/** What comes before the recipes: how to use the booklet, and all recipes on one page. */
import type { BookletTable, BookletView } from '../../views/booklet/booklet.types.ts';
import { heading, textParagraph } from '../sheet/blocks.ts';
import type { Section } from '../sheet/flow.ts';
import { paragraph } from '../sheet/lines.ts';
import { cautionBlock } from '../sheet/method-blocks.ts';
import type { Block } from '../sheet/strip.ts';
import { heightOfBlocks } from './block-wraps.ts';
import { bookletType, methodLook } from './booklet-type.ts';
import type { SectionParts } from './recipe-section.ts';
import { tableBlocks } from './reference-section.ts';

function useBlocks(
  { points, cautions }: BookletView['use'],
  { words }: SectionParts,
  gapMm: number,
): Block[] {
  const { heading: title, lead } = words.use;
  return [
    heading(title, { level: 1, type: bookletType.part, bookmark: title, anchor: 'use' }),
    textParagraph('lead', paragraph(lead, bookletType.lead), 1),
    ...points.map(({ head, text }) =>
      textParagraph(
        head,
        { spans: [{ text: `${head} `, font: 'textBold' }, { text }], type: bookletType.body },
        gapMm,
      ),
    ),
    ...cautions.map(({ code, text }) => cautionBlock(code, words.caution, text, { ...methodLook, gapMm })),
  ];
}

const ROOMY_MM = 2.2;
const CLOSE_MM = 1;

/** On one page, a little closer where it would run over. */
export function useSection(use: BookletView['use'], parts: SectionParts): Section {
  const { widthMm, heightMm, context } = parts;
  const roomy = useBlocks(use, parts, ROOMY_MM);
  const fits = heightOfBlocks(roomy, widthMm, context) <= heightMm;
  return { key: 'use', startsPage: true, blocks: fits ? roomy : useBlocks(use, parts, CLOSE_MM) };
}

const withoutSmall = (view: BookletTable): BookletTable => ({
  ...view,
  rows: view.rows.map((row) => ({ ...row, cells: row.cells.map((cell) => ({ ...cell, small: '' })) })),
});

/** All recipes on one page: with their summaries while these leave room, else without. */
export function overviewSection(view: BookletTable, parts: SectionParts): Section {
  const { widthMm, heightMm, context } = parts;
  const full = tableBlocks(view, parts, 1);
  const fits = heightOfBlocks(full, widthMm, context) <= heightMm;
  return {
    key: 'overview',
    startsPage: true,
    blocks: fits ? full : tableBlocks(withoutSmall(view), parts, 1),
  };
}
