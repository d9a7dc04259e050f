import type { Clock } from '../ground/clock.ts';
import type { Reply } from '../talk/reply.ts';

/** While a host rehearses, every post says so first: nobody may take it for the weather. */
export function marked(reply: Reply, { rehearsal }: Clock): Reply {
  return rehearsal ? { ...reply, headline: `Rehearsal, not for tonight: ${reply.headline}` } : reply;
}
