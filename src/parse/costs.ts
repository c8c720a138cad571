/** `currency` and `costs` in kitchen.yaml. What is left out costs nothing; nothing is charged unasked. */
import {
  type CostSettings,
  NO_COSTS,
  PACKAGING_PER,
  type PackagingCost,
  type PackagingPer,
} from '../domain/costs.ts';
import { CURRENCIES, type Currency } from '../domain/money.ts';
import type { Pack } from '../domain/pack.ts';
import type { Result } from '../domain/result.ts';
import { error, refuse } from './problems.ts';
import { quote } from './quote.ts';
import { readQuoteSettings } from './quote-settings.ts';
import { parseLength } from './units/length.ts';
import { parseMoney, parseRate } from './units/money.ts';
import { parseShare } from './units/share.ts';
import { complete, type YamlReader } from './yaml/yaml-reader.ts';
import type { YamlPath } from './yaml/yaml-source.ts';

/** Above this a price is more than ten times its cost: somebody meant something else. */
const MOST_MARGIN = 0.9;

function parseMargin(text: string): Result<number> {
  const share = parseShare(text, { zero: true });
  if (!share.ok || share.value <= MOST_MARGIN) return share;
  const hint = `The margin is a share of the price, from 0 % to ${MOST_MARGIN * 100} %: 20 % makes 100 out of a cost of 80.`;
  return refuse('quantity-out-of-range', `${quote(text)} leaves hardly anything for the cost`, hint);
}

function parseStep(text: string, currency: Currency): Result<number> {
  const step = parseMoney(text, currency);
  if (!step.ok || step.value > 0) return step;
  return refuse(
    'quantity-not-positive',
    'A price cannot be rounded up to steps of nothing',
    'Use 0.01, 0.50, 1 …',
  );
}

/** The currency that every sum in the content is in; pounds when the kitchen names none. */
function readCurrency(reader: YamlReader): Currency {
  const code = reader.text('currency');
  return CURRENCIES.find((currency) => currency.code === code) ?? NO_COSTS.currency;
}

/** Sizes by count, smallest first; two of one size are refused. */
function readPacks(reader: YamlReader, at: YamlPath, currency: Currency): Pick<PackagingCost, 'packs'> {
  const packs: Pack[] = [];
  for (let index = 0; index < reader.items(...at, 'packs'); index += 1) {
    const path = [...at, 'packs', index] as const;
    const size = reader.number(...path, 'size');
    const whole = complete<Pack>({
      size,
      text: String(size ?? ''),
      priceMinor: reader.parsed((text) => parseMoney(text, currency), ...path, 'price'),
    });
    if (whole === null) continue;
    if (packs.some((one) => one.size === whole.size)) {
      const message = `${quote(reader.text(...at, 'name') ?? '')} has two packs of one size`;
      reader.report(error('pack-repeated', message, 'Keep the one that is bought.'), ...path, 'size');
    } else packs.push(whole);
  }
  return packs.length === 0 ? {} : { packs: packs.sort((a, b) => a.size - b.size) };
}

const SIZED: readonly PackagingPer[] = ['drum', 'card', 'cake box'];

/** Prices by width, narrowest first; they go with boards and boxes, and not with packs or stock. */
function readSizes(reader: YamlReader, at: YamlPath, currency: Currency): Pick<PackagingCost, 'sizes'> {
  const sizes: NonNullable<PackagingCost['sizes']> = [];
  const name = quote(reader.text(...at, 'name') ?? '');
  for (let index = 0; index < reader.items(...at, 'sizes'); index += 1) {
    const path = [...at, 'sizes', index] as const;
    const whole = complete<(typeof sizes)[number]>({
      acrossMm: reader.parsed((text) => parseLength(text), ...path, 'across')?.mm,
      eachMinor: reader.parsed((text) => parseMoney(text, currency), ...path, 'each'),
    });
    if (whole === null) continue;
    if (sizes.some(({ acrossMm }) => acrossMm === whole.acrossMm)) {
      const message = `${name} has two prices for one size`;
      reader.report(error('pack-repeated', message, 'Keep the one that is paid.'), ...path, 'across');
    } else sizes.push(whole);
  }
  if (sizes.length === 0) return {};
  const per = reader.word(PACKAGING_PER, ...at, 'per');
  if (per !== undefined && !SIZED.includes(per)) {
    const message = `${name} has sizes, but what is counted per ${quote(per)} has no width`;
    reader.report(error('key-unknown', message, `Sizes go with ${SIZED.join(', ')}.`), ...at, 'sizes');
  }
  if (reader.items(...at, 'packs') > 0 || reader.number(...at, 'on_hand') !== undefined) {
    const hint = 'Give each size the price of one, and leave packs and on_hand out.';
    const message = `${name} has sizes, with packs or stock of no size beside them`;
    reader.report(error('key-unknown', message, hint), ...at, 'sizes');
  }
  return { sizes: sizes.sort((a, b) => a.acrossMm - b.acrossMm) };
}

function readPackaging(reader: YamlReader, currency: Currency): PackagingCost[] {
  const found: PackagingCost[] = [];
  for (let index = 0; index < reader.items('costs', 'packaging'); index += 1) {
    const path = ['costs', 'packaging', index] as const;
    const whole = complete<PackagingCost>({
      name: reader.text(...path, 'name'),
      eachMinor: reader.parsed((text) => parseMoney(text, currency), ...path, 'each'),
      per: reader.word(PACKAGING_PER, ...path, 'per'),
    });
    const onHand = reader.number(...path, 'on_hand');
    const packs = readPacks(reader, path, currency);
    const sizes = readSizes(reader, path, currency);
    if (whole !== null)
      found.push({ ...whole, ...packs, ...sizes, ...(onHand === undefined ? {} : { onHand }) });
  }
  return found;
}

/** What work, energy and packaging cost, and what is asked on top; what is wrong is kept in the reader. */
export function readCosts(reader: YamlReader): CostSettings {
  const currency = readCurrency(reader);
  const rate = (per: 'h' | 'kWh', key: string): number =>
    reader.parsed((text) => parseRate(text, per, currency), 'costs', key) ?? 0;
  return {
    currency,
    labourMinorPerH: rate('h', 'labour'),
    overheadMinorPerH: rate('h', 'overhead'),
    electricityMinorPerKwh: rate('kWh', 'electricity'),
    margin: reader.parsed(parseMargin, 'costs', 'margin') ?? NO_COSTS.margin,
    roundUpToMinor:
      reader.parsed((text) => parseStep(text, currency), 'costs', 'round_up_to') ?? NO_COSTS.roundUpToMinor,
    vatShare: reader.parsed((text) => parseShare(text, { zero: true }), 'costs', 'vat') ?? NO_COSTS.vatShare,
    packaging: readPackaging(reader, currency),
    ...(reader.has('costs', 'quote') ? { quote: readQuoteSettings(reader, 'costs', 'quote') } : {}),
  };
}
