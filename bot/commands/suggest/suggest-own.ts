import { plainPhrase } from '../../../rules/index.ts';
import type { Suggestion } from '../command.ts';
import type { OwnThing } from '../meant.ts';
import { matching } from './matching.ts';

const MOST = 25;

/** A member's own things by what is typed of their names. */
export function suggestOwn(typed: string, own: readonly OwnThing[]): readonly Suggestion[] {
  const entries = own.map((thing) => ({ of: thing, phrases: [plainPhrase(thing.label)] }));
  return matching(typed, entries)
    .slice(0, MOST)
    .map(({ id, label }) => ({ label, value: id }));
}
