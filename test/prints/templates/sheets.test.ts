import { describe, expect, it } from 'vitest';
import { liningTemplatePrint } from '../../../src/prints/lining-template.ts';
import { liningTemplateView } from '../../../src/views/lining-template.ts';
import { pageContents, rawObjects } from '../../reading-back/raw-objects.ts';
import { readPdf } from '../../reading-back/read-pdf.ts';
import { printed } from '../../samples/printed.ts';
import { expectSameBytes } from '../../samples/same-bytes.ts';
import { unmarkedPainting } from '../sheet-checks.ts';
import { demoTemplates } from './support/demo-templates.ts';
import { type RecordedSheet, recordSheet, type WordsBox } from './support/sheet-recorder.ts';

const MARGIN_MM = 6;
const LEAST_PT = 8;

const meet = (a: WordsBox, b: WordsBox): boolean =>
  a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom;

function overlaps({ words }: RecordedSheet): string[] {
  return words.flatMap((a, index) =>
    words.slice(index + 1).flatMap((b) => (meet(a, b) ? [`'${a.text}' on '${b.text}'`] : [])),
  );
}

/** Words that a line to cut, a guide or a joint runs through; maps draw thinner or undashed lines. */
function struckThrough({ words, strokes }: RecordedSheet): string[] {
  const lines = strokes.filter(({ paint }) => paint.lineWidthPt === 0.75 || paint.dashMm !== undefined);
  const points = lines.flatMap((line) => line.points);
  return words.flatMap((box) => {
    const hit = points.some(({ x, y }) => x > box.left && x < box.right && y > box.top && y < box.bottom);
    return hit ? [`a line runs through '${box.text}'`] : [];
  });
}

describe('sheets of patterns', async () => {
  const { cases, content, fonts } = await demoTemplates();

  describe.each(cases)('$name', ({ print, layout, view, wordPages }) => {
    const sheets = print.pages.map((page) => recordSheet(page, fonts.metrics));
    const patterns = sheets.slice(wordPages);

    it('keeps everything 6 mm and more from the edges', () => {
      for (const [index, sheet] of sheets.entries()) {
        const { widthMm = 0, heightMm = 0 } = print.pages[index] ?? {};
        const corners = [
          ...sheet.words.flatMap(({ left, right, top, bottom }) => [
            { x: left, y: top },
            { x: right, y: bottom },
          ]),
          ...sheet.strokes.flatMap(({ points }) => points),
        ];
        expect(Math.min(...corners.map(({ x }) => x))).toBeGreaterThanOrEqual(MARGIN_MM);
        expect(Math.min(...corners.map(({ y }) => y))).toBeGreaterThanOrEqual(MARGIN_MM);
        expect(Math.max(...corners.map(({ x }) => x))).toBeLessThanOrEqual(widthMm - MARGIN_MM);
        expect(Math.max(...corners.map(({ y }) => y))).toBeLessThanOrEqual(heightMm - MARGIN_MM);
      }
    });

    it('sets words in 8 pt or more, none on others, none on lines', () => {
      for (const sheet of sheets) expect(overlaps(sheet)).toEqual([]);
      for (const sheet of patterns) expect(struckThrough(sheet)).toEqual([]);
      for (const { sizePt, text } of sheets.flatMap(({ words }) => words))
        expect(sizePt, text).toBeGreaterThanOrEqual(LEAST_PT);
    });

    it('fills nothing on the patterns, and draws in one ink', () => {
      const paints = patterns.flatMap(({ strokes }) => strokes.map(({ paint }) => paint));
      expect(paints.filter(({ fill }) => fill !== undefined)).toEqual([]);
      expect(new Set(paints.map(({ stroke }) => stroke)).size).toBeLessThanOrEqual(1);
      for (const { lineWidthPt } of paints) expect([0.25, 0.5, 0.75]).toContain(lineWidthPt);
    });

    it('says on every sheet which it is, how to print, and that it is not food safe', () => {
      for (const [index, { words }] of sheets.entries()) {
        const said = words.map(({ text }) => text.trim()).join(' ');
        expect(said).toContain(`Sheet ${index + 1} of ${sheets.length}`);
        expect(said).toContain('Print at 100 %, no scaling');
        expect(said).toContain('not itself food safe');
        expect(said).toContain(view.tinName);
      }
    });

    it('names each part and each of its joints on both sides, and draws the map with all its parts', () => {
      for (const [index, { items }] of layout.sheets.entries()) {
        const said = (patterns[index]?.words ?? []).map(({ text }) => text);
        for (const { item } of items) {
          const { laid, part } = item;
          if (part.name === '') continue;
          for (const joint of part.joints) expect(said).toContain(joint.name);
          for (const { name } of laid.parts) expect(said).toContain(name);
        }
      }
    });

    it('names every guide somewhere, and the centre of every base and board', () => {
      const said = patterns.flatMap(({ words }) => words.map(({ text }) => text));
      for (const { guides, centreText } of view.pieces) {
        for (const { text } of guides) expect(said).toContain(text);
        if (centreText !== null) expect(said).toContain(centreText);
      }
    });

    it('gives every part an alternative text, and every group a bookmark', () => {
      const parts = layout.sheets.flatMap(({ items }) => items);
      expect(patterns.flatMap(({ alts }) => alts)).toHaveLength(parts.length);
      const groups = new Set(view.pieces.map(({ group }) => group));
      expect(patterns.flatMap(({ bookmarks }) => bookmarks)).toHaveLength(groups.size);
    });

    it('marks all content, and gives the same bytes twice', () => {
      const bytes = printed(print, fonts);
      expect(pageContents(rawObjects(bytes)).flatMap(unmarkedPainting)).toEqual([]);
      expectSameBytes(printed(print, fonts), bytes);
    });
  });

  it('keeps long names of tin and kitchen apart in the head, shortened where they must be', () => {
    const { kitchen } = content;
    const long =
      'The Very Long Name Of A Tin Or A Kitchen That Somebody Once Wrote Down In Full And Never Shortened';
    const [tin] = kitchen.tins;
    if (tin === undefined) throw new Error('no tins');
    const view = liningTemplateView(
      { ...tin, name: long },
      { ...content, kitchen: { ...kitchen, name: long } },
    );
    const print = liningTemplatePrint(view, content.houseStyle, fonts.metrics, 'A4', 'en-GB');
    for (const page of print.pages) expect(overlaps(recordSheet(page, fonts.metrics))).toEqual([]);
  });

  it('reads back with title, language and one heading', async () => {
    const wanted = cases.find(({ name }) => name === 'round-12 on A4');
    if (wanted === undefined) throw new Error('no 12 in round');
    const pdf = await readPdf(printed(wanted.print, fonts));
    expect(pdf.title).toBe('Lining templates: Twelve-inch round – sizes in words on sheet 1');
    expect(pdf.lang).toBe('en-GB');
    expect(pdf.outline).toHaveLength(1);
    expect(pdf.outline[0]?.items.map(({ title }) => title)).toEqual([
      'Lining papers',
      'Levelling strip',
      'Cake board',
    ]);
    expect(JSON.stringify(pdf.pages[0]?.tree).match(/"H1"/g)).toHaveLength(1);
    expect(JSON.stringify(pdf.pages.at(-1)?.tree)).toContain('"Figure"');
  });
});
