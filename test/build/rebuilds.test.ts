/**
 * What serve rebuilds after any edits is what a fresh build gives, byte for byte. The fresh builds are processes of
 * their own, which remember nothing. TINWRIGHT_LONG=1 edits the demo too, many times over.
 */
import { appendFileSync, cpSync, statSync, unlinkSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, it, onTestFinished } from 'vitest';
import type { BuildRequest } from '../../src/build.ts';
import { type Builder, openBuilder } from '../../src/commands/serve/builder.ts';
import { start } from '../commands/support/command-line.ts';
import { contentsOf, newFolder } from '../commands/support/folders.ts';
import { builtContents } from './support/built-contents.ts';
import { EDITS, type Edit } from './support/edits.ts';

const isLong = process.env.TINWRIGHT_LONG !== undefined;
const ALL = ['site', 'print', 'data'] as const;

interface Bench {
  content: string;
  output: string;
  rebuild(parts: BuildRequest['parts']): Promise<void>;
  /** What a fresh build of the content gives now. */
  fresh(): Record<string, string>;
}

function benchFor(kitchen: string, printables: string): Bench {
  const folder = newFolder();
  const [content, output] = [join(folder, 'content'), join(folder, 'output')];
  cpSync(kitchen, content, { recursive: true });
  appendFileSync(join(content, 'kitchen.yaml'), printables);
  const builder: Builder = openBuilder(false, { say() {}, tell() {}, watched: false });
  onTestFinished(() => builder.close());
  return {
    content,
    output,
    async rebuild(parts) {
      const result = await builder.build({ contentDir: content, outputDir: output, parts });
      expect(result.outcome === 'built' ? [] : result.problems).toEqual([]);
    },
    fresh() {
      const other = join(newFolder(), 'output');
      const answer = start(['build', '--no-cache', '--content', content, '--output', other]);
      expect(answer).toMatchObject({ code: 0, stderr: '' });
      return builtContents(other);
    },
  };
}

function expectSame(found: Record<string, string>, fresh: Record<string, string>): void {
  expect(Object.keys(found)).toEqual(Object.keys(fresh));
  expect(Object.keys(fresh).filter((path) => found[path] !== fresh[path])).toEqual([]);
}

/** Any order, never the same edit twice on end; the seed is told when a run fails. */
function anyEdits(count: number, seed: number): Edit[] {
  let state = seed;
  return Array.from({ length: count }, () => {
    state = (state * 1_103_515_245 + 12_345) % 2 ** 31;
    return EDITS[Math.floor((state / 2 ** 31) * EDITS.length)];
  }).flatMap((edit) => edit ?? []);
}

const FEW = 'printables:\n  - { print: tin-chart }\n  - { print: recipe-card }\n';

it('after every kind of edit, pages first and then the prints, gives what a fresh build gives', async () => {
  const bench = benchFor('test/kitchens/good/minimal', FEW);
  await bench.rebuild(ALL);
  for (let step = 0; step < EDITS.length; step += 2) {
    for (const edit of EDITS.slice(step, step + 2)) edit.make(bench.content, step);
    if (step % 4 === 0) await bench.rebuild(['site', 'data']);
    await bench.rebuild(ALL);
  }
  expectSame(builtContents(bench.output), bench.fresh());
});

it('writes nothing again that is the same, and trusts nothing that somebody changed', async () => {
  const bench = benchFor('test/kitchens/good/minimal', FEW);
  await bench.rebuild(ALL);
  const before = contentsOf(bench.output);
  const inode = (path: string): number => statSync(join(bench.output, path)).ino;
  const paths = Object.keys(before).filter((path) => /^(site|print|data)\//.test(path));
  const inodes = new Map(paths.map((path) => [path, inode(path)]));
  await bench.rebuild(ALL);
  expect(paths.filter((path) => inode(path) !== inodes.get(path))).toEqual([]);

  const [page = '', print = '', data = ''] = ['site/', 'print/', 'data/'].map((part) =>
    paths.find((path) => path.startsWith(part)),
  );
  writeFileSync(join(bench.output, page), 'edited by hand');
  unlinkSync(join(bench.output, print));
  appendFileSync(join(bench.output, data), 'x');
  await bench.rebuild(ALL);
  const after = contentsOf(bench.output);
  expect(paths.filter((path) => after[path] !== before[path])).toEqual([]);
});

if (isLong)
  it('after any edits of the demo gives what fresh builds give, edit after edit', async () => {
    const seed = Date.now() % 2 ** 31;
    console.log(`edits from seed ${seed}`);
    const bench = benchFor('content', '');
    await bench.rebuild(ALL);
    for (const [step, edit] of anyEdits(24, seed).entries()) {
      edit.make(bench.content, step);
      await bench.rebuild(['site', 'data']);
      await bench.rebuild(ALL);
      if (step % 4 === 3) expectSame(builtContents(bench.output), bench.fresh());
    }
  }, 1_800_000);
