import { readdirSync, readFileSync, truncateSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterEach, describe, expect, it } from 'vitest';
import { keptScript } from '../../src/site/kept-script.ts';
import { newFolder } from '../commands/support/folders.ts';

const before = process.env.TINWRIGHT_BUNDLE;
afterEach(() => {
  if (before === undefined) delete process.env.TINWRIGHT_BUNDLE;
  else process.env.TINWRIGHT_BUNDLE = before;
});

/** Makes a script, and counts how often it was asked to. */
function maker(text: string): { make: () => Promise<string>; made: () => number } {
  let count = 0;
  return {
    make: async () => {
      count += 1;
      return text;
    },
    made: () => count,
  };
}

function keptFile(folder: string): string {
  const [name = ''] = readdirSync(folder, { recursive: true, encoding: 'utf8' }).filter((one) =>
    one.endsWith('.js'),
  );
  return join(folder, name);
}

describe('keptScript', () => {
  it('makes a script once for the same sources and packages, and gives the same text again', async () => {
    const folder = newFolder();
    process.env.TINWRIGHT_BUNDLE = folder;
    const { make, made } = maker('one;\ntwo;\n');
    expect(await keptScript('offline/worker', make)).toBe('one;\ntwo;\n');
    expect(await keptScript('offline/worker', make)).toBe('one;\ntwo;\n');
    expect(made()).toBe(1);
  });

  it.each([
    ['cut short', (file: string) => truncateSync(file, 70)],
    ['changed', (file: string) => writeFileSync(file, readFileSync(file, 'utf8').replace('two', 'six'))],
    ['empty', (file: string) => truncateSync(file, 0)],
  ])('makes it again when what was kept is %s', async (_, spoil) => {
    const folder = newFolder();
    process.env.TINWRIGHT_BUNDLE = folder;
    const { make, made } = maker('one;\ntwo;\n');
    await keptScript('find', make);
    spoil(keptFile(folder));
    expect(await keptScript('find', make)).toBe('one;\ntwo;\n');
    expect(made()).toBe(2);
  });

  it('makes it each time where nothing can be kept, and where no launcher says what the sources are', async () => {
    const file = join(newFolder(), 'file');
    writeFileSync(file, '');
    const { make, made } = maker('one;');
    process.env.TINWRIGHT_BUNDLE = file;
    expect(await keptScript('find', make)).toBe('one;');
    delete process.env.TINWRIGHT_BUNDLE;
    expect(await keptScript('find', make)).toBe('one;');
    expect(made()).toBe(2);
  });
});
