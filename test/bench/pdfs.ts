/** Tagged tables and small sheets, by this program, by its PDF library as one would use it, and by a browser. */
import { readFileSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { pathToFileURL } from 'node:url';

import PDFDocument from 'pdfkit';
import subsetFont from 'subset-font';
import type { LoadedFonts } from '../../src/pdf/fonts.ts';
import { renderPdf } from '../../src/pdf/render-pdf.ts';
import { textParagraph } from '../../src/prints/sheet/blocks.ts';
import { flow, type Section } from '../../src/prints/sheet/flow.ts';
import { paragraph } from '../../src/prints/sheet/lines.ts';
import { sheetContext } from '../../src/prints/sheet/sheet-context.ts';
import type { Print } from '../../src/prints/sheet/surface.ts';
import { table } from '../../src/prints/sheet/table/table.ts';
import { typeScale } from '../../src/prints/sheet/type-scale.ts';
import type { launchBrowser } from '../browser/browser.ts';
import { sampleFonts } from '../samples/fonts.ts';
import { sampleStyle } from '../samples/house-style.ts';

const [kind, path = ''] = process.argv.slice(2);
const FONT = 'source-sans-3/400Regular/SourceSans3_400Regular.ttf';
const fontFile = createRequire(import.meta.url).resolve(`@expo-google-fonts/${FONT}`);
const COLUMNS = 9;
const ROWS = 14;
const WORDS =
  'Flour, butter and sugar are weighed to five grams and eggs are counted, because a kitchen has whole eggs and a coarse scale. ';
const said = (page: number, at: number): string => `Page ${page}, paragraph ${at}. ${WORDS.repeat(3)}`.trim();
const cell = (page: number, row: number, column: number): string =>
  column === 0 ? `Round ${row + 4} in` : `${(page * 37 + row * 101 + column * 13) % 1900} g`;
const rowsOf = (page: number): string[][] =>
  Array.from({ length: ROWS }, (_, row) =>
    Array.from({ length: COLUMNS }, (_, column) => cell(page, row, column)),
  );

let loaded: LoadedFonts | null = null;

/** Parsing them counts, once for all documents. */
function fontsOf(): LoadedFonts {
  loaded ??= sampleFonts();
  return loaded;
}

function print(name: string, pages: number): Print {
  const style = sampleStyle;
  const context = sheetContext(style, fontsOf().metrics);
  const frame = { widthMm: 182, heightMm: 267 };
  const sections = Array.from(
    { length: pages },
    (_, page): Section => ({
      key: `page-${page}`,
      startsPage: true,
      blocks: [
        table({
          key: 'weights',
          columns: Array.from({ length: COLUMNS }, (_, column) => ({
            heading: [paragraph(`Column ${column + 1}`, typeScale.columnHead)],
            align: column === 0 ? 'left' : 'right',
          })),
          rows: rowsOf(page).map((texts) => ({
            cells: texts.map((text, column) => ({
              paragraphs: [paragraph(text, typeScale.body)],
              heading: column === 0,
            })),
          })),
        }),
        ...[1, 2, 3].map((at) => textParagraph(`said-${at}`, paragraph(said(page, at), typeScale.body))),
      ],
    }),
  );
  const flowed = flow(sections, frame, context);
  const page = (one: (typeof flowed)[number]) => ({
    widthMm: 210,
    heightMm: 297,
    draw: (surface: Parameters<typeof one.draw>[0]) => one.draw(surface, 14, 14),
  });
  return { path: name, title: name, lang: 'en-GB', subject: name, pages: flowed.map(page) };
}

function drawn(name: string, pages: number): void {
  const drawing = print(name, pages);
  if (drawing.pages.length !== pages) throw new Error(`${drawing.pages.length} pages instead of ${pages}`);
  const pdf = renderPdf(drawing, fontsOf(), { dated: new Date(0), author: 'bench', producer: 'bench' });
  if (!pdf.ok) throw new Error(JSON.stringify(pdf.problems));
  bytes += pdf.value.length;
}

/** The library's own way: a structure element a cell, text laid out by the library in the cell's width. */
function byLibrary(pages: number, font: Buffer): Promise<void> {
  const document = new PDFDocument({
    pdfVersion: '1.7',
    tagged: true,
    lang: 'en-GB',
    size: 'A4',
    margin: 40,
    autoFirstPage: false,
    compress: false,
  });
  const ended = new Promise<void>((done) => {
    document.on('data', (chunk: Uint8Array) => {
      bytes += chunk.length;
    });
    document.on('end', () => done());
  });
  for (let page = 0; page < pages; page += 1) {
    document.addPage();
    document.font(font).fontSize(10.5);
    const grid = document.struct('Table');
    document.addStructure(grid);
    [Array.from({ length: COLUMNS }, (_, column) => `Column ${column + 1}`), ...rowsOf(page)].forEach(
      (texts, row) => {
        const line = document.struct('TR');
        grid.add(line);
        texts.forEach((text, column) => {
          const draw = () =>
            void document.text(text, 40 + column * 57, 40 + row * 22, {
              width: 52,
              align: column === 0 ? 'left' : 'right',
            });
          line.add(document.struct(row === 0 ? 'TH' : 'TD', {}, draw));
        });
        line.end();
      },
    );
    grid.end();
    for (const at of [1, 2, 3])
      document.addStructure(
        document.struct('P', {}, () => void document.text(said(page, at), 40, 380 + at * 80, { width: 515 })),
      );
  }
  document.end();
  return ended;
}

function html(): string {
  const row = (texts: string[], tag: string): string =>
    `<tr>${texts.map((text) => `<${tag}>${text}</${tag}>`).join('')}</tr>`;
  const pages = Array.from({ length: 100 }, (_, page) => {
    const head = row(
      Array.from({ length: COLUMNS }, (_, column) => `Column ${column + 1}`),
      'th',
    );
    const body = rowsOf(page).map((texts) => row(texts, 'td'));
    const words = [1, 2, 3].map((at) => `<p>${said(page, at)}</p>`);
    return `<section><table>${head}${body.join('')}</table>${words.join('')}</section>`;
  });
  return `<!doctype html><html lang="en-GB"><meta charset="utf-8"><title>Tables</title><style>section{break-after:page}</style>${pages.join('')}`;
}

/** A cold browser: started, shown the page from the disk, asked for a tagged PDF, ended. */
async function byBrowser(launch: typeof launchBrowser): Promise<void> {
  const browser = await launch();
  try {
    const page = await browser.newPage();
    await page.goto(pathToFileURL(path).href);
    bytes += (await page.pdf({ format: 'A4', tagged: true, outline: true })).length;
  } finally {
    await browser.close();
  }
}

let bytes = 0;
// Loaded for its own measure only; unpacking the program is no part of what it takes.
const browser = kind === 'tables-browser' ? await import('../browser/browser.ts') : null;
await browser?.chosenChromium();
const ttf = readFileSync(fontFile);
const woff =
  kind === 'small-woff'
    ? await subsetFont(ttf, Array.from({ length: 95 }, (_, at) => String.fromCharCode(32 + at)).join(''), {
        targetFormat: 'woff',
      })
    : ttf;
const before = performance.now();
if (kind === 'tables') drawn('tables', 100);
if (kind === 'tables-pdfkit') await byLibrary(100, ttf);
if (kind === 'small') for (let at = 0; at < 40; at += 1) drawn(`small-${at}`, 1);
if (kind === 'small-woff') for (let at = 0; at < 40; at += 1) await byLibrary(1, woff);
if (browser) await byBrowser(browser.launchBrowser);
if (kind === 'tables-html') writeFileSync(path, html());
const ms = performance.now() - before;
if (kind !== 'tables-html' && bytes < 100_000) throw new Error(`only ${bytes} bytes`);
console.log(`took ${Math.round(ms)}`);
