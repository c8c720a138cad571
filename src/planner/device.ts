/** What the device keeps: this kitchen's own tins and settings, in its local storage, under one name. */
import { detailsFrom, type OrderDetails } from './order-file.ts';
import { NO_OWN_KITCHEN, type OwnKitchen } from './own-kitchen.ts';

const KEY = 'tinwright-own-kitchen';

const isText = (value: unknown): value is string => typeof value === 'string';
const isCount = (value: unknown): value is number =>
  typeof value === 'number' && Number.isInteger(value) && value >= 0 && value <= 99;

const entriesOf = (value: unknown): [string, unknown][] =>
  typeof value === 'object' && value !== null ? Object.entries(value) : [];

/** Whatever an older version or a curious hand left there, only what fits is taken. */
export function ownKitchenFrom(kept: unknown): OwnKitchen {
  if (typeof kept !== 'object' || kept === null) return NO_OWN_KITCHEN;
  const { owned, tins, egg, bowl, step, file, prices } = kept as Partial<Record<keyof OwnKitchen, unknown>>;
  const described = Array.isArray(tins) ? (tins as unknown[]) : [];
  return {
    owned: Object.fromEntries(
      entriesOf(owned).filter((entry): entry is [string, number] => isCount(entry[1])),
    ),
    tins: described.flatMap((tin) => {
      const { description, owned: count } = (tin ?? {}) as Record<string, unknown>;
      return isText(description) && isCount(count) ? [{ description, owned: count }] : [];
    }),
    egg: isText(egg) ? egg : '',
    bowl: isText(bowl) ? bowl : '',
    step: isText(step) ? step : '',
    file: isText(file) ? file : '',
    prices: Object.fromEntries(
      entriesOf(prices).filter((entry): entry is [string, string] => isText(entry[1])),
    ),
  };
}

type Store = 'localStorage' | 'sessionStorage';

/** What lies there; null where nothing does, or where the device keeps nothing or must not. */
function kept(store: Store, key: string): unknown {
  try {
    return JSON.parse(window[store].getItem(key) ?? 'null');
  } catch {
    return null;
  }
}

/** Null is forgotten. A device that keeps nothing still plans and prints: whether it could be kept. */
function keep(store: Store, key: string, value: unknown): boolean {
  try {
    if (value === null) window[store].removeItem(key);
    else window[store].setItem(key, JSON.stringify(value));
    return true;
  } catch {
    return false;
  }
}

/** The kept kitchen, or none. */
export const keptKitchen = (): OwnKitchen => ownKitchenFrom(kept('localStorage', KEY));

/** Whether it could be kept. */
export const keepKitchen = (own: OwnKitchen): boolean =>
  keep('localStorage', KEY, own === NO_OWN_KITCHEN ? null : own);

const ORDER = 'tinwright-order';

/** What was last said of an order. */
export const keptDetails = (): OrderDetails => detailsFrom(kept('localStorage', ORDER));

export const keepDetails = (details: OrderDetails): boolean => keep('localStorage', ORDER, details);

const TICKS = 'tinwright-ticks';

/** What was ticked on this plan; ticks of another plan are forgotten. */
export function keptTicks(plan: string): string[] {
  const last = kept('sessionStorage', TICKS) as { plan?: unknown; ticks?: unknown } | null;
  return last?.plan === plan && Array.isArray(last.ticks) ? last.ticks.filter(isText) : [];
}

/** Kept until the page is closed for good. */
export const keepTicks = (plan: string, ticks: readonly string[]): boolean =>
  keep('sessionStorage', TICKS, { plan, ticks });
