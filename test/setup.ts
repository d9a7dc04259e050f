import { beforeAll } from 'vitest';

// Tests reach nothing outside this machine and print nothing: both would hide a fault.
beforeAll(() => {
  globalThis.fetch = () => {
    throw new Error('A test called the global fetch; inject a client that speaks to a loopback server.');
  };
  for (const method of ['log', 'info', 'warn', 'error', 'debug'] as const) {
    console[method] = (...words: unknown[]) => {
      throw new Error(`A test wrote to the console: ${words.map(String).join(' ')}`);
    };
  }
});
