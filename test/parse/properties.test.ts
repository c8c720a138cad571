import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { G_PER, type LengthUnit, type MassUnit, ML_PER, MM_PER } from '../../src/domain/units.ts';
import { parseIngredientsYaml } from '../../src/parse/ingredients.ts';
import { parseKitchenYaml } from '../../src/parse/kitchen.ts';
import { parseContentPath, parseId, parseSiteUrl } from '../../src/parse/names.ts';
import { parseRecipeMarkdown } from '../../src/parse/recipe.ts';
import { parseSpec } from '../../src/parse/spec.ts';
import { parseDay } from '../../src/parse/units/date.ts';
import { parseDensity } from '../../src/parse/units/density.ts';
import { parseDuration } from '../../src/parse/units/duration.ts';
import { parseEggCount, parseEggSize, parseEggWeight } from '../../src/parse/units/egg-size.ts';
import { parseLength } from '../../src/parse/units/length.ts';
import { parseMass } from '../../src/parse/units/mass.ts';
import { parseShare } from '../../src/parse/units/share.ts';
import { parseTemperature } from '../../src/parse/units/temperature.ts';
import { parseVolume } from '../../src/parse/units/volume.ts';

const RUNS = { numRuns: 1000, seed: 20261101 };
const FUZZ = { numRuns: 2000, seed: 20261101 };

const hundredths = fc.integer({ min: 20, max: 40_000 }).map((n) => n / 100);
const lengthUnit = fc.constantFrom<LengthUnit>('mm', 'cm', 'in');
const massUnit = fc.constantFrom<MassUnit>('g', 'kg', 'oz', 'lb');
const eighths = fc.tuple(fc.integer({ min: 1, max: 40 }), fc.integer({ min: 1, max: 7 }));
const EIGHTHS = ['', '⅛', '¼', '⅜', '½', '⅝', '¾', '⅞'];

describe('units come back as they went', () => {
  it('a length in any unit is that many of it', () => {
    fc.assert(
      fc.property(hundredths, lengthUnit, fc.constantFrom('', ' '), (value, unit, space) => {
        const mm = value * MM_PER[unit];
        fc.pre(mm >= 0.1 && mm <= 3000);
        const result = parseLength(`${value}${space}${unit}`);
        if (!result.ok) throw new Error(result.problems[0]?.message);
        expect(result.value.unit).toBe(unit);
        expect(result.value.mm / MM_PER[unit]).toBeCloseTo(value, 6);
      }),
      RUNS,
    );
  });

  it('a fraction is the same in every way of writing it', () => {
    fc.assert(
      fc.property(eighths, ([whole, eighth]) => {
        const mm = (whole + eighth / 8) * 25.4;
        const ways = [`${whole} ${eighth}/8in`, `${whole} ${eighth}⁄8 in`, `${whole}${EIGHTHS[eighth]}in`];
        for (const text of [...ways, `${whole + eighth / 8}″`]) {
          const result = parseLength(text);
          expect(result.ok ? result.value.mm : text).toBeCloseTo(mm, 6);
        }
      }),
      RUNS,
    );
  });

  it('pounds and ounces add up', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 40 }), fc.integer({ min: 1, max: 63 }), (pounds, quarters) => {
        const result = parseMass(`${pounds} lb ${quarters / 4} oz`);
        expect(result.ok ? result.value : Number.NaN).toBeCloseTo(
          pounds * 453.59237 + (quarters / 4) * 28.349523125,
          6,
        );
      }),
      RUNS,
    );
  });

  it('a mass or a volume in any unit is that many of it', () => {
    fc.assert(
      fc.property(
        hundredths,
        massUnit,
        fc.constantFrom(...(Object.keys(ML_PER) as (keyof typeof ML_PER)[])),
        (value, mass, volume) => {
          const grams = parseMass(`${value} ${mass}`);
          const inRange = value * G_PER[mass] <= 100_000;
          expect(grams.ok).toBe(inRange);
          if (grams.ok) expect(grams.value / G_PER[mass]).toBeCloseTo(value, 6);
          const ml = parseVolume(`${value} ${volume}`);
          expect(ml.ok).toBe(value * ML_PER[volume] <= 200_000);
          if (ml.ok) expect(ml.value.ml / ML_PER[volume]).toBeCloseTo(value, 6);
        },
      ),
      RUNS,
    );
  });

  it('a fan temperature is 20 °C more without the fan', () => {
    fc.assert(
      fc.property(fc.integer({ min: 50, max: 280 }), (celsius) => {
        const fan = parseTemperature(`${celsius}C fan`);
        expect(fan.ok ? fan.value.ovenC : Number.NaN).toBe(celsius + 20);
        const fahrenheit = parseTemperature(`${(celsius * 9) / 5 + 32}F`);
        expect(fahrenheit.ok ? fahrenheit.value.ovenC : Number.NaN).toBeCloseTo(celsius, 6);
      }),
      RUNS,
    );
  });
});

const UNIT_PARSERS: ((text: string) => { ok: boolean })[] = [
  parseLength,
  parseMass,
  parseVolume,
  parseTemperature,
  parseShare,
  parseDensity,
  parseDuration,
  parseDay,
  parseEggSize,
  parseEggWeight,
  parseId,
  parseSiteUrl,
  parseContentPath,
  (text) => parseEggCount(text, 'egg', { shelledG: 50 }),
  (text) => parseSpec(text, { tins: [], outlines: [] }),
];

/** Text made of the pieces that parsers look for, besides any text at all. */
const pieces = fc
  .array(
    fc.oneof(
      fc.constantFrom(
        '1',
        '2 3/4',
        '½',
        '0',
        '-',
        '.',
        ',',
        ' x ',
        '×',
        'round ',
        'dome',
        'in',
        'mm',
        ' lb ',
        'oz',
        '%',
      ),
      fc.constantFrom(
        'gas ',
        'C',
        'F',
        ' fan',
        ' by ',
        'base ',
        'tube ',
        '\n',
        '\t',
        '"',
        "'",
        ': ',
        '- ',
        '{',
        '}',
        '[',
        ']',
      ),
      fc.constantFrom(
        '&a ',
        '*a',
        '!x ',
        '#',
        '---\n',
        '__proto__',
        'constructor',
        '\u202e',
        '\u0000',
        '🎂',
        '\ud800',
      ),
      fc.constantFrom('name: ', 'tins:\n', 'eggs: ', 'formula:\n', 'shape: ', 'across: ', '  '),
      fc.string({ unit: 'binary', maxLength: 6 }),
    ),
    { maxLength: 24 },
  )
  .map((parts) => parts.join(''));
const anyText = fc.oneof(pieces, fc.string({ unit: 'binary', maxLength: 60 }), fc.string({ maxLength: 60 }));

describe('no text makes a parser throw', () => {
  it('unit parsers and lists of tins answer with a value or with problems that say what to do', () => {
    fc.assert(
      fc.property(anyText, (text) => {
        for (const parse of UNIT_PARSERS) {
          const result = parse(text) as {
            ok: boolean;
            problems?: { message: string; hint?: string; code: string }[];
          };
          if (result.ok) continue;
          expect(result.problems?.length).toBeGreaterThan(0);
          for (const problem of result.problems ?? []) expect(problem.hint).toBeTruthy();
        }
      }),
      FUZZ,
    );
  });

  it('whole files answer too, and every problem has a line and a column', () => {
    const context = {
      egg: null,
      shelf: { ingredients: new Map(), broken: [] },
      spec: { tins: [], outlines: [], brokenTins: [] },
    };
    fc.assert(
      fc.property(anyText, (text) => {
        const found = [
          ...parseKitchenYaml(text, 'kitchen.yaml').problems,
          ...parseIngredientsYaml(text, 'ingredients.yaml').problems,
          ...parseRecipeMarkdown(`---\n${text}\n---\nBake.`, 'recipes/a.md', 'a', context).problems,
        ];
        expect(found.length).toBeGreaterThan(0);
        for (const { line, column } of found) expect((line ?? 0) * (column ?? 0)).toBeGreaterThan(0);
      }),
      FUZZ,
    );
  });

  it('brackets nested a hundred thousand deep are a few problems, not a crash', () => {
    const closed = `tins: ${'['.repeat(100_000)}${']'.repeat(100_000)}`;
    expect(parseKitchenYaml(closed, 'kitchen.yaml').problems.map(({ code }) => code)).toEqual([
      'yaml-too-deep',
    ]);
    const open = parseKitchenYaml(`tins: ${'['.repeat(100_000)}`, 'kitchen.yaml').problems;
    expect(open.every(({ code }) => code === 'yaml-syntax' || code === 'yaml-too-deep')).toBe(true);
    expect(open.length).toBeGreaterThan(0);
    expect(open.length).toBeLessThanOrEqual(20);
  });
});
