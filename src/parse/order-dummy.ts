/** A dummy tier of an order: polystyrene with coats and sheets, bought or hired. Nothing about it is baked. */
import type { DummyTier } from '../domain/order.ts';
import { FINISHES } from './known-names.ts';
import { readFinishAsks } from './order-finishes.ts';
import { checkClash, checkUses } from './order-tier-finishes.ts';
import type { OrderContext } from './orders.ts';
import { error } from './problems.ts';
import { quote } from './quote.ts';
import { DUMMY_SHAPES, DUMMY_SIZES, type DummyShape } from './tins/dummy-sizes.ts';
import { type Sizes, shapeOf } from './tins/shape-sizes.ts';
import { shownMm, slantProblems } from './tins/tin-sense.ts';
import { parseLength } from './units/length.ts';
import { parseMoney } from './units/money.ts';
import { parseShare } from './units/share.ts';
import { complete, present, type YamlReader } from './yaml/yaml-reader.ts';
import type { YamlPath } from './yaml/yaml-source.ts';

/** What only a cake has. */
const BAKED = ['tin', 'recipe', 'flavours', 'count', 'finished_height', 'layers'] as const;

const SMALLEST_MM = 20;
const LARGEST_MM = 1000;

function checkBaked(reader: YamlReader, at: YamlPath): void {
  for (const key of BAKED) {
    if (!reader.has(...at, key)) continue;
    const hint = "Delete it, or delete 'dummy' where the tier is cake.";
    reader.reportKey(
      error('dummy-baked', `A dummy tier is not baked, so it has no ${quote(key)}`, hint),
      ...at,
      key,
    );
  }
}

function readLength(reader: YamlReader, at: YamlPath, key: string): number | undefined {
  const mm = reader.parsed(parseLength, ...at, key)?.mm;
  if (mm === undefined || (mm >= SMALLEST_MM && mm <= LARGEST_MM)) return mm;
  const message = `${shownMm(mm)} is too ${mm > LARGEST_MM ? 'large' : 'small'} for a dummy tier (${key})`;
  const hint = `It runs from ${SMALLEST_MM} mm to ${LARGEST_MM} mm. Check the unit.`;
  reader.report(error('dummy-size', message, hint), ...at, key);
  return undefined;
}

function readForm(reader: YamlReader, at: YamlPath): DummyTier['form'] | undefined {
  const kind = reader.word<DummyShape>(DUMMY_SHAPES, ...at, 'shape');
  if (kind === undefined) return undefined;
  const sizes: Sizes = {};
  for (const key of DUMMY_SIZES[kind]) {
    const mm = readLength(reader, at, key);
    if (mm !== undefined) sizes[key] = mm;
  }
  for (const { key, problem } of slantProblems(sizes)) reader.report(problem, ...at, key);
  const depthMm = readLength(reader, at, 'height');
  const shape = shapeOf(kind, sizes, present({ petals: reader.number(...at, 'petals') }));
  return shape === null || depthMm === undefined ? undefined : { shape, depthMm };
}

/** The unit of the first length written, as tins have it. */
function unitOf(reader: YamlReader, at: YamlPath): DummyTier['unit'] {
  for (const key of reader.keys(...at)) {
    const length = parseLength(reader.text(...at, key) ?? '');
    if (length.ok) return length.value.unit;
  }
  return 'mm';
}

function checkVat(reader: YamlReader, at: YamlPath, supply: DummyTier['supply'] | undefined): void {
  const told = reader.has(...at, 'vat');
  if (supply === 'hired' && !told) {
    const hint = "Write 'vat: 20 %', or 'vat: 0 %' where this kitchen charges none.";
    reader.report(error('dummy-vat', 'A hire is not cake, so its VAT is not that of the cake', hint), ...at);
  } else if (supply === 'bought' && told) {
    const message = 'A bought dummy is a cost of the cake; the customer sees no line of its own';
    reader.reportKey(error('dummy-vat', message, "Delete 'vat', or write 'supply: hired'."), ...at, 'vat');
  }
}

function checkFinishes(reader: YamlReader, at: YamlPath, { finishes }: Pick<DummyTier, 'finishes'>): void {
  finishes.forEach(({ use }, index) => {
    if (use === 'coating' || use === 'rolled') return;
    const message = `A dummy tier has no ${use === 'filling' ? 'layers to fill' : 'crumb to brush'}`;
    const hint = "Use 'coating' or 'rolled', or delete it.";
    reader.report(error('dummy-finish', message, hint), ...at, 'finishes', index, 'use');
  });
}

/** The dummy at a path, its place in the stack given; null after reporting what is wrong with it. */
export function readDummy(
  reader: YamlReader,
  path: YamlPath,
  at: number,
  context: OrderContext,
): DummyTier | null {
  const own = [...path, 'dummy'];
  checkBaked(reader, path);
  const supply = reader.word(['bought', 'hired'] as const, ...own, 'supply');
  checkVat(reader, own, supply);
  const vatShare = reader.parsed((text) => parseShare(text, { zero: true }), ...own, 'vat');
  const finishes = readFinishAsks(reader, [...path, 'finishes'], FINISHES, context.finishes);
  const whole = complete<Omit<DummyTier, 'vatShare'>>({
    at,
    form: readForm(reader, own),
    unit: unitOf(reader, own),
    finishes,
    supply,
    eachMinor: reader.parsed((text) => parseMoney(text, context.currency), ...own, 'each'),
  });
  checkFinishes(reader, path, { finishes });
  checkUses(reader, path, finishes, context.found.finishes);
  checkClash(reader, path, finishes, context.found.finishes);
  return whole === null ? null : { ...whole, ...present({ vatShare }) };
}
