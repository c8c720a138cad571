import { spawn } from 'node:child_process';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { ask, LAUNCHER } from '../commands/support/command-line.ts';
import { newFolder } from '../commands/support/folders.ts';
import { builtContents } from './support/built-contents.ts';
import { layOutFaultKitchen } from './support/fault-kitchen.ts';

interface Ended {
  code: number | null;
  stderr: string;
}

function building(content: string, output: string): Promise<Ended> {
  const child = spawn(process.execPath, [LAUNCHER, 'build', '--content', content, '--output', output]);
  let stderr = '';
  child.stderr.on('data', (bytes) => {
    stderr += String(bytes);
  });
  return new Promise((resolve) => child.once('close', (code) => resolve({ code, stderr })));
}

it('of builds started together in one folder, one wins at a time, the others say who is building, and the output is whole', async () => {
  const content = join(newFolder(), 'kitchen');
  layOutFaultKitchen(content);
  const alone = newFolder();
  expect(await ask('build', '--content', content, '--output', alone)).toMatchObject({ code: 0 });
  const shared = newFolder();
  const ends = await Promise.all([1, 2, 3].map(() => building(content, shared)));
  expect(ends.filter(({ code }) => code === 0).length).toBeGreaterThan(0);
  for (const { code, stderr } of ends.filter((end) => end.code !== 0)) {
    expect(code).toBe(3);
    expect(stderr).toMatch(
      /^error: another build \(process \d+\) is running in .*\. Wait for it to end\.\n$/,
    );
  }
  expect(builtContents(shared)).toEqual(builtContents(alone));
});
