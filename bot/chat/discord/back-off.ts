import { setTimeout as pause } from 'node:timers/promises';

/** How waits between attempts grow. */
export interface BackOff {
  readonly firstMs: number;
  readonly mostMs: number;
}

/** Doubling waits with jitter, so that many processes do not come back in step. */
export function waitMs(attempt: number, { firstMs, mostMs }: BackOff, random = Math.random): number {
  const full = Math.min(mostMs, firstMs * 2 ** Math.min(attempt - 1, 20));
  return full * (0.5 + random() / 2);
}

/** False when the signal came first. */
export async function waited(ms: number, signal?: AbortSignal): Promise<boolean> {
  try {
    await pause(ms, undefined, signal === undefined ? {} : { signal });
    return true;
  } catch {
    return false;
  }
}
