import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { canonicalJson, type Json } from '../../src/data/canonical-json.ts';

/** The same value with the keys of every object the other way round. */
function turned(value: Json): Json {
  if (typeof value !== 'object' || value === null) return value;
  if (Array.isArray(value)) return value.map(turned);
  return Object.fromEntries(
    Object.entries(value)
      .reverse()
      .map(([key, inner]) => [key, turned(inner)]),
  );
}

describe('canonicalJson', () => {
  it('sorts keys at every level and ends with a line feed', () => {
    expect(canonicalJson({ b: [{ d: 1, c: null }], a: 'x' })).toBe(
      '{\n  "a": "x",\n  "b": [\n    {\n      "c": null,\n      "d": 1\n    }\n  ]\n}\n',
    );
  });

  it('does not depend on the order in which a value was put together', () => {
    fc.assert(
      fc.property(fc.jsonValue({ noUnicodeString: false }), (value) => {
        const json = value as Json;
        expect(canonicalJson(turned(json))).toBe(canonicalJson(json));
        expect(JSON.parse(canonicalJson(json))).toEqual(JSON.parse(JSON.stringify(json)));
      }),
      { numRuns: 1000 },
    );
  });

  it.each([Number.NaN, Number.POSITIVE_INFINITY])('refuses %d', (value) => {
    expect(() => canonicalJson({ a: [value] })).toThrow('not a number for JSON');
  });
});
