/**
 * Two tin charts with the shape of real ones and invented figures, for tests of drawing and layout: a sponge of five
 * ingredients over eighteen rows, and a fruit cake of eleven ingredients. Nothing here proves a computation.
 * Long because it is a table of figures.
 */
import { tinBaseOutline, tinBoundsMm, tinOutline } from '../../src/compute/shapes/index.ts';
import type { TinForm } from '../../src/domain/tin.ts';
import type { Figure, FigureUnit } from '../../src/views/figure.ts';
import type {
  Amount,
  ChartColumn,
  LadderRung,
  TinChartRow,
  TinChartView,
} from '../../src/views/tin-chart.types.ts';
import type { TinPicture } from '../../src/views/tin-picture.ts';

const INCH = 25.4;

function shown(value: number, decimals: number): string {
  const [whole = '0', part] = value.toFixed(decimals).split('.');
  const grouped = whole.replace(/\B(?=(\d{3})+$)/g, ',');
  return part === undefined || /^0+$/.test(part) ? grouped : `${grouped}.${part}`;
}

const figure = (value: number, unit: FigureUnit, decimals = 0): Figure => ({
  value: Number(value.toFixed(6)),
  unit,
  text: shown(value, decimals),
});

interface SampleTin {
  id: string;
  name: string;
  size: string;
  other: string;
  form: TinForm;
  count?: number;
  profile?: TinPicture['profile'];
  volumeMl: number;
  warning?: string;
}

const round = (inches: number): TinForm => ({
  shape: { kind: 'round', acrossMm: inches * INCH },
  depthMm: 3 * INCH,
});

const square = (inches: number): TinForm => ({
  shape: { kind: 'square', sideMm: inches * INCH },
  depthMm: 3 * INCH,
});

const deep: TinForm['depthMm'] = 3 * INCH;

const sampleTins: SampleTin[] = [
  {
    id: 'round-4',
    name: 'Four-inch round',
    size: 'round 4 × 3 in',
    other: '(10.2 × 7.6 cm)',
    form: round(4),
    volumeMl: 618,
  },
  {
    id: 'round-4-x2',
    name: 'Four-inch round',
    size: 'round 4 × 3 in',
    other: '(10.2 × 7.6 cm)',
    form: round(4),
    count: 2,
    volumeMl: 618,
  },
  {
    id: 'dome-6',
    name: 'Six-inch half ball',
    size: 'dome 6 in',
    other: '(15.2 cm)',
    form: { shape: { kind: 'dome', acrossMm: 6 * INCH }, depthMm: 3 * INCH },
    profile: 'dome',
    volumeMl: 927,
    warning: 'the batter fills more than two thirds of the depth; bake it in two goes',
  },
  {
    id: 'round-6',
    name: 'Six-inch round',
    size: 'round 6 × 3 in',
    other: '(15.2 × 7.6 cm)',
    form: round(6),
    volumeMl: 1390,
  },
  {
    id: 'round-6-x2',
    name: 'Six-inch round',
    size: 'round 6 × 3 in',
    other: '(15.2 × 7.6 cm)',
    form: round(6),
    count: 2,
    volumeMl: 1390,
  },
  {
    id: 'loaf-9',
    name: 'Two-pound loaf',
    size: 'loaf 9 × 5 × 2¾ in',
    other: '(22.9 × 12.7 × 7 cm)',
    form: {
      shape: {
        kind: 'loaf',
        lengthMm: 9 * INCH,
        widthMm: 5 * INCH,
        baseLengthMm: 8 * INCH,
        baseWidthMm: 4 * INCH,
      },
      depthMm: 2.75 * INCH,
    },
    profile: 'tapered',
    volumeMl: 1728,
  },
  {
    id: 'hexagon-7',
    name: 'Hexagon for the beehive cake',
    size: 'hexagon 7 in across flats × 3 in',
    other: '(17.8 × 7.6 cm)',
    form: { shape: { kind: 'hexagon', acrossMm: 7 * INCH, measured: 'flats' }, depthMm: deep },
    volumeMl: 2086,
  },
  {
    id: 'heart-8',
    name: 'Eight-inch heart',
    size: 'heart 8 in across × 3 in',
    other: '(20.3 × 7.6 cm)',
    form: { shape: { kind: 'heart', acrossMm: 8 * INCH, measured: 'across' }, depthMm: deep },
    volumeMl: 2168,
  },
  {
    id: 'round-8',
    name: 'Eight-inch round',
    size: 'round 8 × 3 in',
    other: '(20.3 × 7.6 cm)',
    form: round(8),
    volumeMl: 2471,
  },
  {
    id: 'round-8-x2',
    name: 'Eight-inch round',
    size: 'round 8 × 3 in',
    other: '(20.3 × 7.6 cm)',
    form: round(8),
    count: 2,
    volumeMl: 2471,
  },
  {
    id: 'petal-9',
    name: 'Six-petal flower',
    size: 'petal, 6 petals, 9 × 3 in',
    other: '(22.9 × 7.6 cm)',
    form: { shape: { kind: 'petal', petals: 6, acrossMm: 9 * INCH }, depthMm: deep },
    volumeMl: 2704,
  },
  {
    id: 'oval-10',
    name: 'Oval',
    size: 'oval 10 × 8 × 3 in',
    other: '(25.4 × 20.3 × 7.6 cm)',
    form: { shape: { kind: 'oval', lengthMm: 10 * INCH, widthMm: 8 * INCH }, depthMm: deep },
    volumeMl: 3089,
  },
  {
    id: 'square-8',
    name: 'Eight-inch square',
    size: 'square 8 × 3 in',
    other: '(20.3 × 7.6 cm)',
    form: square(8),
    volumeMl: 3146,
  },
  {
    id: 'ring-10',
    name: 'Fluted ring from the market',
    size: 'ring 10 in, tube 3 in, × 3½ in',
    other: '(25.4, 7.6 × 8.9 cm)',
    form: { shape: { kind: 'ring', acrossMm: 10 * INCH, tubeMm: 3 * INCH }, depthMm: 3.5 * INCH },
    volumeMl: 4099,
  },
  {
    id: 'round-10',
    name: 'Ten-inch round',
    size: 'round 10 × 3 in',
    other: '(25.4 × 7.6 cm)',
    form: round(10),
    volumeMl: 3861,
  },
  {
    id: 'tray-13',
    name: 'Traybake',
    size: 'rectangle 33 × 23 × 5 cm',
    other: '(13 × 9 × 2 in)',
    form: { shape: { kind: 'rectangle', lengthMm: 330, widthMm: 230 }, depthMm: 50 },
    volumeMl: 3795,
    warning: 'height limited to 50 mm by the depth of the tin',
  },
  {
    id: 'square-10',
    name: 'Ten-inch square',
    size: 'square 10 × 3 in',
    other: '(25.4 × 7.6 cm)',
    form: square(10),
    volumeMl: 4916,
  },
  {
    id: 'round-12',
    name: 'Twelve-inch round',
    size: 'round 12 × 3 in',
    other: '(30.5 × 7.6 cm)',
    form: round(12),
    volumeMl: 5560,
    warning: 'two mixer loads: mix 1,200 g twice',
  },
];

function pictureOf({ form, profile, size }: SampleTin): TinPicture {
  const bounds = tinBoundsMm(form);
  return {
    plan: tinOutline(form),
    basePlan: tinBaseOutline(form),
    widthMm: bounds?.widthMm ?? 0,
    heightMm: bounds?.heightMm ?? 0,
    depthMm: form.depthMm,
    profile: profile ?? 'straight',
    alt: `Drawing of a tin, ${size}`,
  };
}

interface SampleMix {
  columns: ChartColumn[];
  /** Share of the batter. */
  shares: number[];
  eggG: number;
  eggShare: number;
}

function amountsFor(mix: SampleMix, batterG: number): Amount[] {
  return mix.columns.map((column, index) => {
    const grams = batterG * (mix.shares[index] ?? 0);
    const step = column.fine ? 0.5 : 5;
    const rounded = Math.max(step, Math.round(grams / step) * step);
    return { figure: figure(rounded, 'g', column.fine ? 1 : 0), spoons: rounded < 5 ? '¾ tsp' : null };
  });
}

function rowFor(tin: SampleTin, mix: SampleMix): TinChartRow {
  const count = tin.count ?? 1;
  const each = tin.volumeMl * 0.37;
  const exact = (each * count * mix.eggShare) / mix.eggG;
  const whole = Math.max(1, Math.round(exact));
  const batter = Math.round(each * count * (whole / exact));
  const over = Math.round(batter - each * count);
  return {
    id: tin.id,
    tinId: tin.id.replace(/-x\d$/, ''),
    tinName: tin.name,
    sizeText: tin.size,
    otherSizeText: tin.other,
    count,
    owned: count,
    picture: pictureOf(tin),
    volume: figure(tin.volumeMl, 'mL'),
    batterEach: figure(each, 'g'),
    receives: figure(each, 'g'),
    batter: figure(batter, 'g'),
    eggs: {
      rule: 'nearest',
      exact: figure(exact, 'eggs', 2),
      whole: figure(whole, 'eggs'),
      deviation: {
        value: Number((whole / exact - 1).toFixed(4)),
        unit: 'ratio',
        text: `${((whole / exact - 1) * 100).toFixed(1)} %`,
      },
      grams: figure(whole * mix.eggG, 'g'),
      text: `${whole} eggs`,
    },
    amounts: amountsFor(mix, batter),
    rawFill: figure(tin.id === 'tray-13' ? 27 : 33, 'mm'),
    rawFillShare: { value: 0.43, unit: 'share', text: '43 %' },
    finishedHeight: figure(tin.id === 'tray-13' ? 50 : 65, 'mm'),
    surplus: figure(over, 'g'),
    surplusText:
      over > 25
        ? `${over} g over: ${Math.floor(over / 25)} fairy cakes and ${over % 25} g`
        : over < 0
          ? `${-over} g short, shared by volume`
          : `${over} g over`,
    warnings: tin.warning ? [{ code: 'sample', message: tin.warning }] : [],
  };
}

function ladderFor(mix: SampleMix, rungs: number): LadderRung[] {
  const fills = ['1 × Six-inch round', '2 × Four-inch round', '1 × Half ball and 1 × Four-inch round'];
  return Array.from({ length: rungs }, (_, index) => {
    const eggs = index + 1;
    const batter = Math.round((eggs * mix.eggG) / mix.eggShare);
    return {
      eggs: figure(eggs, 'eggs'),
      eggText: `${eggs} eggs`,
      batter: figure(batter, 'g'),
      amounts: amountsFor(mix, batter),
      fills: fills.slice(0, 1 + (index % 3)).map((text, place) => ({
        text,
        used: figure(batter - 10 * (place + 1), 'g'),
        left: figure(10 * (place + 1), 'g'),
      })),
    };
  });
}

const column = (id: string, name: string, fine = false): ChartColumn => ({ id, name, fine });

function chart(id: string, title: string, mix: SampleMix, tins: SampleTin[]): TinChartView {
  return {
    id,
    title,
    kitchenName: 'The Sample Kitchen',
    edition: '1 November 2026',
    recipe: { id, name: title },
    flavours: [],
    summary:
      'Equal weights of everything: three eggs and 165 g each of butter, sugar and flour fill an eight-inch round.',
    finishedHeight: figure(65, 'mm'),
    finishedHeightText: '65 mm (2½ in)',
    eggSizeText: 'UK medium, 51 g shelled',
    basisText: 'Two seven-inch rounds, 3 in deep, baked to 65 mm from 1,300 g of batter on 14 March 2026.',
    columns: mix.columns,
    rows: tins.map((tin) => rowFor(tin, mix)),
    ladder: { columns: mix.columns, rungs: ladderFor(mix, 12) },
    notes: [
      'Each row is one mix: the tins named at the left, filled together.',
      'The large figure is the whole number of eggs to use; the small one beneath is what the tin asks for exactly.',
      'All other weights go with the whole eggs, so use the row as it stands.',
    ],
    cautions: [
      { code: 'allergens', text: 'Contains eggs, milk and wheat (gluten).' },
      { code: 'raw-batter', text: 'Do not eat raw batter: raw flour and raw egg can make you ill.' },
    ],
    warnings: [],
  };
}

export const spongeChart: TinChartView = chart(
  'vanilla-sponge',
  'Equal-weights vanilla sponge',
  {
    columns: [
      column('butter', 'Butter'),
      column('caster-sugar', 'Caster sugar'),
      column('self-raising-flour', 'Self-raising flour'),
      column('baking-powder', 'Baking powder', true),
      column('milk', 'Whole milk'),
    ],
    shares: [0.245, 0.245, 0.245, 0.004, 0.02],
    eggG: 51,
    eggShare: 0.241,
  },
  sampleTins,
);

export const fruitCakeChart: TinChartView = chart(
  'rich-fruit-cake',
  'Rich fruit cake for keeping',
  {
    columns: [
      column('butter', 'Butter'),
      column('muscovado', 'Dark muscovado sugar'),
      column('plain-flour', 'Plain flour'),
      column('ground-almonds', 'Ground almonds'),
      column('mixed-spice', 'Mixed spice', true),
      column('currants', 'Currants'),
      column('sultanas', 'Sultanas'),
      column('raisins', 'Raisins'),
      column('cherries', 'Glacé cherries'),
      column('peel', 'Mixed candied peel'),
      column('brandy', 'Brandy'),
    ],
    shares: [0.12, 0.12, 0.13, 0.03, 0.003, 0.16, 0.12, 0.1, 0.04, 0.03, 0.03],
    eggG: 51,
    eggShare: 0.117,
  },
  sampleTins.filter((tin) => !tin.id.startsWith('ring')),
);
