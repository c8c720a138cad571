/** The tins on the shelf: a plate of all of them, and a page for each with its measures and what fills it. */

import type { LiningPiece } from '../compute/lining/index.ts';
import { perimeterMm, planAreaMm2, volumeMl } from '../compute/shapes/index.ts';
import type { Kitchen } from '../domain/kitchen.ts';
import type { Tin } from '../domain/tin.ts';
import type { LengthUnit } from '../domain/units.ts';
import { formatBothLengths, formatLength } from '../wording/length.ts';
import { wordsFor } from '../wording/locales/index.ts';
import { formatNumber, formatShare } from '../wording/number.ts';
import { tinOtherSize, tinSize } from '../wording/tin-size.ts';
import { type TinWords, tinWordsFor } from '../wording/tins/index.ts';
import type { Words } from '../wording/words.ts';
import { type BunTinView, bunTinViews } from './bun-tins.ts';
import { bySize } from './by-size.ts';
import { chartPath, type PageHead, pageHead, tinPath } from './nav.ts';
import { pictureOfTin } from './picture-of-tin.ts';
import type { Fact } from './recipe.ts';
import type { TinChartRow, TinChartView } from './tin-chart.types.ts';
import { tinLining } from './tin-lining.ts';
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
  /** For small cakes; none where the kitchen has no such tins. */
  bunTins: { title: string; tins: BunTinView[] };
}

const MM2_PER_CM2 = 100;

function liningFact(piece: LiningPiece, unit: LengthUnit, { lining }: TinWords): Fact {
  const size = (mm: number): string => formatLength(mm, unit === 'in' ? 'cm' : unit);
  if (piece.kind === 'base') {
    return { label: lining.base, text: lining.baseText(formatLength(piece.clearanceMm, 'mm')) };
  }
  if (piece.kind === 'strip') {
    const label = piece.wall === 'tube' ? lining.tube : lining.side;
    return { label, text: lining.strip(size(piece.lengthMm), size(piece.heightMm)) };
  }
  if (piece.kind === 'sector') {
    const label = piece.wall === 'tube' ? lining.tube : lining.side;
    const degrees = formatNumber((piece.angleRad * 180) / Math.PI, 0);
    return { label, text: lining.sector(size(piece.innerRadiusMm), size(piece.outerRadiusMm), degrees) };
  }
  if (piece.kind === 'panel') {
    const text = lining.panel(size(piece.footMm), size(piece.headMm), size(piece.heightMm));
    return { label: lining.sides(piece.count), text };
  }
  if (piece.kind === 'trace-the-base') return { label: lining.base, text: lining.trace };
  return {
    label: lining.noPaper,
    text: piece.reason === 'curved-wall' ? lining.curved : lining.unmeasured,
  };
}

function tinFacts(tin: Tin, { facts, materials }: TinWords): Fact[] {
  const area = planAreaMm2(tin);
  const perimeter = perimeterMm(tin);
  return [
    { label: facts.holds, text: `${formatNumber(volumeMl(tin), 0)} mL` },
    { label: facts.depth, text: formatBothLengths(tin.depthMm, tin.unit) },
    ...(area === null ? [] : [{ label: facts.area, text: `${formatNumber(area / MM2_PER_CM2, 0)} cm²` }]),
    ...(perimeter === null ? [] : [{ label: facts.wall, text: formatBothLengths(perimeter, tin.unit) }]),
    ...(tin.material ? [{ label: facts.material, text: materials[tin.material] }] : []),
    { label: facts.owned, text: formatNumber(tin.owned, 0) },
  ];
}

function tinFill(chart: TinChartView, row: TinChartRow, own: TinWords, { units }: Words): TinFill {
  return {
    recipeName: chart.recipe.name,
    eggText: row.eggs?.text ?? own.noEggs,
    batterText: row.batter.text,
    rawFillText: `${row.rawFill.text} ${units.height}, ${formatShare(row.rawFillShare.value)}`,
    path: `${chartPath(chart.id)}#${row.id}`,
  };
}

/** What fills one of each tin, by the plain charts, one after the other. */
function fillsOf(charts: Iterable<TinChartView>, words: Words): Map<string, TinFill[]> {
  const own = tinWordsFor(words.locale);
  const fills = new Map<string, TinFill[]>();
  for (const chart of charts) {
    if (chart.flavours.length > 0) continue;
    for (const row of chart.rows) {
      if (row.count !== 1) continue;
      const ofTin = fills.get(row.tinId) ?? [];
      ofTin.push(tinFill(chart, row, own, words));
      fills.set(row.tinId, ofTin);
    }
  }
  return fills;
}

/** One tin's page. */
function tinView(tin: Tin, fills: TinFill[], words: Words): TinView {
  const own = tinWordsFor(words.locale);
  const path = tinPath(tin.id);
  const size = tinSize(tin, words);
  return {
    id: tin.id,
    name: tin.name,
    head: pageHead({
      path,
      text: tin.name,
      description: own.tinDescription(tin.name, size),
      section: 'tins',
    }),
    path,
    unit: tin.unit,
    sizeText: size,
    otherSizeText: tinOtherSize(tin, words),
    volumeText: `${formatNumber(volumeMl(tin), 0)} mL`,
    ownedText: tin.owned > 1 ? `× ${tin.owned}` : '',
    picture: pictureOfTin(tin, words),
    facts: tinFacts(tin, own),
    lining: tinLining(tin).map((piece) => liningFact(piece, tin.unit, own)),
    note: tin.note ?? '',
    fills,
  };
}

/** Every tin, smallest volume first; each of the charts is looked at once. */
export function tinsView(kitchen: Kitchen, charts: Iterable<TinChartView>): TinsView {
  const tins = [...kitchen.tins].sort(bySize);
  const words = wordsFor(kitchen.locale);
  const own = tinWordsFor(kitchen.locale);
  const fills = fillsOf(charts, words);
  const count = kitchen.tins.reduce((sum, tin) => sum + tin.owned, 0);
  return {
    head: pageHead({
      path: 'tins.html',
      text: own.title,
      description: own.description(kitchen.name),
      section: 'tins',
    }),
    lead: own.lead(count, kitchen.tins.length),
    tins: tins.map((tin) => tinView(tin, fills.get(tin.id) ?? [], words)),
    bunTins: { title: own.bunTins, tins: bunTinViews(kitchen) },
  };
}
