/** What the device keeps: this kitchen's own tins and settings, in its local storage, under one name. */
import { detailsFrom, NO_DETAILS, type OrderDetails } from './order-file.ts';
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

/** The kept kitchen; none where the device keeps nothing or must not. */
export function keptKitchen(): OwnKitchen {
  try {
    return ownKitchenFrom(JSON.parse(localStorage.getItem(KEY) ?? 'null'));
  } catch {
    return NO_OWN_KITCHEN;
  }
}

/** Whether it could be kept. */
export function keepKitchen(own: OwnKitchen): boolean {
  try {
    if (own === NO_OWN_KITCHEN) localStorage.removeItem(KEY);
    else localStorage.setItem(KEY, JSON.stringify(own));
    return true;
  } catch {
    return false;
  }
}

const ORDER = 'tinwright-order';

/** What was last said of an order. */
export function keptDetails(): OrderDetails {
  try {
    return detailsFrom(JSON.parse(localStorage.getItem(ORDER) ?? 'null'));
  } catch {
    return NO_DETAILS;
  }
}

export function keepDetails(details: OrderDetails): void {
  try {
    localStorage.setItem(ORDER, JSON.stringify(details));
  } catch {
    // A device that keeps nothing still prints.
  }
}

const TICKS = 'tinwright-ticks';

/** What was ticked on this plan; ticks of another plan are forgotten. */
export function keptTicks(plan: string): string[] {
  try {
    const kept = JSON.parse(sessionStorage.getItem(TICKS) ?? 'null') as {
      plan?: unknown;
      ticks?: unknown;
    } | null;
    return kept?.plan === plan && Array.isArray(kept.ticks) ? kept.ticks.filter(isText) : [];
  } catch {
    return [];
  }
}

/** Kept until the page is closed for good. */
export function keepTicks(plan: string, ticks: readonly string[]): void {
  try {
    sessionStorage.setItem(TICKS, JSON.stringify({ plan, ticks }));
  } catch {
    // A device that keeps nothing still shows them until the page goes.
  }
}
