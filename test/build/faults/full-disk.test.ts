/**
 * A disk that fills up at some write of a build: four moments here, every one with TINWRIGHT_LONG=1. The same on a
 * real disk of no size at all is told in DEVELOPERS.md.
 */
import { cpSync } from 'node:fs';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { type Answer, ask } from '../../commands/support/command-line.ts';
import { fill, newFolder } from '../../commands/support/folders.ts';
import { builtContents } from '../support/built-contents.ts';
import { layOutFaultKitchen, renameKitchen } from '../support/fault-kitchen.ts';
import { fillDisk } from './full-disk.ts';

const MINE = { 'notes.txt': 'mine' };

interface Tried extends Answer {
  writes: number;
}

async function builtOn(content: string, output: string, fullAt: number): Promise<Tried> {
  const disk = fillDisk(output, fullAt);
  try {
    const answer = await ask('build', '--content', content, '--output', output);
    return { ...answer, writes: disk.writes() };
  } finally {
    disk.end();
  }
}

it('at whatever write the disk fills up, the old output is whole, the message says what to do, and once there is room the build is complete', async () => {
  const folder = newFolder();
  const [oldContent, newContent] = [join(folder, 'old'), join(folder, 'new')];
  layOutFaultKitchen(oldContent);
  layOutFaultKitchen(newContent);
  renameKitchen(newContent);
  const [before, after] = [join(folder, 'before'), join(folder, 'after')];
  fill(before, MINE);
  fill(after, MINE);
  expect(await ask('build', '--content', oldContent, '--output', before)).toMatchObject({ code: 0 });
  const whole = await builtOn(newContent, after, Number.POSITIVE_INFINITY);
  expect(whole).toMatchObject({ code: 0, stderr: '' });
  const [old, fresh] = [builtContents(before), builtContents(after)];
  expect(old).not.toEqual(fresh);
  expect(whole.writes).toBeGreaterThan(Object.keys(fresh).length);

  const every = Array.from({ length: whole.writes }, (_, at) => at + 1);
  const some = [1, 2, Math.round(whole.writes / 2), whole.writes];
  const moments = process.env.TINWRIGHT_LONG ? every : some;
  for (const at of moments) {
    const output = join(folder, `at-${at}`);
    cpSync(before, output, { recursive: true });
    const { code, stdout, stderr } = await builtOn(newContent, output, at);
    expect([at, code, stdout]).toEqual([at, 3, '']);
    expect(stderr).toMatch(
      /^error: \S+: The disk is full\. Make room and run the command again; the previous output is still there\.$/,
    );
    expect(builtContents(output), `write ${at}`).toEqual(old);
    if (at === moments.at(-1)) {
      expect(await ask('build', '--content', newContent, '--output', output)).toMatchObject({ code: 0 });
      expect(builtContents(output)).toEqual(fresh);
    }
  }
  console.log(`${moments.length} of ${whole.writes} writes refused`);
});
