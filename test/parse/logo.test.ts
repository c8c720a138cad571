import { describe, expect, it } from 'vitest';
import { parseLogoSvg } from '../../src/parse/logo.ts';

const svg = (inside: string, box = 'viewBox="0 0 200 50"'): string =>
  `<svg xmlns="http://www.w3.org/2000/svg" ${box}>${inside}</svg>`;
const shapesOf = (inside: string, box?: string) =>
  parseLogoSvg(svg(inside, box), 'assets/logo.svg').drawing?.shapes ?? [];
const warned = (inside: string, box?: string): string[] =>
  parseLogoSvg(svg(inside, box), 'assets/logo.svg').problems.map(
    ({ severity, message }) => `${severity}: ${message}`,
  );

describe('parseLogoSvg(text, file)', () => {
  it('scales the drawing to one height, y down, from the corner of its view box', () => {
    const { drawing } = parseLogoSvg(
      svg('<path d="M10 20h40v20h-40z"/>', 'viewBox="10 20 200 50"'),
      'assets/logo.svg',
    );
    expect(drawing?.width).toBe(400);
    expect(drawing?.shapes[0]?.steps).toEqual([
      { op: 'move', x: 0, y: 0 },
      { op: 'line', x: 80, y: 0 },
      { op: 'line', x: 80, y: 40 },
      { op: 'line', x: 0, y: 40 },
      { op: 'line', x: 0, y: 0 },
      { op: 'close' },
    ]);
  });

  it('takes width and height where there is no view box', () => {
    expect(parseLogoSvg(svg('', 'width="30px" height="60"'), 'logo.svg').drawing?.width).toBe(50);
  });

  it('paints as written, as styled, and as the groups around say', () => {
    const [one, two, three] = shapesOf(
      '<g fill="#ABC" fill-rule="evenodd"><path d="M0 0h9v9z"/><path d="M0 0h9v9z" style="fill: rgb(1, 2, 255)"/></g>' +
        '<circle cx="9" cy="9" r="5" fill="none" stroke="currentColor" stroke-width="2"/>',
    );
    expect(one).toMatchObject({ fill: '#aabbcc', evenOdd: true, stroke: null });
    expect(two?.fill).toBe('#0102ff');
    expect(three).toMatchObject({ fill: null, stroke: 'ink', strokeWidth: 4 });
  });

  it('moves shapes as their transforms do', () => {
    const [shape] = shapesOf(
      '<g transform="translate(5 10)"><rect width="10" height="10" transform="scale(2)"/></g>',
    );
    expect(shape?.steps[0]).toMatchObject({ op: 'move', x: 10, y: 20 });
  });

  it.each([
    ['text', '<text>Cakes</text>', /cannot use 'text'/],
    ['a gradient', '<path d="M0 0h9v9z" fill="url(#g)"/>', /the colour 'url\(#g\)' cannot be printed/],
    ['see-through parts', '<path d="M0 0h9v9z" opacity="0.5"/>', /see-through/],
    ['open lines', '<path d="M0 0h9v9" fill="none" stroke="#000000"/>', /lines that do not close/],
    ['points beyond all sense', '<path d="M0 0h1e308v9z"/>', /reaches farther than 100 m out/],
    ['no number at the end', '<path d="M0 0A1e300 1e-9 0 1 1 9 9z"/>', /reaches farther than 100 m out/],
    ['a colour that is no colour', '<path d="M0 0h9v9z" fill="constructor"/>', /cannot be printed/],
    ['lines of no width', '<path d="M0 0h9v9z" stroke-width="x"/>', /width of its lines cannot be read/],
    ['scripts', '<script>1</script>', /scripts, links or moving parts/],
  ])('leaves a logo with %s out of prints, and warns', (_, inside, message) => {
    const { drawing } = parseLogoSvg(svg(inside), 'assets/logo.svg');
    expect(drawing).toBeNull();
    expect(warned(inside)).toHaveLength(1);
    expect(warned(inside)[0]).toMatch(/^warning: Prints leave the logo out: /);
    expect(warned(inside)[0]).toMatch(message);
  });

  it('warns of a drawing that does not say how large it is', () => {
    expect(warned('', 'width="80%" height="9"')[0]).toMatch(/does not say how large/);
  });
});
