/** Every reader of text, with the good texts that its inputs are made from and the changes that suit them. */
import { POUNDS } from '../../src/domain/money.ts';
import type { Problem } from '../../src/domain/problem.ts';
import type { Result } from '../../src/domain/result.ts';
import { parseBakeLogCsv } from '../../src/parse/bake-log.ts';
import { parseFinishYaml } from '../../src/parse/finishes.ts';
import { parseFlavourYaml } from '../../src/parse/flavours.ts';
import { parseHouseStyleYaml } from '../../src/parse/house-style.ts';
import { parseIngredientsYaml } from '../../src/parse/ingredients.ts';
import { parseKitchenYaml } from '../../src/parse/kitchen.ts';
import { parseLogoSvg } from '../../src/parse/logo.ts';
import { parseOrderYaml } from '../../src/parse/orders.ts';
import { parseOutlineSvg } from '../../src/parse/outline-svg.ts';
import { parsePageMarkdown } from '../../src/parse/page.ts';
import { parseRecipeMarkdown } from '../../src/parse/recipe.ts';
import { parseSpec } from '../../src/parse/spec.ts';
import { parseStockCsv } from '../../src/parse/stock.ts';
import { goodText, goodTexts, type KnownToReaders, knownToReaders } from './good-kitchen.ts';
import { ANY_TEXT, type Change } from './mutate/any-text.ts';
import { CSV_TEXT } from './mutate/csv-text.ts';
import { SVG_TEXT } from './mutate/svg-text.ts';
import { YAML_TEXT } from './mutate/yaml-text.ts';
import { UNIT_TEXTS, unitAnswers } from './units.ts';

/** What a reader made of a text; `value` is null when it refused it. */
export interface Answer {
  value: unknown;
  problems: readonly Problem[];
}

export interface Reader {
  name: string;
  good: readonly string[];
  changes: readonly Change[];
  /** Part of all inputs, in hundredths. */
  share: number;
  read(text: string): Answer[];
}

const ofResult = (result: Result<unknown>): Answer =>
  result.ok ? { value: result.value, problems: [] } : { value: null, problems: result.problems };

const yaml = [...YAML_TEXT, ...ANY_TEXT];
const csv = [...CSV_TEXT, ...CSV_TEXT, ...ANY_TEXT];
const svg = [...SVG_TEXT, ...ANY_TEXT];

/** The kitchen's file with the parts that name things of other files. */
function readKitchen(text: string, known: KnownToReaders): Answer {
  const { kitchen, extras, problems } = parseKitchenYaml(text, 'kitchen.yaml', known.drawings);
  if (extras === null) return { value: null, problems };
  const names = { ...known.order, orders: { ids: ['fair-trays'], broken: [] } };
  const printables = extras.printables(names);
  const label = extras.label({ ...names, ingredients: { ids: ['caster-sugar'], broken: null } });
  const { finishing, altitudeM, booklet, costs, work, times, business, portionSizes } = extras;
  const more = {
    finishing,
    altitudeM,
    booklet,
    costs,
    work,
    times,
    business,
    portionSizes,
    printables,
    label,
  };
  const isSound = problems.every(({ severity }) => severity === 'warning');
  return { value: kitchen !== null && isSound ? { kitchen, ...more } : null, problems };
}

function settings(known: KnownToReaders): Reader[] {
  const shelf = known.recipe.shelf;
  return [
    {
      ...{ name: 'kitchen', good: [goodText('kitchen.yaml')], changes: yaml, share: 8 },
      read: (text) => [readKitchen(text, known)],
    },
    {
      ...{ name: 'ingredients', good: [goodText('ingredients.yaml')], changes: yaml, share: 3 },
      read(text) {
        const { ingredients, problems } = parseIngredientsYaml(text, 'ingredients.yaml', POUNDS);
        const isWhole = problems.every(({ severity }) => severity === 'warning');
        return [{ value: isWhole ? ingredients : null, problems }];
      },
    },
    {
      ...{ name: 'house-style', good: goodTexts('house-styles'), changes: yaml, share: 6 },
      read(text) {
        const { style, problems } = parseHouseStyleYaml(text, 'house-style.yaml');
        return [{ value: style, problems }];
      },
    },
    {
      ...{ name: 'stock', good: [goodText('stock.csv')], changes: csv, share: 8 },
      read(text) {
        const { stock, problems } = parseStockCsv(text, 'stock.csv', shelf);
        return [{ value: problems.length === 0 ? stock : null, problems }];
      },
    },
    {
      ...{ name: 'bake-log', good: [goodText('bake-log.csv')], changes: csv, share: 8 },
      read(text) {
        const { rows, problems } = parseBakeLogCsv(text, 'bake-log.csv', known.log);
        const isWhole = problems.every(({ severity }) => severity === 'warning');
        return [{ value: isWhole ? rows : null, problems }];
      },
    },
  ];
}

function files(known: KnownToReaders): Reader[] {
  const shelf = known.recipe.shelf;
  return [
    {
      ...{ name: 'recipe', good: goodTexts('recipes'), changes: yaml, share: 11 },
      read(text) {
        const { recipe, problems } = parseRecipeMarkdown(text, 'recipes/a.md', 'a', known.recipe);
        return [{ value: recipe, problems }];
      },
    },
    {
      ...{ name: 'flavour', good: goodTexts('flavours'), changes: yaml, share: 9 },
      read(text) {
        const { flavour, problems } = parseFlavourYaml(text, 'flavours/a.yaml', 'a', known.flavour);
        return [{ value: flavour, problems }];
      },
    },
    {
      ...{ name: 'finish', good: goodTexts('finishes'), changes: yaml, share: 9 },
      read(text) {
        const { finish, problems } = parseFinishYaml(text, 'finishes/a.yaml', 'a', shelf);
        return [{ value: finish, problems }];
      },
    },
    {
      ...{ name: 'order', good: goodTexts('orders'), changes: yaml, share: 10 },
      read(text) {
        const { order, problems } = parseOrderYaml(text, 'orders/a.yaml', 'a', known.order);
        return [{ value: order, problems }];
      },
    },
    {
      ...{ name: 'page', good: goodTexts('pages'), changes: yaml, share: 4 },
      read(text) {
        const { page, problems } = parsePageMarkdown(text, 'pages/a.md', 'a');
        return [{ value: page, problems }];
      },
    },
  ];
}

const SPECS = [
  '2 x round 6in x 3in, 1 x square 200mm x 75mm',
  '1 x rectangle 9in by 13in x 2in, 3 x round-8',
  '1 x hexagon flats 8in x 3in, 1 x heart across 8in x 3in, 1 x petal6 9in x 3in',
  '1 x long-octagon 12in by 9in slant 3in x 3in, 2 x oval 10in by 8in x 3in',
  '1 x ring 10in tube 3in x 3in, 1 x loaf 9in by 5in base 8in by 4in x 2.75in',
  '1 x round 8in base 7.5in x 3in, 1 x dome 8in x 2in, 1 x measured 1850ml x 75mm, 1 x outline six x 3in',
];

function drawings(known: KnownToReaders): Reader[] {
  return [
    {
      ...{ name: 'outline', good: goodTexts('outlines'), changes: svg, share: 7 },
      read: (text) => [
        ofResult(parseOutlineSvg(text, 'outlines/a.svg')),
        ofResult(parseOutlineSvg(text, 'outlines/a.svg', { sizeFromTin: true })),
      ],
    },
    {
      ...{ name: 'logo', good: [goodText('assets/logo.svg')], changes: svg, share: 3 },
      read(text) {
        const { drawing, problems } = parseLogoSvg(text, 'assets/logo.svg');
        return [{ value: drawing, problems }];
      },
    },
    {
      ...{ name: 'spec', good: SPECS, changes: ANY_TEXT, share: 4 },
      read: (text) => [ofResult(parseSpec(text, known.recipe.spec))],
    },
    {
      ...{ name: 'units', good: UNIT_TEXTS, changes: ANY_TEXT, share: 10 },
      read: (text) => unitAnswers(text).map(ofResult),
    },
  ];
}

/** All readers. */
export async function readers(): Promise<Reader[]> {
  const known = await knownToReaders();
  return [...settings(known), ...files(known), ...drawings(known)];
}
