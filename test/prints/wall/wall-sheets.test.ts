/**
 * The wall references of the built demo, read back: inside the margins, as large as their foot says, tagged, and
 * with the figures of the data files. The quick run reads a sheet of each kind in each style, the long run all.
 */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { parse as parseCsv } from 'csv-parse/sync';
import { beforeAll, describe, expect, it } from 'vitest';
import { parse as parseYaml } from 'yaml';
import { houseFonts } from '../../../src/commands/make/house-fonts.ts';
import type { HouseStyle } from '../../../src/domain/house-style.ts';
import { demoOutput } from '../../build/support/demo-output.ts';
import { pageContents, rawObjects } from '../../reading-back/raw-objects.ts';
import { type ReadPdf, readPdf } from '../../reading-back/read-pdf.ts';
import { nodesWithin, rolesWithin, tableRows } from '../../reading-back/structure.ts';
import { demoContent } from '../../samples/demo.ts';
import { sheetFaults, unmarkedPainting } from '../sheet-checks.ts';

const isLong = process.env.TINWRIGHT_LONG !== undefined;
const FOLDERS = ['wall', 'in-slate-and-apricot/wall'] as const;
/** Each kind on one large paper; the other style takes the other one. */
const SAMPLE: Record<(typeof FOLDERS)[number], RegExp> = {
  wall: /^(egg-ladder-vanilla-equal-weights-a3|oven-dials-a2|tin-volumes-11x17|finish-dark-ganache-a3|allergens-a3)\.pdf$/,
  'in-slate-and-apricot/wall':
    /^(egg-ladder-harvest-fruit-a3|oven-dials-11x17|tin-volumes-a3|finish-vanilla-buttercream-17x22|allergens-11x17)\.pdf$/,
};

interface Sheet {
  name: string;
  id: string;
  bytes: Uint8Array;
  pdf: ReadPdf;
  style: HouseStyle;
}

const idOf = (file: string): string => file.replace(/-(a3|a2|11x17|17x22)\.pdf$/, '');

let output = '';
const sheets: Sheet[] = [];
beforeAll(async () => {
  output = demoOutput();
  const content = await demoContent();
  const styles = [content.houseStyle, ...content.houseStyles.map(({ style }) => style)];
  for (const [index, folder] of FOLDERS.entries()) {
    const style = styles[index];
    if (style === undefined) throw new Error('the demo has lost a style');
    const files = readdirSync(join(output, 'print', folder)).filter((file) => !file.includes('-on-'));
    for (const file of files.filter((name) => isLong || SAMPLE[folder].test(name))) {
      const bytes = new Uint8Array(readFileSync(join(output, 'print', folder, file)));
      sheets.push({ name: `${folder}/${file}`, id: idOf(file), bytes, pdf: await readPdf(bytes), style });
    }
  }
});

const said = ({ pdf }: Sheet): string =>
  pdf.pages
    .flatMap(({ texts }) => texts.map(({ text }) => text.trim()))
    .join(' ')
    .replace(/\s+/g, ' ')
    .replace(/(\w)- /g, '$1-');
const ofKind = (start: string): Sheet[] => {
  const found = sheets.filter(({ id }) => id.startsWith(start));
  expect(found.length).toBeGreaterThanOrEqual(2);
  return found;
};
const json = (path: string) => JSON.parse(readFileSync(join(output, 'data', path), 'utf8'));
/** Rows of words, without the header and its repetition on a second sheet. */
const bodyRows = ({ pdf }: Sheet): string[][] =>
  tableRows(pdf)
    .filter((cells) => cells.some(({ role }) => role === 'TD'))
    .map((cells) => cells.map(({ text }) => text));

describe('every wall reference', () => {
  it('is there in both styles, on all four papers, whole and tiled', () => {
    const files = FOLDERS.map((folder) => readdirSync(join(output, 'print', folder)).sort());
    expect(files[0]).toEqual(files[1]);
    const ids = new Set(
      files[0]?.map((file) => file.replace(/-(a3|a2|11x17|17x22)(-on-[a-z0-9]+)?\.pdf$/, '')),
    );
    for (const kind of ['oven-dials', 'tin-volumes', 'allergens', 'finish-dark-ganache'])
      expect(ids).toContain(kind);
    expect(files[0]?.length).toBe(ids.size * 8);
    expect(sheets.length).toBe(isLong ? ids.size * 8 : 10);
  });

  it('keeps inside the margins, text apart, and all it paints marked', () => {
    for (const { name, pdf, style, bytes } of sheets) {
      expect(sheetFaults(pdf, style.marginMm), name).toEqual([]);
      expect(pageContents(rawObjects(bytes)).flatMap(unmarkedPainting), name).toEqual([]);
    }
  });

  it('is one sheet, or two that share the rows and both carry what is to be heeded', () => {
    for (const sheet of sheets) {
      const { pages } = sheet.pdf;
      expect(pages.length, sheet.name).toBeLessThanOrEqual(2);
      const cautions = pages.map(({ texts }) => texts.filter(({ text }) => /^Caution\./.test(text)).length);
      expect(new Set(cautions).size, sheet.name).toBe(1);
      for (const page of pages) expect(page.tree === null ? [] : rolesWithin(page.tree)).toContain('H1');
      const rows = pages.map((page) => (page.tree === null ? [] : nodesWithin(page.tree, 'TR')).length);
      if (pages.length === 2 && sheet.id !== 'tin-volumes')
        expect(Math.min(...rows) / Math.max(...rows), sheet.name).toBeGreaterThan(0.4);
    }
  });

  it('is as large as its foot says, and that is large enough for two metres', async () => {
    const caps = new Map<HouseStyle, { text: number; textBold: number }>();
    for (const style of new Set(sheets.map((sheet) => sheet.style))) {
      const fonts = await houseFonts(style, 'content', 'house-style.yaml');
      if (!fonts.ok) throw new Error('the style has no fonts');
      const { capHeightMm } = fonts.value.metrics;
      caps.set(style, { text: capHeightMm('text', 1), textBold: capHeightMm('textBold', 1) });
    }
    for (const sheet of sheets) {
      const { pdf, style, name } = sheet;
      const capMm = caps.get(style) ?? { text: 0, textBold: 0 };
      const foot =
        /Figures in ([\d.]+) pt to read from 2 m, words in ([\d.]+) pt from 1.2 m(?:, notes in ([\d.]+) pt)?/;
      const [, key, word, note = word] = foot.exec(said(sheet)) ?? [];
      const [keyPt, wordPt, notePt] = [Number(key), Number(word), Number(note)];
      expect(keyPt * capMm.textBold, name).toBeGreaterThanOrEqual(2000 / 215);
      expect(wordPt * capMm.text, name).toBeGreaterThanOrEqual(1200 / 215);
      expect(notePt * capMm.text, name).toBeGreaterThanOrEqual(900 / 215);
      const content = pdf.pages.flatMap(({ texts }) => texts.filter(({ contentId }) => contentId !== null));
      // What stands beneath the code is a label.
      const label = /^(How|the|figures|were|worked|out|This|sheet’s|page)\b/;
      const small = content.filter(({ sizePt }) => sizePt < notePt - 0.01);
      expect(
        small.filter(({ text }) => !label.test(text.trim())).map(({ text }) => text),
        name,
      ).toEqual([]);
      const figures = content.filter(({ text }) => /^[\d,]+( g)?$/.test(text.trim()));
      if (sheet.id === 'allergens') continue;
      expect(figures.length, name).toBeGreaterThan(10);
      for (const { text, sizePt } of figures) expect([keyPt, text, name]).toEqual([sizePt, text, name]);
    }
  });

  it('is tagged: headings, tables with scopes or lists, drawings with words, a link', () => {
    for (const { name, id, bytes, pdf } of sheets) {
      const roles = new Set(pdf.pages.flatMap(({ tree }) => (tree === null ? [] : rolesWithin(tree))));
      const body =
        id === 'tin-volumes' ? ['L', 'LI', 'LBody'] : ['Table', 'THead', 'TBody', 'TR', 'TH', 'TD'];
      for (const role of ['Document', 'Sect', 'H1', 'P', 'Figure', 'Link', ...body])
        expect(roles, name).toContain(role);
      expect(pdf.markInfo?.Marked, name).toBe(true);
      const heads = rawObjects(bytes).filter(({ head }) => /\/S \/TH\n/.test(head));
      for (const { head } of heads) expect(head, name).toMatch(/\/Scope \/(Row|Column)/);
      const alts = pdf.pages
        .flatMap(({ tree }) => (tree === null ? [] : nodesWithin(tree, 'Figure')))
        .map(({ alt }) => alt);
      expect(
        alts.every((alt) => alt !== undefined && alt.length > 5),
        name,
      ).toBe(true);
    }
  });
});

describe('the figures on the wall', () => {
  it('of an egg ladder are those of its data file', () => {
    for (const sheet of ofKind('egg-ladder-')) {
      const { rungs } = json(`egg-ladders/${sheet.id.replace('egg-ladder-', '')}.json`);
      expect(
        bodyRows(sheet).map((cells) => cells.slice(0, 2)),
        sheet.name,
      ).toEqual(
        rungs.map(({ shown }: { shown: { eggs: string; batter_g: string } }) => [shown.eggs, shown.batter_g]),
      );
      expect(
        bodyRows(sheet).map((cells) => cells[2]),
        sheet.name,
      ).toEqual(rungs.map(({ fills }: { fills: { text: string }[] }) => fills[0]?.text ?? '–'));
    }
  });

  it('of a finish are the weights to make of the finishing chart, tin by tin', () => {
    interface Tin {
      name: string;
      amounts: { id: string; shown: { make_g: string } }[];
    }
    const { tins } = json('finishing/finishing.json') as { tins: Tin[] };
    for (const sheet of ofKind('finish-')) {
      const finish = sheet.id.replace('finish-', '');
      const uses = ['filling', 'dam', 'coating'].map((use) => `${finish}--${use}`);
      const wanted = tins.map(({ name, amounts }) => [
        name,
        ...uses.flatMap((use) => amounts.filter(({ id }) => id === use).map(({ shown }) => shown.make_g)),
      ]);
      expect(bodyRows(sheet), sheet.name).toEqual(wanted);
    }
  });

  it('of the tins are the volumes and batters of the tin chart, each once, smallest first', () => {
    interface Row {
      name: string;
      count: number;
      shown: { batter_g_each: string; volume_ml: string };
    }
    const { tins } = json('tin-charts/vanilla-equal-weights.json') as { tins: Row[] };
    const single = tins.filter(({ count }) => count === 1);
    for (const sheet of ofKind('tin-volumes')) {
      const text = said(sheet);
      for (const { name, shown } of single)
        expect(text, sheet.name).toContain(`${name} ${shown.batter_g_each} g ${shown.volume_ml} ml`);
      const volumes = [...text.matchAll(/([\d,]+) ml/g)].map(([, ml = '']) => Number(ml.replace(',', '')));
      expect(volumes).toHaveLength(single.length);
      expect(volumes).toEqual([...volumes].sort((a, b) => a - b));
    }
  });

  it('of the oven are those of the common table: a mark, its °F, a °C that dials say, and fan 20 lower', () => {
    const table = parseCsv(readFileSync('test/outside/oven-marks/oven.csv', 'utf8'), { columns: true }) as {
      gas_mark: string;
      fahrenheit: string;
      dial_celsius: string;
    }[];
    for (const sheet of ofKind('oven-dials')) {
      const rows = bodyRows(sheet);
      expect(rows.map(([, , gas, fahrenheit]) => [gas, fahrenheit])).toEqual(
        table.map(({ gas_mark, fahrenheit }) => [
          gas_mark.replace('1/4', '¼').replace('1/2', '½'),
          fahrenheit,
        ]),
      );
      for (const [index, [celsius, fan]] of rows.entries()) {
        const [least = 0, most = least] = table[index]?.dial_celsius.split('-').map(Number) ?? [];
        expect(Number(celsius)).toBeGreaterThanOrEqual(least);
        expect(Number(celsius)).toBeLessThanOrEqual(most);
        expect(Number(celsius) - Number(fan)).toBe(20);
      }
    }
  });

  it('on the allergen board are what the ingredients’ packets say, and no row claims to be free of anything', () => {
    const yaml = (path: string) => parseYaml(readFileSync(join('content', path), 'utf8'));
    const ingredients = yaml('ingredients.yaml');
    const matter = (path: string) =>
      parseYaml(readFileSync(join('content', path), 'utf8').split(/^---$/m)[1] ?? '');
    const things = [
      ...readdirSync('content/recipes').map((file) => matter(`recipes/${file}`)),
      ...readdirSync('content/finishes').map((file) => yaml(`finishes/${file}`)),
    ];
    const allergensOf = ({ formula }: { formula: Record<string, unknown> }): Set<string> =>
      new Set(
        Object.keys(formula)
          .flatMap((id) => ingredients[id]?.allergens ?? [])
          .map((allergen: string) => (allergen === 'egg' ? 'eggs' : allergen)),
      );
    for (const sheet of ofKind('allergens')) {
      const [head = []] = tableRows(sheet.pdf).map((cells) => cells.map(({ text }) => text));
      const rows = bodyRows(sheet);
      expect(rows.map(([name]) => name).sort()).toEqual(things.map(({ name }) => name).sort());
      for (const [name = '', ...cells] of rows) {
        const wanted = allergensOf(things.find((thing) => thing.name === name));
        const told = new Set(head.slice(1).filter((_, index) => cells[index] !== '–'));
        expect([name, [...told].sort()]).toEqual([name, [...wanted].sort()]);
      }
      expect(said(sheet)).not.toMatch(/\bfree\b/i);
    }
  });
});
