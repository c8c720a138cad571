import { describe, expect, it } from 'vitest';
import { downloadsView } from '../../src/views/downloads.ts';
import { downloadWordsFor } from '../../src/wording/downloads/index.ts';

const built = (path: string) => ({ path, byteCount: 1_500_000 });

describe('the booklet among the downloads', () => {
  const names = ['to-read-a5', 'to-fold-a4', 'to-read-half-letter', 'to-fold-letter'];
  const files = ['print/booklet/', 'print/in-slate/booklet/'].flatMap((folder) =>
    names.map((name) => built(`${folder}${name}.pdf`)),
  );
  const { groups } = downloadsView([], files, downloadWordsFor('en-GB'));

  it('is a group of its own for each style, to read and to fold', () => {
    expect(groups.map(({ title }) => title)).toEqual(['Booklet', 'Booklet, in the style ‘slate’']);
    for (const { entries, about } of groups) {
      expect(entries.map(({ title }) => title)).toEqual(['To print, fold and staple', 'To read']);
      expect(about).toContain('turned on the short edge');
    }
  });

  it('says which paper each file is for', () => {
    const texts = groups[0]?.entries.map(({ files: links }) => links.map(({ text }) => text));
    expect(texts).toEqual([
      ['PDF, A4', 'PDF, US Letter'],
      ['PDF, A5', 'PDF, half US Letter'],
    ]);
  });
});
