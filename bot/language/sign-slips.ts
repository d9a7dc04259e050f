import { OTHER_NUMBERS, TEN_NUMBERS, UNIT_NUMBERS } from './number-words-table.ts';

/** Words of their own that before a number are a slip for "minus"; minutes would stand behind theirs. */
const SLIPS: ReadonlySet<string> = new Set(['mins', 'mints']);

/** Words with "mins 3" and "mints nine" read as minus: the colder reading of a slip. */
export function withSignsMended(words: readonly string[]): readonly string[] {
  return words.map((word, at) =>
    SLIPS.has(word) && isNumber(words[at + 1]) && !isNumber(words[at - 1]) ? 'minus' : word,
  );
}

function isNumber(word = ''): boolean {
  return /^\d/.test(word) || UNIT_NUMBERS.has(word) || TEN_NUMBERS.has(word) || OTHER_NUMBERS.has(word);
}
