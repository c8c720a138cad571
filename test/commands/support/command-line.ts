/** Runs the program: inside this process for speed, or as a baker would, as a process of its own. */
import { type SpawnSyncOptions, spawnSync } from 'node:child_process';
import { run } from '../../../src/commands/main.ts';

export interface Answer {
  code: number | null;
  stdout: string;
  stderr: string;
}

/** In this process. */
export async function ask(...args: string[]): Promise<Answer> {
  const said: string[] = [];
  const told: string[] = [];
  const code = await run(args, {
    say: (text) => void said.push(text),
    tell: (text) => void told.push(text),
    watched: false,
  });
  return { code, stdout: said.join('\n'), stderr: told.join('\n') };
}

export const LAUNCHER = 'src/bin/tinwright.js';

/** As a process; nobody watches its terminal. */
export function start(args: string[], env: Record<string, string> = {}): Answer {
  return started(args, { env: { ...process.env, ...env } });
}

/** As somebody without rights to other people's folders, also when the tests run as root. */
export function startAsNobody(args: string[]): Answer {
  return started(args, process.getuid?.() === 0 ? { uid: 65534, gid: 65534 } : {});
}

function started(args: string[], options: SpawnSyncOptions): Answer {
  const { status, stdout, stderr } = spawnSync(process.execPath, [LAUNCHER, ...args], {
    ...options,
    encoding: 'utf8',
  });
  return { code: status, stdout, stderr };
}
