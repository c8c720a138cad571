/** Drawn tins: numerals and letters with holes, every way of drawing them, and what is refused. */
import { areaPathsD, FillRule, unionD } from 'clipper2-ts';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  flattenOutline,
  outlineAreaMm2,
  outlineBounds,
  outlinePerimeterMm,
  ringDepths,
} from '../../src/compute/outline/index.ts';
import type { Outline } from '../../src/domain/outline.ts';
import { type OutlineOptions, parseOutlineSvg } from '../../src/parse/outline-svg.ts';

const SIZED = 'width="100mm" height="100mm" viewBox="0 0 100 100"';
const svg = (body: string, attributes = SIZED) =>
  `<svg xmlns="http://www.w3.org/2000/svg" ${attributes}>\n  ${body}\n</svg>`;

function outlineOf(text: string, options?: OutlineOptions): Outline {
  const result = parseOutlineSvg(text, 'outlines/test.svg', options);
  if (!result.ok) throw new Error(JSON.stringify(result.problems));
  return result.value;
}

const problemsOf = (text: string) => {
  const result = parseOutlineSvg(text, 'outlines/test.svg');
  return result.ok ? [] : result.problems;
};
const codesOf = (text: string) => problemsOf(text).map(({ code }) => code);

const drawn = (body: string, attributes?: string) => {
  const outline = outlineOf(svg(body, attributes));
  const { minX, minY, maxX, maxY } = outlineBounds(outline);
  return {
    area: outlineAreaMm2(outline),
    walls: outlinePerimeterMm(outline),
    size: [maxX - minX, maxY - minY].map((n) => Math.round(n * 1000) / 1000),
  };
};

describe('numbers beyond all sense', () => {
  it.each(['M0 0H1e308V9z', 'M0 0C1e200 1 2 2e200 3 3z', 'M0 0A1e9 1e9 0 0 1 1e200 5z', 'M0 0L5e8 1 9 9z'])(
    '%s is refused by its size',
    (d) => {
      expect(codesOf(svg(`<path d="${d}"/>`))).toEqual(['outline-size-out-of-range']);
    },
  );

  it('an arc that ends where it starts is no arc (SVG 2, W3C, chapter 9 Paths, from memory)', () => {
    expect(drawn('<path d="M10 10A5 5 0 1 1 10 10H90V90H10z"/>').area).toBeCloseTo(6400, 6);
  });
});

describe('numerals and letters', () => {
  it('an eight of two rings with a hole each, drawn as one path', () => {
    // Two discs of 40 mm radius that share no floor would touch in a point: here they are cut flat where they meet.
    const loops =
      'M20 45 A25 25 0 1 1 60 45 A30 30 0 1 1 20 45 Z M30 30 a10 10 0 1 0 20 0 a10 10 0 1 0 -20 0 z';
    const low = 'M25 67 a15 15 0 1 1 30 0 a15 15 0 1 1 -30 0 z';
    const outline = outlineOf(svg(`<path d="${loops} ${low}"/>`));
    expect(ringDepths(outline)).toEqual([0, 1, 1]);
    const fine = areaPathsD(unionD(flattenOutline(outline, 1e-4), [], FillRule.EvenOdd, 6));
    expect(Math.abs(outlineAreaMm2(outline) - fine)).toBeLessThan(0.1);
  });

  it('a nought: 5 000 mm² of frame whichever way its hole runs', () => {
    const outer = 'M0 0H60V100H0Z';
    expect(drawn(`<path d="${outer} M20 25V75H40V25Z"/>`)).toEqual({
      area: 5000,
      walls: 460,
      size: [60, 100],
    });
    expect(drawn(`<path d="${outer} M20 25H40V75H20Z"/>`)).toEqual({
      area: 5000,
      walls: 460,
      size: [60, 100],
    });
  });

  it('a letter with an island in its hole: frame, hole and island', () => {
    const rings = [
      [0, 100],
      [10, 80],
      [30, 40],
    ].map(([at = 0, side = 0]) => `<rect x="${at}" y="${at}" width="${side}" height="${side}"/>`);
    expect(drawn(rings.reverse().join('')).area).toBe(10000 - 6400 + 1600);
  });

  it('y is turned up and the box is centred', () => {
    const outline = outlineOf(svg('<path d="M50 100L0 0H100Z"/>'));
    expect(outline.rings[0]?.start).toEqual({ x: 0, y: -50 });
  });
});

describe('ways of drawing the same thing', () => {
  const circleArea = 5026.55;
  it.each([
    ['circle', '<circle cx="50" cy="50" r="40"/>'],
    ['ellipse', '<ellipse cx="50" cy="50" rx="40" ry="40"/>'],
    ['rounded rectangle', '<rect x="10" y="10" width="80" height="80" rx="40"/>'],
    ['two arcs', '<path d="M10 50A40 40 0 0 1 90 50A40 40 0 0 1 10 50Z"/>'],
    ['relative arcs, flags run together', '<path d="m10 50a40 40 0 0180 0a40 40 0 01-80 0"/>'],
    ['a quarter turned and mirrored', '<circle transform="rotate(90) scale(-1 1)" cx="50" cy="50" r="40"/>'],
    ['an ellipse squashed round', '<g transform="scale(.5 1)"><ellipse cx="9" rx="80" ry="40"/></g>'],
  ])('a disc of 40 mm radius as %s', (_, body) => {
    const { area, walls, size } = drawn(body);
    expect(area).toBeCloseTo(circleArea, 1);
    expect(walls).toBeCloseTo(251.327, 2);
    expect(size).toEqual([80, 80]);
  });

  it.each([
    ['absolute lines', '<path d="M0 0L60 0L60 40L0 40Z"/>'],
    ['relative, horizontal and vertical', '<path d="m5 5h60v40h-60"/>'],
    ['implied lines, not closed', '<path d="M0,0 60,0 60,40 0,40"/>'],
    ['polygon', '<polygon points="0,0 60,0 60,40 0,40"/>'],
    ['polyline', '<polyline points="0 0 60 0 60 40 0 40"/>'],
    ['rect', '<rect width="60" height="40"/>'],
    ['straight cubics', '<path d="M0 0C20 0 60 0 60 0S60 40 60 40L0 40z"/>'],
    ['straight quadratics', '<path d="M0 0Q30 0 60 0L60 40Q30 40 0 40z"/>'],
    [
      'groups that shift and scale',
      '<g transform="translate(9 9)"><g transform="scale(2)"><rect width="30" height="20"/></g></g>',
    ],
    ['a matrix', '<rect transform="matrix(0,3,-2,0,7,7)" width="20" height="20"/>'],
  ])('a plate of 60 × 40 mm by %s', (_, body) => {
    const { area, walls, size } = drawn(body);
    expect([area, walls]).toEqual([2400, 200]);
    expect([...size].sort()).toEqual([40, 60]);
  });

  it('T goes on with the mirrored handle, exactly', () => {
    // Two parabolas of 30 × 15: each lies off the chord by 2/3 of its triangle 30 × 15.
    expect(drawn('<path d="M0 0Q15 -30 30 0T60 0L60 40L0 40Z"/>').area).toBeCloseTo(2400, 2);
    expect(drawn('<path d="M0 20Q30 -40 60 20L60 40L0 40Z"/>').area).toBeCloseTo(1200 + (2 / 3) * 60 * 30, 2);
  });

  it('stray lines and dots hold nothing and are no walls', () => {
    expect(drawn('<rect width="60" height="40"/><path d="M5 5L20 20M3 3z"/>').walls).toBe(200);
  });

  it('what is not drawn does not count: titles, definitions, hidden shapes, an editor’s own elements', () => {
    const extra =
      '<title>x</title><defs><circle r="9"/></defs><circle display="none" r="9"/><e:view xmlns:e="urn:e"><e:path/></e:view>';
    expect(drawn(`${extra}<rect width="60" height="40"/>`).area).toBe(2400);
  });
});

describe('size', () => {
  it.each([
    ['mm over a viewBox', 'width="50mm" height="50mm" viewBox="0 0 100 100"', 0.25],
    ['cm', 'width="20cm" viewBox="0 0 100 100"', 4],
    ['inches, height only', 'height="4in" viewBox="0 0 100 100"', 1.016 ** 2],
    ['the smaller scale where the two disagree', 'width="50mm" height="100mm" viewBox="0 0 100 100"', 0.25],
    [
      'both where the drawing is to be stretched',
      'width="50mm" height="100mm" viewBox="0 0 100 100" preserveAspectRatio="none"',
      0.5,
    ],
    ['pixels without a viewBox', 'width="50mm"', (25.4 / 96) ** 2],
  ])('%s', (_, attributes, factor) => {
    expect(drawn('<rect width="60" height="40"/>', attributes).area).toBeCloseTo(2400 * factor, 1);
  });

  it('a drawing without a size is refused unless the tin gives one; then its larger side is 200 mm', () => {
    const text = svg('<rect width="6" height="4"/>', 'viewBox="0 0 10 10"');
    expect(codesOf(text)).toEqual(['outline-size-missing']);
    const { minX, maxX } = outlineBounds(outlineOf(text, { sizeFromTin: true }));
    expect(maxX - minX).toBe(200);
  });
});

describe('refused, with the place', () => {
  it.each([
    ['outline-xml', svg('<g>')],
    ['outline-xml', ''],
    ['outline-xml', '<html></html>'],
    ['outline-xml', svg('<path d="&undefined;"/>')],
    ['outline-doctype', `<!DOCTYPE svg [<!ENTITY a "M0 0H60V40Z">]>${svg('<path d="&a;"/>')}`],
    ['outline-active-content', svg('<script>1</script>')],
    ['outline-active-content', svg('<rect width="60" height="40" onclick="x()"/>')],
    ['outline-active-content', svg('<use href="other.svg#a"/>')],
    ['outline-active-content', svg('<foreignObject/>')],
    ['outline-active-content', `<?xml-stylesheet href="x.css"?>${svg('')}`],
    ['outline-element-unsupported', svg('<text>8</text>')],
    ['outline-element-unsupported', svg('<style>rect{r:1}</style>')],
    ['outline-number', svg('<rect width="60mm" height="40"/>')],
    ['outline-number', svg('<circle r="-4"/>')],
    ['outline-number', svg('<circle cx="1e999" r="4"/>')],
    ['outline-number', svg('', 'width="9mm" viewBox="0 0 0 9"')],
    ['outline-path-broken', svg('<path d="M0 0H60V40X"/>')],
    ['outline-path-broken', svg('<path d="H60V40Z"/>')],
    ['outline-path-broken', svg('<polygon points="0,0 60,0 60,40 0"/>')],
    ['outline-transform', svg('<rect transform="grow(2)" width="60" height="40"/>')],
    ['outline-transform', svg('<rect transform="scale(1 2 3)" width="60" height="40"/>')],
    ['outline-transform', svg('<rect style="transform:scale(2)" width="60" height="40"/>')],
    ['outline-size-out-of-range', svg('<circle r="2"/>')],
    ['outline-size-out-of-range', svg('<circle r="900"/>')],
    ['outline-size-out-of-range', svg('<path d="M0 0H1e308V1e308H-1e308Z"/>')],
    ['outline-empty', svg('')],
    ['outline-empty', svg('<path d="M0 0L60 40"/>')],
    ['outline-empty', svg('<rect transform="scale(1 0)" width="60" height="40"/>')],
    ['outline-crosses-itself', svg('<path d="M0 0L60 60H0L60 0Z"/>')],
    ['outline-crosses-itself', svg('<circle cx="40" cy="40" r="20"/><circle cx="60" cy="40" r="20"/>')],
    ['outline-too-detailed', svg(' '.repeat(200_000))],
    ['outline-too-detailed', svg(`<path d="M0 0${'l60 .01-60 .01'.repeat(1500)}"/>`)],
    ['outline-too-detailed', svg('<path/>'.repeat(501))],
    ['outline-too-detailed', svg('<g>'.repeat(50) + '</g>'.repeat(50))],
  ])('%s', (code, text) => {
    const [problem] = problemsOf(text);
    expect(problem?.code).toBe(code);
    expect(problem?.hint?.length).toBeGreaterThan(10);
    expect(problem?.file).toBe('outlines/test.svg');
    expect(problem?.line).toBeGreaterThan(0);
  });

  it('points at the element', () => {
    const text = svg('<g>\r\n    <circle r="9"/> <circle r="x"/></g>');
    expect(problemsOf(text)).toMatchObject([
      { line: 3, column: 21, message: "r of a circle is 'x', not a plain number" },
    ]);
  });

  it('tells all wrong elements at once', () => {
    const text = svg('<text/><circle/>\n<image/>');
    expect(codesOf(text)).toEqual(['outline-element-unsupported', 'outline-active-content']);
    expect(codesOf(svg('<circle/><rect width="1"/>'))).toEqual(['outline-number', 'outline-number']);
  });
});

describe('anything at all', () => {
  const RUNS = { numRuns: 2000, seed: 20261101 };
  const pieces = fc.constantFrom(
    ...[
      '<svg ',
      'width="9cm" ',
      'viewBox="0 0 9 9"',
      '>',
      '<path d="',
      'M0 0',
      'L9 9',
      'a1 1 0 0 1 5 5',
      'z',
      'C1 2 3 4 5 9',
    ],
    ...[
      '"/>',
      '<g transform="',
      'rotate(',
      '3)',
      '</g>',
      '</svg>',
      '&#0;',
      '<!',
      ']]>',
      '<circle r="',
      '4',
      'e',
      '-',
      'Q',
      'NaN',
    ],
  );
  const text = fc.oneof(
    fc.string(),
    fc.array(pieces, { maxLength: 30 }).map((list) => list.join('')),
    fc.array(pieces, { maxLength: 12 }).map((list) => svg(`<path d="M0 0 ${list.join(' ')}"/>`)),
  );
  it('never throws, and says either an outline or why not', () => {
    fc.assert(
      fc.property(text, (any) => {
        const result = parseOutlineSvg(any, 'a.svg');
        if (result.ok) {
          expect(outlineAreaMm2(result.value)).toBeGreaterThan(0);
          expect(JSON.stringify(result.value)).not.toContain('null');
        } else expect(result.problems.length).toBeGreaterThan(0);
      }),
      RUNS,
    );
  });

  it('area follows the determinant of any transform', () => {
    // Stretch, mirror, turn and skew: a determinant that is never near nothing.
    const stretch = fc.double({ min: 0.4, max: 2, noNaN: true });
    const angle = fc.double({ min: -180, max: 180, noNaN: true });
    const skew = fc.double({ min: -50, max: 50, noNaN: true });
    fc.assert(
      fc.property(stretch, stretch, fc.boolean(), angle, skew, (sx, sy, mirrored, turn, lean) => {
        const scale = `scale(${sx.toFixed(9)} ${(mirrored ? -sy : sy).toFixed(9)})`;
        const transform = `translate(9 3) rotate(${turn.toFixed(6)}) ${scale} skewX(${lean.toFixed(6)})`;
        const shape = '<path d="M0 0H40A15 10 20 0 1 60 30S40 60 10 50Z"/>';
        const after = drawn(`<g transform="${transform}">${shape}</g>`).area;
        expect(Math.abs(after - sx * sy * drawn(shape).area)).toBeLessThan(0.03);
      }),
      { numRuns: 1000, seed: 20261101 },
    );
  });
});
