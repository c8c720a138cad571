/** The measured pages are the site's own: what measures them must not fall behind the templates. */
import { spawnSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { newFolder } from '../commands/support/folders.ts';

function run(file: string, ...args: string[]): void {
  const { status, stderr } = spawnSync(
    process.execPath,
    ['--import', 'tsx', join('test/bench', file), ...args],
    {
      encoding: 'utf8',
    },
  );
  expect([status, stderr.slice(0, 300)], file).toEqual([0, '']);
}

it('chart pages of the benchmark are made, and the rival makes the same', () => {
  const folder = newFolder();
  const data = join(folder, 'pages.json');
  run('page-data.ts', data, '2');
  for (const kind of ['ours', 'bare']) run('pages.ts', kind, data, join(folder, kind));
  const page = (kind: string): string => readFileSync(join(folder, kind, 'charts/1.html'), 'utf8');
  expect(page('ours')).toContain('<caption>Weights in grams');
  expect(page('bare')).toBe(page('ours'));
});
