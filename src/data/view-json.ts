/**
 * A view as JSON: keys in snake case, figures as { value, unit, text }, pictures left out. Whatever a view gains
 * later stands in the file without being named here.
 */
import { canonicalJson, type Json } from './canonical-json.ts';

/** Drawings are for pages and prints; their outlines would fill the file. */
const LEFT_OUT: ReadonlySet<string> = new Set(['picture', 'outline']);

const snake = (key: string): string => key.replace(/[A-Z]/g, (capital) => `_${capital.toLowerCase()}`);

function plain(value: unknown): Json {
  if (Array.isArray(value)) return value.map(plain);
  if (typeof value === 'object' && value !== null) {
    const kept = Object.entries(value).filter(([key, part]) => !LEFT_OUT.has(key) && part !== undefined);
    return Object.fromEntries(kept.map(([key, part]) => [snake(key), plain(part)]));
  }
  if (typeof value === 'string' || typeof value === 'number' || typeof value === 'boolean') return value;
  return null;
}

/** The JSON file of a view. Throws on numbers that JSON cannot carry, as canonicalJson does. */
export const viewJson = (view: object): string => canonicalJson(plain(view));
