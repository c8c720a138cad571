/** Builds one after another: saves that arrive while a build runs ask for one more, not for one each. */
export interface Rebuilds {
  /** After a quiet while. */
  ask(): void;
  /** At once, or when the build that runs has ended. */
  now(): void;
  /** Resolves when nothing is running or waiting. */
  settled(): Promise<void>;
}

/** `build` must not reject; `quietMs` is how long the files must have been quiet before it starts. */
export function queueRebuilds(build: () => Promise<void>, quietMs: number): Rebuilds {
  let timer: NodeJS.Timeout | null = null;
  let running: Promise<void> | null = null;
  let waiting = false;
  const start = (): void => {
    if (timer !== null) clearTimeout(timer);
    timer = null;
    if (running !== null) {
      waiting = true;
      return;
    }
    running = build().finally(() => {
      running = null;
      if (waiting) start();
      waiting = false;
    });
  };
  return {
    now: start,
    ask() {
      if (timer !== null) clearTimeout(timer);
      timer = setTimeout(start, quietMs);
    },
    async settled() {
      while (timer !== null || running !== null)
        await (running ?? new Promise((next) => setTimeout(next, quietMs)));
    },
  };
}
