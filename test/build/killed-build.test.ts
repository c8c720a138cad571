/**
 * Builds killed at random moments, many more with TINWRIGHT_KILLS=100. Half of the kills wait a random while, half
 * come as soon as the journal of the swap is on disk, the moment that matters most.
 */
import { type ChildProcess, spawn } from 'node:child_process';
import { cpSync, existsSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { ask, LAUNCHER, start } from '../commands/support/command-line.ts';
import { fill, newFolder } from '../commands/support/folders.ts';
import { builtContents } from './support/built-contents.ts';
import { layOutFaultKitchen } from './support/fault-kitchen.ts';

const KILLS = Number(process.env.TINWRIGHT_KILLS ?? 6);
const MINE = { 'notes.txt': 'mine', 'photos/cake.jpg': 'mine' };

interface Kitchen {
  content: string;
  output: string;
}

/** The same kitchen under another name: every page, print and data file of its build differs. */
function rename(content: string): void {
  const path = join(content, 'kitchen.yaml');
  const text = readFileSync(path, 'utf8');
  writeFileSync(path, text.replace(/^name: .*$/m, 'name: The Other Kitchen'));
}

function buildOf(kitchen: Kitchen): string[] {
  return ['build', '--content', kitchen.content, '--output', kitchen.output];
}

/** What a whole build of this content gives. */
function wholeBuild(content: string): { output: string; contents: Record<string, string>; ms: number } {
  const output = newFolder();
  fill(output, MINE);
  const before = performance.now();
  const answer = start(buildOf({ content, output }));
  expect(answer).toMatchObject({ code: 0 });
  return { output, contents: builtContents(output), ms: performance.now() - before };
}

function ended(child: ChildProcess): Promise<void> {
  return new Promise((resolve) => child.once('exit', () => resolve()));
}

/** Kills after a while, or when the journal appears; true when the build had not ended by itself. */
async function killed(kitchen: Kitchen, afterMs: number | 'at the swap'): Promise<boolean> {
  const child = spawn(process.execPath, [LAUNCHER, ...buildOf(kitchen)], { stdio: 'ignore' });
  const end = ended(child);
  if (afterMs === 'at the swap') await journal(kitchen.output, child);
  else await Promise.race([end, new Promise((resolve) => setTimeout(resolve, afterMs))]);
  child.kill('SIGKILL');
  await end;
  return child.signalCode === 'SIGKILL';
}

async function journal(output: string, child: ChildProcess): Promise<void> {
  const path = join(output, '.swap.json');
  while (!existsSync(path) && child.exitCode === null) await new Promise((next) => setTimeout(next, 1));
}

it(`after each of ${KILLS} builds killed with SIGKILL, the next command finds the old output whole or the new one complete`, async () => {
  const folder = newFolder();
  const [oldContent, newContent] = [join(folder, 'old'), join(folder, 'new')];
  layOutFaultKitchen(oldContent);
  layOutFaultKitchen(newContent);
  rename(newContent);
  const [old, fresh] = [wholeBuild(oldContent), wholeBuild(newContent)];
  expect(old.contents).not.toEqual(fresh.contents);

  const tally = { old: 0, new: 0, unkilled: 0 };
  for (let at = 0; at < KILLS; at += 1) {
    const output = join(folder, `output-${at}`);
    cpSync(old.output, output, { recursive: true });
    const when = at % 2 === 0 ? 'at the swap' : (0.1 + Math.random()) * fresh.ms;
    if (!(await killed({ content: newContent, output }, when))) tally.unkilled += 1;
    await ask('check', '--content', newContent, '--output', output);
    const found = builtContents(output);
    const isNew = JSON.stringify(found) === JSON.stringify(fresh.contents);
    expect(isNew ? fresh.contents : old.contents, `killed ${when}`).toEqual(found);
    tally[isNew ? 'new' : 'old'] += 1;
  }
  console.log(`${KILLS} kills: ${JSON.stringify(tally)}`);
  expect(tally.unkilled).toBeLessThan(KILLS / 2);
}, 600_000);
