/** Portions as data: a record is a tin and a size of portion; the stacks stand in the JSON and a CSV of their own. */
import type { Figure } from '../views/figure.ts';
import type { PortionsView, StackChoice, TinCut } from '../views/portions.types.ts';
import { canonicalJson, type Json } from './canonical-json.ts';
import { type Cell, csvText } from './csv.ts';

const figure = ({ value, unit, text }: Figure): Json => ({ value, unit, text });

function cutJson({ sizeId, rows, rings }: TinCut): Json {
  return {
    size: sizeId,
    rows: { count: figure(rows.count), whole: figure(rows.whole), alt: rows.alt },
    rings: rings && {
      count: figure(rings.count),
      detail: rings.detail,
      circles_mm: rings.circlesMm,
      circles: rings.circlesText,
      alt: rings.alt,
    },
  };
}

const choiceJson = (choice: StackChoice): Json => ({
  tiers: choice.tiers.map(({ id, name }) => ({ id, name })),
  text: choice.text,
  portions: figure(choice.portions),
  over: figure(choice.over),
  batter: figure(choice.batter),
  eggs: choice.eggsText,
  height: figure(choice.height),
});

/** The JSON file of a kitchen's portions. */
export function portionsJson(view: PortionsView): string {
  return canonicalJson({
    id: view.id,
    title: view.title,
    kitchen: view.kitchenName,
    edition: view.edition,
    sizes: view.columns.map(({ id, name, text }) => ({ id, name, text })),
    tins: view.rows.map(({ id, tinName, sizeText, otherSizeText, cuts }) => ({
      id,
      name: tinName,
      size: sizeText,
      other_size: otherSizeText,
      cuts: cuts.map(cutJson),
    })),
    stacks: view.stacks.map(({ wanted, choices, hasMore }) => ({
      wanted: figure(wanted),
      choices: choices.map(choiceJson),
      has_more: hasMore,
    })),
    stacks_about: view.stacksAbout,
    left_out: view.leftOut.map(({ id, text }) => ({ id, text })),
    notes: view.notes,
    cautions: view.cautions.map(({ code, text }) => ({ code, text })),
  });
}

const CUT_HEADER = [
  'tin',
  'name',
  'size',
  'portion',
  'portion size',
  'in rows (count)',
  'of these whole (count)',
  'in rings (count)',
  'ring by ring',
  'cautions',
];

/** The CSV file of every tin's portions. */
export function portionsCsv(view: PortionsView): string {
  const cautions = view.cautions.map(({ code, text }) => `[${code}] ${text}`).join('\n');
  const records = view.rows.flatMap((row) =>
    row.cuts.map((cut, at): Cell[] => [
      row.id,
      row.tinName,
      row.sizeText,
      cut.sizeId,
      view.columns[at]?.text ?? '',
      cut.rows.count.value,
      cut.rows.whole.value,
      cut.rings?.count.value ?? null,
      cut.rings?.detail ?? null,
      cautions,
    ]),
  );
  return csvText(CUT_HEADER, records);
}

const STACK_HEADER = [
  'guests (count)',
  'tiers, bottom first',
  'tins',
  'portions (count)',
  'over (count)',
  'batter (g)',
  'eggs',
  'height (mm)',
];

/** The CSV file of the stacks that serve a number of guests. */
export function stacksCsv(view: PortionsView): string {
  const records = view.stacks.flatMap(({ wanted, choices }) =>
    choices.map((choice): Cell[] => [
      wanted.value,
      choice.text,
      choice.tiers.map(({ id }) => id).join(' '),
      choice.portions.value,
      choice.over.value,
      choice.batter.value,
      choice.eggsText,
      choice.height.value,
    ]),
  );
  return csvText(STACK_HEADER, records);
}
