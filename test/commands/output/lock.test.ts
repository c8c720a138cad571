import { spawn, spawnSync } from 'node:child_process';
import { existsSync, readFileSync } from 'node:fs';
import { hostname } from 'node:os';
import { join } from 'node:path';
import { describe, expect, it, onTestFinished } from 'vitest';
import { takeLock } from '../../../src/commands/output/lock.ts';
import { repairIfNeeded, withStaging } from '../../../src/commands/output/output-folder.ts';
import { contentsOf, fill, newFolder } from '../support/folders.ts';

const lockText = (pid: number, more: object = {}): string =>
  JSON.stringify({ pid, host: hostname(), started: null, ...more });

function deadPid(): number {
  return spawnSync(process.execPath, ['-e', '']).pid;
}

function sleeper(): number {
  const child = spawn(process.execPath, ['-e', 'setTimeout(() => {}, 60000)'], { stdio: 'ignore' });
  onTestFinished(() => void child.kill());
  return child.pid ?? 0;
}

describe('takeLock', () => {
  it('gives the lock to one at a time', () => {
    const folder = newFolder();
    const first = takeLock(folder);
    expect(first.taken).toBe(true);
    expect(takeLock(folder)).toMatchObject({ taken: false, holder: { pid: process.pid } });
    if (first.taken) first.release();
    expect(takeLock(folder).taken).toBe(true);
  });

  it('takes over from a process that is gone', () => {
    const folder = newFolder();
    fill(folder, { '.lock.json': lockText(deadPid()) });
    expect(takeLock(folder).taken).toBe(true);
    expect(readFileSync(join(folder, '.lock.json'), 'utf8')).toContain(`"pid":${process.pid}`);
    expect(Object.keys(contentsOf(folder))).toEqual(['.lock.json']);
  });

  it.runIf(existsSync('/proc/self/stat'))(
    'takes over when the process number now belongs to another process',
    () => {
      const folder = newFolder();
      fill(folder, { '.lock.json': lockText(sleeper(), { started: '1' }) });
      expect(takeLock(folder).taken).toBe(true);
    },
  );

  it('leaves the lock of a living process alone', () => {
    const folder = newFolder();
    fill(folder, { '.lock.json': lockText(sleeper()) });
    expect(takeLock(folder).taken).toBe(false);
  });

  it('cannot tell about another computer, and leaves its lock alone', () => {
    const folder = newFolder();
    fill(folder, { '.lock.json': lockText(deadPid(), { host: 'another-kitchen' }) });
    expect(takeLock(folder)).toMatchObject({ taken: false, holder: { host: 'another-kitchen' } });
  });

  it('takes over a lock file that cannot be read', () => {
    const folder = newFolder();
    fill(folder, { '.lock.json': '' });
    expect(takeLock(folder).taken).toBe(true);
  });
});

describe('withStaging', () => {
  it('says which process is building when another one is', async () => {
    const folder = newFolder();
    const pid = sleeper();
    fill(folder, { '.lock.json': lockText(pid) });
    const refused = withStaging(folder, async () => {});
    await expect(refused).rejects.toThrow(`another build (process ${pid}) is running in ${folder}`);
  });

  it('clears its staging folder and lock away when the work fails', async () => {
    const folder = newFolder();
    fill(folder, { 'site/index.html': 'old', 'report.json': 'old' });
    const failing = withStaging(folder, async ({ dir }) => {
      fill(dir, { 'site/index.html': 'half' });
      throw new Error('no');
    });
    await expect(failing).rejects.toThrow('no');
    expect(contentsOf(folder)).toEqual({ 'report.json': 'old', 'site/index.html': 'old' });
  });

  it('does not write over a folder that has other things in it and that no build of ours made', async () => {
    const folder = newFolder();
    fill(folder, { 'print/letter.pdf': 'mine', 'photos/cake.jpg': 'mine' });
    await expect(withStaging(folder, async () => {})).rejects.toThrow('Nothing was changed');
    expect(contentsOf(folder)).toEqual({ 'photos/cake.jpg': 'mine', 'print/letter.pdf': 'mine' });
  });

  it('writes the page that explains the folder once, and never over one that is there', async () => {
    const folder = newFolder();
    await withStaging(folder, async () => {});
    expect(contentsOf(folder)['README.md']).toBe(readFileSync('output/README.md', 'latin1'));
    fill(folder, { 'README.md': 'my own' });
    await withStaging(folder, async () => {});
    expect(contentsOf(folder)).toEqual({ 'README.md': 'my own' });
  });
});

describe('repairIfNeeded', () => {
  it('leaves alone what a running build is busy with', () => {
    const folder = newFolder();
    fill(folder, { '.lock.json': lockText(sleeper()), '.staging-7/site/index.html': 'half' });
    repairIfNeeded(folder);
    expect(existsSync(join(folder, '.staging-7/site/index.html'))).toBe(true);
  });

  it('clears away what a killed build left', () => {
    const folder = newFolder();
    fill(folder, { '.lock.json': lockText(deadPid()), '.staging-7/site/index.html': 'half' });
    repairIfNeeded(folder);
    expect(contentsOf(folder)).toEqual({});
  });

  it('does nothing about a folder that is not there', () => {
    expect(() => repairIfNeeded(join(newFolder(), 'nowhere'))).not.toThrow();
  });
});
