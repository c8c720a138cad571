/** The booklet of a kitchen: what it bakes, in what, how it is finished, and where to find it. */

import { volumeMl } from '../../compute/shapes/index.ts';
import type { Content } from '../../domain/content.ts';
import { USUAL_PAPER_MM } from '../../domain/printable.ts';
import type { Tin } from '../../domain/tin.ts';
import { type BookletWords, bookletWordsFor } from '../../wording/booklet/index.ts';
import { wordsFor } from '../../wording/locales/index.ts';
import { formatGrams } from '../../wording/mass.ts';
import { formatShare } from '../../wording/number.ts';
import { tinOtherSize, tinSize } from '../../wording/tin-size.ts';
import { wallWordsFor } from '../../wording/wall/index.ts';
import { bySize } from '../by-size.ts';
import { eggSizeText } from '../chart-notes.ts';
import { countFigure, volumeFigure } from '../figures.ts';
import type { FinishingChartView } from '../finishing-chart.types.ts';
import { pictureOfTin } from '../picture-of-tin.ts';
import type { TinChartView } from '../tin-chart.types.ts';
import type { WallCell, WallView } from '../wall.types.ts';
import { wallAllergens } from '../wall-allergens.ts';
import { wallOvenDials } from '../wall-oven-dials.ts';
import { tinAnchor } from './anchors.ts';
import type { BookletTable, BookletTin, BookletView, TableCell } from './booklet.types.ts';
import { bookletFinishing } from './booklet-finishing.ts';
import { bookletFlavours } from './booklet-flavours.ts';
import { bookletIndex } from './booklet-index.ts';
import { bookletOverview } from './booklet-overview.ts';
import { bookletRecipe } from './booklet-recipe.ts';
import { eggSizes } from './egg-sizes.ts';
import { portions } from './portions.ts';

/** What a booklet is made from. */
export interface BookletSource {
  content: Content;
  /** Charts of the booklet's recipes, with the booklet's tins, in its unit of weight. */
  charts: readonly TinChartView[];
  finishing: readonly FinishingChartView[];
  mass: 'g' | 'oz';
}

function bookletTin(tin: Tin, { kitchen: { locale } }: Content): BookletTin {
  const words = wordsFor(locale);
  return {
    id: tin.id,
    name: tin.name,
    anchor: tinAnchor(tin.id),
    sizeText: tinSize(tin, words),
    otherSizeText: tinOtherSize(tin, words),
    note: tin.note ?? '',
    picture: pictureOfTin(tin, words),
    volume: volumeFigure(volumeMl(tin)),
    owned: countFigure(tin.owned),
  };
}

const TONES: Record<WallCell['tone'], TableCell['tone']> = {
  plain: 'plain',
  contains: 'strong',
  nothing: 'plain',
  unknown: 'unknown',
};

/** A wall reference of few columns, at the booklet's size. */
function asTable({ id, title, lead, body, notes, cautions }: WallView): BookletTable[] {
  if (body.form !== 'table') return [];
  const columns = body.columns.map(({ id: column, name, unit, weight }) => ({
    id: column,
    name,
    unit,
    weight,
  }));
  const rows = body.rows.map((row) => ({
    id: row.id,
    cells: row.cells.map(
      ({ figure, text, tone }): TableCell => ({
        figure,
        text,
        small: '',
        tone: TONES[tone],
      }),
    ),
  }));
  return [{ id, title, lead, columns, rows, anchors: {}, notes, cautions }];
}

function referenceOf(content: Content, words: BookletWords): BookletTable[] {
  const { locale } = content.kitchen;
  const wall = wallWordsFor(locale);
  const cut = portions(content, words);
  return [
    ...asTable({ ...wallOvenDials(content.kitchen, wall), title: words.oven.heading }),
    ...(cut === null ? [] : [cut]),
    eggSizes(content.kitchen, words),
    ...asTable({ ...wallAllergens(content, wordsFor(locale), wall), title: words.allergens.heading }),
  ];
}

function useOf({ content, charts, mass }: BookletSource, words: BookletWords): BookletView['use'] {
  const { egg, scale, locale } = content.kitchen;
  const { points, allergens } = words.use;
  const hasEggs = charts.some(({ rows }) => rows.some(({ eggs }) => eggs !== null));
  const size = eggSizeText(egg, wordsFor(locale));
  const told = egg.otherwise === 'weigh' ? points.eggsWeighed : points.eggs;
  const cautions = wordsFor(locale).cautions;
  return {
    points: [
      points.row,
      ...(charts.some(({ rows }) => rows.some(({ count }) => count > 1)) ? [points.pairs] : []),
      ...(hasEggs ? [{ head: told.head, text: told.text(size, formatShare(egg.tolerance)) }] : []),
      mass === 'oz'
        ? points.ounces
        : {
            head: points.weights.head,
            text: points.weights.text(formatGrams(scale.stepG), formatGrams(scale.fineStepG)),
          },
      points.fill,
      ...(hasEggs ? [points.over] : []),
      points.letters,
      ...(charts.some(({ bake }) => bake) ? [points.oven] : []),
      ...(content.kitchen.siteUrl === undefined ? [] : [points.code]),
    ],
    cautions: [
      { code: 'allergens-general', text: allergens },
      { code: 'raw-batter', text: cautions['raw-batter'] },
      { code: 'hot-tins', text: cautions['hot-tins'] },
    ],
  };
}

/** Everything the booklet says. Recipes without a chart are left out. */
export function bookletView(source: BookletSource): BookletView {
  const { content, charts, finishing, mass } = source;
  const { kitchen, booklet } = content;
  const words = bookletWordsFor(kitchen.locale);
  const tins = kitchen.tins.filter(({ owned }) => owned > 0).sort(bySize);
  const plain = charts.filter(({ flavours }) => flavours.length === 0);
  const held = content.recipes.flatMap((recipe) => {
    const chart = plain.find((one) => one.recipe.id === recipe.id);
    return chart === undefined ? [] : [{ recipe, chart }];
  });
  const view = {
    kitchenName: kitchen.name,
    place: kitchen.place,
    baker: kitchen.baker ?? null,
    edition: kitchen.edition,
    editionNote: booklet.editionNote ?? '',
    licence: booklet.licence ?? null,
    preparedFor: booklet.preparedFor ?? null,
    siteUrl: kitchen.siteUrl ?? null,
    mass,
    paperThicknessMm: booklet.paperThicknessMm ?? USUAL_PAPER_MM,
    use: useOf({ ...source, charts: plain }, words),
    overview: bookletOverview(
      held.map(({ recipe }) => recipe),
      content,
      words,
    ),
    recipes: held.map(({ recipe, chart }) => bookletRecipe(recipe, chart, content, words)),
    flavours: bookletFlavours(content, words),
    finishing: bookletFinishing(finishing[0], content, words),
    tins: tins.map((tin) => bookletTin(tin, content)),
    reference: referenceOf(content, words),
  };
  return { ...view, index: bookletIndex(view, content) };
}
