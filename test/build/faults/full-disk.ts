/**
 * A disk that is full from its n-th write on, below one folder: the write that meets the end gets half of its bytes
 * down, all later ones nothing; renaming and deleting go on working, as they do on a real one. Other folders are not
 * touched, so that the test runner can go about its work.
 */
import fs from 'node:fs';
import { syncBuiltinESMExports } from 'node:module';

type Anything = (...args: never[]) => unknown;
type Writer = (path: unknown, ...rest: unknown[]) => unknown;

export interface FullDisk {
  /** Writes so far below the folder, refused ones too. */
  writes(): number;
  /** Makes room again. */
  end(): void;
}

const noSpace = (path: string): NodeJS.ErrnoException =>
  Object.assign(new Error(`ENOSPC: no space left on device, write '${path}'`), { code: 'ENOSPC', path });

const half = (content: unknown): unknown =>
  typeof content === 'string' || content instanceof Uint8Array
    ? content.slice(0, Math.floor(content.length / 2))
    : '';

const isForWriting = (flags: unknown): boolean => typeof flags === 'string' && /[wa]|\+/.test(flags);

/** Fills the disk below `folder` before its write number `at`, counted from 1. */
export function fillDisk(folder: string, at: number): FullDisk {
  let writes = 0;
  const open = new Map<number, string>();
  const pathOf = (target: unknown): string | null => {
    const path = typeof target === 'number' ? open.get(target) : String(target);
    return path?.startsWith(folder) ? path : null;
  };
  /** The path that has no room, or null: counts the write. */
  const refused = (target: unknown): string | null => {
    const path = pathOf(target);
    if (path === null) return null;
    writes += 1;
    return writes < at ? null : path;
  };
  const undo: (() => void)[] = [];
  const replace = <K extends string>(
    owner: Record<K, Anything>,
    name: K,
    make: (real: Writer) => Writer,
  ): void => {
    const real = owner[name];
    owner[name] = make(real as Writer) as Anything;
    undo.push(() => {
      owner[name] = real;
    });
  };
  const sync = fs as unknown as Record<string, Anything>;
  const later = fs.promises as unknown as Record<string, Anything>;

  replace(sync, 'openSync', (real) => (path, flags, ...rest) => {
    const file = real(path, flags, ...rest) as number;
    if (isForWriting(flags)) open.set(file, String(path));
    return file;
  });
  for (const name of ['writeFileSync', 'writeSync'])
    replace(sync, name, (real) => (target, content, ...rest) => {
      const full = refused(target);
      if (full === null) return real(target, content, ...rest);
      // A write that names its length is left out whole: half of its bytes would not be that long.
      if (writes === at && typeof rest[1] !== 'number') real(target, half(content), ...rest);
      throw noSpace(full);
    });
  replace(sync, 'mkdirSync', (real) => (path, ...rest) => {
    const full = fs.existsSync(String(path)) ? null : refused(path);
    if (full !== null) throw noSpace(full);
    return real(path, ...rest);
  });
  replace(later, 'writeFile', (real) => async (target, content, ...rest) => {
    const full = refused(target);
    if (full === null) return real(target, content, ...rest);
    if (writes === at) await real(target, half(content), ...rest);
    throw noSpace(full);
  });
  replace(later, 'mkdir', (real) => async (path, ...rest) => {
    const full = fs.existsSync(String(path)) ? null : refused(path);
    if (full !== null) throw noSpace(full);
    return real(path, ...rest);
  });
  syncBuiltinESMExports();
  return {
    writes: () => writes,
    end() {
      for (const step of undo) step();
      syncBuiltinESMExports();
    },
  };
}
