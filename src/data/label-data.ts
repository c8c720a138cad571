/**
 * A label as data. In the CSV a record is one thing that the label says: an ingredient, a nutrient, a fact, a line
 * as printed; value and unit where it is a number.
 */
import type { Figure } from '../views/figure.ts';
import type { LabelLine, LabelNutrient, LabelView } from '../views/label.types.ts';
import { canonicalJson } from './canonical-json.ts';
import { type Cell, csvText } from './csv.ts';

const figureData = ({ value, unit, text }: Figure) => ({ value, unit, text });

/** A line as read: the lead, then the words. */
export const lineText = ({ lead, runs }: LabelLine): string =>
  [lead, runs.map(({ text }) => text).join('')].filter((part) => part !== '').join(' ');

const nutrientData = ({ id, name, per100G, perPortion }: LabelNutrient) => ({
  id,
  name,
  per_100_g: per100G.map(figureData),
  per_portion: perPortion.map(figureData),
});

/** The JSON file of a label. */
export function labelJson(view: LabelView): string {
  return canonicalJson({
    label: view.id,
    food: view.foodName,
    kitchen: view.kitchenName,
    edition: view.edition,
    rules: view.rules,
    sale: view.sale,
    ingredients: view.ingredients.map(({ name, text, bowl, share, quid }) => ({
      name,
      text,
      bowl: figureData(bowl),
      share: figureData(share),
      of_the_cake: quid === null ? null : figureData(quid),
    })),
    allergens: view.allergens,
    may_contain: view.mayContain,
    finished: figureData(view.finished),
    keeps: figureData(view.keeps),
    storage: view.storageText,
    nutrition: view.nutrition === null ? null : view.nutrition.rows.map(nutrientData),
    lines: view.lines.map((line) => ({ id: line.id, text: lineText(line) })),
    card: view.card.map((line) => ({ id: line.id, text: lineText(line) })),
    notes: view.notes,
    cautions: view.cautions.map(({ code, text }) => ({ code, text })),
  });
}

const HEADER = ['label', 'food', 'kind', 'name', 'shown', 'value', 'unit'];

type Row = [kind: string, name: string, shown: Cell, value: Cell, unit: Cell];

const figureRow = (kind: string, name: string, { text, value, unit }: Figure): Row => [
  kind,
  name,
  text,
  value,
  unit,
];

function nutrientRows({ name, per100G, perPortion }: LabelNutrient): Row[] {
  return [
    ...per100G.map((figure) => figureRow('nutrient per 100 g', name, figure)),
    ...perPortion.map((figure) => figureRow('nutrient per portion', name, figure)),
  ];
}

/** The CSV file of a label. */
export function labelCsv(view: LabelView): string {
  const rows: Row[] = [
    ...view.ingredients.flatMap(({ name, bowl, share, quid }): Row[] => [
      figureRow('ingredient in the bowl', name, bowl),
      figureRow('ingredient of the bowl', name, share),
      ...(quid === null ? [] : [figureRow('ingredient of the cake', name, quid)]),
    ]),
    ...view.allergens.map((name): Row => ['allergen', name, name, null, null]),
    ...view.mayContain.map((name): Row => ['may contain', name, name, null, null]),
    figureRow('fact', 'finished', view.finished),
    figureRow('fact', 'keeps', view.keeps),
    ...(view.nutrition?.rows ?? []).flatMap(nutrientRows),
    ...view.lines.map((line): Row => ['line of the label', line.id, lineText(line), null, null]),
    ...view.card.map((line): Row => ['line of the card', line.id, lineText(line), null, null]),
    ...view.notes.map((note): Row => ['note', 'note', note, null, null]),
    ...view.cautions.map(({ code, text }): Row => ['caution', code, text, null, null]),
  ];
  return csvText(
    HEADER,
    rows.map((row) => [view.id, view.foodName, ...row]),
  );
}
