/**
 * The same numbers of orders and weeks in JSON, CSV, page and print. Every check starts from the JSON: each figure
 * must stand in the CSV and, but for the few that are named with a reason, on the page.
 */
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { beforeAll, describe, expect, it } from 'vitest';
import { readPdf } from '../reading-back/read-pdf.ts';
import { spokenText } from '../reading-back/structure.ts';
import { plainText } from './support/chart-page-rows.ts';
import { demoOutput } from './support/demo-output.ts';

interface Figure {
  value: number;
  unit: string;
  text: string;
}
interface Leaf extends Figure {
  path: string;
}

/** In the CSV: everything but the bakes behind a window, which belong to the bake guides. */
const NOT_IN_CSV = /\.bake\.bakes$/;
/**
 * Not on a page as they are: what a pack holds and costs stands inside 'Buy'; what is missing is what the packs
 * cover; the most likely minute stands on the timetable as an hour; a surplus is told in words; a count of one is
 * not written before a cake; layers, rings and the hours as a decimal are for spreadsheets.
 */
const NOT_ON_PAGE =
  /\.(packs\.\d+\.(count|size|price)|missing|bake\.(likely|bakes)|surplus|tiers\.\d+\.(count|layers|in_rings)|tins\.\d+\.count|needed|finishes\.\d+\.make|eggs|portions_wanted|portions|weight|height|oven_energy)$/;
/** The same names where they do stand on the page. */
const ON_PAGE_AFTER_ALL = /(rows\.\d+\.needed|tiers\.\d+\.(weight|portions))$/;

/** A week's list tells what is bought; what its orders use of it stands with each order's cost. */
const isElsewhere = (path: string, from: string): boolean =>
  (NOT_ON_PAGE.test(path) && !ON_PAGE_AFTER_ALL.test(path)) ||
  (from.startsWith('data/weeks/') && path.endsWith('.used'));

const isFigure = (value: object): value is Figure => 'value' in value && 'unit' in value && 'text' in value;

function leavesOf(value: unknown, path = ''): Leaf[] {
  if (typeof value !== 'object' || value === null) return [];
  if (isFigure(value)) return [{ ...value, path }];
  return Object.entries(value).flatMap(([key, part]) => leavesOf(part, `${path}.${key}`));
}

let output = '';
let orderIds: string[] = [];

const text = (path: string): string => readFileSync(join(output, path), 'utf8');
const json = (path: string): Record<string, unknown> => JSON.parse(text(path));
const plain = (some: string): string => some.replace(/\s+/g, ' ');

beforeAll(() => {
  output = demoOutput();
  orderIds = readdirSync(join(output, 'data/orders')).flatMap((name) =>
    name.endsWith('.json') && !name.endsWith('-timetable.json') ? [name.replace('.json', '')] : [],
  );
}, 200_000);

/** 'value,unit,text' as a record ends. */
function csvEnd({ value, unit, text: shown }: Figure): string {
  const cell = (one: string): string => (/[",]/.test(one) ? `"${one.replaceAll('"', '""')}"` : one);
  return `,${value},${unit},${cell(/^[=+\-@]/.test(shown) ? `'${shown}` : shown)}\r\n`;
}

describe('data files', () => {
  it('every order and week of the demo has JSON, CSV and a calendar', () => {
    expect(orderIds.length).toBeGreaterThanOrEqual(5);
    for (const id of orderIds)
      for (const ending of ['csv', 'ics'])
        expect(existsSync(join(output, `data/orders/${id}.${ending}`))).toBe(true);
    for (const ending of ['json', 'csv', 'ics'])
      expect(existsSync(join(output, `data/weeks/2026-w48.${ending}`))).toBe(true);
  });

  it('every figure of the JSON stands in the CSV with its unit and its words', () => {
    let count = 0;
    const missing: string[] = [];
    for (const path of [
      ...orderIds.map((id) => `data/orders/${id}`),
      'data/weeks/2026-w48',
      'data/weeks/2026-w49',
    ]) {
      const csv = text(`${path}.csv`);
      for (const leaf of leavesOf(json(`${path}.json`))) {
        if (NOT_IN_CSV.test(leaf.path)) continue;
        if (!csv.includes(csvEnd(leaf))) missing.push(`${path}${leaf.path}`);
        count += 1;
      }
    }
    expect(missing).toEqual([]);
    console.log(`orders and weeks in CSV: ${count} leaves of JSON found`);
    expect(count).toBeGreaterThan(1000);
  });
});

describe('pages', () => {
  it('show every figure of the JSON', () => {
    let count = 0;
    const missing: string[] = [];
    const pages = [
      ...orderIds.map((id) => [`data/orders/${id}.json`, `site/orders/${id}.html`] as const),
      ['data/weeks/2026-w48.json', 'site/orders/week-2026-w48.html'] as const,
    ];
    for (const [from, page] of pages) {
      const shown = plain(plainText(text(page)));
      for (const leaf of leavesOf(json(from))) {
        if (isElsewhere(leaf.path, from)) continue;
        if (!shown.includes(plain(leaf.text))) missing.push(`${page} ${leaf.path} '${leaf.text}'`);
        count += 1;
      }
    }
    expect(missing).toEqual([]);
    console.log(`orders on pages: ${count} leaves of JSON found`);
    expect(count).toBeGreaterThan(700);
  });
});

const readsAll = process.env.TINWRIGHT_LONG === '1';
const read = (): string[] => (readsAll ? orderIds : ['three-tiers-for-sixty', 'fair-trays']);

async function said(path: string): Promise<string> {
  const pdf = await readPdf(Uint8Array.from(readFileSync(join(output, path))));
  return plain(pdf.pages.map((page) => (page.tree === null ? '' : spokenText(page.tree, page))).join(' '));
}

/** Figures below a part of the JSON, by the end of their path. */
const below = (part: unknown, ending: RegExp): string[] =>
  leavesOf(part)
    .filter(({ path }) => ending.test(path))
    .map((leaf) => plain(leaf.text));

describe('prints', () => {
  it('the order sheet says what to weigh, crack, fill, bake and board', async () => {
    for (const id of read()) {
      const order = json(`data/orders/${id}.json`);
      const sheet = await said(`print/orders/${id}-order-sheet-a4.pdf`);
      const wanted = [
        ...below(
          order.batters,
          /bowlfuls\.\d+\.(batter|lines\.\d+\.grams|eggs\.\d+\.(count|grams)|tins\.\d+\.each)$/,
        ),
        ...below(
          order.tiers,
          /\.(bake\.(dial|first_look|expected_by)|coated_height|board|box_height|ribbon|on)$/,
        ),
        ...below(order.finishes, /\.(make|grams)$/),
      ];
      expect(wanted.length).toBeGreaterThan(20);
      expect(wanted.filter((one) => !sheet.includes(one))).toEqual([]);
    }
  });

  it('the order sheet sends one to papers that are there, and the page links each in every size', async () => {
    const printed = readdirSync(join(output, 'print'), { recursive: true }).map(String);
    const sheet = await said('print/orders/three-tiers-for-sixty-order-sheet-a4.pdf');
    const named =
      sheet.match(/(?:recipe-cards|finish-cards|templates|labels\/orders|orders)\/ ?[a-z0-9-]+/g) ?? [];
    expect(named.length).toBeGreaterThanOrEqual(9);
    const stems = named.map((one) => one.replace(' ', ''));
    expect(stems.filter((stem) => !printed.some((path) => path.startsWith(`${stem}-`)))).toEqual([]);
    const page = text('site/orders/three-tiers-for-sixty.html');
    const take = page.slice(page.indexOf('id="take"'), page.indexOf('id="settle"'));
    const links = [...take.matchAll(/href="\.\.\/([^"]+)"/g)].map(([, path = '']) => path);
    expect(links.filter((path) => !existsSync(join(output, 'site', path)))).toEqual([]);
    // Two recipe cards of one file in five sizes, three finish cards in four; of tins and stack A4 and Letter.
    expect(links.filter((path) => path.includes('-cards/')).length).toBe(2 * 5 + 3 * 4);
    expect(links.filter((path) => path.includes('/templates/')).length).toBe(3 * 2);
  });

  it('the shopping list says what to buy, what there is and what it comes to', async () => {
    for (const id of read()) {
      const { shopping } = json(`data/orders/${id}.json`);
      const list = await said(`print/orders/${id}-shopping-list-a4.pdf`);
      const rows = (
        shopping as { rows: { buys: boolean; buy_text: string; needed: Figure; cost: Figure | null }[] }
      ).rows;
      const wanted = rows.flatMap(({ buys, buy_text, needed, cost }) => [
        needed.text,
        ...(buys ? [buy_text, ...(cost === null ? [] : [cost.text])] : []),
      ]);
      const all = [...wanted, (shopping as { total: Figure }).total.text].map(plain);
      expect(all.filter((one) => !list.includes(one))).toEqual([]);
    }
  });

  it('the quote says what is to pay, and nothing of cost, margin or working time', async () => {
    for (const id of read()) {
      const { quote, cost } = json(`data/orders/${id}.json`) as {
        quote: { kind: string };
        cost: Record<string, Figure>;
      };
      const paper = await said(`print/orders/${id}-${quote.kind}-a4.pdf`);
      const wanted = below(quote, /\.(total|payments\.\d+\.sum|per_piece\.each|rows\.\d+\.(net|each))$/);
      expect(wanted.filter((one) => !paper.includes(one))).toEqual([]);
      if (quote.kind === 'costing') continue;
      const kept = ['cost', 'margin', 'hands_on'].map((name) => plain(cost[name]?.text ?? 'missing'));
      const unseen = [...kept, 'Overhead', 'margin', 'Hands-on', 'as used'];
      expect(unseen.filter((one) => paper.includes(one))).toEqual([]);
    }
  });

  it('a quote’s lines add up to what is to pay', () => {
    for (const id of orderIds) {
      const { quote } = json(`data/orders/${id}.json`) as {
        quote: { rows: { net: Figure; vat: Figure }[]; total: Figure };
      };
      const sum = quote.rows.reduce((all, { net, vat }) => all + net.value + vat.value, 0);
      expect(sum).toBe(quote.total.value);
    }
  });
});
