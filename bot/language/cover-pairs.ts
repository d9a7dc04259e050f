import { slipsBetween } from './edit-distance.ts';

/** The names of covers that have two words: second words by the first, first words by the second. */
export interface CoverPairs {
  readonly seconds: ReadonlyMap<string, readonly string[]>;
  readonly firsts: ReadonlyMap<string, readonly string[]>;
}

export function coverPairs(phrases: readonly string[]): CoverPairs {
  const seconds = new Map<string, string[]>();
  const firsts = new Map<string, string[]>();
  for (const [first, second, ...rest] of phrases.map((phrase) => phrase.split(' '))) {
    if (first === undefined || second === undefined || rest.length > 0 || !FIRSTS.has(first)) continue;
    seconds.set(first, [...(seconds.get(first) ?? []), second]);
    firsts.set(second, [...(firsts.get(second) ?? []), first]);
  }
  return { seconds, firsts };
}

/** First words that say a cover is meant, whatever comes next. */
const FIRSTS: ReadonlySet<string> = new Set('cold row low high hoop frost garden plant bed poly winter'.split(' '));

/** Words one letter from part of a cover's name that are meant as they stand. */
const MEANT: ReadonlySet<string> = new Set(
  'over old cold crow now how house houses cover covers frame tunnel time from sheets light lights'.split(' '),
);

const SHORTEST = 3;

/**
 * Words with the slips put right that only the neighbour shows: "cold fame", "rwo cover", "row clover". The rest stays as
 * it is. `isKnown` tells the words that stand for themselves.
 */
export function withPairsMended(words: readonly string[], { seconds, firsts }: CoverPairs): readonly string[] {
  return words.map((word, at) => {
    if (word.length < SHORTEST || MEANT.has(word)) return word;
    if (isLaidUnder(words, at)) return nearest(word, LAID) ?? word;
    return nearest(word, seconds.get(words[at - 1] ?? '')) ?? nearest(word, firsts.get(words[at + 1] ?? '')) ?? word;
  });
}

/** What stands there can hardly be anything else: "under a trap". */
function isLaidUnder(words: readonly string[], at: number): boolean {
  return (
    ['a', 'an', 'the', 'my', 'our'].includes(words[at - 1] ?? '') &&
    /^(under|beneath|underneath)$/.test(words[at - 2] ?? '')
  );
}

const LAID: readonly string[] = [
  'tarp',
  'quilt',
  'blanket',
  'fleece',
  'sheet',
  'tunnel',
  'frame',
  'cover',
  'cloche',
  'duvet',
  'comforter',
];

/** The one candidate a slip away, where the word is none of them itself. */
function nearest(word: string, candidates: readonly string[] | undefined): string | undefined {
  if (candidates === undefined || candidates.includes(word)) return undefined;
  return candidates.find((candidate) => candidate.length >= SHORTEST && slipsBetween(word, candidate, 1) === 1);
}
