import { availableParallelism } from 'node:os';
import { defineConfig } from 'vitest/config';

// A zone that no developer lives in, so that a forgotten zone fails.
process.env['TZ'] = 'Pacific/Chatham';

export default defineConfig({
  test: {
    root: new URL('..', import.meta.url).pathname,
    include: ['test/**/*.test.ts'],
    setupFiles: ['test/setup.ts'],
    reporters: ['test/reporter.ts'],
    // Many tests wait for processes and sockets, so that two go on at once even on a small machine.
    maxWorkers: Math.max(2, availableParallelism() - 1),
    sequence: { shuffle: true },
    testTimeout: 30_000,
    hookTimeout: 60_000,
  },
});
