/** The small table in front: a tin in each column; eggs, batter, ingredients and the oven down the side. */
import type { CardBake, CardTin, RecipeCardView } from '../../views/recipe-card.types.ts';
import type { Amount } from '../../views/tin-chart.types.ts';
import { type Paragraph, paragraph } from '../sheet/lines.ts';
import type { Block } from '../sheet/strip.ts';
import { table, tableFits } from '../sheet/table/table.ts';
import type { Cell, Row, TableSpec } from '../sheet/table/types.ts';
import type { TypeStyle } from '../sheet/type-scale.ts';
import type { CardParts } from './card-parts.ts';
import type { CardForm } from './card-size.ts';
import { stackedMm } from './fitting.ts';

/** The best few, in order of size. */
function tinsOnCard({ tins, sizeRank }: RecipeCardView, count: number): CardTin[] {
  return tins
    .map((tin, index) => ({ tin, rank: sizeRank[index] ?? index }))
    .slice(0, count)
    .sort((a, b) => a.rank - b.rank)
    .map(({ tin }) => tin);
}

const numberCell = (text: string, type: TypeStyle): Cell => ({ number: { text, type } });

function labelCell(text: string, { type }: CardForm, strong = false): Cell {
  const label: TypeStyle = strong ? { ...type.body, font: 'textBold' } : type.body;
  return { heading: true, paragraphs: [paragraph(text, label)] };
}

function amountCell(amount: Amount | undefined, { type }: CardForm): Cell {
  if (!amount) return {};
  const cell = numberCell(amount.figure.text, type.figure);
  return amount.spoons === null ? cell : { ...cell, paragraphs: [paragraph(amount.spoons, type.small)] };
}

/** 'Three eggs and two yolks' stands below the number; 'three eggs' would only repeat it. */
function eggsCell({ eggs }: CardTin, { type }: CardForm): Cell {
  if (eggs === null) return {};
  const weighed = eggs.rule === 'weigh';
  const plain = weighed || /^\S+ eggs?$/.test(eggs.text);
  return {
    ...numberCell(weighed ? '–' : eggs.whole.text, type.key),
    ...(plain ? {} : { paragraphs: [paragraph(eggs.text.toLowerCase(), type.small)] }),
  };
}

type TinCell = (tin: CardTin) => Cell;

const rowOf = (head: Cell, tins: readonly CardTin[], cell: TinCell): Row => ({
  cells: [head, ...tins.map(cell)],
});

function mixRows(tins: readonly CardTin[], { view, words, form }: CardParts): Row[] {
  const { key, figure } = form.type;
  const eggs = rowOf(labelCell(words.eggs, form, true), tins, (tin) => eggsCell(tin, form));
  const batter = rowOf(labelCell(words.batter, form, true), tins, (tin) => numberCell(tin.batter.text, key));
  const fill = rowOf(labelCell(words.fill, form), tins, (tin) => numberCell(tin.rawFill.text, figure));
  const amounts = view.columns.map(({ name }, index) =>
    rowOf(labelCell(name, form), tins, (tin) => amountCell(tin.amounts[index], form)),
  );
  return [...(tins.some((tin) => tin.eggs !== null) ? [eggs] : []), batter, ...amounts, fill];
}

const unbroken = (text: string): string => text.replaceAll(' ', '\u00a0');

function ovenRows(tins: readonly CardTin[], { words, form }: CardParts): Row[] {
  const row = (label: string, text: (bake: CardBake) => string): Row =>
    rowOf(labelCell(label, form, true), tins, ({ bake }) => ({
      paragraphs: [paragraph(bake ? text(bake) : '–', form.type.body)],
    }));
  const told = tins.flatMap(({ bake }) => bake ?? []);
  if (told.length === 0) return [];
  const core = row(words.core, (bake) => (bake.core ? words.coreIn : words.coreOut));
  const band = row(words.band, (bake) => (bake.band ? words.bandOn : words.coreOut));
  return [
    row(words.dial, ({ dial }) => unbroken(dial.text)),
    row(words.firstLook, ({ firstLook }) => unbroken(firstLook.text)),
    row(words.doneBy, ({ expectedBy }) => unbroken(expectedBy.text)),
    ...(told.some((bake) => bake.core) ? [core] : []),
    ...(told.some((bake) => bake.band) ? [band] : []),
  ];
}

/** 'round 6 × 3 in' may break after 'round' only. */
const unbrokenSize = (sizeText: string): string =>
  sizeText.replace(/\d[^,]*?\b(?:in|cm|mm|mL)\b/g, (size) => size.replaceAll(' ', '\u00a0'));

/** Air above and below the rows of a table. */
export const USUAL_MM = 0.3;
export const TIGHT_MM = 0.05;
const ROOMY_MM = 0.9;

/** The air that rows have when they share what is spare. */
export const paddingWith = (spareMm: number, rows: number, paddingMm: number): number =>
  Math.min(ROOMY_MM, paddingMm + Math.max(0, spareMm) / (2 * rows));

/** How tightly a table is set, and whether the oven stands below the weights. */
export interface TableOptions {
  oven: boolean;
  paddingMm: number;
}

function tableFor(tins: readonly CardTin[], parts: CardParts, options: TableOptions): TableSpec {
  const { view, words, form } = parts;
  const { small, body } = form.type;
  const headed = ({ name, sizeText }: CardTin): Paragraph[] => [
    paragraph(name, { ...small, font: 'textBold', colour: 'ink' }),
    paragraph(unbrokenSize(sizeText), small),
  ];
  const narrowestMm = body.sizePt * 1.9;
  return {
    key: 'weights',
    zebra: true,
    paddingMm: options.paddingMm,
    columns: [
      {
        heading: [paragraph(words.weightsIn(view.mass), small)],
        align: 'left',
        narrowestMm: body.sizePt * 2.4,
        widestMm: body.sizePt * 4.4,
      },
      ...tins.map((tin) => ({
        heading: headed(tin),
        align: 'right' as const,
        narrowestMm,
        widestMm: body.sizePt * 3.2,
      })),
    ],
    rows: [...mixRows(tins, parts), ...(options.oven ? ovenRows(tins, parts) : [])],
  };
}

export interface Weights {
  tins: CardTin[];
  rows(oven: boolean): number;
  /** Without the space above it, mm. */
  heightMm(options: TableOptions): number;
  block(options: TableOptions): Block;
}

/** A table is set once with the oven and once without: its height then follows from the air between its rows. */
function weightsFor(parts: CardParts, tins: CardTin[], widthMm: number): Weights {
  const bare = (oven: boolean) => {
    const spec = tableFor(tins, parts, { oven, paddingMm: 0 });
    return { rows: spec.rows.length, heightMm: stackedMm(table(spec)(widthMm, parts.context)) };
  };
  const known = new Map<boolean, ReturnType<typeof bare>>();
  const measured = (oven: boolean) => {
    const found = known.get(oven) ?? bare(oven);
    known.set(oven, found);
    return found;
  };
  return {
    tins,
    rows: (oven) => measured(oven).rows,
    heightMm({ oven, paddingMm }) {
      const { rows, heightMm } = measured(oven);
      return heightMm + 2 * paddingMm * rows;
    },
    block: (options) => table(tableFor(tins, parts, options)),
  };
}

/**
 * The tables that a width holds, with the most tins first and always the best ones; a single tin only where the
 * kitchen has no more or two do not fit.
 */
export function weightsTables(parts: CardParts, widthMm: number): Weights[] {
  const { view, form, context } = parts;
  const most = Math.min(form.mostTins, view.tins.length);
  const counts = Array.from({ length: most }, (_, index) => most - index);
  const all = counts.map((count) => tinsOnCard(view, count));
  const fits = (tins: CardTin[]) =>
    tins.length > 1 && tableFits(tableFor(tins, parts, { oven: true, paddingMm: 0 }), widthMm, context);
  const widest = all.findIndex(fits);
  const several = widest < 0 ? [] : all.slice(widest).filter((tins) => tins.length > 1);
  const chosen = several.length > 0 ? several : all.slice(-1);
  return chosen.map((tins) => weightsFor(parts, tins, widthMm));
}
