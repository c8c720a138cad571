import { beforeAll, describe, expect, it } from 'vitest';
import type { LoadedFonts } from '../../src/pdf/fonts.ts';
import { renderPdf } from '../../src/pdf/render-pdf.ts';
import type { Surface } from '../../src/prints/sheet/surface.ts';
import { objectsLike, rawObjects } from '../reading-back/raw-objects.ts';
import { readPdf } from '../reading-back/read-pdf.ts';
import { nodesWithin, spokenText, tableRows } from '../reading-back/structure.ts';
import { sampleFonts } from '../samples/fonts.ts';
import { printed, sampleInfo, smallPrint, words } from '../samples/printed.ts';
import { expectSameBytes } from '../samples/same-bytes.ts';

let fonts: LoadedFonts;
beforeAll(() => {
  fonts = sampleFonts();
});

const says =
  (...texts: string[]) =>
  (surface: Surface) =>
    texts.forEach((text, index) => {
      surface.within('P', {}, () => surface.text(words(text, 10, 20 + 8 * index)));
    });

describe('the document', () => {
  it('names itself, its language and PDF/UA-1', async () => {
    const bytes = printed(smallPrint(says('Batter')), fonts);
    const pdf = await readPdf(bytes);
    expect(new TextDecoder('latin1').decode(bytes.subarray(0, 8))).toBe('%PDF-1.7');
    expect(pdf.title).toBe('Flour & <water> – “café”');
    expect(pdf.lang).toBe('en-GB');
    expect(pdf.displayTitle).toBe(true);
    expect(pdf.markInfo?.Marked).toBe(true);
    expect(pdf.xmp).toContain('<pdfuaid:part>1</pdfuaid:part>');
    expect(pdf.xmp).toContain('Flour &amp; &lt;water&gt;');
  });

  it('is the same bytes whatever else was drawn before with the same fonts', () => {
    const print = smallPrint(says('Two eggs fill 3⁄16', 'fine finish'));
    const first = printed(print, fonts);
    printed(smallPrint(says('no\u00a0break, 165\u00a0g; Ω and µ')), fonts);
    expectSameBytes(printed(print, fonts), first);
    expectSameBytes(printed(print, sampleFonts()), first);
  });

  it('takes its date from what is given', () => {
    const bytes = printed(smallPrint(says('Batter')), fonts);
    expect(new TextDecoder('latin1').decode(bytes)).toContain('(D:20261101000000Z)');
  });

  it('puts text where it was asked for, to a hundredth of a millimetre', async () => {
    const [page] = (await readPdf(printed(smallPrint(says('Here')), fonts))).pages;
    expect(page?.widthMm).toBeCloseTo(100, 2);
    expect(page?.heightMm).toBeCloseTo(80, 2);
    expect(page?.texts[0]?.xMm).toBeCloseTo(10, 2);
    expect(page?.texts[0]?.yMm).toBeCloseTo(20, 2);
    expect(page?.texts[0]?.widthMm).toBeCloseTo(fonts.metrics.widthMm('Here', 'text', 10), 2);
  });
});

describe('text', () => {
  it('reads back as written: accents, fractions, ligatures and signs', async () => {
    const lines = ['Glacé crème brûlée', '2¾ in × 3⁄16', 'difficult fig waffle', '−5 °C ≈ ⅔ “so”'];
    const [page] = (await readPdf(printed(smallPrint(says(...lines)), fonts))).pages;
    expect(page?.texts.map(({ text }) => text)).toEqual(lines);
  });

  it('embeds each font it uses, with a Unicode map and without a partial CIDSet', () => {
    const objects = rawObjects(printed(smallPrint(says('crème')), fonts));
    const type0 = objectsLike(objects, /\/Subtype \/Type0/);
    expect(type0).toHaveLength(1);
    expect(type0[0]?.head).toMatch(/\/ToUnicode \d+ 0 R/);
    expect(objectsLike(objects, /\/FontFile[23] \d+ 0 R/)).toHaveLength(1);
    expect(objectsLike(objects, /\/CIDSet/)).toHaveLength(0);
  });

  it('reports a sign that the font lacks instead of drawing a box', () => {
    const pdf = renderPdf(smallPrint(says('蛋糕 cake', '蛋 again')), fonts, sampleInfo);
    expect(pdf.ok).toBe(false);
    const problems = pdf.ok ? [] : pdf.problems;
    expect(problems.map(({ code }) => code)).toEqual(['missing-glyph', 'missing-glyph']);
    expect(problems[0]?.message).toContain("no sign '蛋' (U+86CB)");
  });
});

describe('structure', () => {
  it('continues an element by its key on the next page', async () => {
    const row = (text: string) => (surface: Surface) =>
      surface.within('Table', { key: 't' }, () =>
        surface.within('TR', {}, () => {
          surface.within('TH', { scope: 'Row' }, () => surface.text(words(text)));
          surface.within('TD', { colSpan: 2 }, () => surface.text(words('5', 60)));
        }),
      );
    const bytes = printed(smallPrint(row('Butter'), row('Sugar')), fonts);
    const objects = rawObjects(bytes);
    expect(objectsLike(objects, /\/S \/Table\n/)).toHaveLength(1);
    expect(objectsLike(objects, /\/S \/TH\n[\s\S]*\/Scope \/Row/)).toHaveLength(2);
    expect(objectsLike(objects, /\/S \/TD\n[\s\S]*\/ColSpan 2/)).toHaveLength(2);
    expect(tableRows(await readPdf(bytes)).map((cells) => cells.map(({ text }) => text))).toEqual([
      ['Butter', '5'],
      ['Sugar', '5'],
    ]);
  });

  it('refuses content that belongs to no paragraph', () => {
    const stray = smallPrint((surface) => surface.text(words('stray')));
    expect(() => printed(stray, fonts)).toThrow('content drawn straight into Document');
  });

  it('keeps artifacts out of the tree', async () => {
    const bytes = printed(
      smallPrint((surface) => {
        surface.artifact(() => surface.text(words('Page 1 of 1', 10, 70)));
        says('Read me')(surface);
      }),
      fonts,
    );
    const [page] = (await readPdf(bytes)).pages;
    expect(page?.texts.find(({ text }) => text === 'Page 1 of 1')?.contentId ?? null).toBeNull();
    expect(page?.tree && spokenText(page.tree, page)).toBe('Read me');
  });

  it('ties a link to its element and says where it leads', async () => {
    const box = { xMm: 10, yMm: 16, widthMm: 30, heightMm: 5 };
    const linking = (surface: Surface) =>
      surface.within('P', {}, () =>
        surface.link(box, { url: 'https://cakes.example.org/' }, 'How it was worked out', () =>
          surface.text(words('working')),
        ),
      );
    const bytes = printed(smallPrint(says('first page'), linking), fonts);
    const pdf = await readPdf(bytes);
    expect(pdf.pages[1]?.links).toEqual([
      { url: 'https://cakes.example.org/', description: 'How it was worked out' },
    ]);
    const objects = rawObjects(bytes);
    const page2 = objectsLike(objects, /\/Type \/Page\n/)[1]?.id;
    const link = objectsLike(objects, /\/S \/Link\n/)[0]?.head;
    expect(link).toMatch(new RegExp(`/Type /OBJR\\n/Pg ${page2} 0 R`));
    expect(objectsLike(objects, /\/Subtype \/Link/)[0]?.head).toMatch(/\/StructParent \d+/);
  });

  it('gives a figure its words and its box', async () => {
    const box = { xMm: 10, yMm: 10, widthMm: 20, heightMm: 10 };
    const bytes = printed(
      smallPrint((surface) =>
        surface.within('Figure', { alt: 'A round tin', box }, () =>
          surface.path(
            [
              { op: 'move', x: 10, y: 10 },
              { op: 'line', x: 30, y: 20 },
            ],
            { stroke: '#102030' },
          ),
        ),
      ),
      fonts,
    );
    const [page] = (await readPdf(bytes)).pages;
    expect(page?.tree && nodesWithin(page.tree, 'Figure')[0]?.alt).toBe('A round tin');
    expect(objectsLike(rawObjects(bytes), /\/S \/Figure\n/)[0]?.head).toMatch(
      /\/BBox \[28\.346\d* 170\.078\d* 85\.03\d* 198\.425\d*\]/,
    );
  });
});

describe('what is written without the library', () => {
  it('says a figure’s words whatever signs they have', async () => {
    for (const alt of ['Ø 15 cm (6 in) \\ round', 'crème: 2½ × “¾” ≈ 蛋', 'two\nlines']) {
      const figure = smallPrint((surface) =>
        surface.within('Figure', { alt }, () => surface.text(words('tin'))),
      );
      const [page] = (await readPdf(printed(figure, fonts))).pages;
      expect(page?.tree && nodesWithin(page.tree, 'Figure')[0]?.alt).toBe(alt);
    }
  });

  it('counts every object where it stands', () => {
    const bytes = printed(smallPrint(says('first page'), says('second', 'and more')), fonts);
    const text = new TextDecoder('latin1').decode(bytes);
    const begins = Number(/startxref\n(\d+)\n%%EOF\n$/.exec(text)?.[1]);
    const [, size = '', table = ''] =
      /^xref\n0 (\d+)\n((?:\d{10} \d{5} [nf] \n)+)trailer\n/.exec(text.slice(begins)) ?? [];
    const entries = table.trimEnd().split('\n');
    expect(entries).toHaveLength(Number(size));
    for (const [id, entry] of entries.entries())
      if (id > 0)
        expect(text.slice(Number(entry.slice(0, 10))).startsWith(`${id} 0 obj\n`), entry).toBe(true);
    expect(text).toMatch(
      new RegExp(`trailer\\n<<\\n/Size ${size}\\n/Root \\d+ 0 R\\n/Info \\d+ 0 R\\n/ID \\[`),
    );
  });

  it('knows the owner of each piece of a page by its number', () => {
    const objects = rawObjects(printed(smallPrint(says('one', 'two')), fonts));
    const paragraphs = objectsLike(objects, /\/S \/P\n/);
    expect(paragraphs.map(({ head }) => /\/K \[(\d+)\]/.exec(head)?.[1])).toEqual(['0', '1']);
    const owners = paragraphs.map(({ id }) => `${id} 0 R`).join(' ');
    expect(objectsLike(objects, /\/Type \/StructTreeRoot/)[0]?.head).toContain(`0 [${owners}]`);
  });
});

describe('finding one’s way', () => {
  it('nests bookmarks and counts them as the standard asks', async () => {
    const bytes = printed(
      smallPrint((surface) => {
        says('x')(surface);
        surface.bookmark('Chart', 1, { xMm: 0, yMm: 10 });
        surface.bookmark('Round', 2, { xMm: 0, yMm: 20 });
        surface.bookmark('Square', 2, { xMm: 0, yMm: 30 });
        surface.bookmark('Ladder', 1, { xMm: 0, yMm: 40 });
      }),
      fonts,
    );
    const { outline } = await readPdf(bytes);
    expect(outline.map(({ title, items }) => [title, items.map((item) => item.title)])).toEqual([
      ['Chart', ['Round', 'Square']],
      ['Ladder', []],
    ]);
    const objects = rawObjects(bytes);
    expect(objectsLike(objects, /\/Title \(Chart\)/)[0]?.head).toContain('/Count -2');
    expect(objectsLike(objects, /^<<\n\/Count 2\n/)).toHaveLength(1);
  });

  it('sorts the names of places by code unit, so that readers find them', async () => {
    const names = ['round-10', 'Zebra', 'apple', 'round-6', 'round_6'];
    const bytes = printed(
      smallPrint((surface) => {
        says('x')(surface);
        for (const name of names) surface.anchor(name, { xMm: 10, yMm: 10 });
      }),
      fonts,
    );
    const written = objectsLike(rawObjects(bytes), /\/Names \[/)[0]?.head ?? '';
    const order = [...written.matchAll(/\(([^)]+)\) \[/g)].map(([, name]) => name);
    expect(order).toEqual(['Zebra', 'apple', 'round-10', 'round-6', 'round_6']);
    expect((await readPdf(bytes)).destinations.toSorted()).toEqual([...names].sort());
  });
});
