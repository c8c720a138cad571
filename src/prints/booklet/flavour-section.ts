/** The flavours: what changes, in shares and in the recipe as written, and why it balances. */
import type { BookletFlavour, BookletFlavourChange } from '../../views/booklet/booklet.types.ts';
import type { BookletWords } from '../../wording/booklet/index.ts';
import { heading, list, textParagraph } from '../sheet/blocks.ts';
import type { Section } from '../sheet/flow.ts';
import { paragraph } from '../sheet/lines.ts';
import { cautionBlock, leadInBlock } from '../sheet/method-blocks.ts';
import type { Block } from '../sheet/strip.ts';
import { table } from '../sheet/table/table.ts';
import type { Cell, TableSpec } from '../sheet/table/types.ts';
import { keptFromStart, spaced } from './block-wraps.ts';
import { bookletType, methodLook } from './booklet-type.ts';
import { headingOf, ROW_PADDING_MM } from './small-table.ts';

const figureCell = (text: string): Cell => ({ number: { text, type: bookletType.figure } });

function linesTable({ recipe, lines }: BookletFlavourChange, words: BookletWords): TableSpec {
  const own = words.flavours;
  const right = (name: string) => ({
    heading: headingOf(name, ''),
    align: 'right' as const,
    narrowestMm: 16,
  });
  return {
    key: `lines ${recipe.id}`,
    zebra: true,
    paddingMm: ROW_PADDING_MM,
    whole: true,
    columns: [
      { heading: headingOf(own.ingredient, ''), align: 'left', narrowestMm: 40 },
      right(own.plain),
      right(own.flavoured),
      right(own.change),
    ],
    rows: lines.map(({ name, before, after, change, anchor }) => ({
      anchor,
      cells: [
        { heading: true, paragraphs: [paragraph(name, bookletType.rowWord)] },
        figureCell(before?.text ?? '–'),
        figureCell(after?.text ?? '–'),
        figureCell(change.text),
      ],
    })),
  };
}

function changeBlocks(change: BookletFlavourChange, words: BookletWords): Block[] {
  const { recipe, lines, unchangedText, eggsText, wetText, growthText, allergenText } = change;
  const facts = [unchangedText, eggsText, wetText, growthText, allergenText].filter((text) => text);
  const look = { ...methodLook, gapMm: 1.2 };
  return [
    heading(words.flavours.inRecipe(recipe.name), { level: 3, type: bookletType.strong, spaceMm: 2.5 }),
    ...(lines.length === 0 ? [] : [spaced(table(linesTable(change, words)), 0.5)]),
    textParagraph(`facts ${recipe.id}`, paragraph(facts.join(' '), bookletType.small), 1.2),
    ...change.warnings.map((text, index) =>
      cautionBlock(`warning ${recipe.id} ${index}`, words.check, text, look),
    ),
    ...change.cautions.map(({ code, text }) =>
      cautionBlock(`${code} ${recipe.id}`, words.caution, text, { ...look, body: bookletType.small }),
    ),
  ];
}

function flavourBlocks(flavour: BookletFlavour, words: BookletWords): Block[] {
  const look = { ...methodLook, gapMm: 1.4 };
  return [
    keptFromStart([
      heading(flavour.name, {
        level: 2,
        type: bookletType.title,
        bookmark: flavour.name,
        anchor: flavour.anchor,
        spaceMm: 8,
      }),
      textParagraph('summary', paragraph(flavour.summary, bookletType.lead), 0.5),
      list('steps', flavour.steps, bookletType.body),
      leadInBlock('why', words.flavours.why, flavour.why, look),
      ...(flavour.method === null
        ? []
        : [leadInBlock('method', words.flavours.method, flavour.method, look)]),
    ]),
    ...flavour.changes.flatMap((change) => changeBlocks(change, words)),
    ...(flavour.alsoText === ''
      ? []
      : [textParagraph('also', paragraph(flavour.alsoText, bookletType.small), 1.2)]),
  ];
}

/** Sections of all flavours, the first with the part's heading; none without flavours. */
export function flavourSections(flavours: readonly BookletFlavour[], words: BookletWords): Section[] {
  const [first] = flavours;
  if (first === undefined) return [];
  const { heading: title, lead } = words.flavours;
  const opening: Section = {
    key: 'flavours',
    startsPage: true,
    blocks: [
      heading(title, { level: 1, type: bookletType.part, bookmark: title, anchor: 'flavours' }),
      textParagraph('lead', paragraph(lead, bookletType.body), 0.5),
    ],
  };
  return [
    opening,
    ...flavours.map((flavour) => ({
      key: flavour.anchor,
      blocks: flavourBlocks(flavour, words),
    })),
  ];
}
