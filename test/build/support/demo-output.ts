/** One whole build of the demo for every test file that only looks at it: the first to ask makes it. */
import { existsSync, mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { inject } from 'vitest';
import { type Answer, start } from '../../commands/support/command-line.ts';

const WAIT_MS = 200;
const PATIENCE_MS = 150_000;

function pause(): void {
  Atomics.wait(new Int32Array(new SharedArrayBuffer(4)), 0, 0, WAIT_MS);
}

/** Only one worker can make the folder that says who builds. */
function isFirst(folder: string): boolean {
  try {
    mkdirSync(join(folder, 'building'));
    return true;
  } catch {
    return false;
  }
}

function buildIt(folder: string, output: string): void {
  // Prints that these very sources drew before (in CI just now, by `npm run build`) are not drawn again; builds that
  // must not trust what is kept say --no-cache.
  const answer: Answer = start(['build', '--output', output], { TINWRIGHT_CACHE: '.cache/prints' });
  writeFileSync(join(folder, answer.code === 0 && answer.stderr === '' ? 'built' : 'failed'), '');
  if (!existsSync(join(folder, 'built'))) throw new Error(`the demo does not build: ${answer.stderr}`);
}

function waitForIt(folder: string): void {
  const until = Date.now() + PATIENCE_MS;
  while (!existsSync(join(folder, 'built'))) {
    if (existsSync(join(folder, 'failed')))
      throw new Error('the demo does not build: see the test that built it');
    if (Date.now() > until) throw new Error('the demo was not built in time');
    pause();
  }
}

/** The output folder of the shared build; read it, never change it. Throws when the demo does not build. */
export function demoOutput(): string {
  const folder = inject('demoFolder');
  const output = join(folder, 'output');
  if (isFirst(folder)) buildIt(folder, output);
  else waitForIt(folder);
  return output;
}
