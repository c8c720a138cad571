/** `business` and `label` in kitchen.yaml: who sells, and by which rules a label is written. */
import { leastXHeightMm } from '../compute/labels/rule-set.ts';
import { ALLERGENS } from '../domain/ingredient.ts';
import {
  type Business,
  KINDS_OF_SALE,
  LABEL_RULES,
  type LabelRules,
  type LabelSample,
  type LabelSettings,
  type LabelSize,
  USUAL_LABEL,
} from '../domain/label-settings.ts';
import type { FinishAsk } from '../domain/order.ts';
import { type Result, succeed } from '../domain/result.ts';
import { FINISHES, INGREDIENTS, type KnownNames, readNames, TINS } from './known-names.ts';
import { readFinishAsks } from './order-finishes.ts';
import { readName } from './order-names.ts';
import { error, refuse } from './problems.ts';
import { quote } from './quote.ts';
import { parseDays } from './units/days.ts';
import { parseLength } from './units/length.ts';
import { complete, present, type YamlReader } from './yaml/yaml-reader.ts';

/** Type smaller than this nobody reads; larger than this fills the label: mm. */
const X_HEIGHT_MM = { least: 0.9, most: 5 };
const LABEL_MM = { least: 20, most: 297 };

function parseXHeight(text: string): Result<number> {
  const length = parseLength(text);
  if (!length.ok) return length;
  const { mm } = length.value;
  if (mm >= X_HEIGHT_MM.least && mm <= X_HEIGHT_MM.most) return succeed(mm);
  const hint = `Use ${X_HEIGHT_MM.least} mm to ${X_HEIGHT_MM.most} mm; 1.2 mm is the usual least.`;
  return refuse('quantity-out-of-range', `${quote(text)} is out of range for the height of an x`, hint);
}

function parseSurface(text: string): Result<number> {
  const match = /^(\d{1,5}(?:\.\d{1,2})?) ?cm[2²]$/.exec(text.trim());
  const cm2 = match === null ? 0 : Number(match[1]);
  if (cm2 > 0) return succeed(cm2);
  const hint = 'Write the largest side of the pack in square centimetres, like 120 cm2.';
  return refuse('quantity-unreadable', `${quote(text)} cannot be read as an area`, hint);
}

function parseLabelSize(text: string): Result<LabelSize> {
  const [width, height, ...rest] = text.split(/\s*[x×]\s*/);
  const hint = 'Write width x height, like 85 mm x 110 mm.';
  if (width === undefined || height === undefined || rest.length > 0)
    return refuse('quantity-unreadable', `${quote(text)} is not the size of a label`, hint);
  const [wide, high] = [parseLength(width), parseLength(height)];
  if (!wide.ok) return wide;
  if (!high.ok) return high;
  const sides = [wide.value.mm, high.value.mm];
  if (sides.every((mm) => mm >= LABEL_MM.least && mm <= LABEL_MM.most))
    return succeed({ widthMm: wide.value.mm, heightMm: high.value.mm });
  const range = `Use sides from ${LABEL_MM.least} mm to ${LABEL_MM.most} mm.`;
  return refuse('quantity-out-of-range', `${quote(text)} is out of range for a label`, range);
}

/** Name, address and contact; null while the kitchen has not written them down. */
export function readBusiness(reader: YamlReader): Business | null {
  if (!reader.has('business')) return null;
  const whole = complete<Pick<Business, 'name' | 'address'>>({
    name: reader.text('business', 'name'),
    address: reader.texts('business', 'address'),
  });
  if (whole === null) return null;
  return { ...whole, ...present({ contact: reader.text('business', 'contact') }) };
}

export interface LabelNames {
  tins: KnownNames;
  finishes: KnownNames;
  ingredients: KnownNames;
}

/** What a word in the name of a food stands for: a kind of ingredients, told as one percentage. */
function readNamed(reader: YamlReader, { ingredients }: LabelNames): LabelSettings['named'] {
  if (!reader.has('label', 'named')) return undefined;
  const words = reader.keys('label', 'named');
  return Object.fromEntries(
    words.map((word) => [
      word.toLowerCase(),
      readNames(reader, ['label', 'named', word], INGREDIENTS, ingredients),
    ]),
  );
}

function readSample(reader: YamlReader, names: LabelNames): LabelSample | undefined {
  if (!reader.has('label', 'sample')) return undefined;
  const tinId = readName(reader, ['label', 'sample', 'tin'], TINS, names.tins);
  const finishes: FinishAsk[] = readFinishAsks(
    reader,
    ['label', 'sample', 'finishes'],
    FINISHES,
    names.finishes,
  );
  return tinId === undefined ? undefined : { tinId, finishes };
}

/** As high as written, and never below what the rules let type be; left out: just that. */
function readXHeight(reader: YamlReader, rules: LabelRules, packSurfaceCm2: number | undefined): number {
  const leastMm = leastXHeightMm(rules, packSurfaceCm2);
  const written = reader.parsed(parseXHeight, 'label', 'x_height');
  if (written !== undefined && written < leastMm) {
    const message = `A lower-case x of ${written} mm is smaller than the ${rules} rules allow on this pack`;
    const upMm = Math.ceil(leastMm * 10) / 10;
    const small =
      rules === 'US' ? '' : " A pack whose largest side is under 80 cm2 may have less: 'pack_surface'.";
    const hint = `Use ${upMm} mm or more, or leave it out.${small}`;
    reader.report(error('label-x-height', message, hint), 'label', 'x_height');
  }
  return written ?? leastMm;
}

/** How labels are written; the usual for what is left out. */
export function readLabelSettings(reader: YamlReader, names: LabelNames): LabelSettings {
  const rules = reader.word(LABEL_RULES, 'label', 'rules') ?? USUAL_LABEL.rules;
  const packSurfaceCm2 = reader.parsed(parseSurface, 'label', 'pack_surface');
  const mayContain = reader.texts('label', 'may_contain') ?? [];
  const sizes = (reader.texts('label', 'sizes') ?? []).flatMap(
    (_, index) => reader.parsed(parseLabelSize, 'label', 'sizes', index) ?? [],
  );
  return {
    rules,
    sale: reader.word(KINDS_OF_SALE, 'label', 'sale') ?? USUAL_LABEL.sale,
    mayContain: ALLERGENS.filter((allergen) => mayContain.includes(allergen)),
    xHeightMm: readXHeight(reader, rules, packSurfaceCm2),
    sizes: sizes.length > 0 ? sizes : USUAL_LABEL.sizes,
    ...present<Pick<LabelSettings, 'durabilityDays' | 'storage' | 'packSurfaceCm2' | 'sample' | 'named'>>({
      durabilityDays: reader.parsed(parseDays, 'label', 'durability'),
      storage: reader.text('label', 'storage'),
      packSurfaceCm2,
      sample: readSample(reader, names),
      named: readNamed(reader, names),
    } as {
      [K in 'durabilityDays' | 'storage' | 'packSurfaceCm2' | 'sample' | 'named']:
        | LabelSettings[K]
        | undefined;
    }),
  };
}
