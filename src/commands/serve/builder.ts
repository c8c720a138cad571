/** Builds again and again, each time only what a change touches: what was made before, and the threads, stay. */
import { availableParallelism } from 'node:os';
import { type BuildRequest, type BuildResult, build } from '../../build.ts';
import { tellDamaged } from '../build-command.ts';
import { cacheFolder } from '../folders.ts';
import { openKeptPrints } from '../make/kept-prints.ts';
import { type PrintThreads, printThreads } from '../make/print-threads.ts';
import { noMemory } from '../output/build-memory.ts';
import type { Terminal } from '../terminal.ts';

export interface Builder {
  build(request: BuildRequest): Promise<BuildResult>;
  /** Whether the next build makes only what has changed. */
  remembers(): boolean;
  close(): Promise<void>;
}

const MOST_THREADS = 4;

/** `cache` is as the option says. */
export function openBuilder(cache: string | boolean | undefined, terminal: Terminal): Builder {
  const folder = cacheFolder(cache);
  const kept = folder === null ? null : openKeptPrints(folder);
  let memory = noMemory();
  let threads: PrintThreads | null = null;
  const close = async (): Promise<void> => {
    await threads?.close();
    threads = null;
  };
  const printing = {
    ...(kept === null ? {} : { kept }),
    threads: () => {
      threads ??= printThreads(Math.min(MOST_THREADS, availableParallelism()));
      return threads;
    },
  };
  return {
    close,
    remembers: () => memory.content !== null,
    async build(request) {
      try {
        const result = await build(request, {
          clock: () => performance.now(),
          progress: () => {},
          printing,
          memory,
        });
        if (result.outcome === 'built') memory = result.memory ?? noMemory();
        if (kept !== null) tellDamaged(kept, terminal);
        return result;
      } catch (error) {
        // Nobody knows what it left behind: the next build makes everything.
        memory = noMemory();
        await close();
        throw error;
      }
    },
  };
}
