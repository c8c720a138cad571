/**
 * What no kitchen holds and a careless or hostile one may: each fault in a file of every kind, all in one kitchen, so
 * that every reader is asked. Each is refused by a message with its file; nothing crashes, hangs or is let through.
 */
import { spawnSync } from 'node:child_process';
import {
  appendFileSync,
  cpSync,
  mkdirSync,
  readFileSync,
  renameSync,
  rmSync,
  symlinkSync,
  truncateSync,
  writeFileSync,
} from 'node:fs';
import { dirname, join, relative } from 'node:path';
import { describe, expect, it } from 'vitest';
import { ask } from '../../commands/support/command-line.ts';
import { newFolder } from '../../commands/support/folders.ts';
import { FILES, type KitchenFile, LOGO, layOutKitchen, typeInto } from './spoiled-kitchen.ts';

interface Told {
  code: string;
  file?: string;
  line?: number;
  message: string;
  hint?: string;
}

/** What a terminal must not be sent: controls but line ends, signs of no width, signs that turn the reading order. */
const UNSEEN = /(?!\n)\p{Cc}|[\u200b-\u200f\u202a-\u202e\u2066-\u2069]/u;

/** All problems of a kitchen; the terminal's own text is looked at on the way. */
async function problemsOf(folder: string): Promise<Told[]> {
  const { code, stdout, stderr } = await ask('check', '--content', folder, '--output', 'nowhere', '--json');
  expect([code, stderr]).toEqual([1, '']);
  const { problems } = JSON.parse(stdout) as { problems: Told[] };
  const told = await ask('check', '--content', folder, '--output', 'nowhere');
  expect(told.code).toBe(1);
  expect(told.stderr).not.toMatch(UNSEEN);
  expect(told.stderr).not.toMatch(/^\s+at .*:\d+:\d+|TypeError|RangeError|should not happen/m);
  expect(told.stderr.length).toBeLessThan(40_000);
  return problems;
}

/** Spoils a file of every kind; which of them are refused by one of the codes. */
async function refused(
  codes: readonly string[],
  files: readonly KitchenFile[],
  spoil: (folder: string, file: KitchenFile, at: number) => void,
): Promise<string[]> {
  const folder = layOutKitchen();
  for (const [at, file] of files.entries()) spoil(folder, file, at);
  const problems = await problemsOf(folder);
  return files.filter((file) => problems.some((one) => one.file === file && codes.includes(one.code)));
}

describe('a file of every kind', () => {
  it('is good before it is spoiled', async () => {
    const { code, stderr } = await ask('check', '--content', layOutKitchen(), '--output', 'nowhere');
    expect([code, stderr]).toEqual([0, expect.not.stringContaining(': error [')]);
  });

  it.each([
    ['a bell', '\u0007'],
    ['an escape sequence for the terminal', '\u001b[31m'],
  ])('with %s in it is refused', async (_, typed) => {
    const codes = ['text-control-character', 'outline-xml'];
    const told = await refused(codes, FILES, (folder, file) => typeInto(folder, file, typed));
    expect(told).toEqual(FILES);
  });

  // Nothing shows the names inside a drawing.
  it.each([
    ['a sign that turns the reading order', '\u202e'],
    ['an isolate that hides what follows', '\u2066'],
    ['a sign of no width', '\u200b'],
  ])('with %s in it is refused, drawings apart', async (_, typed) => {
    const shown = FILES.filter((file) => !file.endsWith('.svg'));
    const told = await refused(['text-hidden-character'], shown, (folder, file) =>
      typeInto(folder, file, typed),
    );
    expect(told).toEqual(shown);
  });

  it('of 10 MB is refused unread', async () => {
    const told = await refused(['file-too-large'], FILES, (folder, file) =>
      truncateSync(join(folder, file), 10 * 1_048_576),
    );
    expect(told).toEqual(FILES);
  });

  it('that is a link is refused, wherever it leads', async () => {
    const told = await refused(['file-symlink'], FILES, (folder, file) => {
      const path = join(folder, file);
      renameSync(path, `${path}.real`);
      symlinkSync(relative(dirname(path), `${path}.real`), path);
    });
    expect(told).toEqual(FILES);
  });

  it('below a folder that is a link is refused', async () => {
    const folder = layOutKitchen();
    const elsewhere = newFolder();
    const folders = [
      ...new Set([...FILES, LOGO].map((file) => dirname(file)).filter((name) => name !== '.')),
    ];
    for (const name of folders) {
      cpSync(join(folder, name), join(elsewhere, name), { recursive: true });
      rmSync(join(folder, name), { recursive: true });
      symlinkSync(join(elsewhere, name), join(folder, name));
    }
    const links = (await problemsOf(folder)).filter(({ code }) => code === 'file-symlink');
    expect([...new Set(links.map(({ message }) => /^'([\w-]+)/.exec(message)?.[1]))].sort()).toEqual(
      folders.sort(),
    );
  });

  it('whose place is taken by a folder or by a pipe that never ends is refused', async () => {
    const told = await refused(['file-missing', 'file-not-found'], FILES, (folder, file, at) => {
      const path = join(folder, file);
      rmSync(path);
      if (at % 2 === 0) mkdirSync(path);
      else expect(spawnSync('mkfifo', [path]).status).toBe(0);
    });
    expect(told).toEqual(FILES);
  });

  it('that is not text is refused', async () => {
    const told = await refused(['file-not-utf8'], FILES, (folder, file) =>
      writeFileSync(join(folder, file), Uint8Array.of(0xff, 0xfe, 0x00, 0xd8)),
    );
    expect(told).toEqual(FILES);
  });
});

describe('a logo', () => {
  it.each([
    ['of 10 MB', 'file-too-large', (path: string) => truncateSync(path, 10 * 1_048_576)],
    [
      'that is a link',
      'file-symlink',
      (path: string) => {
        renameSync(path, `${path}.real`);
        symlinkSync(`${path}.real`, path);
      },
    ],
    [
      'that is a folder',
      'file-not-found',
      (path: string) => {
        rmSync(path);
        mkdirSync(path);
      },
    ],
    ['that is not text', 'file-not-utf8', (path: string) => writeFileSync(path, Uint8Array.of(0xff, 0xfe))],
  ])('%s is refused', async (_, code, spoil) => {
    const folder = layOutKitchen();
    spoil(join(folder, LOGO));
    expect((await problemsOf(folder)).map((problem) => problem.code)).toContain(code);
  });
});

describe('YAML in a file of every kind that has any', () => {
  const yamlFiles = FILES.filter((file) => /\.(yaml|md)$/.test(file));
  const putIn = (yaml: string) => (folder: string, file: KitchenFile) => {
    const path = join(folder, file);
    const text = readFileSync(path, 'utf8');
    writeFileSync(path, file.endsWith('.md') ? text.replace('---\n', `---\n${yaml}\n`) : `${yaml}\n${text}`);
  };

  it.each([
    ['that repeats itself without end', 'a: &a [x, x]\nb: &b [*a, *a, *a]\nc: [*b, *b, *b]', ['yaml-alias']],
    [
      'that goes in for ever',
      `deep: ${'['.repeat(5000)}${']'.repeat(5000)}`,
      ['yaml-too-deep', 'yaml-syntax'],
    ],
    ['with a list without end', `many: [${'x, '.repeat(5000)}x]`, ['yaml-too-many']],
    ['with a tag that makes code of it', 'run: !!js/function "function () { return 1 }"', ['yaml-tag']],
    ['that merges', '<<: { name: x }', ['key-unknown', 'key-missing', 'yaml-syntax', 'id-not-kebab']],
    [
      'that reaches for what all objects have',
      '__proto__: { polluted: yes }',
      ['key-unknown', 'id-not-kebab'],
    ],
  ])('%s is refused', async (_, yaml, codes) => {
    expect(await refused(codes, yamlFiles, putIn(yaml))).toEqual(yamlFiles);
    expect(({} as Record<string, unknown>).polluted).toBeUndefined();
  });
});

describe('names that lead out of the kitchen', () => {
  it('are refused as a logo, a font, a drawing, a house style, and as anything an order or a log names', async () => {
    const folder = layOutKitchen();
    const replace = (file: string, from: string | RegExp, to: string): void => {
      const path = join(folder, file);
      const text = readFileSync(path, 'utf8');
      expect(text.replace(from, to)).not.toBe(text);
      writeFileSync(path, text.replace(from, to));
    };
    replace('house-style.yaml', /logo:.*/, 'logo: ../../../etc/hostname');
    replace('house-styles/slate.yaml', /text: .*/, 'text: /etc/hostname');
    replace('kitchen.yaml', 'outline: one', 'outline: ../one');
    replace('kitchen.yaml', 'house_styles: [slate]', 'house_styles: [../house-style]');
    replace('orders/bake-sale.yaml', /recipe: [\w-]+/, 'recipe: ../recipes/yellow-butter');
    appendFileSync(join(folder, 'bake-log.csv'), '../x,../x,../x,../x,../x,../x\n');
    appendFileSync(join(folder, 'stock.csv'), '../caster-sugar,1 kg\n');
    const problems = await problemsOf(folder);
    const files = [
      'bake-log.csv',
      'house-style.yaml',
      'house-styles/slate.yaml',
      'kitchen.yaml',
      'orders/bake-sale.yaml',
      'stock.csv',
    ];
    expect(
      [...new Set(problems.map(({ file }) => file))].filter((file) => files.includes(file ?? '')).sort(),
    ).toEqual(files);
    expect(problems.map(({ code }) => code)).toContain('path-outside-content');
  });

  it('are refused as file names', async () => {
    const folder = layOutKitchen();
    for (const name of [
      '..sponge.md',
      'a..b.md',
      '%2e%2e.md',
      '-rf.md',
      'con sole.md',
      '=cmd.md',
      'ünder.md',
    ])
      writeFileSync(join(folder, 'recipes', name), '');
    const problems = (await problemsOf(folder)).filter(({ code }) => code === 'file-name-not-an-id');
    // A name with a dot in front is a hidden file, which nothing reads.
    expect(problems.length).toBe(6);
  });
});

it('absurd sizes are refused as quantities, in every unit', async () => {
  const folder = layOutKitchen();
  const path = join(folder, 'kitchen.yaml');
  const huge = [
    '9e999 in',
    '99999999999999999999 mm',
    '-6in',
    '0in',
    '1/0in',
    'Infinity in',
    'NaN mm',
    '٣in',
    '6in in',
  ];
  const tins = huge.map(
    (across, at) => `  - { id: huge-${at}, name: Huge, shape: round, across: "${across}", depth: 3in }\n`,
  );
  writeFileSync(path, readFileSync(path, 'utf8').replace('tins:\n', `tins:\n${tins.join('')}`));
  const problems = await problemsOf(folder);
  const lines = problems.flatMap(({ file, line }) =>
    file === 'kitchen.yaml' && line !== undefined ? [line] : [],
  );
  expect(new Set(lines).size).toBe(huge.length);
});
