import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname, join, resolve } from 'node:path';
import { PassThrough } from 'node:stream';
import { describe, expect, it } from 'vitest';
import { type Asking, terminalAsking } from '../../../src/commands/new/asking.ts';
import { bowlFault, countFault, lineFault } from '../../../src/commands/new/questions.ts';
import { runNew } from '../../../src/commands/new-command.ts';
import { readContent } from '../../../src/read/content.ts';
import { ask, start, startAsNobody } from '../support/command-line.ts';
import { contentsOf, newFolder } from '../support/folders.ts';

interface Heard {
  code: number;
  stdout: string;
  stderr: string;
}

async function newWith(folder: string, asking: Asking | null): Promise<Heard> {
  const said: string[] = [];
  const told: string[] = [];
  const terminal = {
    say: (text: string) => said.push(text),
    tell: (text: string) => told.push(text),
    watched: false,
  };
  const effects = { asking: async () => asking, today: () => '2026-11-25' };
  const code = await runNew(folder, { yes: false }, terminal, effects);
  return { code, stdout: said.join('\n'), stderr: told.join('\n') };
}

/** Answers by a word of the question; Enter for all others. Refuses what the question itself refuses. */
function answering(answers: Record<string, string | string[]>, givesUpAt = 'never'): Asking {
  const answer = (question: string): string | string[] | undefined =>
    Object.entries(answers).find(([word]) => question.includes(word))?.[1];
  const gone = (question: string): boolean => question.includes(givesUpAt);
  return {
    async line(question, usual, check) {
      const text = String(answer(question) ?? usual);
      expect([question, check(text)]).toEqual([question, null]);
      return gone(question) ? null : text;
    },
    async one(question, choices, usual) {
      const value = answer(question) ?? usual;
      const found = choices.find((choice) => choice.value === value);
      expect(found, question).toBeDefined();
      return gone(question) ? null : (found?.value ?? usual);
    },
    async some(question, choices, usual) {
      const values = answer(question) ?? [...usual];
      const found = choices.filter((choice) => values.includes(choice.value)).map((choice) => choice.value);
      expect(found.length, question).toBeGreaterThan(0);
      return gone(question) ? null : found;
    },
  };
}

describe('a new kitchen', () => {
  it('--yes writes one that reads without an error or a warning, and makes charts', async () => {
    const folder = join(newFolder(), 'my kitchen');
    const { code, stdout, stderr } = await ask('new', folder, '--yes');
    expect([code, stderr]).toEqual([0, '']);
    expect(stdout).toContain(`Wrote 6 files into ${folder}.`);
    expect(stdout).toContain(`npx tinwright build --content "${folder}"`);
    const { content, problems } = await readContent(folder);
    expect(problems).toEqual([]);
    expect(content?.kitchen).toMatchObject({ name: 'My kitchen', locale: 'en-GB', paper: ['A4'] });
    expect(content?.kitchen.tins.map(({ id, owned }) => [id, owned])).toEqual([
      ['round-6', 2],
      ['round-8', 2],
      ['square-8', 1],
    ]);
    expect(readFileSync(join(folder, 'bake-log.csv'), 'utf8').trim().split('\n')).toHaveLength(1);
    const mix = await ask('mix', '--content', folder, '--recipe', 'butter-sponge', '--tins', '2 x round-6');
    expect(mix.code).toBe(0);
    expect(mix.stdout).toMatch(/egg/);
  });

  it.each(
    ['en-GB', 'en-US'].flatMap((locale) =>
      ['butter-sponge', 'cocoa-oil-cake', 'fruit-cake'].map((recipe) => [locale, recipe] as const),
    ),
  )('%s with %s reads without an error or a warning', async (locale, recipe) => {
    const folder = join(newFolder(), 'content');
    const { code } = await newWith(folder, answering({ words: locale, recipe }));
    expect(code).toBe(0);
    const { content, problems } = await readContent(folder);
    expect(problems).toEqual([]);
    expect(content?.recipes.map(({ id }) => id)).toEqual([recipe]);
    expect(content?.kitchen.egg.size?.scheme).toBe(locale === 'en-GB' ? 'UK' : 'US');
    const words = readFileSync(join(folder, 'recipes', `${recipe}.md`), 'utf8');
    if (locale === 'en-US') expect(words).not.toMatch(/\btins\b(?!:)|caster|gloves/);
  });

  it('says what the baker answered, whatever signs it holds', async () => {
    const folder = newFolder();
    const name = 'Ada’s: "cakes" #1 & more';
    const answers = { called: name, Where: 'yes', paper: ['A4', 'Letter'], eggs: 'UK large', bowl: '6.9 l' };
    await newWith(folder, answering({ ...answers, 'Which of these': ['heart-8', 'loaf-9-5'], Heart: '3' }));
    const { content, problems } = await readContent(folder);
    expect(problems).toEqual([]);
    expect(content?.kitchen).toMatchObject({
      name,
      place: 'yes',
      edition: '2026-11-25',
      paper: ['A4', 'Letter'],
      egg: { size: { scheme: 'UK', grade: 'large' } },
      mixer: { bowlMl: 6900 },
    });
    expect(content?.kitchen.tins.map(({ id, owned }) => [id, owned])).toEqual([
      ['loaf-9-5', 1],
      ['heart-8', 3],
    ]);
  });

  it('every YAML file and recipe points its editor at a schema that is there', async () => {
    const folder = join(newFolder(), 'deep', 'kitchen');
    await ask('new', folder, '--yes');
    const files = Object.entries(contentsOf(folder)).filter(([path]) => /^recipes|\.yaml$/.test(path));
    expect(files.map(([path]) => path)).toEqual([
      'house-style.yaml',
      'ingredients.yaml',
      'kitchen.yaml',
      'recipes/butter-sponge.md',
    ]);
    for (const [path, text] of files) {
      const line = /^# yaml-language-server: \$schema=(\S+)$/m.exec(text)?.[1] ?? '';
      const schema = resolve(folder, dirname(path), line);
      expect(JSON.parse(readFileSync(schema, 'utf8'))).toMatchObject({ type: 'object' });
    }
  });
});

/** Enter, for every question, as soon as it has been put. */
function pressingEnter(keys = '\r') {
  const input = new PassThrough();
  const output = new PassThrough();
  // The library marks every question that waits with this sign.
  output.on('data', (chunk: Buffer) => {
    if (chunk.toString().includes('◆')) setTimeout(() => input.write(keys), 5);
  });
  return { input, output };
}

describe('the questions in a terminal', () => {
  it('answered with Enter alone give the same kitchen as --yes', async () => {
    const folders = [join(newFolder(), 'a'), join(newFolder(), 'a')] as const;
    const asked = await newWith(folders[0], await terminalAsking(pressingEnter()));
    expect(asked).toMatchObject({ code: 0, stderr: '' });
    await ask('new', folders[1], '--yes');
    const undated = (folder: string) =>
      Object.entries(contentsOf(folder)).map(([path, text]) => [path, text.replace(/^edition: \S+/m, '')]);
    expect(undated(folders[0])).toEqual(undated(folders[1]));
  });

  it('given up with Ctrl-C write nothing', async () => {
    const folder = join(newFolder(), 'kitchen');
    const answer = await newWith(folder, await terminalAsking(pressingEnter('\u0003')));
    expect(answer.code).toBe(2);
    expect(contentsOf(dirname(folder))).toEqual({});
  });

  it.each(['called', 'Where', 'words', 'paper', 'eggs', 'bowl', 'Which of these', 'how many', 'recipe'])(
    'given up at %j write nothing',
    async (word) => {
      const folder = join(newFolder(), 'kitchen');
      const { code, stdout, stderr } = await newWith(folder, answering({}, word));
      expect([code, stdout]).toEqual([2, '']);
      expect(stderr).toBe(
        'error [new-given-up] The questions were not answered to the end; nothing was written\n' +
          `    Start again, or take the usual answers: 'tinwright new ${folder} --yes'.`,
      );
      expect(contentsOf(dirname(folder))).toEqual({});
    },
  );

  it.each([
    [lineFault('x'.repeat(301)), 'At most 300 characters, please.'],
    [lineFault('a\u202eb'), 'Letters, figures and signs only, please.'],
    [bowlFault('4.8'), expect.stringContaining('4.8')],
    [bowlFault('4.8 kg'), expect.stringContaining('not a unit of volume')],
    [bowlFault('5 ml'), 'From 0.5 l to 200 l, please: like 4.8 l.'],
    [countFault('0'), 'A whole number from 1 to 99, please.'],
    [countFault('two'), 'A whole number from 1 to 99, please.'],
  ])('refuse a slip: %j', (said, expected) => {
    expect(said).toEqual(expected);
  });
});

describe('what new refuses, leaving everything as it was', () => {
  it('a folder that is not empty', async () => {
    const folder = newFolder();
    for (const name of ['b.txt', 'a.txt']) writeFileSync(join(folder, name), 'mine');
    const { code, stdout, stderr } = await ask('new', folder, '--yes');
    expect([code, stdout]).toEqual([2, '']);
    expect(stderr).toBe(
      `error [new-folder-not-empty] '${folder}' is not empty: it holds 'a.txt' and 1 more\n` +
        '    Name a folder that is empty or not there yet: nothing is ever written over.',
    );
    expect(contentsOf(folder)).toEqual({ 'a.txt': 'mine', 'b.txt': 'mine' });
  });

  it('a file', async () => {
    const file = join(newFolder(), 'kitchen');
    writeFileSync(file, 'mine');
    const { code, stderr } = await ask('new', file, '--yes');
    expect(code).toBe(2);
    expect(stderr).toBe(
      `error [new-not-a-folder] '${file}' is a file, expected a folder that is empty or not there yet\n` +
        "    Name another one, like 'tinwright new my-kitchen'.",
    );
  });

  it('questions where nobody can answer them, as in a script', () => {
    const folder = join(newFolder(), 'kitchen');
    const { code, stdout, stderr } = start(['new', folder]);
    expect([code, stdout]).toEqual([2, '']);
    expect(stderr).toBe(
      'error [new-nobody-to-ask] There are questions to answer, but no terminal to ask them in\n' +
        `    Add --yes for the usual answers: 'tinwright new ${folder} --yes'.\n`,
    );
  });

  it('a command line without a folder, or with too much', async () => {
    expect(await ask('new')).toMatchObject({ code: 2, stderr: expect.stringContaining("argument 'dir'") });
    expect((await ask('new', 'a', 'b')).code).toBe(2);
    expect((await ask('new', 'a', '--no')).code).toBe(2);
  });

  it('a place that may not be written is exit 3, with what to do', () => {
    const folder = join(newFolder(), 'locked');
    mkdirSync(folder, { mode: 0o555 });
    const { code, stderr } = startAsNobody(['new', join(folder, 'kitchen'), '--yes']);
    expect(code).toBe(3);
    expect(stderr).toMatch(/No permission/);
  });
});
