import { defineConfig } from 'vitest/config';

// A zone that no developer lives in, so that a forgotten zone fails.
process.env['TZ'] = 'Pacific/Chatham';

export default defineConfig({
  test: {
    root: new URL('..', import.meta.url).pathname,
    include: ['test/**/*.test.ts'],
    setupFiles: ['test/setup.ts'],
    reporters: ['test/reporter.ts'],
    sequence: { shuffle: true },
    testTimeout: 30_000,
    hookTimeout: 60_000,
  },
});
