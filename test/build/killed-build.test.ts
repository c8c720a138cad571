/**
 * Builds killed at random moments, many more with TINWRIGHT_KILLS=100. A third of the kills comes after a while, a
 * third once so many files are written, a third after some rename of the swap, the moments that matter most. Counting
 * files and renames rather than time finds its moment on a busy machine too.
 */
import { type ChildProcess, spawn } from 'node:child_process';
import { cpSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { expect, it } from 'vitest';
import { ask, LAUNCHER } from '../commands/support/command-line.ts';
import { fill, newFolder } from '../commands/support/folders.ts';
import { builtContents } from './support/built-contents.ts';
import { layOutFaultKitchen, renameKitchen } from './support/fault-kitchen.ts';

const KILLS = Number(process.env.TINWRIGHT_KILLS ?? 6);
const PATIENCE_MS = 60_000;
const START_MS = 1500;
const DIE_AT_RENAME = 'test/build/support/die-at-rename.js';
const MINE = { 'notes.txt': 'mine', 'photos/cake.jpg': 'mine' };

interface Kitchen {
  content: string;
  output: string;
}

const buildOf = ({ content, output }: Kitchen): string[] => [
  'build',
  '--content',
  content,
  '--output',
  output,
];

/** What a whole build of this content gives. */
async function wholeBuild(content: string): Promise<{ output: string; contents: Record<string, string> }> {
  const output = newFolder();
  fill(output, MINE);
  expect(await ask(...buildOf({ content, output }))).toMatchObject({ code: 0 });
  return { output, contents: builtContents(output) };
}

const ended = (child: ChildProcess): Promise<void> =>
  new Promise((resolve) => child.once('exit', () => resolve()));

const pause = (ms: number): Promise<void> => new Promise((resolve) => setTimeout(resolve, ms));

function stagedFiles(output: string): number {
  const staging = readdirSync(output).find((name) => name.startsWith('.staging-'));
  return staging === undefined ? 0 : readdirSync(join(output, staging), { recursive: true }).length;
}

interface Moment {
  what: string;
  /** Told from outside; left out where the process kills itself. */
  isCome?: (output: string, sinceMs: number) => boolean;
  /** The rename of the swap after which the process kills itself. */
  rename?: number;
}

/** The journal, then two renames for each of the four entries; the page that explains the folder is there already. */
const RENAMES = 9;

function someMoment(at: number, files: number): Moment {
  const share = Math.random();
  if (at % 3 === 0) {
    const rename = 1 + Math.floor(share * RENAMES);
    return { what: `after rename ${rename} of the swap`, rename };
  }
  const [wanted, whileMs] = [Math.round(share * files), Math.round(share * START_MS)];
  return at % 3 === 1
    ? { what: `once ${wanted} files are written`, isCome: (output) => stagedFiles(output) > wanted }
    : { what: `after ${whileMs} ms`, isCome: (_, sinceMs) => sinceMs > whileMs };
}

/** Kills when the moment has come; true when the build had not ended by itself. */
async function killed(kitchen: Kitchen, { isCome = () => false, rename }: Moment): Promise<boolean> {
  const began = performance.now();
  const dying = rename === undefined ? [] : ['--import', pathToFileURL(DIE_AT_RENAME).href];
  const child = spawn(process.execPath, [...dying, LAUNCHER, ...buildOf(kitchen)], {
    stdio: 'ignore',
    env: { ...process.env, DIE_FOLDER: kitchen.output, DIE_AFTER: String(rename) },
  });
  const end = ended(child);
  const isOver = (): boolean => child.exitCode !== null || child.signalCode !== null;
  while (!isOver() && !isCome(kitchen.output, performance.now() - began)) await pause(2);
  child.kill('SIGKILL');
  await end;
  return child.signalCode === 'SIGKILL';
}

it(
  `after each of ${KILLS} builds killed with SIGKILL, the next command finds the old output whole or the new one complete`,
  async () => {
    const folder = newFolder();
    const [oldContent, newContent] = [join(folder, 'old'), join(folder, 'new')];
    layOutFaultKitchen(oldContent);
    layOutFaultKitchen(newContent);
    renameKitchen(newContent);
    const [old, fresh] = [await wholeBuild(oldContent), await wholeBuild(newContent)];
    expect(old.contents).not.toEqual(fresh.contents);

    const tally = { old: 0, new: 0, unkilled: 0 };
    for (let at = 0; at < KILLS; at += 1) {
      const output = join(folder, `output-${at}`);
      cpSync(old.output, output, { recursive: true });
      const moment = someMoment(at, Object.keys(fresh.contents).length);
      if (!(await killed({ content: newContent, output }, moment))) tally.unkilled += 1;
      await ask('check', '--content', newContent, '--output', output);
      const found = builtContents(output);
      const isNew = JSON.stringify(found) === JSON.stringify(fresh.contents);
      expect(isNew ? fresh.contents : old.contents, `killed ${moment.what}`).toEqual(found);
      tally[isNew ? 'new' : 'old'] += 1;
    }
    console.log(`${KILLS} kills: ${JSON.stringify(tally)}`);
    expect(tally.unkilled).toBeLessThan(KILLS / 2);
    expect(tally.old).toBeGreaterThan(0);
  },
  PATIENCE_MS * (KILLS + 4),
);
