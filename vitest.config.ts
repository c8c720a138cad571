import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    include: ['test/**/*.test.ts'],
    // One file a core: the default leaves one of two cores idle.
    globalSetup: ['test/shared-folder.ts'],
    maxWorkers: 2,
    testTimeout: 60_000,
    hookTimeout: 120_000,
    env: { TZ: 'Europe/London' },
  },
});
