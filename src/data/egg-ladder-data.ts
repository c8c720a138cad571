/** The egg ladder as data: for one egg, two eggs and so on the weights that go with them and what they fill. */
import type { EggLadder, LadderRung, TinChartView } from '../views/tin-chart.types.ts';
import { canonicalJson, type Json } from './canonical-json.ts';
import { type Cell, csvText } from './csv.ts';
import { amountData } from './tin-chart-data.ts';

/** The JSON file of a chart's ladder. */
export function eggLadderJson(view: TinChartView, ladder: EggLadder): string {
  return canonicalJson({
    id: view.id,
    title: view.title,
    recipe: { ...view.recipe },
    flavours: view.flavours.map((flavour) => ({ ...flavour })),
    egg_size: view.eggSizeText,
    rungs: ladder.rungs.map((rung) => rungData(rung, ladder)),
  });
}

function rungData(rung: LadderRung, ladder: EggLadder): Json {
  return {
    eggs: rung.eggs.value,
    text: rung.eggText,
    batter_g: rung.batter.value,
    ingredients: ladder.columns.map((column, at) => amountData(column.id, column.name, rung.amounts[at])),
    fills: rung.fills.map(({ text, used, left }) => ({
      text,
      used_g: used.value,
      left_g: left.value,
      shown: { used_g: used.text, left_g: left.text },
    })),
    shown: { eggs: rung.eggs.text, batter_g: rung.batter.text },
  };
}

/** The CSV file of a chart's ladder: a record per number of eggs, the best fills side by side. */
export function eggLadderCsv(view: TinChartView, ladder: EggLadder): string {
  const fills = Math.max(0, ...ladder.rungs.map((rung) => rung.fills.length));
  const fillNumbers = Array.from({ length: fills }, (_, at) => at);
  const header = [
    'eggs (count)',
    'eggs shown (count)',
    'eggs',
    'batter (g)',
    'batter shown (g)',
    ...ladder.columns.flatMap(({ id, name }) => [
      `${name} [${id}] (g)`,
      `${name} shown (g)`,
      `${name} in spoons`,
    ]),
    ...fillNumbers.flatMap((at) => fillHeader(at + 1)),
    'chart',
    'title',
    'recipe',
    'recipe name',
    'flavours',
    'flavour names',
    'egg size',
  ];
  const chart = [
    view.id,
    view.title,
    view.recipe.id,
    view.recipe.name,
    ...flavourCells(view),
    view.eggSizeText,
  ];
  return csvText(
    header,
    ladder.rungs.map((rung) => [
      ...rungCells(rung),
      ...fillNumbers.flatMap((at) => fillCells(rung, at)),
      ...chart,
    ]),
  );
}

function fillHeader(number: number): string[] {
  return [
    `fill ${number}`,
    `fill ${number} used (g)`,
    `fill ${number} used shown (g)`,
    `fill ${number} left (g)`,
    `fill ${number} left shown (g)`,
  ];
}

function rungCells(rung: LadderRung): Cell[] {
  return [
    rung.eggs.value,
    rung.eggs.text,
    rung.eggText,
    rung.batter.value,
    rung.batter.text,
    ...rung.amounts.flatMap(({ figure, spoons }): Cell[] => [figure.value, figure.text, spoons]),
  ];
}

function fillCells(rung: LadderRung, at: number): Cell[] {
  const fill = rung.fills[at];
  if (fill === undefined) return [null, null, null, null, null];
  return [fill.text, fill.used.value, fill.used.text, fill.left.value, fill.left.text];
}

function flavourCells(view: TinChartView): Cell[] {
  return [
    view.flavours.map((flavour) => flavour.id).join('\n'),
    view.flavours.map((flavour) => flavour.name).join('\n'),
  ];
}
