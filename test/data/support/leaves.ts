/** Every leaf of a JSON value with the way to it: numbers, texts, nulls, and lists or objects with nothing in them. */
export interface Leaf {
  path: (string | number)[];
  value: string | number | boolean | null;
}

/** An empty list or object counts as one leaf, null: something must say that there is nothing. */
export function leavesOf(value: unknown, path: (string | number)[] = []): Leaf[] {
  if (typeof value === 'string' || typeof value === 'number' || typeof value === 'boolean')
    return [{ path, value }];
  if (value === null || value === undefined) return [{ path, value: null }];
  const inner: [string | number, unknown][] = Array.isArray(value)
    ? [...value.entries()]
    : Object.entries(value);
  if (inner.length === 0) return [{ path, value: null }];
  return inner.flatMap(([key, below]) => leavesOf(below, [...path, key]));
}
