import type { CropWords } from './crop-entries.ts';
import { slipsBetween } from './edit-distance.ts';
import { wordsOf } from './phrases.ts';

/** Long enough for any name in the table. */
const LONGEST_NAME = 24;

/**
 * The crops whose names are most like a word that names none, nearest first. Names that share a whole word come before
 * names that only look alike.
 */
export function nearestCrops(said: string, { names }: CropWords, most = 3): readonly string[] {
  const words = wordsOf(said.slice(0, 2 * LONGEST_NAME));
  const plain = words.join(' ').slice(0, LONGEST_NAME);
  const scored = names
    .filter(({ kind }) => kind === 'name' || kind === 'alias')
    .map(({ cropId, phrase }) => ({ cropId, unlike: unlikeness(plain, words, phrase) }))
    .sort((one, other) => one.unlike - other.unlike);
  return [...new Set(scored.map(({ cropId }) => cropId))].slice(0, most);
}

/** 0 for the same word, 1 for nothing in common. */
function unlikeness(plain: string, words: readonly string[], phrase: string): number {
  const length = Math.max(plain.length, phrase.length, 1);
  const slips = slipsBetween(plain, phrase, length) / length;
  return phrase.split(' ').some((word) => word.length > 3 && words.includes(word)) ? slips / 2 : slips;
}
