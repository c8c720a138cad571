/**
 * The same numbers on the page, on paper and in the data files, for every demo chart. Each check starts from the
 * JSON, and what the JSON says must stand in that very row elsewhere.
 */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { beforeAll, expect, it } from 'vitest';
import { z } from 'zod';
import { spokenText } from '../reading-back/structure.ts';
import { chartPageRows, type PageRow, plainText } from './support/chart-page-rows.ts';
import { demoOutput } from './support/demo-output.ts';
import { isReadOn, readBuiltPdf } from './support/read-built-pdf.ts';

const tinSchema = z.object({
  id: z.string(),
  name: z.string(),
  size: z.string(),
  other_size: z.string(),
  count: z.number(),
  batter_g: z.number(),
  eggs: z.object({ whole: z.number(), exact: z.number(), rule: z.string(), text: z.string() }).nullable(),
  ingredients: z.array(
    z.object({ name: z.string(), grams: z.number(), shown: z.string(), spoons: z.string().nullable() }),
  ),
  surplus: z.string(),
  surplus_g: z.number(),
  raw_fill_share: z.number(),
  warnings: z.array(z.object({ message: z.string() })),
  shown: z.record(z.string(), z.string()),
});
const chartSchema = z.object({
  id: z.string(),
  title: z.string(),
  basis: z.string(),
  egg_size: z.string(),
  finished_height: z.string(),
  cautions: z.array(z.object({ text: z.string() })),
  tins: z.array(tinSchema).min(1),
});
type Chart = z.infer<typeof chartSchema>;
type Tin = z.infer<typeof tinSchema>;

let output = '';
let charts: Chart[] = [];

beforeAll(() => {
  output = demoOutput();
  const folder = join(output, 'data/tin-charts');
  const files = readdirSync(folder).filter((name) => name.endsWith('.json'));
  charts = files.map((name) => chartSchema.parse(JSON.parse(readFileSync(join(folder, name), 'utf8'))));
});

/** What holds for the whole chart; the size of eggs only where there are any. */
function chartTexts(chart: Chart): string[] {
  const eggs = chart.tins.some((tin) => tin.eggs !== null) ? [chart.egg_size] : [];
  return [
    chart.title,
    chart.basis,
    chart.finished_height,
    ...eggs,
    ...chart.cautions.map(({ text }) => text),
  ];
}

const rowName = ({ count, name }: Tin): string => (count === 1 ? name : `${count} × ${name}`);

/** What the JSON says beside what another place says; equal for the same numbers. */
type Pair = [unknown, unknown];

const poured = ({ count, shown }: Tin): string =>
  `${shown.receives_g_each} g in ${count > 1 ? 'each' : 'the tin'}`;

function pagePairs(tin: Tin, row: PageRow): Pair[] {
  const cell = (label: string) => row.cells.get(label) ?? { value: null, parts: [] };
  const valued = (label: string, value: number, ...parts: (string | undefined)[]): Pair[] => [
    [String(value), cell(label).value],
    [parts.filter((part) => part !== undefined), cell(label).parts],
  ];
  return [
    ...(tin.eggs === null
      ? []
      : valued(
          'Eggs',
          tin.eggs.whole,
          tin.shown.eggs_whole,
          `${tin.shown.eggs_exact} exact`,
          // Yolks and whites are told beside the count; so many plain eggs are not said twice.
          /^\S+ eggs?$/.test(tin.eggs.text) ? undefined : tin.eggs.text,
        )),
    ...valued('Batter', tin.batter_g, tin.shown.batter_g, poured(tin)),
    ...tin.ingredients.flatMap(({ name, grams, shown, spoons }) =>
      valued(name, grams, shown, spoons ?? undefined),
    ),
    ...valued('Raw fill', tin.raw_fill_share, `${tin.shown.raw_fill_mm} mm`, tin.shown.raw_fill_share),
    ...valued('Over or short', tin.surplus_g, tin.surplus),
    ...[tin.name, tin.size, ...tin.warnings.map(({ message }) => message)].map(
      (text): Pair => [true, row.heading.includes(text)],
    ),
  ];
}

it('page and JSON agree in every cell of every row', () => {
  let count = 0;
  for (const chart of charts) {
    const html = readFileSync(join(output, `site/charts/${chart.id}.html`), 'utf8');
    const rows = chartPageRows(html);
    expect([...rows.keys()]).toEqual(chart.tins.map(({ id }) => id));
    for (const tin of chart.tins) {
      const pairs = pagePairs(tin, rows.get(tin.id) ?? { heading: '', cells: new Map() });
      expect(
        pairs.map(([, found]) => found),
        `${chart.id} ${tin.id}`,
      ).toEqual(pairs.map(([said]) => said));
      count += pairs.length;
    }
    const text = plainText(html);
    expect(
      chartTexts(chart).filter((said) => !text.includes(said)),
      chart.id,
    ).toEqual([]);
    count += chartTexts(chart).length;
  }
  console.log(`page: ${count} leaves of JSON found`);
});

/** The part of a print's text that belongs to each row: from its name and size to the next one's. */
function rowTexts(text: string, tins: readonly Tin[]): string[] {
  const starts: number[] = [];
  for (const tin of tins) starts.push(text.indexOf(`${rowName(tin)} ${tin.size}`, starts.at(-1) ?? 0));
  expect(starts).not.toContain(-1);
  return starts.map((from, at) => text.slice(from, starts[at + 1] ?? text.length));
}

/** Texts in the order in which a row must say them; a number counts only when it stands alone. */
function missingInOrder(texts: readonly string[], row: string): string[] {
  let rest = row;
  return texts.filter((text) => {
    const pattern = new RegExp(
      `(?<![\\d.,])${text.replace(/[.*+?^${}()|[\]\\]/g, '\\$&')}(?![\\d]|[.,]\\d)`,
      'i',
    );
    const match = pattern.exec(rest);
    if (match !== null) rest = rest.slice(match.index + match[0].length);
    return match === null;
  });
}

function printSays(tin: Tin): { inOrder: string[]; anywhere: string[] } {
  const amounts = tin.ingredients.flatMap(({ shown, spoons }) =>
    spoons === null ? [shown] : [shown, spoons],
  );
  const { shown } = tin;
  const filling = [`${shown.raw_fill_mm} mm`, shown.raw_fill_share ?? '', tin.surplus];
  const eggs = tin.eggs === null ? [] : [shown.eggs_whole ?? '', shown.eggs_exact ?? ''];
  const each = [poured(tin)];
  return {
    inOrder: [tin.size, tin.other_size, shown.batter_g ?? '', ...amounts, ...filling],
    anywhere: [...eggs, ...each, shown.volume_ml ?? '', ...tin.warnings.map(({ message }) => message)],
  };
}

it.each(['a4', 'letter'])('the %s print and JSON agree in every row', async (paper) => {
  let count = 0;
  for (const chart of charts.filter((_, index) => isReadOn(paper, index))) {
    const path = join(output, `print/tin-charts/${chart.id}-${paper}.pdf`);
    const pdf = await readBuiltPdf(path);
    const text = pdf.pages.map((page) => (page.tree === null ? '' : spokenText(page.tree, page))).join(' ');
    const rows = rowTexts(text, chart.tins);
    for (const [at, tin] of chart.tins.entries()) {
      const { inOrder, anywhere } = printSays(tin);
      const row = rows[at] ?? '';
      const missing = [
        ...missingInOrder(inOrder, row),
        ...anywhere.filter((one) => missingInOrder([one], row).length > 0),
      ];
      expect(missing, `${chart.id} ${tin.id}: ${row.slice(0, 600)}`).toEqual([]);
      count += inOrder.length + anywhere.length;
    }
    expect(
      chartTexts(chart).filter((said) => !text.includes(said)),
      chart.id,
    ).toEqual([]);
    count += chartTexts(chart).length;
  }
  console.log(`${paper}: ${count} leaves of JSON found`);
});
