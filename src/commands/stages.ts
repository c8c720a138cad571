/** Names what a build is doing and measures how long it takes; the clock is passed in. */
export interface Stages {
  run<T>(name: string, work: () => T | Promise<T>): Promise<T>;
  /** Milliseconds by stage, in the order they ran, and in all. */
  milliseconds(): Record<string, number>;
}

export interface StageEffects {
  /** Milliseconds from any start. */
  clock(): number;
  /** Told when a stage starts. */
  progress(stage: string): void;
}

/** Stages of one build. */
export function startStages({ clock, progress }: StageEffects): Stages {
  const start = clock();
  const taken: Record<string, number> = {};
  return {
    async run(name, work) {
      progress(name);
      const before = clock();
      const result = await work();
      taken[name] = Math.round(clock() - before);
      return result;
    },
    milliseconds: () => ({ ...taken, all: Math.round(clock() - start) }),
  };
}
