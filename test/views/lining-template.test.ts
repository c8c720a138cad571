import { describe, expect, it } from 'vitest';
import { USUAL_FINISHING } from '../../src/domain/finishing.ts';
import type { Locale } from '../../src/domain/kitchen.ts';
import type { Tin } from '../../src/domain/tin.ts';
import { liningTemplates, liningTemplateView } from '../../src/views/lining-template.ts';
import { demoContent } from '../samples/demo.ts';
import { TIN_OF_KIND } from '../samples/tins.ts';

describe('a lining template', async () => {
  const content = await demoContent();
  const { kitchen, recipes } = content;
  const viewOf = (tin: Tin, locale: Locale = 'en-GB') =>
    liningTemplateView(tin, { kitchen: { ...kitchen, locale }, recipes, finishing: USUAL_FINISHING });
  const piece = (tin: Tin, id: string) => {
    const found = viewOf(tin).pieces.find((candidate) => candidate.id === id);
    if (found === undefined) throw new Error(`no ${id}`);
    return found;
  };

  it('of an 8 in round has a base 4 mm smaller across, and a strip π × 203.2 + 20 by 76.2 + 20', () => {
    const { round } = TIN_OF_KIND;
    expect(piece(round, 'base').sizeText).toBe('199.2 mm across');
    expect(piece(round, 'side').sizeText).toBe('658.4 mm long, 96.2 mm high');
  });

  it('marks thirds of a cake of 100 mm on the levelling strip, which is as long as the wall and its lap', () => {
    const levels = piece(TIN_OF_KIND.round, 'levels');
    const layers = levels.guides.filter(({ kind }) => kind === 'level').map(({ text }) => text);
    expect(layers).toEqual(['Top of layer 1: 33.3 mm', 'Top of layer 2: 66.7 mm', 'Top of the cake: 100 mm']);
    expect(levels.widthMm).toBeCloseTo(Math.PI * 203.2 + 20, 2);
    const line = levels.guides[0]?.steps[0];
    if (line?.op !== 'move') throw new Error('the first level has no line');
    expect(levels.heightMm / 2 - line.y).toBeCloseTo(100 / 3, 2);
  });

  it('marks how high the recipes come out of a shallow tin, limited by its depth', () => {
    const shallow = { ...TIN_OF_KIND.round, depthMm: 40 };
    const baked = piece(shallow, 'levels').guides.filter(({ kind }) => kind === 'baked');
    const heights = baked.flatMap(({ text }) => [...text.matchAll(/[\d.]+/g)].map(Number));
    const highest = Math.max(...recipes.map(({ allowedRiseMm }) => 40 + allowedRiseMm));
    expect(heights.length).toBeGreaterThan(0);
    expect(Math.max(...heights)).toBeLessThanOrEqual(highest);
  });

  it('names the board of the finishing settings: an 8 in cake coated 8 mm, 75 mm more, up to 12 in', () => {
    expect(piece(TIN_OF_KIND.round, 'board').sizeText).toBe('304.8 mm across, 12 in (30.5 cm)');
    expect(piece(TIN_OF_KIND.square, 'board').sizeText).toBe('304.8 × 304.8 mm');
    expect(piece(TIN_OF_KIND.rectangle, 'board').sizeText).toBe('431.8 × 330.2 mm');
    expect(piece(TIN_OF_KIND['long-octagon'], 'board').sizeText).toBe('406.4 × 330.2 mm');
  });

  it('tells the long and the short sides of a loaf tin apart, two of each', () => {
    const sides = viewOf(TIN_OF_KIND.loaf).pieces.filter(({ id }) => id.endsWith('-side'));
    expect(sides.map(({ id, count, cutText }) => [id, count, cutText])).toEqual([
      ['long-side', 2, 'Cut two'],
      ['short-side', 2, 'Cut two'],
    ]);
  });

  it('of a tapered square has one side, cut four times', () => {
    const square: Tin = { ...TIN_OF_KIND.square, shape: { kind: 'square', sideMm: 200, baseSideMm: 180 } };
    const sides = viewOf(square).pieces.filter(({ id }) => id === 'panel');
    expect(sides.map(({ name, count, cutText }) => [name, count, cutText])).toEqual([
      ['Side strip', 4, 'Cut four'],
    ]);
  });

  it('of a ring has a strip for its tube as well', () => {
    expect(viewOf(TIN_OF_KIND.ring).pieces.map(({ id }) => id)).toEqual([
      'base',
      'side',
      'tube',
      'levels',
      'board',
    ]);
  });

  it('says honestly that a dome and a tin measured by water have no paper, with the flour caution', () => {
    for (const tin of [TIN_OF_KIND.dome, TIN_OF_KIND.measured]) {
      const view = viewOf(tin);
      expect(view.pieces.filter(({ group }) => group === 'lining')).toEqual([]);
      expect(view.notes[0]).toMatch(/^There is no (paper|pattern) for this tin/);
      expect(view.cautions.map(({ code }) => code)).toContain('flour-allergen');
    }
    expect(viewOf(TIN_OF_KIND.measured).pieces).toEqual([]);
  });

  it('says to draw round a base that is too narrow to be drawn smaller', () => {
    const sliver: Tin = { ...TIN_OF_KIND.rectangle, shape: { kind: 'rectangle', lengthMm: 200, widthMm: 4 } };
    const view = viewOf(sliver);
    expect(view.pieces.some(({ id }) => id === 'base')).toBe(false);
    expect(view.notes[0]).toContain('draw round it');
  });

  it('warns beside every pattern that it is not food safe', () => {
    for (const tin of Object.values(TIN_OF_KIND)) {
      const view = viewOf(tin);
      const codes = view.cautions.map(({ code }) => code);
      expect(codes.includes('pattern-not-food-safe')).toBe(view.pieces.length > 0);
      expect(codes.includes('paper-near-element')).toBe(view.pieces.some(({ id }) => /side|panel/.test(id)));
    }
  });

  it('draws every piece about its middle, its guides within it', () => {
    for (const tin of Object.values(TIN_OF_KIND)) {
      for (const { cut, guides, widthMm, heightMm, id } of viewOf(tin).pieces) {
        const ends = [...cut, ...guides.flatMap(({ steps }) => steps)].flatMap((step) =>
          step.op === 'close' ? [] : [step],
        );
        for (const { x, y } of ends) {
          expect(Math.abs(x), `${tin.id} ${id}`).toBeLessThanOrEqual(widthMm / 2 + 0.01);
          expect(Math.abs(y), `${tin.id} ${id}`).toBeLessThanOrEqual(heightMm / 2 + 0.01);
        }
      }
    }
  });

  it('is plain data, and says pan in US English', () => {
    const view = viewOf(TIN_OF_KIND.dome, 'en-US');
    expect(JSON.parse(JSON.stringify(view))).toEqual(view);
    expect([view.summary, ...view.notes].join(' ')).not.toMatch(/\btins?\b/);
  });

  it('is made for every tin on the shelf', () => {
    expect(liningTemplates(content).map(({ id }) => id)).toEqual(kitchen.tins.map(({ id }) => id));
  });
});
