import type { AdviceKey } from '../../rules/index.ts';
import { ADVICE_WORDS } from './advice-words-table.ts';
import type { Facts } from './facts.ts';
import { phrasesOf } from './phrases.ts';

/** Which piece of advice a question asks for, if it does; a low or a night that is named is a question about one to come. */
export function readAdvice({ spans, hasLow, when }: Pick<Facts, 'spans' | 'hasLow' | 'when'>): AdviceKey | undefined {
  const text = ` ${spans
    .filter(({ kind }) => kind !== 'mark')
    .map(({ plain }) => plain)
    .join(' ')} `;
  const isAhead = when !== undefined && !['now', 'today', 'morning', 'last-night'].includes(when);
  const found = MATCHERS.find(
    ({ says, unless }) => says.every((any) => any.test(text)) && !(unless?.test(text) ?? false),
  );
  if (found === undefined) return undefined;
  if (hasLow) return found.key === 'sprinkle-plants' ? found.key : undefined;
  return isAhead && !OF_A_NIGHT_TO_COME.has(found.key) ? undefined : found.key;
}

const OF_A_NIGHT_TO_COME: ReadonlySet<AdviceKey> = new Set<AdviceKey>(['sprinkle-plants', 'water-soil']);

/** Whole phrases between spaces; a `*` lets the last word go on. Nothing here can back-track. */
function anyOf(row: string): RegExp {
  const phrases = phrasesOf(row).map((phrase) => (phrase.endsWith('*') ? `${phrase.slice(0, -1)}\\S*` : phrase));
  return new RegExp(` (?:${phrases.join('|')}) `);
}

const MATCHERS = ADVICE_WORDS.map(({ key, says, unless }) => ({
  key,
  says: says.map(anyOf),
  unless: unless === undefined ? undefined : anyOf(unless),
}));
