import { spawnSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { cpSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { ask, start } from '../commands/support/command-line.ts';
import { contentsOf, fill, newFolder } from '../commands/support/folders.ts';
import { builtContents } from './support/built-contents.ts';
import { demoOutput } from './support/demo-output.ts';

interface ReportText {
  dated: string;
  made: string[];
  files: { path: string; bytes: number; sha256: string }[];
  warnings: unknown[];
  milliseconds: Record<string, number>;
}

const report = (output: string): ReportText =>
  JSON.parse(readFileSync(join(output, 'report.json'), 'utf8')) as ReportText;

function built(output: string, env: Record<string, string> = {}, more: string[] = []): string {
  const answer = start(['build', '--output', output, ...more], env);
  expect(answer).toMatchObject({ code: 0, stderr: '' });
  expect(answer.stdout).toMatch(/^Built .* in \d+\.\d s\. /);
  return output;
}

/**
 * What is built more than once: every kind of output is made in a small kitchen too. The long run builds the demo
 * over and over, and lets Eleventy alone make it as well.
 */
const KITCHEN = process.env.TINWRIGHT_LONG === undefined ? 'test/kitchens/good/minimal' : 'content';

/** The kitchen built once, in this very process, for every test that looks at such a build. */
let plain = '';
afterAll(() => rmSync(plain, { recursive: true, force: true }));

async function plainBuild(): Promise<string> {
  if (plain !== '') return plain;
  plain = mkdtempSync(join(tmpdir(), 'tinwright-test-'));
  const answer = await ask('build', '--content', KITCHEN, '--output', plain, '--no-cache');
  expect(answer).toMatchObject({ code: 0, stderr: '' });
  return plain;
}

const differing = (one: Record<string, string>, other: Record<string, string>): string[] =>
  [...new Set([...Object.keys(one), ...Object.keys(other)])].filter((path) => one[path] !== other[path]);

describe('a kitchen, built', () => {
  it('by Eleventy alone, in another place and zone of time, gives the same site, prints and data in it, also without any beside it', async () => {
    const whole = process.env.TINWRIGHT_LONG === undefined ? await plainBuild() : demoOutput();
    const folder = newFolder();
    const [content, output] = [join(folder, 'elsewhere'), join(folder, 'site')];
    cpSync(KITCHEN, content, { recursive: true });
    const eleventy = ['node_modules/@11ty/eleventy/cmd.cjs', `--output=${output}`, '--quiet'];
    const { status, stderr } = spawnSync(process.execPath, eleventy, {
      encoding: 'utf8',
      env: { ...process.env, TINWRIGHT_CONTENT: content, TZ: 'Pacific/Auckland' },
    });
    expect([status, stderr]).toEqual([0, '']);
    expect(differing(contentsOf(output), contentsOf(join(whole, 'site')))).toEqual([]);
  });

  it('with SOURCE_DATE_EPOCH carries that date, and gives the same bytes elsewhere, in another zone of time, and in a process that built before', async () => {
    const epoch = '1700000000';
    const elsewhere = join(newFolder(), 'elsewhere');
    cpSync(KITCHEN, elsewhere, { recursive: true });
    const output = built(newFolder(), { SOURCE_DATE_EPOCH: epoch, TZ: 'Pacific/Auckland' }, [
      '--content',
      elsewhere,
      '--no-cache',
    ]);
    expect(report(output).dated).toBe('2023-11-14');
    const files = builtContents(output);
    for (const [path, text] of Object.entries(files)) {
      if (path.endsWith('.pdf')) expect(text, path).toMatch(/D:20231114/);
      if (/^data\/tin-charts\/.*\.json$/.test(path)) expect(text, path).toContain('"edition": "2023-11-14"');
    }
    const before = await plainBuild();
    const again = newFolder();
    process.env.SOURCE_DATE_EPOCH = epoch;
    try {
      const args = ['--content', KITCHEN, '--no-cache', '--output', again];
      expect(await ask('build', ...args)).toMatchObject({ code: 0, stderr: '' });
    } finally {
      delete process.env.SOURCE_DATE_EPOCH;
    }
    expect(differing(builtContents(again), files)).toEqual([]);
    expect(Object.keys(files)).toEqual(Object.keys(builtContents(before)));
    console.log(`${Object.keys(files).length} files the same`);
    // The long run builds the demo three times here.
  }, 900_000);

  it('reports every file with its true size and SHA-256, and times nowhere else', () => {
    const output = demoOutput();
    const { files, milliseconds, made, warnings } = report(output);
    const contents = contentsOf(output);
    const others = ['README.md', 'report.json'];
    expect([...files.map(({ path }) => path)].sort()).toEqual(
      Object.keys(contents)
        .filter((path) => !others.includes(path))
        .sort(),
    );
    for (const { path, bytes, sha256 } of files) {
      const found = Buffer.from(contents[path] ?? '', 'latin1');
      expect([bytes, sha256], path).toEqual([found.length, createHash('sha256').update(found).digest('hex')]);
    }
    expect(made).toEqual(['site', 'print', 'data']);
    expect(Array.isArray(warnings)).toBe(true);
    expect(Object.keys(milliseconds)).toEqual(
      expect.arrayContaining(['read', 'compute', 'data', 'print', 'site', 'all']),
    );
    expect(contents['README.md']).toBe(readFileSync('output/README.md', 'latin1'));
  });
});

describe('--only', () => {
  it('makes the part that was asked for, carries the others over byte for byte, and reports both', () => {
    const output = join(newFolder(), 'output');
    const others = { 'site/index.html': 'old', 'print/a.pdf': 'old', 'mine.txt': 'mine' };
    fill(output, { ...others, 'data/old.csv': 'old', 'report.json': '{}' });
    built(output, {}, ['--only', 'data', '--content', 'test/kitchens/good/minimal']);
    const after = contentsOf(output);
    expect(after).toMatchObject(others);
    expect(after['data/old.csv']).toBeUndefined();
    expect(Object.keys(after).filter((path) => path.startsWith('data/tin-charts/')).length).toBeGreaterThan(
      0,
    );
    const { files, made } = report(output);
    expect(made).toEqual(['data']);
    expect(files.map(({ path }) => path)).toEqual(expect.arrayContaining(['site/index.html', 'print/a.pdf']));
  });
});

describe('--quiet', () => {
  it('says nothing', () => {
    const output = newFolder();
    const answer = start([
      'build',
      '--quiet',
      '--only',
      'data',
      '--content',
      'test/kitchens/good/minimal',
      '--output',
      output,
    ]);
    expect(answer).toEqual({ code: 0, stdout: '', stderr: '' });
  });
});
