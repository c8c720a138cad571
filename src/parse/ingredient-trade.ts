/** What an ingredient is bought in, made of and good for: packs, compound parts and food values. */
import { ALLERGENS, type CompoundPart, type Ingredient, type Nutrients } from '../domain/ingredient.ts';
import type { Currency } from '../domain/money.ts';
import type { Pack } from '../domain/pack.ts';
import type { Result } from '../domain/result.ts';
import { amountOnShelf } from './amount-on-shelf.ts';
import { error, refuse } from './problems.ts';
import { quote } from './quote.ts';
import { parseMass } from './units/mass.ts';
import { parseMoney } from './units/money.ts';
import { parseShare } from './units/share.ts';
import { complete, present, type YamlReader } from './yaml/yaml-reader.ts';

const MOST_IN_100_G = 100.5;
/** Shares on a packet are rounded, so that they add up to a little more or less. */
const SHARES_MAY_MISS = 0.015;

type Measured = Pick<Ingredient, 'id' | 'eggPart' | 'densityGPerMl'>;

/** The packs of an ingredient, smallest first; two of one size are refused. */
function readPacks(reader: YamlReader, item: Measured, currency: Currency): Pack[] | undefined {
  if (!reader.has(item.id, 'packs')) return undefined;
  const packs: Pack[] = [];
  for (let index = 0; index < reader.items(item.id, 'packs'); index += 1) {
    const path = [item.id, 'packs', index] as const;
    const whole = complete<Pack>({
      size: reader.parsed((text) => amountOnShelf(text, item), ...path, 'size'),
      text: reader.text(...path, 'size') ?? String(reader.number(...path, 'size') ?? ''),
      priceMinor: reader.parsed((text) => parseMoney(text, currency), ...path, 'price'),
    });
    if (whole === null) continue;
    if (packs.some(({ size }) => size === whole.size)) {
      const message = `${quote(item.id)} has two packs of one size`;
      reader.report(error('pack-repeated', message, 'Keep the one that is bought.'), ...path, 'size');
    } else packs.push(whole);
  }
  return packs.sort((a, b) => a.size - b.size);
}

function compoundPart(reader: YamlReader, id: string, name: string): CompoundPart | null {
  const path = [id, 'compound', name] as const;
  const plain = reader.text(...path) !== undefined;
  const share = reader.parsed((text) => parseShare(text), ...path, ...(plain ? [] : ['share']));
  if (share === undefined) return null;
  const written = reader.texts(...path, 'allergens');
  const names = Object.fromEntries(
    ALLERGENS.flatMap((allergen) => {
      const spelt = reader.text(...path, 'allergen_names', allergen);
      return spelt === undefined ? [] : [[allergen, spelt]];
    }),
  );
  return {
    name,
    share,
    ...(written === undefined ? {} : { allergens: ALLERGENS.filter((one) => written.includes(one)) }),
    ...(Object.keys(names).length === 0 ? {} : { allergenNames: names }),
  };
}

/** What it is made of; the shares must come to the whole. */
function readCompound(reader: YamlReader, id: string): CompoundPart[] | undefined {
  if (!reader.has(id, 'compound')) return undefined;
  const names = reader.keys(id, 'compound');
  const parts = names.flatMap((name) => compoundPart(reader, id, name) ?? []);
  if (parts.length < names.length) return undefined;
  const whole = parts.reduce((sum, { share }) => sum + share, 0);
  if (Math.abs(whole - 1) <= SHARES_MAY_MISS) return parts;
  const percent = Math.round(whole * 1000) / 10;
  const hint = 'Give every part its share, as the packet says, so that they come to 100 %.';
  reader.reportKey(
    error('compound-shares', `The parts of ${quote(id)} come to ${percent} %, not to the whole`, hint),
    id,
    'compound',
  );
  return undefined;
}

const KEYS: Record<keyof Nutrients, string> = {
  fatG: 'fat',
  saturatesG: 'saturates',
  carbohydrateG: 'carbohydrate',
  sugarsG: 'sugars',
  polyolsG: 'polyols',
  fibreG: 'fibre',
  proteinG: 'protein',
  saltG: 'salt',
  alcoholG: 'alcohol',
};

function parseGrams(text: string): Result<number> {
  const mass = parseMass(text, { zero: true });
  if (!mass.ok || mass.value <= 100) return mass;
  return refuse(
    'quantity-out-of-range',
    `${quote(text)} is more than the 100 g it is in`,
    'Give the weight in 100 g of the ingredient.',
  );
}

function impossible(values: Nutrients): string | null {
  if (values.saturatesG > values.fatG) return 'more saturates than fat';
  if (values.sugarsG + values.polyolsG > values.carbohydrateG)
    return 'more sugars and polyols than carbohydrate';
  const { fatG, carbohydrateG, fibreG, proteinG, saltG, alcoholG } = values;
  const sum = fatG + carbohydrateG + fibreG + proteinG + saltG + alcoholG;
  return sum > MOST_IN_100_G ? `${Math.round(sum * 10) / 10} g of parts in 100 g` : null;
}

/** Food values of 100 g; what is left out of a list that is given is 0 g. */
function readNutrients(reader: YamlReader, id: string): Nutrients | undefined {
  const path = [id, 'nutrients', 'per_100_g'] as const;
  if (!reader.has(...path)) return undefined;
  const values = Object.fromEntries(
    Object.entries(KEYS).map(([name, key]) => [name, reader.parsed(parseGrams, ...path, key) ?? 0]),
  ) as Record<keyof Nutrients, number>;
  const fault = impossible(values);
  if (fault === null) return values;
  const hint = 'Compare with the packet: sugars are within carbohydrate, saturates within fat.';
  reader.reportKey(error('nutrients-impossible', `${quote(id)} has ${fault}`, hint), ...path);
  return undefined;
}

/** Everything an ingredient says about buying and labelling it. */
export function readTrade(
  reader: YamlReader,
  item: Measured,
  currency: Currency,
): Pick<Ingredient, 'labelName' | 'compound' | 'nutrients' | 'packs'> {
  return present({
    labelName: reader.text(item.id, 'label'),
    compound: readCompound(reader, item.id),
    nutrients: readNutrients(reader, item.id),
    packs: readPacks(reader, item, currency),
  }) as Pick<Ingredient, 'labelName' | 'compound' | 'nutrients' | 'packs'>;
}
