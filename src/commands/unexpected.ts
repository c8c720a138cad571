/** What to say when something failed that no content file and no command line is to blame for. */

/** A failure that we foresaw and can explain; its message is meant for the baker. */
export class Stopped extends Error {}

const BY_CODE: Record<string, string> = {
  ENOSPC: 'The disk is full. Make room and run the command again; the previous output is still there.',
  EDQUOT:
    'The disk quota is used up. Make room and run the command again; the previous output is still there.',
  EROFS: 'The disk is read-only. Choose another folder with --output.',
  EACCES:
    'No permission. Check who owns it, or choose another folder (--content for reading, --output for writing).',
  EPERM:
    'No permission. Check who owns it, or choose another folder (--content for reading, --output for writing).',
  ENOTDIR: 'A file stands where a folder is needed. Choose another folder with --output.',
  EADDRINUSE: 'That port is taken. Choose another one with --port.',
  EMFILE: 'Too many files are open. Close other programs, or raise the limit with ulimit -n.',
};

/** The error, with a path where the system refused a write and did not say where. */
export function withPlace(error: unknown, path: string): unknown {
  if (!(error instanceof Error)) return error;
  const system = error as NodeJS.ErrnoException & { originalError?: unknown };
  if (system.code !== undefined && BY_CODE[system.code] !== undefined) system.path ??= path;
  for (const inner of [system.cause, system.originalError]) withPlace(inner, path);
  return error;
}

/** What the system refused, also where a library has wrapped it in an error of its own; null when it is none of these. */
function knownFailure(error: unknown): string | null {
  if (!(error instanceof Error)) return null;
  const { code, path, cause, originalError } = error as NodeJS.ErrnoException & { originalError?: unknown };
  const advice = code === undefined ? undefined : BY_CODE[code];
  if (advice !== undefined) return `${path ? `${path}: ` : ''}${advice}`;
  return knownFailure(cause) ?? knownFailure(originalError);
}

/** One or two lines for the terminal; the stack only when TINWRIGHT_DEBUG is set. */
export function unexpectedText(error: unknown): string {
  if (!(error instanceof Error)) return `error: ${String(error)}`;
  if (process.env.TINWRIGHT_DEBUG) return error.stack ?? error.message;
  if (error instanceof Stopped) return `error: ${error.message}`;
  const known = knownFailure(error);
  if (known !== null) return `error: ${known}`;
  return `error: ${error.message}\n    This should not happen. Set TINWRIGHT_DEBUG=1 to see where, and please report it.`;
}
