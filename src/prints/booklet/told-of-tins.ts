/** What the booklet tells of every tin of a recipe: eggs, batter, each weight with its spoons, fill and surplus. */
import type { BookletRecipe, BookletRow } from '../../views/booklet/booklet.types.ts';
import type { BookletWords } from '../../wording/booklet/index.ts';
import { type Paragraph, paragraph } from '../sheet/lines.ts';
import type { Cell } from '../sheet/table/types.ts';
import type { TypeStyle } from '../sheet/type-scale.ts';
import { bookletType } from './booklet-type.ts';

/** The recipe whose tins are told of, and how. */
export interface TinsTold {
  recipe: BookletRecipe;
  words: BookletWords;
  mass: 'g' | 'oz';
}

export interface Told {
  name: string;
  unit: string;
  weight: 'strong' | 'plain' | 'quiet';
  cell(row: BookletRow): Cell;
}

const number = (text: string | undefined, type: TypeStyle): Cell =>
  text === undefined ? {} : { number: { text, type } };

/** Beaten egg to weigh is said in the first column of eggs. */
const eggsTold = (name: string, index: number): Told => ({
  name,
  unit: '',
  weight: 'strong',
  cell: ({ eggs, eggText }) =>
    eggText !== '' && index === 0
      ? { paragraphs: [paragraph(eggText, bookletType.figureNote)] }
      : number(eggs[index]?.text, bookletType.key),
});

const spoonsTold = (name: string, index: number): Told => ({
  name,
  unit: '',
  weight: 'quiet',
  cell: ({ amounts }) => {
    const spoons = amounts[index]?.spoons ?? null;
    return spoons === null ? {} : { paragraphs: [paragraph(spoons, bookletType.figureNote)] };
  },
});

function ingredientTold({ recipe, words }: TinsTold, name: string, index: number): Told[] {
  const hasSpoons = recipe.rows.some(({ amounts }) => amounts[index]?.spoons);
  const weighed: Told = {
    name,
    unit: '',
    weight: 'plain',
    cell: ({ amounts }) => number(amounts[index]?.figure.text, bookletType.figure),
  };
  return [weighed, ...(hasSpoons ? [spoonsTold(words.recipe.inSpoons, index)] : [])];
}

/** In the order of the work, what must stand together in one group; fill and surplus come last. */
export function toldInGroups(parts: TinsTold): Told[][] {
  const { recipe, words, mass } = parts;
  const { batter, fill, fillUnit, over } = words.recipe;
  const { key, figure } = bookletType;
  const extra: Told[] = [
    { name: fill, unit: fillUnit, weight: 'plain', cell: (row) => number(row.fill.text, figure) },
    { name: over, unit: mass, weight: 'plain', cell: (row) => number(row.surplus.text, figure) },
  ];
  return [
    ...recipe.eggHeadings.map((name, index) => [eggsTold(name, index)]),
    [{ name: batter, unit: mass, weight: 'strong', cell: (row) => number(row.batter.text, key) }],
    ...recipe.columns.map(({ name }, index) => ingredientTold(parts, name, index)),
    ...extra.map((one) => [one]),
  ];
}

/** 'Tray a b': the letters lead to the remarks below. */
export function tinHeading({ name, remarks }: BookletRow, type: TypeStyle): Paragraph {
  if (remarks.length === 0) return paragraph(name, type);
  const letters = `\u00a0${remarks.join('\u00a0')}`;
  return { spans: [{ text: name }, { text: letters, font: 'textItalic', colour: 'accent' }], type };
}
