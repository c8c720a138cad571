/** Long because the rules of three jurisdictions are held side by side, case by case. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Label, type LabelInput, labelOf } from '../../../src/compute/labels/label.ts';
import type { Ingredient } from '../../../src/domain/ingredient.ts';
import {
  BUTTERCREAM,
  finishOf,
  JAM,
  labelInput,
  SHELF,
  SPONGE,
  shelfItem,
} from '../../samples/label-input.ts';

function made(more: Partial<LabelInput> = {}): Label {
  const label = labelOf(labelInput(more));
  if (!label.ok) throw new Error(JSON.stringify(label.problems));
  return label.value;
}

const refusedWith = (more: Partial<LabelInput>): string[] => {
  const label = labelOf(labelInput(more));
  return label.ok ? [] : label.problems.map(({ code }) => code);
};

const names = ({ entries }: Label): string[] => entries.map(({ name }) => name);
const textOf = (label: Label, name: string): string =>
  (label.entries.find((entry) => entry.name === name)?.pieces ?? [])
    .map(({ text, allergen }) => (allergen === null ? text : `*${text}*`))
    .join('');
const withItem = (id: string, change: Partial<Ingredient>): Ingredient[] =>
  SHELF.map((one) => (one.id === id ? { ...one, ...change } : one));

describe('the worked order A: batter of four times 250 g, 100 g jam, 450 g buttercream', () => {
  const label = made({ named: ['strawberry', 'strawberry-jam', 'butter'] });

  it('lists sugar, butter, flour and egg (a tie), jam opened in brackets', () => {
    expect(names(label)).toEqual(['sugar', 'butter', 'self-raising flour', 'egg', 'strawberry jam']);
    expect(label.ties).toEqual([['self-raising flour', 'egg']]);
    expect(textOf(label, 'strawberry jam')).toBe('strawberry jam (sugar, strawberry, pectin)');
  });

  it('has a bowl of 1,550 g, and after a loss of 10 % of the batter 1,450 g', () => {
    expect([label.bowlG, label.finishedG]).toEqual([1550, 1450]);
  });

  it('shares the bowl as 35.48, 25.81, 16.13, 16.13 and 6.45 %', () => {
    const percent = label.entries.map(({ share }) => Math.round(share * 10_000) / 100);
    expect(percent).toEqual([35.48, 25.81, 16.13, 16.13, 6.45]);
  });

  it('tells strawberry 3.1 %, jam 6.9 % and butter 27.6 % of the finished cake', () => {
    const quidOf = (name: string) => label.entries.find((entry) => entry.name === name)?.quid ?? 0;
    expect(quidOf('strawberry jam') * 100).toBeCloseTo(6.9, 1);
    expect(quidOf('butter') * 100).toBeCloseTo(27.6, 1);
    expect(label.looseQuids).toEqual([{ name: 'strawberry', per100G: 3.103 }]);
  });
});

describe('the list of ingredients', () => {
  const weights = fc.record({
    'self-raising-flour': fc.integer({ min: 0, max: 2_000_000 }),
    butter: fc.integer({ min: 0, max: 2_000_000 }),
    'caster-sugar': fc.integer({ min: 0, max: 2_000_000 }),
    egg: fc.integer({ min: 1, max: 2_000_000 }),
    'icing-sugar': fc.integer({ min: 0, max: 2_000_000 }),
    'strawberry-jam': fc.integer({ min: 0, max: 2_000_000 }),
    water: fc.integer({ min: 0, max: 2_000_000 }),
  });
  const spongeOf = (milligrams: Record<string, number>, waterLossShare: number) => ({
    sponges: [
      {
        name: 'Sponge',
        formula: Object.entries(milligrams).map(([ingredientId, mg]) => ({ ingredientId, grams: mg / 1000 })),
        waterLossShare,
        keepsDays: 4,
      },
    ],
    finishes: [],
  });

  it('shares the whole bowl, with what the oven took', () => {
    fc.assert(
      fc.property(weights, fc.double({ min: 0, max: 0.3, noNaN: true }), (mg, loss) => {
        const { entries, goneShare } = made(spongeOf(mg, loss));
        const sum = entries.reduce((all, { share }) => all + share, goneShare);
        expect(Math.abs(sum - 1)).toBeLessThan(1e-5);
      }),
      { numRuns: 60 },
    );
  });

  it('is by falling weight, and says once what goes by one name', () => {
    fc.assert(
      fc.property(weights, fc.double({ min: 0, max: 0.3, noNaN: true }), (mg, loss) => {
        const label = made(spongeOf(mg, loss));
        const ranks = label.entries.map(({ rankG }) => rankG);
        expect(ranks).toEqual([...ranks].sort((a, b) => b - a));
        expect(new Set(names(label)).size).toBe(label.entries.length);
      }),
      { numRuns: 60 },
    );
  });

  it('loses what is left out, and its allergens with it', () => {
    fc.assert(
      fc.property(fc.constantFrom(...SPONGE), (left) => {
        const formula = SPONGE.filter((line) => line !== left);
        const label = made({
          sponges: [{ name: 'Sponge', formula, waterLossShare: 0.1, keepsDays: 4 }],
          finishes: [],
        });
        expect(label.entries.flatMap(({ ingredientIds }) => ingredientIds)).not.toContain(left.ingredientId);
        const allergens = SHELF.find(({ id }) => id === left.ingredientId)?.allergens ?? [];
        for (const allergen of allergens)
          expect(label.allergens.map((told) => told.allergen)).not.toContain(allergen);
      }),
    );
  });

  it('ranks added water by what the oven leaves of it', () => {
    const wet = (waterLossShare: number) =>
      made({
        sponges: [
          {
            name: 'Sponge',
            formula: [...SPONGE, { ingredientId: 'water', grams: 300 }],
            waterLossShare,
            keepsDays: 4,
          },
        ],
        finishes: [],
      });
    // 1,300 g lose 10 %: of 300 g water 170 g stay, less than the 250 g of everything else.
    expect(names(wet(0))[0]).toBe('water');
    expect(names(wet(0.1)).at(-1)).toBe('water');
    expect(wet(0.1).entries.at(-1)?.rankG).toBe(170);
    // A loss of 25 % takes it all: it is not in the food, so it is not in the list.
    expect(names(wet(0.25))).not.toContain('water');
    expect(wet(0.25).goneShare).toBeCloseTo(300 / 1300, 6);
  });

  it('keeps the water of a syrup that is brushed on after baking', () => {
    const syrup = finishOf('syrup', { 'caster-sugar': 1, water: 1 }, { kind: 'syrup' });
    const label = made({ finishes: [{ finish: syrup, use: 'brushed', onCakeG: 120 }] });
    expect(label.entries.find(({ name }) => name === 'water')?.rankG).toBe(60);
  });
});

describe('a percentage', () => {
  it('past the whole is told in grams for 100 g', () => {
    const jam = finishOf('jam', { raspberry: 1 }, { cookingLossShare: 0.5, kind: 'jam' });
    const label = made({
      sponges: [],
      finishes: [{ finish: jam, use: 'filling', onCakeG: 100 }],
      ingredients: [...SHELF, shelfItem('raspberry')],
      named: ['raspberry'],
    });
    expect(label.entries[0]?.quid).toBe(2);
  });

  it('is told for what the name points at, not for how it is or for what it leaves out', () => {
    const quids = (foodName: string) =>
      made({ foodName, named: null })
        .entries.filter(({ quid }) => quid !== null)
        .map(({ name }) => name);
    expect(quids('Butter sponge')).toEqual(['butter']);
    expect(quids('Plain sponge with strawberry jam')).toEqual(['strawberry jam']);
    expect(quids('Sugar cake')).toEqual([]);
    expect(made({ foodName: 'Sponge, strawberry', named: null, finishes: [BUTTERCREAM] }).looseQuids).toEqual(
      [],
    );
    // Nothing whole is called strawberry here, so the part of the jam answers.
    const shelf = withItem('strawberry-jam', { name: 'Red jam' });
    expect(made({ foodName: 'Strawberry sponge', named: null, ingredients: shelf }).looseQuids).toEqual([
      { name: 'strawberry', per100G: 3.103 },
    ]);
  });
});

describe('a kind of ingredients', () => {
  const shelf = [...SHELF, shelfItem('sultanas'), shelfItem('currants'), shelfItem('fruit-sugar')];
  const fruit = (named: Record<string, string[]> | undefined, foodName: string) =>
    made({
      foodName,
      named: null,
      finishes: [],
      ingredients: shelf,
      settings: { ...labelInput().settings, ...(named ? { named } : {}) },
      sponges: [
        {
          name: 'Fruit cake',
          formula: [
            ...SPONGE,
            { ingredientId: 'sultanas', grams: 300 },
            { ingredientId: 'currants', grams: 200 },
          ],
          waterLossShare: 0,
          keepsDays: 90,
        },
      ],
    });

  it('has one percentage together where the name tells of the kind', () => {
    // 1,000 g of sponge and 500 g of fruit: a third of 1,500 g. Regulation (EU) No 1169/2011 Article 22 names a
    // category of ingredients as it does an ingredient (from memory).
    const kinds = { fruit: ['sultanas', 'currants'] };
    expect(fruit(kinds, 'Rich fruit cake').looseQuids).toEqual([{ name: 'fruit', per100G: 33.333 }]);
    expect(fruit(kinds, 'Rich fruit cake').entries.every(({ quid }) => quid === null)).toBe(true);
    expect(fruit(kinds, 'Plain cake').looseQuids).toEqual([]);
    expect(fruit(undefined, 'Rich fruit cake').looseQuids).toEqual([]);
    // A name that tells of one of them too has both.
    const both = fruit(kinds, 'Fruit cake with sultanas');
    expect(both.looseQuids.map(({ name }) => name)).toEqual(['fruit']);
    expect(both.entries.filter(({ quid }) => quid !== null).map(({ name }) => name)).toEqual(['sultanas']);
  });
});

describe('an allergen', () => {
  it('is set apart in the name that tells of it, and follows the name that does not', () => {
    const label = made({
      ingredients: SHELF.map((one) =>
        one.id === 'butter'
          ? { ...one, name: 'Buttermilk' }
          : one.id === 'egg'
            ? { ...one, name: 'Egg white' }
            : one,
      ),
    });
    expect(textOf(label, 'egg white')).toBe('*egg* white');
    expect(textOf(label, 'buttermilk')).toBe('buttermilk (*milk*)');
    expect(textOf(label, 'self-raising flour')).toBe('self-raising flour (*wheat*)');
  });

  it('is found inside a compound ingredient, by its part or after all parts', () => {
    const chocolate = (allergens: Ingredient['allergens']) =>
      textOf(
        made({
          ingredients: withItem('strawberry-jam', {
            name: 'Chocolate',
            allergens: allergens ?? [],
            compound: [
              { name: 'sugar', share: 0.6 },
              { name: 'emulsifier (soya lecithin)', share: 0.4 },
            ],
          }),
        }),
        'chocolate',
      );
    expect(chocolate(['soya'])).toBe('chocolate (sugar, emulsifier (*soya* lecithin))');
    expect(chocolate(['soya', 'milk'])).toBe('chocolate (sugar, emulsifier (*soya* lecithin), *milk*)');
  });

  it('counts by the rules of the country: sulphites are emphasised in the UK, listed in the US, and barley is no wheat', () => {
    const fruit = withItem('strawberry-jam', { name: 'Cherries', allergens: ['sulphites'] });
    const label = (rules: 'UK' | 'US') =>
      made({ ingredients: fruit, settings: { ...labelInput().settings, rules } });
    expect(textOf(label('UK'), 'cherries')).toMatch(/\*sulphites\*/);
    expect(textOf(label('US'), 'cherries')).toMatch(/sulfites/);
    expect(textOf(label('US'), 'cherries')).not.toMatch(/\*/);
    expect(label('US').containsLine).toBe(true);
    expect(label('UK').containsLine).toBe(false);
    const malt = withItem('self-raising-flour', { allergenNames: { gluten: 'wheat, barley' } });
    const told = (rules: 'UK' | 'US') =>
      made({ ingredients: malt, settings: { ...labelInput().settings, rules } }).allergens.map(
        ({ name }) => name,
      );
    expect(told('UK')).toContain('barley');
    expect(told('US')).toContain('wheat');
    expect(told('US')).not.toContain('barley');
  });

  it('may be in it only as the baker declares, and is not said twice', () => {
    const mayContain = (allergens: Label['mayContain']) =>
      made({ settings: { ...labelInput().settings, mayContain: allergens } }).mayContain;
    expect(mayContain([])).toEqual([]);
    expect(mayContain(['milk', 'nuts', 'soya'])).toEqual(['nuts', 'soya']);
  });
});

describe('a label is refused', () => {
  it('while nobody has filled in the allergens of an ingredient, whichever it is', () => {
    for (const { ingredientId } of SPONGE) {
      const shelf = SHELF.map((one) => {
        if (one.id !== ingredientId) return one;
        const { allergens, ...unknown } = one;
        return unknown;
      });
      expect(refusedWith({ ingredients: shelf })).toEqual(['label-allergens-missing']);
    }
  });

  it('for a cereal or a nut without its name, or with one that the law does not have', () => {
    const { allergenNames, ...unnamed } = SHELF[0] ?? shelfItem('self-raising-flour');
    expect(refusedWith({ ingredients: [unnamed, ...SHELF.slice(1)] })).toEqual(['label-allergen-unnamed']);
    const coconut = withItem('butter', { allergens: ['nuts'], allergenNames: { nuts: 'coconut' } });
    expect(refusedWith({ ingredients: coconut })).toEqual(['label-allergen-name']);
  });

  it('for what is not on the shelf, and for weights that cannot be', () => {
    expect(refusedWith({ ingredients: SHELF.slice(1) })).toEqual(['label-ingredient-unknown']);
    expect(refusedWith({ sponges: [], finishes: [] })).toEqual(['label-empty']);
    expect(refusedWith({ finishes: [{ ...JAM, onCakeG: Number.NaN }] })).toEqual(['label-weight']);
    expect(refusedWith({ finishes: [{ ...JAM, onCakeG: -1 }] })).toEqual(['label-weight']);
    const gone = finishOf('gone', { butter: 1 }, { cookingLossShare: 1 });
    expect(refusedWith({ finishes: [{ finish: gone, use: 'filling', onCakeG: 10 }] })).toEqual([
      'label-weight',
    ]);
    expect(refusedWith({ portions: 0 })).toEqual(['label-portions']);
  });

  it('for a name that claims what no kitchen can know, or that its own ingredients belie', () => {
    expect(refusedWith({ foodName: 'Gluten-free sponge' })).toContain('label-claim');
    expect(refusedWith({ foodName: 'Vegan sponge' })).toEqual(['label-claim']);
    expect(refusedWith({ foodName: ' ' })).toEqual(['label-name-missing']);
    expect(refusedWith({ foodName: 'Sponge made without milk ingredients' })).toEqual(['label-name-untrue']);
    expect(refusedWith({ foodName: 'Sponge made without nut ingredients' })).toEqual([]);
  });

  it('for fresh cream under a rolled sheet, but not for cream and sheet on different cakes', () => {
    const cream = finishOf(
      'cream',
      { butter: 1 },
      { kind: 'cream', chilled: true, keepsDays: 1, name: 'Whipped cream' },
    );
    const sheet = finishOf(
      'sheet',
      { 'icing-sugar': 1 },
      { kind: 'sugarpaste', use: { rolled: { thicknessMm: 4, trimMm: 25 } } },
    );
    const inside = { finish: cream, use: 'filling' as const, onCakeG: 200 };
    const over = { finish: sheet, use: 'rolled' as const, onCakeG: 500 };
    expect(refusedWith({ finishes: [inside, over] })).toEqual(['label-cream-under-sheet']);
    expect(refusedWith({ finishes: [inside] })).toEqual([]);
    expect(refusedWith({ finishes: [over] })).toEqual([]);
  });
});

describe('finishes that could be used in more ways than one', () => {
  it('count as they are used here: buttercream between layers is no ground that stains royal icing', () => {
    const coat = { coating: { crumbMm: 2, finalMm: 6, corners: 'rounded' as const } };
    const marzipan = finishOf(
      'marzipan',
      { 'icing-sugar': 1 },
      { kind: 'marzipan', use: { rolled: { thicknessMm: 5, trimMm: 15 } } },
    );
    const both = finishOf('both', { butter: 1 }, { use: { filling: { thicknessMm: 8 }, ...coat } });
    const icing = finishOf('icing', { 'icing-sugar': 1 }, { kind: 'royal icing', use: coat });
    const put = (use: 'filling' | 'coating'): string[] => {
      const finishes: LabelInput['finishes'] = [
        { finish: marzipan, use: 'rolled', onCakeG: 500 },
        { finish: both, use, onCakeG: 300 },
        { finish: icing, use: 'coating', onCakeG: 300 },
      ];
      const label = labelOf(labelInput({ finishes }));
      return label.ok ? label.value.warnings.map(({ code }) => code) : ['refused'];
    };
    expect(put('filling')).toEqual([]);
    expect(put('coating')).toEqual(['icing-without-marzipan']);
  });
});

describe('keeping', () => {
  const sheet = finishOf(
    'sheet',
    { 'icing-sugar': 1 },
    { kind: 'sugarpaste', keepsDays: 5, use: { rolled: { thicknessMm: 4, trimMm: 25 } } },
  );
  const over = { finish: sheet, use: 'rolled' as const, onCakeG: 500 };
  const curd = {
    finish: finishOf('curd', { egg: 1 }, { kind: 'curd', chilled: true, keepsDays: 7, name: 'Curd' }),
    use: 'filling' as const,
    onCakeG: 90,
  };

  it('is as long as the part that keeps the shortest, and no longer than the kitchen says', () => {
    expect(made().durability).toMatchObject({ keepsDays: 3, decidedBy: 'Buttercream', kind: 'best before' });
    expect(made({ finishes: [JAM] }).durability).toMatchObject({ keepsDays: 4, decidedBy: 'Sponge' });
    const settings = { ...labelInput().settings, durabilityDays: 2 };
    expect(made({ settings }).durability).toMatchObject({ keepsDays: 2, decidedBy: null });
  });

  it('counts from the day the cake is made, over the end of a month and a leap day', () => {
    const on = (madeOn: string) => made({ facts: { madeOn, inedible: [], reference: null } }).durability.date;
    expect(on('2026-11-28')).toBe('2026-12-01');
    expect(on('2028-02-27')).toBe('2028-03-01');
    expect(on('2026-12-30')).toBe('2027-01-02');
  });

  it('counts each part from its own day, and the part that is over first decides', () => {
    // Worked by hand: sponge of the 24th keeps 4 days, to the 28th; buttercream of the 26th 3 days, to the 29th.
    const facts = {
      madeOn: '2026-11-27',
      bakedOn: '2026-11-24',
      finishesMadeOn: { buttercream: '2026-11-26' },
      inedible: [],
      reference: null,
    };
    expect(made({ facts }).durability).toEqual({
      keepsDays: 4,
      decidedBy: 'Sponge',
      kind: 'best before',
      date: '2026-11-28',
      countsFrom: '2026-11-24',
    });
    // A day later from the oven, the buttercream (29th) and the sponge (29th) end together; the sponge stands first.
    expect(made({ facts: { ...facts, bakedOn: '2026-11-25' } }).durability.date).toBe('2026-11-29');
    // The kitchen's own promise counts from the finished cake: 1 day after the 27th.
    const settings = { ...labelInput().settings, durabilityDays: 1 };
    expect(made({ facts: { ...facts, bakedOn: '2026-11-26' }, settings }).durability).toMatchObject({
      date: '2026-11-28',
      decidedBy: null,
      countsFrom: '2026-11-27',
    });
  });

  it('is refused where the cake would be past its keeping when it changes hands', () => {
    const facts = { madeOn: '2026-11-27', bakedOn: '2026-11-24', inedible: [], reference: null };
    const on = (handOverOn: string) => labelOf({ ...labelInput(), facts: { ...facts, handOverOn } });
    expect(on('2026-11-28').ok).toBe(true);
    const late = on('2026-11-29');
    expect(late.ok ? [] : late.problems.map(({ code, message }) => [code, message])).toEqual([
      [
        'label-past-keeping',
        'Sponge, made on 2026-11-24, keeps 4 days, to 2026-11-28: before the cake changes hands on 2026-11-29.',
      ],
    ]);
  });

  it('goes by filling and coating together', () => {
    expect(made({ finishes: [JAM] }).storage).toBe('box');
    expect(made().storage).toBe('cool');
    expect(made({ finishes: [curd] }).storage).toBe('chilled-and-tempered');
    expect(made({ finishes: [curd] }).durability.kind).toBe('use by');
    expect(made({ finishes: [JAM, over] }).storage).toBe('dry-under-sheet');
    const both = made({ finishes: [curd, over] });
    expect([both.storage, both.durability.keepsDays]).toEqual(['dry-same-day', 0]);
    expect(both.warnings.map(({ code }) => code)).toEqual(['chilled-under-sheet']);
  });
});

describe('other things to say', () => {
  it('names a colour that needs a warning where the packet names it', () => {
    const pink = withItem('strawberry-jam', {
      compound: [
        { name: 'sugar', share: 0.9 },
        { name: 'colour (E122)', share: 0.1 },
      ],
    });
    expect(made({ ingredients: pink }).colours).toEqual(['carmoisine (E122)']);
    expect(made().colours).toEqual([]);
  });

  it('names alcohol from half a per cent of the finished cake', () => {
    const nutrients = {
      fatG: 0,
      saturatesG: 0,
      carbohydrateG: 0,
      sugarsG: 0,
      polyolsG: 0,
      fibreG: 0,
      proteinG: 0,
      saltG: 0,
      alcoholG: 30,
    };
    const shelf = [...SHELF, shelfItem('brandy', { name: 'Brandy', nutrients })];
    const fed = (grams: number) =>
      made({
        ingredients: shelf,
        sponges: [
          {
            name: 'Sponge',
            formula: [...SPONGE, { ingredientId: 'brandy', grams }],
            waterLossShare: 0,
            keepsDays: 4,
          },
        ],
      }).alcohol;
    expect(fed(5)).toEqual([]);
    expect(fed(40)).toEqual(['brandy']);
  });

  it('says what the rules need and what is not there yet', () => {
    const settings = { ...labelInput().settings, sale: 'prepacked' as const };
    expect(made({ settings, business: null }).gaps).toEqual(['date', 'business']);
    expect(
      made({ settings, facts: { madeOn: '2026-11-01', inedible: ['wired rose'], reference: 'R-1' } }).gaps,
    ).toEqual([]);
    expect(made().needs).toEqual(['allergens']);
  });
});
