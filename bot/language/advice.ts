import type { AdviceKey } from '../../rules/index.ts';
import { ADVICE_WORDS } from './advice-words-table.ts';
import type { Facts } from './facts.ts';
import { phrasesOf } from './phrases.ts';

/** Which piece of advice a question asks for, if it does; a low or a night to come is a question for that night's figures. */
export function readAdvice({ spans, hasLow, when }: Pick<Facts, 'spans' | 'hasLow' | 'when'>): AdviceKey | undefined {
  const text = ` ${spans
    .filter(({ kind }) => kind !== 'mark')
    .map(({ plain }) => plain)
    .join(' ')} `;
  const isAhead = when !== undefined && !['now', 'today', 'morning', 'last-night'].includes(when);
  const isOfFigures = (hasLow || isAhead) && !PAST.test(text);
  const fits = MATCHERS.filter(
    ({ says, unless }) => says.every((any) => any.test(text)) && !(unless?.test(text) ?? false),
  );
  const found = fits.find(({ key }) => !isOfFigures || (hasLow ? WHATEVER_THE_LOW : OF_A_NIGHT_TO_COME).has(key));
  return found?.key;
}

/** What has happened already, whatever low and night are named with it. */
const PAST =
  / (?:turned|got|went|froze|blackened|collapsed|flopped|last night|after a \d+|it was|black overnight|forgot to|froze last) /;

/** True of any low. */
const WHATEVER_THE_LOW: ReadonlySet<AdviceKey> = new Set<AdviceKey>([
  'sprinkle-plants',
  'rinse-frost',
  'late-evening',
  'pots-in',
  'straw-no-cure',
  'shovel-snow',
  'plastic-tarp',
  'mulch-back',
]);
const OF_A_NIGHT_TO_COME: ReadonlySet<AdviceKey> = new Set<AdviceKey>([
  ...WHATEVER_THE_LOW,
  'water-soil',
  'snow-blanket',
  'snow-off-plants',
  'hole-in-cover',
  'loose-soil',
  'led-lights',
]);

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
