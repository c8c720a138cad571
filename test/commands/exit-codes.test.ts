import { cpSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { badKitchens, expectedMessages, layOutBadKitchen } from '../kitchens/bad-kitchen.ts';
import { ask, start } from './support/command-line.ts';
import { contentsOf, fill, newFolder } from './support/folders.ts';

const GOOD = 'test/kitchens/good/minimal';
const { version } = JSON.parse(readFileSync('package.json', 'utf8')) as { version: string };

describe('exit 0', () => {
  it.each([[[]], [['build']], [['check']], [['mix']], [['serve']]])(
    'help and version for %j',
    async (command) => {
      const help = await ask(...command, '--help');
      expect(help).toMatchObject({ code: 0, stderr: '' });
      expect(help.stdout).toContain(`Usage: ${['tinwright', ...command].join(' ')}`);
      expect(await ask(...command, '--version')).toEqual({ code: 0, stdout: version, stderr: '' });
    },
  );

  it('check of a good kitchen, which writes nothing', async () => {
    const folder = newFolder();
    const answer = await ask('check', '--content', GOOD, '--output', join(folder, 'output'));
    expect(answer).toMatchObject({ code: 0 });
    expect(answer.stdout).toMatch(/: \d+ tins?, \d+ recipes?, \d+ ingredients?; 0 errors, 0 warnings$/);
    expect(contentsOf(folder)).toEqual({});
  });

  it('the launcher, as a process of its own, straight from a checkout', () => {
    expect(start(['--version'])).toEqual({ code: 0, stdout: `${version}\n`, stderr: '' });
  });
});

describe('exit 1', () => {
  it('check prints every error of a bad kitchen with its place, and how many', async () => {
    const folder = join(newFolder(), 'kitchen');
    layOutBadKitchen('several-mistakes-at-once', folder);
    const { code, stderr } = await ask('check', '--content', folder, '--output', 'nowhere');
    expect(code).toBe(1);
    expect(stderr).toContain(expectedMessages('several-mistakes-at-once'));
    expect(stderr).toMatch(/\n\d+ errors, \d+ warnings?$/);
  });

  it('check --json prints the same problems as values', async () => {
    const folder = join(newFolder(), 'kitchen');
    layOutBadKitchen('several-mistakes-at-once', folder);
    const { code, stdout } = await ask('check', '--content', folder, '--output', 'nowhere', '--json');
    const { ok, problems } = JSON.parse(stdout) as {
      ok: boolean;
      problems: { code: string; file: string; line: number }[];
    };
    expect([code, ok]).toEqual([1, false]);
    expect(problems.length).toBeGreaterThan(1);
    for (const problem of problems)
      expect(problem).toMatchObject({ code: expect.any(String), severity: expect.any(String) });
  });

  it('mix in a bad kitchen', async () => {
    const folder = join(newFolder(), 'kitchen');
    layOutBadKitchen('key-unknown', folder);
    const answer = await ask(
      'mix',
      '--content',
      folder,
      '--output',
      'nowhere',
      '--recipe',
      'x',
      '--tins',
      '1 x y',
    );
    expect(answer.code).toBe(1);
    expect(answer.stderr).toContain(expectedMessages('key-unknown'));
  });

  it('every bad kitchen leaves the output as it was, byte for byte; one with warnings only is built', async () => {
    const output = newFolder();
    const files = {
      'site/index.html': 'old',
      'print/a.pdf': 'old',
      'data/a.csv': 'old',
      'report.json': '{}',
    };
    fill(output, { ...files, 'mine.txt': 'mine' });
    const before = contentsOf(output);
    let refused = 0;
    for (const name of badKitchens()) {
      const folder = join(newFolder(), 'kitchen');
      layOutBadKitchen(name, folder);
      const isWrong = /\berror \[/.test(expectedMessages(name));
      const target = isWrong ? output : newFolder();
      const { code, stderr } = await ask('build', '--content', folder, '--output', target, '--only', 'data');
      expect([name, code]).toEqual([name, isWrong ? 1 : 0]);
      if (isWrong) expect(stderr).toContain(`Nothing was built; ${output} is as it was.`);
      expect(contentsOf(output)).toEqual(before);
      refused += isWrong ? 1 : 0;
    }
    expect(refused).toBeGreaterThanOrEqual(40);
  });
});

describe('exit 2', () => {
  it.each([
    [[], 'Usage: tinwright'],
    [['bake'], "unknown command 'bake'"],
    [['bild'], 'Did you mean build?'],
    [['build', '--fast'], "unknown option '--fast'"],
    [['build', 'content'], 'too many arguments'],
    [
      ['build', '--only', 'site,labels'],
      "[only-unknown] --only is 'site,labels', expected some of site, print, data",
    ],
    [['build', '--content', GOOD, '--output', GOOD], '[output-is-content]'],
    [['serve', '--port', 'http'], "[port] --port is 'http', expected a whole number from 0 to 65535"],
    [['serve', '--port', '70000'], '[port]'],
  ])('%j', async (args, message) => {
    const { code, stdout, stderr } = await ask(...args);
    expect(stderr).toContain(message);
    expect([code, stdout]).toEqual([2, '']);
  });

  it('a SOURCE_DATE_EPOCH that is no number of seconds', () => {
    const output = newFolder();
    const args = ['build', '--content', GOOD, '--output', output, '--only', 'data'];
    const { code, stderr } = start(args, { SOURCE_DATE_EPOCH: 'yesterday' });
    expect(stderr).toContain(
      "error [source-date-epoch] SOURCE_DATE_EPOCH is 'yesterday', expected a whole number of seconds",
    );
    expect([code, contentsOf(output)]).toEqual([2, {}]);
  });
});

describe('exit 3', () => {
  it('an output that is a file: said in one line, no stack', async () => {
    const path = join(newFolder(), 'output');
    writeFileSync(path, 'mine');
    const { code, stderr } = await ask('build', '--content', GOOD, '--output', path, '--only', 'data');
    expect([code, stderr]).toEqual([3, `error: ${path} is a file, not a folder.`]);
    expect(readFileSync(path, 'utf8')).toBe('mine');
  });

  it('something unforeseen shows its stack only when asked', () => {
    const folder = newFolder();
    cpSync(GOOD, join(folder, 'kitchen'), { recursive: true });
    writeFileSync(join(folder, 'output'), '');
    const args = [
      'build',
      '--content',
      join(folder, 'kitchen'),
      '--output',
      join(folder, 'output', 'below'),
      '--only',
      'data',
    ];
    const plain = start(args);
    expect(plain.code).toBe(3);
    expect(plain.stderr).not.toMatch(/^\s+at /m);
    expect(start(args, { TINWRIGHT_DEBUG: '1' }).stderr).toMatch(/^\s+at /m);
  });
});
