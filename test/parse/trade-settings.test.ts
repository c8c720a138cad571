import { describe, expect, it } from 'vitest';
import { USUAL_TIMES } from '../../src/domain/times.ts';
import { USUAL_WORK } from '../../src/domain/work-settings.ts';
import { parseKitchenYaml } from '../../src/parse/kitchen.ts';

const BASE = `name: Test
place: Nowhere
edition: 2026-11-01
locale: en-GB
paper: [A4]
eggs: { size: UK medium }
mixer: { bowl: 4.8 l }
tins: [{ id: round-20, name: Round, shape: round, across: 20 cm, depth: 75 mm }]
`;

const NAMES = {
  tins: { ids: ['round-20'], broken: [] },
  finishes: { ids: ['jam'], broken: [] },
  ingredients: { ids: ['sultanas', 'currants'], broken: [] },
};

function read(more: string) {
  const { extras, problems } = parseKitchenYaml(`${BASE}${more}`, 'kitchen.yaml');
  if (extras === null) throw new Error('not read');
  return { extras, label: extras.label(NAMES), problems };
}

const codesOf = (more: string): string[] => read(more).problems.map(({ code }) => code);

describe('a kitchen that says nothing of its trade', () => {
  it('works by the usual hours and times, and charges nothing', () => {
    const { extras, label, problems } = read('');
    expect(problems).toEqual([]);
    expect(extras).toMatchObject({
      work: USUAL_WORK,
      times: USUAL_TIMES,
      business: null,
      publishesOrders: false,
    });
    expect(extras.portionSizes.map(({ shortMm, longMm }) => [shortMm, longMm])).toEqual([
      [25.4, 50.8],
      [25.4, 25.4],
    ]);
    expect(label).toMatchObject({ rules: 'UK', sale: 'made to order', xHeightMm: 1.2 });
  });
});

describe('words of names that stand for several ingredients', () => {
  it('are read with the ingredients they stand for, each of which must be on the shelf', () => {
    const { label, problems } = read('label: { named: { Fruit: [sultanas, currants] } }');
    expect(problems).toEqual([]);
    expect(label.named).toEqual({ fruit: ['sultanas', 'currants'] });
    const other = parseKitchenYaml(`${BASE}label: { named: { fruit: [sultana] } }`, 'kitchen.yaml');
    other.extras?.label(NAMES);
    expect(other.problems.map(({ code, hint }) => [code, hint])).toEqual([
      ['ingredient-unknown', "Did you mean 'sultanas'?"],
    ]);
  });
});

describe('times by method and by finish', () => {
  it('are set one by one, the usual for the rest, or all with one figure', () => {
    const { extras, problems } = read(`
batter_stands: { creamed: 15 min, bicarbonate: 5 min }
times:
  mix: { creamed: 25 min, whisked: 15 min }
  cool_in_tin: 20 min
  rest: { melted: 0 min }
  cake_keeps: { oil: 3 days }
  make: { curd: 40 min }
  stands: { ganache: 12 h }
`);
    expect(problems).toEqual([]);
    const usual = USUAL_WORK.batterStandsMin;
    expect(extras.work.batterStandsMin).toEqual({ ...usual, creamed: 15, bicarbonate: 5 });
    expect(extras.times.mixMin).toEqual({ ...USUAL_TIMES.mixMin, creamed: 25, whisked: 15 });
    expect(new Set(Object.values(extras.times.coolInTinMin))).toEqual(new Set([20]));
    expect(extras.times.restMin.melted).toBe(0);
    expect(extras.times.cakeKeepsMin).toEqual({ ...USUAL_TIMES.cakeKeepsMin, oil: 3 * 1440 });
    expect(extras.times.makeMin).toEqual({ ...USUAL_TIMES.makeMin, curd: 40 });
    expect(extras.times.standsMin).toEqual({ ...USUAL_TIMES.standsMin, ganache: 720 });
  });

  it('refuse a method that is not known, a time that takes no time, and a figure without a unit', () => {
    const { problems } = read(`
batter_stands: { cremed: 15 min }
times: { mix: { creamed: 0 min }, cool: 90 }
`);
    expect(problems.map(({ code, line }) => [code, line]).sort()).toEqual([
      ['key-unknown', 10],
      ['quantity-not-positive', 11],
      ['unit-missing', 11],
    ]);
    expect(problems.find(({ code }) => code === 'key-unknown')?.hint).toContain("'creamed'");
  });
});

describe('a kitchen that says everything of its trade', () => {
  it('is read in mm, minutes and minor units', () => {
    const { extras, label, problems } = read(`
time_zone: America/New_York
currency: JPY
working_day: { from: 06:30, to: 24:00 }
hands: 2
batter_stands: 40 min
times: { line_tin: 8 min, coat_sets: 1 h 30 min }
oven: { shelves: 3, width: 60 cm, depth: 20in, air_gap: 0 mm, recovery: 7 min, kwh_to_heat: 0.5 }
business: { name: Test, address: [1 Lane, Town], contact: post@test.example.org }
costs: { labour: 2000 per h, electricity: 31.5 per kWh, margin: 25 %, round_up_to: 100, vat: 10 % }
portion_sizes: { dessert: { name: Slice, short: 2in, long: 3 cm } }
label:
  { rules: US, sale: distance, may_contain: [nuts, soya], durability: 2 days, x_height: 2 mm, pack_surface: 60 cm2,
    sizes: [80 mm x 5 cm], sample: { tin: round-20, finishes: [{ finish: jam, use: filling }] } }
orders: { publish: yes }
`);
    expect(problems).toEqual([]);
    expect(extras.work).toMatchObject({
      timeZone: 'America/New_York',
      workingDay: { fromMin: 390, toMin: 1440 },
      hands: 2,
      ovenRoom: {
        shelves: 3,
        widthMm: 600,
        depthMm: 508,
        airGapMm: 0,
        wallGapMm: 20,
        recoveryMin: 7,
        kwhToHeat: 0.5,
      },
    });
    expect(new Set(Object.values(extras.work.batterStandsMin))).toEqual(new Set([40]));
    expect(extras.times).toMatchObject({ lineTinMin: 8, coatSetsMin: 90, wrapMin: USUAL_TIMES.wrapMin });
    expect(extras.costs).toMatchObject({
      currency: { code: 'JPY', minorPerMajor: 1 },
      labourMinorPerH: 2000,
      electricityMinorPerKwh: 31.5,
      margin: 0.25,
      roundUpToMinor: 100,
      vatShare: 0.1,
    });
    expect(extras.portionSizes[0]).toEqual({ id: 'dessert', name: 'Slice', shortMm: 30, longMm: 50.8 });
    expect(label).toMatchObject({
      rules: 'US',
      sale: 'distance',
      mayContain: ['soya', 'nuts'],
      durabilityDays: 2,
      packSurfaceCm2: 60,
      sizes: [{ widthMm: 80, heightMm: 50 }],
      sample: { tinId: 'round-20', finishes: [{ finishId: 'jam', use: 'filling' }] },
    });
    expect(extras.publishesOrders).toBe(true);
  });
});

describe('slips in it', () => {
  it.each([
    ['costs: { margin: 95 % }', 'quantity-out-of-range'],
    ['costs: { round_up_to: 0 }', 'quantity-not-positive'],
    ['costs: { labour: 14 per kWh }', 'rate-unreadable'],
    ['oven: { width: 4 cm }', 'quantity-out-of-range'],
    ['oven: { recovery: 3 h }', 'quantity-out-of-range'],
    ['hands: 0', 'value-out-of-range'],
    ['times: { line_tins: 5 min }', 'key-unknown'],
    ['currency: EURO', 'value-not-one-of'],
    ['portion_sizes: { dessert: { short: 1 mm } }', 'quantity-out-of-range'],
    ['label: { x_height: 0.5 mm }', 'quantity-out-of-range'],
    ['label: { sizes: [90 mm] }', 'quantity-unreadable'],
    ['label: { pack_surface: 60 mm }', 'quantity-unreadable'],
    ['label: { sample: { tin: round-21 } }', 'tin-unknown'],
    ['orders: { publish: maybe }', 'value-not-one-of'],
  ])('%s is told as %s', (line, code) => {
    expect(codesOf(`${line}\n`)).toEqual([code]);
  });
});

describe('the weight above which two people lift', () => {
  it('is 8 kg unless the kitchen says otherwise, in its own unit', () => {
    expect(read('').extras.work.liftTwoAboveG).toBe(8000);
    expect(read('two_people_lift_above: 12 kg').extras.work.liftTwoAboveG).toBe(12_000);
    expect(read('two_people_lift_above: 20 lb').extras.work.liftTwoAboveG).toBeCloseTo(9071.847, 3);
  });

  it('is refused where nobody would lift alone, or nobody would be spared', () => {
    expect(read('two_people_lift_above: 800 g').problems).toMatchObject([
      { code: 'quantity-out-of-range', line: 9, column: 24, hint: 'Use 1 kg to 50 kg. Check the unit.' },
    ]);
    expect(codesOf('two_people_lift_above: 80 kg')).toEqual(['quantity-out-of-range']);
    expect(codesOf('two_people_lift_above: 8')).toEqual(['unit-missing']);
  });
});

const BOX = 'costs: { packaging: [{ name: Box, each: 2.00, per: cake box, ';

describe('what quotes say of accepting and paying', () => {
  it('is read, and is nothing where the kitchen says nothing', () => {
    expect(read('').extras.costs.quote).toBeUndefined();
    const { extras, problems } = read(
      'costs: { quote: { valid: 2 weeks, deposit: 25 %, deposit_due: 14 days, balance_due: 0 days } }',
    );
    expect(problems).toEqual([]);
    expect(extras.costs.quote).toEqual({
      validDays: 14,
      depositShare: 0.25,
      depositDueDays: 14,
      balanceDueDays: 0,
    });
  });

  it('is refused with the place and the nearest key', () => {
    expect(
      read('costs: { quote: { valid: 0 days, deposit: 125 %, balance_du: 7 days } }').problems,
    ).toMatchObject([
      { code: 'key-unknown', line: 9, column: 50, hint: "Did you mean 'balance_due'?" },
      { code: 'quantity-not-positive', line: 9, column: 26 },
      { code: 'quantity-out-of-range', line: 9, column: 43 },
    ]);
  });
});

describe('packs of packaging, and how many there are', () => {
  it('are read smallest first; what is left out is bought one by one, and there is none', () => {
    const { extras, problems } = read(
      `${BOX}packs: [{ size: 10, price: 15.00 }, { size: 2, price: 3.80 }], on_hand: 3 }] }`,
    );
    expect(problems).toEqual([]);
    expect(extras.costs.packaging).toEqual([
      {
        name: 'Box',
        eachMinor: 200,
        per: 'cake box',
        packs: [
          { size: 2, text: '2', priceMinor: 380 },
          { size: 10, text: '10', priceMinor: 1500 },
        ],
        onHand: 3,
      },
    ]);
    const plain = read(`${BOX}}] }`).extras.costs.packaging[0];
    expect([plain?.packs, plain?.onHand]).toEqual([undefined, undefined]);
  });
});

describe('prices of boards and boxes by width', () => {
  it('are read narrowest first, and refused where there is no width, or packs and stock of no size', () => {
    const sizes = 'sizes: [{ across: 12in, each: 2.60 }, { across: 20 cm, each: 1.40 }]';
    const { extras, problems } = read(`${BOX}${sizes} }] }`);
    expect(problems).toEqual([]);
    expect(extras.costs.packaging[0]?.sizes).toEqual([
      { acrossMm: 200, eachMinor: 140 },
      { acrossMm: 304.8, eachMinor: 260 },
    ]);
    const codes = (more: string) => read(`${BOX}${sizes}${more} }] }`).problems.map(({ code }) => code);
    expect(codes(', on_hand: 2')).toEqual(['key-unknown']);
    expect(read(`${BOX.replace('cake box', 'drive')}${sizes} }] }`).problems).toMatchObject([
      { code: 'key-unknown', hint: 'Sizes go with drum, card, cake box.' },
    ]);
    const twice = 'sizes: [{ across: 8in, each: 1.00 }, { across: 203.2 mm, each: 2.00 }]';
    expect(read(`${BOX}${twice} }] }`).problems.map(({ code }) => code)).toEqual(['pack-repeated']);
  });
});
