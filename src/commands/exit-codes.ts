/** What a script may rely on after a command: stable. */
export const EXIT = {
  done: 0,
  /** Something in the content files is wrong. */
  badContent: 1,
  /** The command line itself is wrong: an option, a SPEC, an unknown id. */
  usage: 2,
  /** Anything else: a full disk, another build running, a bug. */
  unexpected: 3,
} as const;

export type ExitCode = (typeof EXIT)[keyof typeof EXIT];
