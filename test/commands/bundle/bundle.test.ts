import { createHash } from 'node:crypto';
import { cpSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { unzipSync } from 'fflate';
import { describe, expect, it } from 'vitest';
import { soldPath, soldPrints } from '../../../src/commands/bundle/sold-prints.ts';
import { zipOf } from '../../../src/commands/bundle/zip-file.ts';
import type { Report } from '../../../src/commands/output/report.ts';
import { demoOutput } from '../../build/support/demo-output.ts';
import { ask, start } from '../support/command-line.ts';
import { contentsOf, fill, newFolder } from '../support/folders.ts';

/** The smallest kitchen with a second style, one chart a paper, and words for the imprint. */
function kitchen(more = ''): string {
  const folder = join(newFolder(), 'content');
  cpSync('test/kitchens/good/high', folder, { recursive: true });
  const file = join(folder, 'kitchen.yaml');
  const plain = readFileSync(file, 'utf8')
    .replace(/^printables:\n( {2}- .*\n)+/m, '')
    .replace(/^booklet: .*\n/m, '');
  writeFileSync(file, plain + more);
  return folder;
}

const PRINTS = 'printables: [{ print: tin-chart, recipes: [vanilla], flavours: [] }]\n';
const BOOKLET =
  'booklet: { edition_note: Second edition, licence: For your own kitchen only., prepared_for: R-7 }\n';

function unpacked(file: string): Map<string, Uint8Array> {
  return new Map(Object.entries(unzipSync(readFileSync(file))));
}

describe('a bundle', () => {
  it('holds the prints just as built, an imprint with the edition, and checksums that agree; twice the same bytes', async () => {
    const content = kitchen(PRINTS + BOOKLET);
    const folder = newFolder();
    const output = join(folder, 'output');
    const args = ['bundle', '--content', content, '--output', output, '--number', '2'];
    const answer = await ask(...args, '--to', join(folder, 'a.zip'));
    expect(answer).toMatchObject({ code: 0, stderr: '' });
    expect(answer.stdout).toBe(`Wrote ${join(folder, 'a.zip')}: 1 print, imprint.txt, checksums.txt.`);
    const files = unpacked(join(folder, 'a.zip'));
    const [root] = [...files.keys()][0]?.split('/') ?? [''];
    expect(root).toMatch(/^[a-z0-9-]+-edition-2$/);
    const text = (name: string) => new TextDecoder().decode(files.get(`${root}/${name}`));

    const listed = text('checksums.txt').trimEnd().split('\n');
    expect(listed).toHaveLength(files.size - 1);
    for (const line of listed) {
      const [sum, name = ''] = line.split('  ');
      const bytes = files.get(`${root}/${name}`) ?? new Uint8Array();
      expect([name, createHash('sha256').update(bytes).digest('hex')]).toEqual([name, sum]);
      if (name.endsWith('.pdf'))
        expect(Buffer.from(bytes).equals(readFileSync(join(output, 'print', name)))).toBe(true);
    }
    const imprint = text('imprint.txt');
    for (const part of [
      /Edition 2, \d+ \w+ \d{4}\. Second edition\./,
      /For your own kitchen only\./,
      /Prepared for R-7\./,
    ])
      expect(imprint).toMatch(part);
    expect(imprint.match(/Caution:/g)).toHaveLength(3);
    expect(imprint).toMatch(/\n1 file:\n\n {4}tin-charts\/\S+\.pdf\n$/);

    const again = start([...args, '--to', join(folder, 'b.zip')], { TZ: 'Pacific/Auckland' });
    expect(again.code).toBe(0);
    expect(readFileSync(join(folder, 'b.zip')).equals(readFileSync(join(folder, 'a.zip')))).toBe(true);
    expect(Object.keys(contentsOf(folder)).filter((path) => path.endsWith('.part'))).toEqual([]);
  });

  it('can be in another house style, and says when nobody has said who may copy it', async () => {
    const content = kitchen(PRINTS);
    const folder = newFolder();
    const to = join(folder, 'x.zip');
    const output = join(folder, 'output');
    const { code, stderr } = await ask(
      'bundle',
      '--content',
      content,
      '--output',
      output,
      '--to',
      to,
      '--style',
      'slate',
    );
    expect([code, stderr]).toEqual([
      0,
      'Its imprint does not say who may copy it: add booklet: { licence: … } to kitchen.yaml.',
    ]);
    const pdf = [...unpacked(to)].find(([path]) => path.endsWith('.pdf'));
    const chart = pdf?.[0].split('/').slice(1).join('/') ?? '';
    expect(Buffer.from(pdf?.[1] ?? []).equals(readFileSync(join(output, 'print/in-slate', chart)))).toBe(
      true,
    );
  });

  it('never holds orders or labels', () => {
    const kept = [
      'print/tin-charts/a.pdf',
      'print/orders/r.pdf',
      'print/labels/a.pdf',
      'print/in-slate/tin-charts/a.pdf',
    ];
    const styled = [
      'print/in-slate/orders/r.pdf',
      'print/in-slate/labels/a.pdf',
      'data/a.csv',
      'site/index.html',
    ];
    const sold = (style: string | null) =>
      [...kept, ...styled].flatMap((path) => soldPath(path, style) ?? []);
    expect(sold(null)).toEqual(['tin-charts/a.pdf']);
    expect(sold('slate')).toEqual(['tin-charts/a.pdf']);
  });

  it('holds every kind of print of the demo but orders and labels, and nothing of a kind that nobody has named', () => {
    const { files } = JSON.parse(readFileSync(join(demoOutput(), 'report.json'), 'utf8')) as Report;
    const prints = files.map(({ path }) => path).filter((path) => /^print\/(?!in-)/.test(path));
    const folders = (paths: readonly string[]) =>
      [...new Set(paths.map((path) => path.split('/')[1]))].sort();
    const kept = prints.filter((path) => soldPath(path, null) === null);
    expect(folders(kept)).toEqual(['labels', 'orders']);
    expect(folders(prints.filter((path) => !kept.includes(path))).length).toBeGreaterThanOrEqual(8);
    expect(soldPath('print/invoices/a.pdf', null)).toBeNull();
  });

  it('refuses a print that somebody changed after the build', () => {
    const folder = newFolder();
    fill(folder, { 'print/tin-charts/a.pdf': 'changed' });
    const sha256 = createHash('sha256').update('made').digest('hex');
    const report = { files: [{ path: 'print/tin-charts/a.pdf', bytes: 4, sha256 }] } as unknown as Report;
    expect(() => soldPrints(folder, report, null)).toThrow(/was changed while it was being packed/);
  });

  it('dates its files by the edition, also one that a zip cannot hold', () => {
    const files = [{ path: 'a.txt', bytes: 'a' }];
    const dosDate = (bytes: Uint8Array) => new DataView(bytes.buffer).getUint16(12, true);
    expect(dosDate(zipOf(files, '2026-11-25'))).toBe(((2026 - 1980) << 9) | (11 << 5) | 25);
    expect(dosDate(zipOf(files, '1970-01-01'))).toBe((1 << 5) | 1);
  });
});

describe('what bundle refuses', () => {
  it.each([
    [
      ['--number', 'two'],
      "error [edition-number] --number is 'two', expected a whole number from 1 to 999999\n    Write it like '--number 2' for the second edition.",
    ],
    [
      ['--style', 'slat'],
      "error [style-unknown] --style is 'slat', expected 'slate'\n    List further styles in kitchen.yaml as house_styles: [ID]; leave --style out for house-style.yaml.",
    ],
  ])('%j, with exit 2 and nothing written', async (args, text) => {
    const folder = newFolder();
    const answer = await ask(
      'bundle',
      '--content',
      'test/kitchens/good/high',
      '--output',
      join(folder, 'o'),
      ...args,
    );
    expect(answer).toEqual({ code: 2, stdout: '', stderr: text });
    expect(contentsOf(folder)).toEqual({});
  });

  it('a kitchen without anything to hand on, with exit 1', async () => {
    const folder = newFolder();
    const content = kitchen('printables: [{ print: label, recipes: [vanilla] }]\n');
    const answer = await ask(
      'bundle',
      '--content',
      content,
      '--output',
      join(folder, 'o'),
      '--to',
      join(folder, 'x.zip'),
    );
    expect([answer.code, answer.stdout]).toEqual([1, '']);
    expect(answer.stderr).toContain('error [bundle-empty] There is nothing to hand on');
  });
});
