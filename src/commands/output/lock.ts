/**
 * One build at a time in an output folder. The lock is a file naming its process; it appears whole by a hard
 * link, and is taken over when that process is gone. A process number alone can be used again, so on Linux
 * the time the process started stands beside it.
 */
import { linkSync, readFileSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { hostname } from 'node:os';
import { join } from 'node:path';
import { LOCK } from './places.ts';

export interface LockHolder {
  pid: number;
  host: string;
  /** When the process started, in ticks since the computer did; null where that cannot be known. */
  started: string | null;
}

export type LockResult = { taken: true; release: () => void } | { taken: false; holder: LockHolder | null };

/** Takes the lock, or says who holds it (null when the lock file cannot be read). */
export function takeLock(outputDir: string): LockResult {
  const path = join(outputDir, LOCK);
  const draft = `${path}.${process.pid}`;
  const mine: LockHolder = { pid: process.pid, host: hostname(), started: startOf(process.pid) };
  try {
    writeFileSync(draft, `${JSON.stringify(mine)}\n`);
    if (placed(draft, path)) return { taken: true, release: () => rmSync(path, { force: true }) };
    const holder = readHolder(path);
    if (holder !== null && isAlive(holder)) return { taken: false, holder };
    removeStale(path, holder);
    if (placed(draft, path)) return { taken: true, release: () => rmSync(path, { force: true }) };
    return { taken: false, holder: readHolder(path) };
  } finally {
    rmSync(draft, { force: true });
  }
}

/** A file system without hard links gets a plain exclusive write instead. */
function placed(draft: string, path: string): boolean {
  try {
    linkSync(draft, path);
    return true;
  } catch (error) {
    const { code } = error as NodeJS.ErrnoException;
    if (code === 'EEXIST') return false;
    if (code !== 'EPERM' && code !== 'ENOTSUP' && code !== 'ENOSYS' && code !== 'EMLINK') throw error;
  }
  try {
    writeFileSync(path, readFileSync(draft), { flag: 'wx' });
    return true;
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === 'EEXIST') return false;
    throw error;
  }
}

/** Moves the dead lock away first: of two that try, one rename wins, and a living lock is put back. */
function removeStale(path: string, judged: LockHolder | null): void {
  const away = `${path}.stale-${process.pid}`;
  try {
    renameSync(path, away);
    const moved = readHolder(away);
    if (JSON.stringify(moved) !== JSON.stringify(judged)) placed(away, path);
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code !== 'ENOENT') throw error;
  } finally {
    rmSync(away, { force: true });
  }
}

function readHolder(path: string): LockHolder | null {
  try {
    const { pid, host, started } = JSON.parse(readFileSync(path, 'utf8')) as Partial<LockHolder>;
    if (typeof pid !== 'number' || typeof host !== 'string') return null;
    return { pid, host, started: typeof started === 'string' ? started : null };
  } catch {
    return null;
  }
}

/** On another computer nobody can tell: it counts as alive. */
function isAlive({ pid, host, started }: LockHolder): boolean {
  if (host !== hostname()) return true;
  try {
    process.kill(pid, 0);
  } catch (error) {
    return (error as NodeJS.ErrnoException).code === 'EPERM';
  }
  const now = startOf(pid);
  return started === null || now === null || now === started;
}

/** Field 22 of /proc/PID/stat (proc(5)), counted after the name, which may hold spaces. */
function startOf(pid: number): string | null {
  try {
    const stat = readFileSync(`/proc/${pid}/stat`, 'utf8');
    return stat.slice(stat.lastIndexOf(')') + 2).split(' ')[19] ?? null;
  } catch {
    return null;
  }
}
