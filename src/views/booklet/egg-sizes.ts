/** What is an egg of another size worth? Grams without the shell, and how many stand for ten of the kitchen's. */
import { type EggScheme, gradesOf, PART_SHARE, tableShelledG } from '../../domain/egg.ts';
import type { Kitchen } from '../../domain/kitchen.ts';
import { quantiseG, quantiseRatio } from '../../domain/quantise.ts';
import type { BookletWords } from '../../wording/booklet/index.ts';
import { wordsFor } from '../../wording/locales/index.ts';
import { formatFixed } from '../../wording/number.ts';
import { eggSizeText } from '../chart-notes.ts';
import type { Figure } from '../figure.ts';
import type { BookletTable, TableColumn } from './booklet.types.ts';
import { figureCell, wordCell } from './cells.ts';

const TEN = 10;

const gramsFigure = (grams: number): Figure => ({
  value: quantiseG(grams),
  unit: 'g',
  text: formatFixed(grams, 1),
});

function countFigure(count: number): Figure {
  const value = quantiseRatio(count);
  return { value, unit: 'eggs', text: formatFixed(value, 1) };
}

function sizeRow(id: string, name: string, shelledG: number, ownG: number): BookletTable['rows'][number] {
  return {
    id,
    cells: [
      wordCell(name, id === 'own' ? 'strong' : 'plain'),
      figureCell(gramsFigure(shelledG)),
      figureCell(gramsFigure(shelledG * PART_SHARE.yolk)),
      figureCell(gramsFigure(shelledG * PART_SHARE.white)),
      figureCell(countFigure((TEN * ownG) / shelledG)),
    ],
  };
}

const SCHEMES: Record<Kitchen['locale'], readonly EggScheme[]> = {
  'en-GB': ['UK', 'US'],
  'en-US': ['US', 'UK'],
};

/** Sizes of both countries, the kitchen's own eggs first. */
export function eggSizes({ egg, locale }: Kitchen, words: BookletWords): BookletTable {
  const own = words.eggs;
  const { mass } = wordsFor(locale).units;
  const figure = (id: string, name: string, unit: string): TableColumn => ({ id, name, unit, weight: 'key' });
  const sizes = SCHEMES[locale].flatMap((scheme) =>
    gradesOf(scheme).map((grade) =>
      sizeRow(
        `${scheme}-${grade}`,
        own.scheme(scheme, grade),
        tableShelledG({ scheme, grade }) ?? 0,
        egg.shelledG,
      ),
    ),
  );
  return {
    id: 'eggs',
    title: own.heading,
    lead: own.lead(eggSizeText(egg, wordsFor(locale))),
    columns: [
      { id: 'size', name: own.size, unit: '', weight: 'word' },
      figure('egg', own.egg, mass),
      figure('yolk', own.yolk, mass),
      figure('white', own.white, mass),
      figure('for-ten', own.forTen, own.ofOurs),
    ],
    rows: [sizeRow('own', own.own, egg.shelledG, egg.shelledG), ...sizes],
    anchors: {},
    notes: [own.note],
    cautions: [{ code: 'raw-egg', text: own.caution }],
  };
}
