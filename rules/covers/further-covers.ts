import { COVER_KEYS, type CoverKey } from './cover-key.ts';
import { isSoft, isUsualOrder } from './cover-order.ts';
import { COVERS } from './cover-table.ts';

/** Going under something that already lies there takes lifting it (judgement). */
const EFFORT_TO_LIFT = 0.5;
/** What most growers can lay hands on this afternoon, where nobody said what is in the shed (judgement). */
const COMMON_SPARES: readonly CoverKey[] = [
  'row-cover-medium',
  'row-cover-heavy',
  'sheet',
  'blanket',
  'quilt',
  'tarp',
  'straw',
  'low-tunnel',
  'hoops',
];

/** A bed with one more cover. */
export interface FurtherCover {
  /** The whole stack, from outside to inside. */
  readonly keys: readonly CoverKey[];
  /** What was added, hoops included. */
  readonly added: readonly CoverKey[];
  /** Trouble to add it: 1 is fetching a blanket. */
  readonly effort: number;
}

/**
 * Ways to lay one more cover on a bed, cheapest effort first.
 *
 * @param keys - What lies there, from outside to inside; a sound order.
 * @param available - What is at hand besides; what most growers have when absent. `hoops` among them let a soft cover be held up.
 * @returns Usual stacks with exactly one more cover, with or without hoops for it; equal efforts in the order of the cover keys,
 * and the same cover further out first. Whether it helps tonight is for the energy balance to say.
 */
export function furtherCovers(
  keys: readonly CoverKey[],
  available: readonly CoverKey[] = COMMON_SPARES,
): readonly FurtherCover[] {
  const additions = COVER_KEYS.filter((key) => key !== 'hoops' && key !== 'jugs' && available.includes(key)).flatMap(
    (key) => (isSoft(key) && available.includes('hoops') ? [[key], [key, 'hoops'] as const] : [[key]]),
  );
  const found = new Map<string, FurtherCover>();
  for (const added of additions) {
    for (let at = 0; at <= keys.length; at += 1) {
      const further = keys.toSpliced(at, 0, ...added);
      const name = further.join();
      if (isUsualOrder(further) && !found.has(name))
        found.set(name, { keys: further, added, effort: effortOf(added, at) });
    }
  }
  return [...found.values()].toSorted((one, other) => one.effort - other.effort);
}

function effortOf(added: readonly CoverKey[], at: number): number {
  const effort = added.reduce((sum, key) => sum + (COVERS[key].effort ?? Number.POSITIVE_INFINITY), 0);
  return at === 0 ? effort : effort + EFFORT_TO_LIFT;
}
