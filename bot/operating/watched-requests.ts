import { subscribe, unsubscribe } from 'node:diagnostics_channel';
import type { Metrics } from './metrics.ts';

/** What undici tells of its requests, as far as it is used here. */
interface Told {
  readonly request: { readonly origin?: string | URL };
  readonly response?: { readonly statusCode: number };
}

const ANSWERED = 'undici:request:headers';
const BROKEN = 'undici:request:error';

/**
 * Counts the requests that really go out, whoever sends them: answers that are still fresh cost a service nothing.
 *
 * @param addresses - Addresses by the name under which they are counted; others are not counted.
 * @returns ends the counting.
 */
export function watchRequests(addresses: Readonly<Record<string, string>>, metrics: Metrics): () => void {
  const nameByOrigin = new Map<string, string>();
  for (const [name, address] of Object.entries(addresses)) {
    const { origin } = new URL(address);
    if (!nameByOrigin.has(origin)) nameByOrigin.set(origin, name);
  }
  // An answer that breaks off after its beginning is told twice.
  const counted = new WeakSet<object>();
  const count = ({ request }: Told, outcome: string) => {
    const name = request.origin === undefined ? undefined : nameByOrigin.get(new URL(request.origin).origin);
    if (name === undefined || counted.has(request)) return;
    counted.add(request);
    metrics.requestDone(name, outcome);
  };
  const answered = (message: unknown) => count(message as Told, outcomeOf((message as Told).response?.statusCode ?? 0));
  const broken = (message: unknown) => count(message as Told, 'no-answer');
  subscribe(ANSWERED, answered);
  subscribe(BROKEN, broken);
  return () => {
    unsubscribe(ANSWERED, answered);
    unsubscribe(BROKEN, broken);
  };
}

function outcomeOf(status: number): string {
  if (status === 429) return 'rate-limited';
  if (status === 401 || status === 403) return 'refused';
  if (status >= 500) return 'broken';
  return status >= 400 ? 'not-understood' : 'answered';
}
