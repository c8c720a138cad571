/** Where a command speaks. Passed in, so that a test can listen. */
export interface Terminal {
  /** The answer: standard output. */
  say(text: string): void;
  /** Errors, warnings and progress: standard error. */
  tell(text: string): void;
  /** Whether somebody is watching standard error: progress is for them only. */
  watched: boolean;
}

/** The terminal that the program was started in. A reader that stops listening (`| head`) is no error. */
export function processTerminal(): Terminal {
  process.stdout.on('error', (error: NodeJS.ErrnoException) => {
    if (error.code !== 'EPIPE') throw error;
  });
  return {
    say: (text) => process.stdout.write(`${text}\n`),
    tell: (text) => process.stderr.write(`${text}\n`),
    watched: process.stderr.isTTY === true,
  };
}
