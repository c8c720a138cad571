import { beforeAll, describe, expect, it } from 'vitest';
import type { Content } from '../../src/domain/content.ts';
import { readContent } from '../../src/read/content.ts';
import { readDemo } from '../samples/demo.ts';

let content: Content;
beforeAll(async () => {
  const read = await readContent('test/kitchens/good/high');
  expect(read.problems).toEqual([]);
  if (read.content === null) throw new Error('the kitchen was not read');
  content = read.content;
});

describe('readContent of a kitchen with flavours and finishes', () => {
  it('reads every kind of adjustment, in order', () => {
    const [orange, poppy] = content.flavours;
    expect(orange).toMatchObject({
      id: 'orange',
      suits: { recipeIds: ['vanilla'], methods: [] },
      batter: 'kept',
      adjustments: [{ kind: 'add', basis: { role: 'flour' }, share: 0.05 }],
    });
    expect(poppy?.suits).toEqual({ recipeIds: [], methods: ['creamed', 'all-in-one'] });
    expect(poppy?.batter).toBe('grows');
    expect(poppy?.adjustments).toMatchObject([
      {
        kind: 'add',
        basis: { whole: 'batter' },
        share: 0.03,
        entry: { ingredientId: 'poppy-seed', fine: true },
      },
      { kind: 'add', basis: { ingredientId: 'poppy-seed' }, share: 1.2 },
      { kind: 'multiply', basis: { whole: 'batter' }, by: 1 },
      { kind: 'replace', basis: { ingredientId: 'caster-sugar' }, share: 0.5, portion: 0.9 },
      {
        kind: 'split-self-raising',
        ingredientId: 'self-raising-flour',
        flour: { ingredientId: 'plain-flour', role: 'flour' },
        powder: { ingredientId: 'baking-powder', role: 'raising' },
        powderShare: 0.05,
      },
    ]);
    expect(poppy?.method).toBe('Soak the seed.\n\nFold it in.');
  });

  it('reads a finish with every use', () => {
    expect(content.finishes).toEqual([
      {
        id: 'buttercream',
        name: 'Buttercream',
        kind: 'buttercream',
        densityGPerMl: 1.05,
        parts: [
          { ingredientId: 'butter', name: 'Butter', parts: 1, fine: false },
          { ingredientId: 'icing-sugar', name: 'Icing sugar', parts: 2, fine: false },
        ],
        use: {
          filling: { thicknessMm: 6.35 },
          coating: { crumbMm: 0, finalMm: 6, corners: 'sharp' },
          rolled: { thicknessMm: 4, trimMm: 25.4 },
          brushed: { gPerCm2: 0.1 },
        },
        lossShare: 0.1,
        cookingLossShare: 0.05,
        keepsDays: 14,
        chilled: true,
        packG: 453.59237,
        methodMarkdown: 'Beat.',
      },
    ]);
  });

  it('reads altitude, finishing, further styles, printables and the booklet’s words', () => {
    expect(content.altitudeM).toBe(1524);
    expect(content.finishing).toEqual({
      cakeHeightMm: 101.6,
      layers: 2,
      damMm: 0,
      undercoatMm: 6,
      ribbonOverlapMm: 30,
      boardMarginMm: 50.8,
      boardThicknessMm: 10,
      boxHeightClearanceMm: 30,
    });
    expect(content.houseStyles.map(({ id, style }) => [id, style.name])).toEqual([['slate', 'Slate']]);
    expect(content.printables?.slice(0, 3)).toEqual([
      {
        print: 'tin-chart',
        name: 'only-one',
        recipeIds: ['vanilla'],
        flavourIds: ['orange', 'poppy-seed'],
        tinIds: ['round-20'],
        papers: ['Letter'],
        mass: 'oz',
      },
      { print: 'tin-chart', recipeIds: ['vanilla'], flavourIds: [] },
      { print: 'recipe-card', cardSizes: ['A6', 'index 4 x 6 in'] },
    ]);
    expect(content.booklet).toEqual({
      editionNote: 'Second',
      licence: 'Do as you like.',
      preparedFor: 'A tester',
      paperThicknessMm: 0.12,
    });
  });

  it('knows what cocoa drinks and what self-raising flour is made of', () => {
    const item = (id: string) => content.ingredients.find((one) => one.id === id);
    expect(item('cocoa')?.drinks).toBe(0.75);
    expect(item('self-raising-flour')?.selfRaising).toEqual({
      flourId: 'plain-flour',
      powderId: 'baking-powder',
      powderShare: 0.05,
    });
  });
});

describe('readContent of a kitchen without them', () => {
  it('has none, finishes as usual, and prints everything', async () => {
    const { content: plain } = await readContent('test/kitchens/good/minimal');
    expect(plain).toMatchObject({
      flavours: [],
      finishes: [],
      altitudeM: null,
      houseStyles: [],
      printables: null,
      booklet: {},
      finishing: { cakeHeightMm: 100, layers: 3 },
    });
  });
});

describe('the demo’s second house style', () => {
  it('differs in fonts, paper, margins and every colour', async () => {
    const { content: demo } = await readDemo();
    const second = demo?.houseStyles[0]?.style;
    if (!demo || !second) throw new Error('no second style');
    const first = demo.houseStyle;
    for (const role of ['text', 'textBold', 'textItalic', 'heading'] as const) {
      expect(second.fonts[role]).not.toBe(first.fonts[role]);
    }
    for (const side of ['top', 'right', 'bottom', 'left'] as const) {
      expect(second.marginMm[side]).not.toBe(first.marginMm[side]);
    }
    for (const [name, colour] of Object.entries(second.colours.light)) {
      expect(colour).not.toBe(first.colours.light[name as keyof typeof first.colours.light]);
    }
    expect(second.headingCase).not.toBe(first.headingCase);
  });
});
