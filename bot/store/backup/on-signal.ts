import { rmSync } from 'node:fs';

const SIGNALS = ['SIGINT', 'SIGTERM', 'SIGHUP'] as const;

/** Does the work; whether it ends, fails or is broken off by Ctrl-C, nothing of these stays: members' coordinates are inside. */
export async function leavingNothing<T>(paths: readonly string[], work: () => Promise<T>): Promise<T> {
  const clear = () => {
    for (const path of paths) rmSync(path, { recursive: true, force: true });
  };
  const brokenOff = (signal: NodeJS.Signals) => {
    clear();
    // Its listener is gone by now, so that it ends the program as it usually does.
    process.kill(process.pid, signal);
  };
  for (const signal of SIGNALS) process.once(signal, brokenOff);
  try {
    return await work();
  } finally {
    for (const signal of SIGNALS) process.off(signal, brokenOff);
    clear();
  }
}
