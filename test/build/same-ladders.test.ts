/** The egg ladders: every rung of the JSON stands on the page and in both papers, figure by figure. */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { beforeAll, expect, it } from 'vitest';
import { z } from 'zod';
import { spokenText } from '../reading-back/structure.ts';
import { plainText } from './support/chart-page-rows.ts';
import { demoOutput } from './support/demo-output.ts';
import { isReadOn, readBuiltPdf } from './support/read-built-pdf.ts';

const amountSchema = z.object({ shown: z.string(), spoons: z.string().nullable() });
const fillSchema = z.object({
  text: z.string(),
  left_g: z.number(),
  shown: z.object({ left_g: z.string() }),
});
const rungSchema = z.object({
  ingredients: z.array(amountSchema),
  fills: z.array(fillSchema),
  text: z.string(),
  shown: z.object({ eggs: z.string(), batter_g: z.string() }),
});
const ladderSchema = z.object({ id: z.string(), rungs: z.array(rungSchema).min(1) });
type Rung = z.infer<typeof rungSchema>;

let output = '';
let ladders: z.infer<typeof ladderSchema>[] = [];

beforeAll(() => {
  output = demoOutput();
  const folder = join(output, 'data/egg-ladders');
  const files = readdirSync(folder).filter((name) => name.endsWith('.json'));
  ladders = files.map((name) => ladderSchema.parse(JSON.parse(readFileSync(join(folder, name), 'utf8'))));
});

const leftText = ({ left_g, shown }: z.infer<typeof fillSchema>): string =>
  Math.abs(left_g) < 0.5
    ? 'nothing left'
    : left_g < 0
      ? `${shown.left_g.replace(/^[−-]/, '')} g short`
      : `${shown.left_g} g left`;

const amountTexts = ({ ingredients }: Rung): string[] =>
  ingredients.flatMap(({ shown, spoons }) => (spoons === null ? [shown] : [shown, spoons]));

const fillTexts = ({ fills }: Rung): string[] => fills.map((fill) => `${fill.text}, ${leftText(fill)}`);

/**
 * What is not said in this order, a number only where it stands alone; `rest` is the text after the last one. A
 * line's end may stand at any space, after a hyphen and between two runs of text.
 */
function saidInOrder(texts: readonly string[], text: string): { missing: string[]; rest: string } {
  let rest = text;
  const missing = texts.filter((one) => {
    const escaped = one
      .replace(/[.*+?^${}()|[\]\\]/g, '\\$&')
      .replaceAll(' ', '\\s*')
      .replaceAll(',', '\\s*,')
      .replaceAll('-', '-\\s*');
    const match = new RegExp(`(?<![\\d.,])${escaped}(?![\\d]|[.,]\\d)`, 'i').exec(rest);
    if (match !== null) rest = rest.slice(match.index + match[0].length);
    return match === null;
  });
  return { missing, rest };
}

it('page and JSON agree in every rung', () => {
  let count = 0;
  for (const { id, rungs } of ladders) {
    const html = readFileSync(join(output, `site/charts/${id}.html`), 'utf8');
    const table = /<table class="chart ladder">[\s\S]*?<\/table>/.exec(html)?.[0] ?? '';
    const rows = [...table.matchAll(/<tr><th scope="row"[\s\S]*?<\/tr>/g)].map(([row]) => plainText(row));
    expect(rows, id).toHaveLength(rungs.length);
    rungs.forEach((rung, at) => {
      const texts = [rung.text, rung.shown.batter_g, ...amountTexts(rung), ...fillTexts(rung)];
      expect(saidInOrder(texts, rows[at] ?? '').missing, `${id} ${rung.shown.eggs}`).toEqual([]);
      count += texts.length;
    });
  }
  expect(count).toBeGreaterThan(3000);
  console.log(`page: ${count} leaves of ladders found`);
});

/** What is missing: a ladder set across goes rung by rung; a turned one by ingredient, with its fills apart. */
function missingInPrint(rungs: Rung[], ladder: string): string[] {
  const turned = /\bBatter, g\b/.test(ladder);
  if (!turned) {
    const texts = rungs.flatMap((rung) => [
      rung.shown.eggs,
      rung.shown.batter_g,
      ...amountTexts(rung),
      ...fillTexts(rung),
    ]);
    return saidInOrder(texts, ladder).missing;
  }
  const fillsAt = ladder.indexOf('Tins it fills');
  const figures = rungs.flatMap((rung) => [rung.shown.batter_g, ...amountTexts(rung)]);
  const fills = rungs.flatMap((rung) => [rung.shown.eggs, ...fillTexts(rung)]);
  return [
    ...figures.filter((text) => saidInOrder([text], ladder.slice(0, fillsAt)).missing.length > 0),
    ...saidInOrder(fills, ladder.slice(fillsAt)).missing,
  ];
}

it.each(['a4', 'letter'])('the %s print and JSON agree in every rung', async (paper) => {
  let count = 0;
  for (const { id, rungs } of ladders.filter((_, index) => isReadOn(paper, index))) {
    const path = join(output, `print/tin-charts/${id}-${paper}.pdf`);
    const pdf = await readBuiltPdf(path);
    const text = pdf.pages.map((page) => (page.tree === null ? '' : spokenText(page.tree, page))).join(' ');
    const ladder = text.slice(text.lastIndexOf('Egg ladder'));
    expect(missingInPrint(rungs, ladder), id).toEqual([]);
    count += rungs.reduce((sum, rung) => sum + 2 + amountTexts(rung).length + rung.fills.length, 0);
  }
  expect(count).toBeGreaterThan(paper === 'a4' ? 3000 : 600);
  console.log(`${paper}: ${count} leaves of ladders found`);
});
