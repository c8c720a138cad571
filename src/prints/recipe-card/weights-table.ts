/** The small table in front: a tin in each column, eggs, batter and ingredients down the side. */
import type { CardTin, RecipeCardView } from '../../views/recipe-card.types.ts';
import type { Amount } from '../../views/tin-chart.types.ts';
import type { RecipeCardWords } from '../../wording/recipe-card/index.ts';
import { type Paragraph, paragraph } from '../sheet/lines.ts';
import type { SheetContext } from '../sheet/sheet-context.ts';
import { tableFits } from '../sheet/table/table.ts';
import type { Cell, Row, TableSpec } from '../sheet/table/types.ts';
import type { TypeStyle } from '../sheet/type-scale.ts';
import type { CardForm } from './card-size.ts';

interface TableParts {
  view: RecipeCardView;
  words: RecipeCardWords;
  form: CardForm;
}

/** The best few, in order of size. */
export function tinsOnCard({ tins, sizeRank }: RecipeCardView, count: number): CardTin[] {
  return tins
    .map((tin, index) => ({ tin, rank: sizeRank[index] ?? index }))
    .slice(0, count)
    .sort((a, b) => a.rank - b.rank)
    .map(({ tin }) => tin);
}

const numberCell = (text: string | undefined, type: TypeStyle): Cell =>
  text === undefined ? {} : { number: { text, type } };

function labelCell(text: string, { type }: CardForm, strong = false): Cell {
  const label: TypeStyle = strong ? { ...type.label, font: 'textBold' } : type.label;
  return { heading: true, paragraphs: [paragraph(text, label)] };
}

function amountCell(amount: Amount | undefined, { type }: CardForm): Cell {
  if (!amount) return {};
  const cell = numberCell(amount.figure.text, type.figure);
  return amount.spoons === null ? cell : { ...cell, paragraphs: [paragraph(amount.spoons, type.small)] };
}

function eggsCell({ eggs }: CardTin, { type }: CardForm): Cell {
  if (eggs === null) return {};
  const weighed = eggs.rule === 'weigh';
  const plain = weighed || /^\S+ eggs?$/.test(eggs.text);
  return {
    ...numberCell(weighed ? '–' : eggs.whole.text, type.key),
    ...(plain ? {} : { paragraphs: [paragraph(eggs.text.toLowerCase(), type.small)] }),
  };
}

const row = (head: Cell, cells: Cell[]): Row => ({ cells: [head, ...cells] });

/** All rows of the table for these tins. */
function rowsFor(tins: CardTin[], parts: TableParts): Row[] {
  const { view, words, form } = parts;
  const { key, figure } = form.type;
  const hasEggs = tins.some(({ eggs }) => eggs !== null);
  return [
    ...(hasEggs
      ? [
          row(
            labelCell(words.eggs, form, true),
            tins.map((tin) => eggsCell(tin, form)),
          ),
        ]
      : []),
    row(
      labelCell(words.batter, form, true),
      tins.map(({ batter }) => numberCell(batter.text, key)),
    ),
    ...view.columns.map(({ name }, index) =>
      row(
        labelCell(name, form),
        tins.map(({ amounts }) => amountCell(amounts[index], form)),
      ),
    ),
    row(
      labelCell(words.fill, form),
      tins.map(({ rawFill }) => numberCell(rawFill.text, figure)),
    ),
  ];
}

/** 'round 6 × 3 in' may break after 'round' only. */
const unbrokenSize = (sizeText: string): string =>
  sizeText.replace(/\d[^,]*?\b(?:in|cm|mm|mL)\b/g, (size) => size.replaceAll(' ', '\u00a0'));

function tableFor(tins: CardTin[], parts: TableParts): TableSpec {
  const { words, form } = parts;
  const { small } = form.type;
  const headed = ({ name, sizeText }: CardTin): Paragraph[] => [
    paragraph(name, { ...small, font: 'textBold', colour: 'ink' }),
    paragraph(unbrokenSize(sizeText), small),
  ];
  return {
    key: 'weights',
    zebra: true,
    paddingMm: 0.35,
    columns: [
      {
        heading: [paragraph(words.weightsFor, small)],
        align: 'left',
        narrowestMm: form.widthMm * 0.2,
        widestMm: form.widthMm * 0.3,
      },
      ...tins.map((tin) => ({
        heading: headed(tin),
        align: 'right' as const,
        narrowestMm: 18,
        widestMm: 30,
      })),
    ],
    rows: rowsFor(tins, parts),
  };
}

/** The table with as many tins as the card's width holds. */
export function weightsTable(parts: TableParts, widthMm: number, context: SheetContext): TableSpec {
  for (let count = Math.min(parts.form.mostTins, parts.view.tins.length); count > 1; count -= 1) {
    const spec = tableFor(tinsOnCard(parts.view, count), parts);
    if (tableFits(spec, widthMm, context)) return spec;
  }
  return tableFor(tinsOnCard(parts.view, 1), parts);
}

/** Dial and times of the same tins, a row each; null where no times are worked out. */
export function ovenTable(tins: readonly CardTin[], { words, form }: TableParts): TableSpec | null {
  const { small, body } = form.type;
  const told = tins.filter(({ dial }) => dial !== null);
  const text = (value: string): Cell => ({ paragraphs: [paragraph(value, body)] });
  const heading = (title: string): Paragraph[] => [paragraph(title, small)];
  if (told.length === 0) return null;
  return {
    key: 'oven',
    whole: true,
    paddingMm: 0.2,
    columns: [
      { heading: heading(words.tin), align: 'left' },
      { heading: heading(words.oven), align: 'left' },
      { heading: heading(words.firstLook), align: 'left' },
      { heading: heading(words.doneBy), align: 'left' },
    ],
    rows: told.map(({ name, dial, firstLook, expectedBy }) => ({
      cells: [
        { heading: true, paragraphs: [paragraph(name, body)] },
        text(dial?.text ?? ''),
        text(firstLook?.text ?? ''),
        text(expectedBy?.text ?? ''),
      ],
    })),
  };
}
