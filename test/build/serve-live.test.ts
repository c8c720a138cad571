import { type ChildProcessWithoutNullStreams, spawn } from 'node:child_process';
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, it, onTestFinished } from 'vitest';
import { LAUNCHER } from '../commands/support/command-line.ts';
import { newFolder } from '../commands/support/folders.ts';
import { layOutFaultKitchen } from './support/fault-kitchen.ts';

/** Everything said so far, and a way to wait for more. */
function listening(child: ChildProcessWithoutNullStreams) {
  let heard = '';
  for (const stream of [child.stdout, child.stderr]) {
    stream.on('data', (bytes) => {
      heard += String(bytes);
    });
  }
  return async (pattern: RegExp): Promise<RegExpExecArray> => {
    for (;;) {
      const match = pattern.exec(heard);
      if (match !== null) {
        heard = heard.slice(match.index + match[0].length);
        return match;
      }
      if (child.exitCode !== null) throw new Error(`serve ended: ${heard}`);
      await new Promise((next) => setTimeout(next, 20));
    }
  };
}

it('serve builds, shows the site, builds again when a file is saved, and keeps the last good site when it is wrong', async () => {
  const folder = newFolder();
  const content = join(folder, 'content');
  layOutFaultKitchen(content);
  const args = ['serve', '--port', '0', '--content', content, '--output', join(folder, 'output')];
  const child = spawn(process.execPath, [LAUNCHER, ...args]);
  onTestFinished(() => void child.kill('SIGKILL'));
  const heard = listening(child);
  const [, address = ''] = await heard(/(http:\/\/127\.0\.0\.1:\d+\/) shows .*site/);
  const home = async (): Promise<string> => (await fetch(address)).text();
  const kitchen = join(content, 'kitchen.yaml');
  const good = readFileSync(kitchen, 'utf8');

  writeFileSync(kitchen, good.replace(/^name: .*$/m, 'name: Another Name'));
  await heard(/Built in/);
  expect(await home()).toContain('Another Name');

  writeFileSync(kitchen, `${good}colour: blue\n`);
  await heard(/error \[key-unknown\]/);
  expect(await home()).toContain('Another Name');

  writeFileSync(kitchen, good);
  await heard(/Built in/);
  expect(await home()).not.toContain('Another Name');

  const ended = new Promise((resolve) => child.once('exit', resolve));
  child.kill('SIGINT');
  expect(await ended).toBe(0);
});
