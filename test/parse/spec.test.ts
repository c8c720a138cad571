import { describe, expect, it } from 'vitest';
import type { Shape } from '../../src/domain/shape.ts';
import type { Tin } from '../../src/domain/tin.ts';
import { parseSpec } from '../../src/parse/spec.ts';
import { SHAPE_NAME } from '../../src/parse/tins/spec-words.ts';

const owned: Tin = {
  id: 'round-8',
  name: 'Round',
  owned: 2,
  unit: 'in',
  depthMm: 76.2,
  shape: { kind: 'round', acrossMm: 203.2 },
};
const outlines = ['star', 'five-point-star', 'numeral-5', 'grid-2x2', '3d-star', '2x2', '8'].map((id) => ({
  id,
  outline: { rings: [] },
}));
const read = (text: string) => parseSpec(text, { tins: [owned], outlines });

function only(text: string): Tin {
  const result = read(text);
  const [first] = result.ok ? result.value : [];
  if (first === undefined) throw new Error(`${text} was not read`);
  return first.tin;
}

const DESCRIBED: [string, Shape, number][] = [
  ['1 x round 6in x 3in', { kind: 'round', acrossMm: 152.4 }, 76.2],
  ['1 x round 8in base 7.5in x 3in', { kind: 'round', acrossMm: 203.2, baseAcrossMm: 190.5 }, 76.2],
  ['1 x square 200mm x 75mm', { kind: 'square', sideMm: 200 }, 75],
  ['1 x rectangle 9in by 13in x 2in', { kind: 'rectangle', lengthMm: 228.6, widthMm: 330.2 }, 50.8],
  ['1 x hexagon flats 8in x 3in', { kind: 'hexagon', acrossMm: 203.2, measured: 'flats' }, 76.2],
  ['1 x octagon corners 8in x 3in', { kind: 'octagon', acrossMm: 203.2, measured: 'corners' }, 76.2],
  [
    '1 x long-octagon 12in by 9in slant 3in x 3in',
    { kind: 'long-octagon', lengthMm: 304.8, widthMm: 228.6, slantMm: 76.2 },
    76.2,
  ],
  ['1 x oval 10in by 8in x 3in', { kind: 'oval', lengthMm: 254, widthMm: 203.2 }, 76.2],
  ['1 x heart across 8in x 3in', { kind: 'heart', acrossMm: 203.2, measured: 'across' }, 76.2],
  ['1 x heart point 8in x 3in', { kind: 'heart', acrossMm: 203.2, measured: 'point' }, 76.2],
  ['1 x petal6 9in x 3in', { kind: 'petal', petals: 6, acrossMm: 228.6 }, 76.2],
  ['1 x ring 10in tube 3in x 3in', { kind: 'ring', acrossMm: 254, tubeMm: 76.2 }, 76.2],
  [
    '1 x loaf 9in by 5in base 8in by 4in x 2.75in',
    { kind: 'loaf', lengthMm: 228.6, widthMm: 127, baseLengthMm: 203.2, baseWidthMm: 101.6 },
    69.85,
  ],
  ['1 x outline star x 3in', { kind: 'outline', outlineId: 'star', outline: { rings: [] } }, 76.2],
  ...['five-point-star', 'numeral-5', 'grid-2x2', '3d-star', '2x2', '8'].map(
    (outlineId): [string, Shape, number] => [
      `1 x outline ${outlineId} x 3in`,
      { kind: 'outline', outlineId, outline: { rings: [] } },
      76.2,
    ],
  ),
  ['1 x dome 6in', { kind: 'dome', acrossMm: 152.4 }, 76.2],
  ['1 x dome 8in x 2in', { kind: 'dome', acrossMm: 203.2 }, 50.8],
  ['1 x measured 1850ml x 75mm', { kind: 'measured', volumeMl: 1850 }, 75],
];

describe('parseSpec', () => {
  it('keeps an x inside the id of an outline, in its name too', () => {
    expect(only('2 x outline grid-2x2 × 3in').name).toBe('Outline grid-2x2 × 3in');
    expect(only('1 x round 6inx3in').name).toBe('Round 6in × 3in');
  });

  it.each(DESCRIBED)('%s is that tin, owned by nobody', (text, shape, depthMm) => {
    expect(only(text)).toMatchObject({ shape, depthMm, owned: 0 });
  });

  it.each([
    ['half-round', 'half-round', undefined],
    ['Number-Ring', 'Number-Ring', undefined],
    ['half-petal6', 'half-petal', '6'],
  ])('the name of a shape may be joined by hyphens: %s', (written, name, count) => {
    expect(SHAPE_NAME.exec(written)?.slice(1)).toEqual([name, count]);
  });

  it.each(['round-', '-round', 'half--round', 'petal-6'])('%s names no shape', (written) => {
    expect(SHAPE_NAME.test(written)).toBe(false);
  });

  it('reads several tins, owned and described, with x or ×, whatever the spaces', () => {
    const result = read(' 2 x round-8,1×square 8in×3in , 3x round 2 3/4in x 65 mm');
    expect(result.ok ? result.value.map(({ tin, count }) => `${count} ${tin.id}`) : result.problems).toEqual([
      '2 round-8',
      '1 square-8in-3in',
      '3 round-2-3-4in-x-65-mm',
    ]);
  });

  it('keeps the unit of the first length for printing', () => {
    expect(only('1 x round 6in x 75mm').unit).toBe('in');
    expect(only('1 x round 15 cm x 3in').unit).toBe('cm');
    expect(only('1 x measured 1850ml x 75mm').unit).toBe('mm');
  });

  it.each([
    ['', 'spec-empty', 1],
    ['round-8', 'spec-count', 1],
    ['0 x round-8', 'spec-count', 1],
    ['1.5 x round-8', 'spec-count', 1],
    ['501 x round-8', 'spec-count', 1],
    ['1 x round-8,', 'spec-count', 13],
    ['1 x round-8, 2 x round-9', 'tin-unknown', 18],
    ['1 x rund 6in x 3in', 'shape-unknown', 5],
    ['1 x round 6in', 'spec-depth-missing', 14],
    ['1 x round 6in x 3in x 2in', 'spec-depth-repeated', 23],
    ['1 x round 6 x 3in', 'unit-missing', 11],
    ['1 x round 6in x 3', 'unit-missing', 17],
    ['1 x round 6ells x 3in', 'unit-unknown', 11],
    ['1 x rectangle 9in x 2in', 'spec-unreadable', 5],
    ['1 x hexagon 8in x 3in', 'spec-unreadable', 5],
    ['1 x', 'spec-unreadable', 1],
    ['1 x round 6in base 7in x 3in', 'tin-base-wider', 5],
    ['1 x ring 8in tube 8in x 3in', 'tin-tube-too-wide', 5],
    ['1 x long-octagon 12in by 9in x 3in', 'spec-unreadable', 5],
    ['1 x long-octagon 12in by 9in slant 6.5in x 3in', 'tin-slant-too-long', 5],
    ['1 x petal2 8in x 3in', 'tin-petals', 5],
    ['1 x dome 6in x 4in', 'tin-dome-too-deep', 5],
    ['1 x round 5mm x 3in', 'tin-size-out-of-range', 5],
    ['1 x round 6in x 2mm', 'tin-depth-out-of-range', 5],
    ['1 x outline moon x 3in', 'outline-unknown', 13],
    ['1 x outline 3d-stars x 3in', 'outline-unknown', 13],
    ['1 x outline 3in x 3in', 'outline-unknown', 13],
    ['1 x outline 3d-star 3in', 'spec-unreadable', 5],
    ['1 x outline x 3in', 'spec-unreadable', 5],
  ])("'%s' is refused: %s at column %d", (text, code, column) => {
    const result = read(text);
    expect(result.ok ? [] : result.problems.map((problem) => [problem.code, problem.column ?? 1])).toEqual([
      [code, column],
    ]);
  });

  it('tells every mistake of a list at once', () => {
    const result = read('1 x round 6 x 3, 2 x round-9, x');
    expect(result.ok ? [] : result.problems.map(({ code }) => code)).toEqual([
      'unit-missing',
      'unit-missing',
      'tin-unknown',
      'spec-count',
    ]);
  });

  it("asks for the hyphen between a shape's two words", () => {
    const result = read('1 x long octagon 12in by 9in slant 3in x 3in');
    expect(result.ok ? '' : result.problems[0]?.hint).toBe("Did you mean 'long-octagon'?");
  });

  it('suggests the nearest tin', () => {
    const result = read('1 x rond-8');
    expect(result.ok ? '' : result.problems[0]?.hint).toBe("Did you mean 'round-8'?");
  });
});
