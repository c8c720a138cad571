/**
 * A value with all its parts that are equal to those of an earlier one replaced by these very parts: who remembers
 * results by what they were worked out from then needs to compare no more than identities. For JSON-safe values that
 * nobody changes, which all domain values are.
 */
const isPlain = (value: unknown): value is Record<string, unknown> =>
  typeof value === 'object' && value !== null && Object.getPrototypeOf(value) === Object.prototype;

/** The earlier value itself where all is equal. */
export function shareEqual<T>(value: T, earlier: unknown): T {
  if (Object.is(value, earlier)) return value;
  if (Array.isArray(value) && Array.isArray(earlier)) {
    const shared = value.map((one, at) => shareEqual(one, earlier[at]));
    const isSame = shared.length === earlier.length && shared.every((one, at) => Object.is(one, earlier[at]));
    return (isSame ? earlier : shared) as T;
  }
  if (isPlain(value) && isPlain(earlier)) {
    const keys = Object.keys(value);
    const shared = Object.fromEntries(keys.map((key) => [key, shareEqual(value[key], earlier[key])]));
    const earlierKeys = Object.keys(earlier);
    const isSame =
      keys.length === earlierKeys.length &&
      // The order of keys is the order in which they are written.
      keys.every((key, at) => key === earlierKeys[at] && Object.is(shared[key], earlier[key]));
    return (isSame ? earlier : shared) as T;
  }
  return value;
}
