import { defineConfig } from 'vitest/config';
import { LongFirst } from './test/long-first.ts';

export default defineConfig({
  test: {
    include: ['test/**/*.test.ts'],
    // One file a core: the default leaves one of two cores idle.
    globalSetup: ['test/shared-folder.ts'],
    maxWorkers: 2,
    sequence: { sequencer: LongFirst },
    // Loading the program and its libraries anew for each of a hundred files took a third of the run; nothing is
    // mocked here, and what modules keep to themselves is never wrong for being shared.
    isolate: false,
    // Builds and browsers share two cores with each other: slow is not broken.
    testTimeout: 240_000,
    hookTimeout: 240_000,
    env: { TZ: 'Europe/London' },
  },
});
