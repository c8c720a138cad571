/**
 * orders/ID.yaml: tiers, what stands beside them, hand-over, portions, extras and decisions. Names are those of the
 * other files; what cannot be made (a height over the rim, fresh cream under a sheet, a filling in one layer) is
 * refused where it stands.
 */
import type { BunTin } from '../domain/bun-tin.ts';
import type { Finish } from '../domain/finish.ts';
import type { Currency } from '../domain/money.ts';
import { type Decision, type Order, type OrderExtra, type OrderQuote, PLACE_KINDS } from '../domain/order.ts';
import { checkedOrder } from '../domain/order-check.ts';
import type { Problem } from '../domain/problem.ts';
import type { Recipe } from '../domain/recipe.ts';
import type { Tin } from '../domain/tin.ts';
import type { ProblemCode } from './codes.ts';
import type { KnownNames } from './known-names.ts';
import { minuteOfLocal } from './local-time.ts';
import { readCakes } from './order-cakes.ts';
import { checkOrder } from './order-sense.ts';
import { readQuoteSettings } from './quote-settings.ts';
import { orderSchema } from './schemas/order-schema.ts';
import { parseDay } from './units/date.ts';
import { parseDayAndTime } from './units/moment.ts';
import { parseMoney } from './units/money.ts';
import { parseShare } from './units/share.ts';
import { parseTimeZone } from './units/time-zone.ts';
import { plainLines } from './yaml/readable-text.ts';
import { complete, isSound, present, type YamlReader, yamlReader } from './yaml/yaml-reader.ts';
import { type YamlPath, yamlSource } from './yaml/yaml-source.ts';

/** What orders may name, and what is needed to judge them. */
export interface OrderContext {
  tins: KnownNames;
  recipes: KnownNames;
  flavours: KnownNames;
  finishes: KnownNames;
  /** Tins of several cups. */
  bunTins: KnownNames;
  found: { tins: Tin[]; bunTins: BunTin[]; recipes: readonly Recipe[]; finishes: readonly Finish[] };
  currency: Currency;
  /** Zone of the kitchen's clock. */
  timeZone: string;
}

export interface OrderOutcome {
  order: Order | null;
  problems: Problem[];
}

const isYes = (reader: YamlReader, ...path: YamlPath): boolean =>
  reader.word(['yes'] as const, ...path) === 'yes';

function readExtras(reader: YamlReader, currency: Currency): (OrderExtra | null)[] {
  return Array.from({ length: reader.items('extras') }, (_, index) => {
    const path = ['extras', index] as const;
    const whole = complete<Omit<OrderExtra, 'vatShare' | 'delivery' | 'comesBack' | 'backBy'>>({
      name: reader.text(...path, 'name'),
      count: reader.has(...path, 'count') ? reader.number(...path, 'count') : 1,
      eachMinor: reader.parsed((text) => parseMoney(text, currency), ...path, 'each'),
      inedible: isYes(reader, ...path, 'inedible'),
    });
    const vatShare = reader.parsed((text) => parseShare(text, { zero: true }), ...path, 'vat');
    const delivery = isYes(reader, ...path, 'delivery') ? true : undefined;
    const comesBack = isYes(reader, ...path, 'comes_back') ? true : undefined;
    const backBy = reader.parsed(parseDay, ...path, 'back_by');
    return whole === null ? null : { ...whole, ...present({ vatShare, delivery, comesBack, backBy }) };
  });
}

function readDecisions(reader: YamlReader): (Decision | null)[] {
  return Array.from({ length: reader.items('decisions') }, (_, index) => {
    const path = ['decisions', index] as const;
    const question = reader.text(...path, 'question');
    const by = reader.parsed(parseDay, ...path, 'by');
    if (question === undefined) return null;
    return { question, answer: reader.text(...path, 'answer') ?? null, ...present({ by }) };
  });
}

function readPortions(reader: YamlReader): Order['portions'] {
  const wanted = reader.number('portions', 'wanted');
  const size = reader.word(['dessert', 'finger'] as const, 'portions', 'size');
  return wanted === undefined || size === undefined ? undefined : { wanted, size };
}

function readHandOver(reader: YamlReader, kitchenZone: string): Order['handOver'] | undefined {
  const zone = reader.has('hand_over', 'zone')
    ? reader.parsed(parseTimeZone, 'hand_over', 'zone')
    : kitchenZone;
  const localTime = reader.parsed(parseDayAndTime, 'hand_over', 'at');
  const instant =
    localTime === undefined || zone === undefined
      ? undefined
      : reader.parsed(() => minuteOfLocal(localTime, zone), 'hand_over', 'at');
  const whole = complete<Order['handOver']>({
    localTime,
    zone,
    place: reader.word(PLACE_KINDS, 'hand_over', 'place'),
    minute: instant,
  });
  return whole ?? undefined;
}

function readQuote(reader: YamlReader): OrderQuote | undefined {
  if (!reader.has('quote')) return undefined;
  return {
    ...present({ dated: reader.parsed(parseDay, 'quote', 'dated') }),
    ...readQuoteSettings(reader, 'quote'),
  };
}

const allOf = <T>(items: readonly (T | null)[]): T[] | undefined => {
  const whole = items.filter((item) => item !== null);
  return whole.length === items.length ? whole : undefined;
};

/** Where in the file a fault of the whole order stands. */
const PLACES: Partial<Record<ProblemCode, string>> = {
  'order-reference': 'reference',
  'top-tier-kept': 'keep_top_tier',
  'order-without-cake': 'tiers',
};

function read(reader: YamlReader, id: string, context: OrderContext): Order | null {
  const cakes = readCakes(reader, context);
  const whole = complete<Omit<Order, 'portions' | 'dummies' | 'quote'>>({
    id,
    title: reader.text('title'),
    reference: reader.text('reference'),
    tiers: allOf(cakes.tiers),
    arrangement: reader.word(['stacked'] as const, 'arrangement') ?? 'separate',
    travelsAssembled: isYes(reader, 'travels_assembled'),
    handOver: readHandOver(reader, context.timeZone),
    keepsTopTier: isYes(reader, 'keep_top_tier'),
    extras: allOf(readExtras(reader, context.currency)),
    decisions: allOf(readDecisions(reader)),
    notes: reader.text('notes')?.trim() ?? '',
  });
  const portions = readPortions(reader);
  const quote = readQuote(reader);
  const dummies = allOf(cakes.dummies);
  if (whole === null || dummies === undefined || !isSound(reader.problems)) return null;
  const optional = { ...present({ portions, quote }), ...(dummies.length === 0 ? {} : { dummies }) };
  const checked = checkedOrder({ ...whole, ...optional });
  if (!checked.ok) {
    for (const problem of checked.problems) {
      const key = PLACES[problem.code as ProblemCode];
      reader.report(problem, ...(key === undefined ? [] : [key]));
    }
    return null;
  }
  checkOrder(reader, checked.value, context, cakes.places);
  return isSound(reader.problems) ? checked.value : null;
}

/** The order of a file's text, or everything that is wrong with it. The id is the file's name. */
export function parseOrderYaml(text: string, file: string, id: string, context: OrderContext): OrderOutcome {
  const source = yamlSource(plainLines(text), file);
  if (!source.ok) return { order: null, problems: source.problems };
  const reader = yamlReader(source.value, orderSchema);
  const order = read(reader, id, context);
  return { order, problems: reader.problems };
}
