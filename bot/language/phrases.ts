import { tokensOf } from './tokens.ts';

/** The phrases of a table row: parted by commas; with `fronts`, each of those before each of them. */
export function phrasesOf(row: string, fronts?: string): readonly string[] {
  const phrases = row.split(',').map((phrase) => phrase.trim());
  if (fronts === undefined) return phrases;
  return phrasesOf(fronts).flatMap((front) => phrases.map((phrase) => `${front} ${phrase}`));
}

/** The words of a phrase as they are looked up. */
export function wordsOf(phrase: string): readonly string[] {
  return tokensOf(phrase).map(({ plain }) => plain);
}

/** A name, its singular or plural, and each as one word where people write it so: "cold frame", "coldframes". */
export function spellingsOf(phrase: string): readonly string[] {
  const words = wordsOf(phrase);
  const last = words.at(-1) ?? '';
  const front = words.slice(0, -1);
  const counted = [last, ...pluralsOf(last), ...singularsOf(last)].map((word) => [...front, word]);
  const isJoinable = words.length === 2 && words.every((word) => word.length >= SHORTEST_JOINED);
  const joined = isJoinable ? counted.map((each) => [each.join('')]) : [];
  return [...counted, ...joined].map((each) => each.join(' '));
}

const SHORTEST_JOINED = 3;

function pluralsOf(word: string): readonly string[] {
  if (word.endsWith('s') && !word.endsWith('ss')) return [];
  if (/(ss|x|ch|sh|o)$/.test(word)) return [`${word}es`, `${word}s`];
  if (/[^aeiou]y$/.test(word)) return [`${word.slice(0, -1)}ies`, `${word}s`];
  return [`${word}s`];
}

function singularsOf(word: string): readonly string[] {
  return word.length > 4 && /[^su]s$/.test(word) ? [word.slice(0, -1)] : [];
}
