import { spawn } from 'node:child_process';
import { expect, it } from 'vitest';
import { LAUNCHER } from '../commands/support/command-line.ts';
import { newFolder } from '../commands/support/folders.ts';
import { builtContents } from './support/built-contents.ts';

const GOOD = 'test/kitchens/good/minimal';

interface Ended {
  code: number | null;
  stderr: string;
}

function building(output: string): Promise<Ended> {
  const child = spawn(process.execPath, [LAUNCHER, 'build', '--content', GOOD, '--output', output]);
  let stderr = '';
  child.stderr.on('data', (bytes) => {
    stderr += String(bytes);
  });
  return new Promise((resolve) => child.once('close', (code) => resolve({ code, stderr })));
}

it('of builds started together in one folder, one wins at a time, the others say who is building, and the output is whole', async () => {
  const alone = newFolder();
  expect(await building(alone)).toMatchObject({ code: 0 });
  const shared = newFolder();
  const ends = await Promise.all([building(shared), building(shared), building(shared)]);
  expect(ends.filter(({ code }) => code === 0).length).toBeGreaterThan(0);
  for (const { code, stderr } of ends.filter((end) => end.code !== 0)) {
    expect(code).toBe(3);
    expect(stderr).toMatch(
      /^error: another build \(process \d+\) is running in .*\. Wait for it to end\.\n$/,
    );
  }
  expect(builtContents(shared)).toEqual(builtContents(alone));
});
