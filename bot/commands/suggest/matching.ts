import { plainPhrase } from '../../../rules/index.ts';
import { slipsBetween } from '../../language/edit-distance.ts';

/** Something that can be suggested, by all the ways to say it, as `plainPhrase` leaves them. */
export interface Entry<T> {
  readonly of: T;
  readonly phrases: readonly string[];
}

/** Longer fragments are no names any more. */
const LONGEST_FRAGMENT = 40;
const UNLIKE = 4;

/** What a fragment may be the beginning of, likeliest first; slips of the finger are forgiven. */
export function matching<T>(typed: string, entries: readonly Entry<T>[]): readonly T[] {
  const fragment = plainPhrase(typed.slice(0, LONGEST_FRAGMENT));
  if (fragment === '') return entries.map((entry) => entry.of);
  return entries
    .map((entry) => ({
      of: entry.of,
      unlike: Math.min(...entry.phrases.map((phrase) => unlikeness(fragment, phrase))),
    }))
    .filter(({ unlike }) => unlike < UNLIKE)
    .sort((one, other) => one.unlike - other.unlike)
    .map(({ of }) => of);
}

function unlikeness(fragment: string, phrase: string): number {
  if (phrase === fragment) return 0;
  if (phrase.startsWith(fragment)) return 1;
  if (phrase.includes(` ${fragment}`)) return 2;
  const most = slipsAllowed(fragment.length);
  if (most === 0) return UNLIKE;
  const begun = slipsBetween(fragment, phrase.slice(0, fragment.length), most) <= most;
  return begun || slipsBetween(fragment, phrase, most) <= most ? 3 : UNLIKE;
}

/** Shorter words have too many neighbours. */
function slipsAllowed(length: number): number {
  if (length < 4) return 0;
  return length < 8 ? 1 : 2;
}
