/** The tins on the shelf: a plate of all of them, and a page for each with its measures and what fills it. */
import { type LiningPiece, liningPieces } from '../compute/lining/index.ts';
import { perimeterMm, planAreaMm2, volumeMl } from '../compute/shapes/index.ts';
import type { Kitchen } from '../domain/kitchen.ts';
import type { Tin } from '../domain/tin.ts';
import type { LengthUnit } from '../domain/units.ts';
import { formatBothLengths, formatLength } from '../wording/length.ts';
import { wordsFor } from '../wording/locales/index.ts';
import { formatNumber, formatShare } from '../wording/number.ts';
import { tinOtherSize, tinSize } from '../wording/tin-size.ts';
import type { Words } from '../wording/words.ts';
import { LINING } from './lining-allowances.ts';
import { chartPath, type PageHead, pageHead, tinPath } from './nav.ts';
import { pictureOfTin } from './picture-of-tin.ts';
import type { Fact } from './recipe.ts';
import type { TinChartRow, TinChartView } from './tin-chart.types.ts';
import type { TinPicture } from './tin-picture.ts';

export interface TinFill {
  recipeName: string;
  eggText: string;
  batterText: string;
  rawFillText: string;
  /** The row on the chart. */
  path: string;
}

export interface TinView {
  id: string;
  name: string;
  head: PageHead;
  path: string;
  unit: LengthUnit;
  sizeText: string;
  otherSizeText: string;
  volumeText: string;
  ownedText: string;
  picture: TinPicture;
  facts: Fact[];
  lining: Fact[];
  note: string;
  fills: TinFill[];
}

export interface TinsView {
  head: PageHead;
  lead: string;
  tins: TinView[];
}

const MM2_PER_CM2 = 100;

function liningFact(piece: LiningPiece, unit: LengthUnit): Fact {
  const size = (mm: number): string => formatLength(mm, unit === 'in' ? 'cm' : unit);
  if (piece.kind === 'base') {
    return {
      label: 'Base',
      text: `the shape of the base, ${formatLength(piece.clearanceMm, 'mm')} smaller all round`,
    };
  }
  if (piece.kind === 'strip') {
    const label = piece.wall === 'tube' ? 'Tube' : 'Side';
    return { label, text: `a strip ${size(piece.lengthMm)} by ${size(piece.heightMm)}` };
  }
  if (piece.kind === 'sector') {
    const label = piece.wall === 'tube' ? 'Tube' : 'Side';
    const radii = `${size(piece.innerRadiusMm)} and ${size(piece.outerRadiusMm)}`;
    const degrees = formatNumber((piece.angleRad * 180) / Math.PI, 0);
    return { label, text: `part of a ring with radii ${radii}, through ${degrees}°` };
  }
  if (piece.kind === 'panel') {
    const ends = `${size(piece.footMm)} at the foot, ${size(piece.headMm)} at the head`;
    return { label: `Side, ${piece.count} of these`, text: `${ends}, ${size(piece.heightMm)} high` };
  }
  if (piece.kind === 'trace-the-base') {
    return { label: 'Base', text: 'stand the tin on the paper, draw round it and trim to fit' };
  }
  const why =
    piece.reason === 'curved-wall' ? 'flat paper cannot follow the curve' : 'its walls are not measured';
  return { label: 'No paper', text: `grease and flour it: ${why}` };
}

function tinFacts(tin: Tin): Fact[] {
  const area = planAreaMm2(tin);
  const perimeter = perimeterMm(tin);
  return [
    { label: 'Holds, to the rim', text: `${formatNumber(volumeMl(tin), 0)} mL` },
    { label: 'Depth', text: formatBothLengths(tin.depthMm, tin.unit) },
    ...(area === null
      ? []
      : [{ label: 'Area of the rim', text: `${formatNumber(area / MM2_PER_CM2, 0)} cm²` }]),
    ...(perimeter === null
      ? []
      : [{ label: 'Round the wall', text: formatBothLengths(perimeter, tin.unit) }]),
    ...(tin.material ? [{ label: 'Made of', text: tin.material }] : []),
    { label: 'On the shelf', text: formatNumber(tin.owned, 0) },
  ];
}

function tinFill(chart: TinChartView, row: TinChartRow): TinFill {
  return {
    recipeName: chart.recipe.name,
    eggText: row.eggs?.text ?? 'None',
    batterText: row.batter.text,
    rawFillText: `${row.rawFill.text} mm, ${formatShare(row.rawFillShare.value)}`,
    path: `${chartPath(chart.id)}#${row.id}`,
  };
}

/** One tin's page; the charts give what fills one of it. */
export function tinView(tin: Tin, charts: readonly TinChartView[], words: Words): TinView {
  const path = tinPath(tin.id);
  const size = tinSize(tin, words);
  return {
    id: tin.id,
    name: tin.name,
    head: pageHead({
      path,
      text: tin.name,
      description: `${tin.name}, ${size}: what it holds and what fills it.`,
      section: 'tins',
    }),
    path,
    unit: tin.unit,
    sizeText: size,
    otherSizeText: tinOtherSize(tin, words),
    volumeText: `${formatNumber(volumeMl(tin), 0)} mL`,
    ownedText: tin.owned > 1 ? `× ${tin.owned}` : '',
    picture: pictureOfTin(tin, words),
    facts: tinFacts(tin),
    lining: liningPieces(tin, LINING).map((piece) => liningFact(piece, tin.unit)),
    note: tin.note ?? '',
    fills: charts
      .filter((chart) => chart.flavours.length === 0)
      .flatMap((chart) =>
        chart.rows.filter((row) => row.tinId === tin.id && row.count === 1).map((row) => tinFill(chart, row)),
      ),
  };
}

/** Every tin, smallest volume first. */
export function tinsView(kitchen: Kitchen, charts: readonly TinChartView[]): TinsView {
  const tins = [...kitchen.tins].sort((a, b) => volumeMl(a) - volumeMl(b) || (a.id < b.id ? -1 : 1));
  const words = wordsFor(kitchen.locale);
  const count = kitchen.tins.reduce((sum, tin) => sum + tin.owned, 0);
  return {
    head: pageHead({
      path: 'tins.html',
      text: 'The tins',
      description: `Every tin of ${kitchen.name}, drawn to one scale.`,
      section: 'tins',
    }),
    lead: `${count} tins in ${kitchen.tins.length} sizes, smallest first. Plan above, side below, all to one scale.`,
    tins: tins.map((tin) => tinView(tin, charts, words)),
  };
}
