/** A recipe of the booklet: what it is, how it is made, its weights tin by tin, and its time in the oven. */
import type { Locale } from '../../domain/kitchen.ts';
import type { BookletRecipe } from '../../views/booklet/booklet.types.ts';
import { bakeWordsFor } from '../../wording/bake/index.ts';
import type { BookletWords } from '../../wording/booklet/index.ts';
import { beside, heading, textParagraph } from '../sheet/blocks.ts';
import type { Section } from '../sheet/flow.ts';
import { paragraph, type Span } from '../sheet/lines.ts';
import { cautionBlock, leadInBlock, methodBlocks } from '../sheet/method-blocks.ts';
import type { SheetContext } from '../sheet/sheet-context.ts';
import type { Block } from '../sheet/strip.ts';
import { table } from '../sheet/table/table.ts';
import type { Cell, TableSpec } from '../sheet/table/types.ts';
import { besideCode } from './beside-code.ts';
import { keptWithNext, noShortEnds, spaced } from './block-wraps.ts';
import { bookletType, methodLook } from './booklet-type.ts';
import { weightsTables } from './recipe-weights.ts';
import { headingOf, ROW_PADDING_MM } from './small-table.ts';

export interface SectionParts {
  siteUrl: string | null;
  words: BookletWords;
  lang: Locale;
  mass: 'g' | 'oz';
  context: SheetContext;
  widthMm: number;
  heightMm: number;
}

function factsBlock({ facts }: BookletRecipe): Block {
  const spans = facts.flatMap(({ label, text }, index): Span[] => [
    { text: `${label} `, font: 'textBold' },
    // The dot stays with what it closes.
    { text: index < facts.length - 1 ? `${text}\u00a0· ` : text },
  ]);
  return textParagraph('facts', { spans, type: bookletType.body }, 2);
}

function formulaTable(recipe: BookletRecipe, from: number, to: number, words: BookletWords): TableSpec {
  const { figure, rowWord } = bookletType;
  return {
    key: `formula ${from}`,
    paddingMm: 0.15,
    whole: true,
    columns: [
      { heading: headingOf(words.recipe.formula, ''), align: 'left' },
      { heading: headingOf(words.recipe.amount, ''), align: 'right' },
    ],
    rows: recipe.formula.slice(from, to).map(({ name, amountText, alsoText, anchor }) => ({
      anchor,
      cells: [
        {
          heading: true,
          paragraphs: [
            {
              spans: [
                { text: name },
                ...(alsoText === '' ? [] : [{ text: `, ${alsoText}`, colour: 'quietInk' as const }]),
              ],
              type: rowWord,
            },
          ],
        },
        { number: { text: amountText, type: figure } },
      ],
    })),
  };
}

function formulaBlocks(recipe: BookletRecipe, words: BookletWords): Block[] {
  const half = Math.ceil(recipe.formula.length / 2);
  const tables = beside(
    [spaced(table(formulaTable(recipe, 0, half, words)), 0)],
    half < recipe.formula.length
      ? [spaced(table(formulaTable(recipe, half, recipe.formula.length, words)), 0)]
      : [],
  );
  const total = `${words.recipe.total(recipe.totalText)} ${recipe.eggNote}`;
  return [spaced(tables, 3), textParagraph('total', paragraph(total, bookletType.quiet), 1.2)];
}

function ovenTable({ bakes }: BookletRecipe, { words, lang }: SectionParts): TableSpec {
  const { columns } = bakeWordsFor(lang);
  const { rowName, figure } = bookletType;
  const hasAid = bakes.some(({ aid }) => aid !== '');
  // '1 h 40 min' stays on its line.
  const cell = (text: string): Cell => ({ paragraphs: [paragraph(text.replaceAll(' ', '\u00a0'), figure)] });
  const named = (name: string) => ({ heading: headingOf(name, ''), align: 'left' as const });
  return {
    key: 'oven',
    zebra: true,
    paddingMm: ROW_PADDING_MM,
    columns: [
      { ...named(columns.tin), narrowestMm: 27 },
      named(columns.dial),
      named(columns.firstLook),
      named(columns.expectedBy),
      ...(hasAid ? [named(words.recipe.core)] : []),
    ],
    rows: bakes.map(({ name, dial, firstLook, expectedBy, aid, anchor }) => ({
      anchor,
      cells: [
        { heading: true, paragraphs: [paragraph(name, rowName)] },
        cell(dial.text),
        cell(firstLook.text),
        cell(expectedBy.text),
        ...(hasAid ? [cell(aid)] : []),
      ],
    })),
  };
}

const subheading = (text: string): Block =>
  heading(text, { level: 3, type: bookletType.heading, spaceMm: 5, bookmark: text });

function weightsBlocks(recipe: BookletRecipe, parts: SectionParts): Block[] {
  const { words, mass, context } = parts;
  const look = { ...methodLook, body: bookletType.small, gapMm: 0.9 };
  if (recipe.rows.length === 0) return [];
  return [
    keptWithNext(
      subheading(words.recipe.weights),
      textParagraph('basis', paragraph(recipe.basisText, bookletType.quiet), 0.5),
    ),
    ...weightsTables({ recipe, words, mass }, parts, context),
    ...recipe.remarks.map(({ letter, text }) =>
      textParagraph(
        `remark ${letter}`,
        {
          spans: [{ text: `${letter}\u00a0 `, font: 'textItalic', colour: 'accent' }, { text }],
          type: bookletType.small,
        },
        0.9,
      ),
    ),
    ...recipe.warnings.map((text, index) => cautionBlock(`warning ${index}`, words.check, text, look)),
  ];
}

function ovenBlocks(recipe: BookletRecipe, parts: SectionParts): Block[] {
  if (recipe.bakes.length === 0) return [];
  return [
    keptWithNext(
      subheading(parts.words.recipe.oven),
      textParagraph('bake-basis', paragraph(recipe.bakeBasisText, bookletType.quiet), 0.5),
    ),
    noShortEnds(table(ovenTable(recipe, parts))),
  ];
}

/** The section of one recipe; it begins a page. */
export function recipeSection(recipe: BookletRecipe, parts: SectionParts): Section {
  const { words } = parts;
  const caution = (code: string, text: string): Block => cautionBlock(code, words.caution, text, methodLook);
  return {
    key: recipe.anchor,
    startsPage: true,
    blocks: [
      besideCode(
        [
          heading(recipe.name, {
            level: 2,
            type: bookletType.title,
            bookmark: recipe.name,
            anchor: recipe.anchor,
          }),
          textParagraph('summary', paragraph(recipe.summary, bookletType.lead), 1),
          factsBlock(recipe),
        ],
        { siteUrl: parts.siteUrl, path: recipe.path, text: words.recipe.working },
      ),
      ...formulaBlocks(recipe, words),
      ...recipe.allergens.map(({ code, text }) => caution(code, text)),
      ...methodBlocks('method', recipe.method, methodLook),
      leadInBlock('ready', words.recipe.ready, recipe.readyText, { ...methodLook, gapMm: 3 }),
      ...(recipe.cautions.length === 0
        ? []
        : [caution('cautions', recipe.cautions.map(({ text }) => text).join(' '))]),
      ...weightsBlocks(recipe, parts),
      ...ovenBlocks(recipe, parts),
    ],
  };
}
