import { appendFileSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { type Answer, ask } from '../commands/support/command-line.ts';
import { newFolder } from '../commands/support/folders.ts';
import { layOutFaultKitchen } from './support/fault-kitchen.ts';

const filesIn = (output: string): unknown =>
  (JSON.parse(readFileSync(join(output, 'report.json'), 'utf8')) as { files: unknown[] }).files;

describe('kept prints', () => {
  it('make no difference to the output: first build, second, without them, and with one of them spoilt', async () => {
    const folder = newFolder();
    const content = join(folder, 'content');
    layOutFaultKitchen(content);
    const cache = join(folder, 'kept');
    const build = async (name: string, ...more: string[]): Promise<Answer & { files: unknown }> => {
      const output = join(folder, name);
      const paths = ['--content', content, '--output', output];
      return { ...(await ask('build', ...paths, ...more)), files: filesIn(output) };
    };
    const entries = (): string[] =>
      readdirSync(cache, { recursive: true, withFileTypes: true })
        .filter((entry) => entry.isFile())
        .map((entry) => join(entry.parentPath, entry.name));
    const none = await build('none', '--no-cache', '--only', 'print,data');
    const first = await build('first', '--cache', cache, '--only', 'print,data');
    const second = await build('second', '--cache', cache, '--only', 'print,data');
    const [entry = 'none'] = entries();
    appendFileSync(entry, 'x');
    const mended = await build('mended', '--cache', cache, '--only', 'print,data');
    expect([first.files, second.files, mended.files]).toEqual([none.files, none.files, none.files]);
    expect([none.stderr, first.stderr, second.stderr]).toEqual(['', '', '']);
    expect(mended.stderr).toBe('1 kept print could not be trusted and was made again.');
    expect((await build('after', '--cache', cache, '--only', 'print,data')).stderr).toBe('');
  });
});
