import { ORDINARY_ENGLISH } from './ordinary-words-table.ts';

const ENDINGS: readonly (readonly [ending: string, instead: string])[] = [
  ['', ''],
  ['s', ''],
  ['es', ''],
  ['ies', 'y'],
  ['ed', ''],
  ['d', ''],
  ['ing', ''],
  ['ing', 'e'],
  ['ly', ''],
  ['er', ''],
  ['r', ''],
  ['est', ''],
  ['st', ''],
  ['y', ''],
  ['ish', ''],
];

/** Words of one or two letters name no plant. */
const SHORTEST_TELLING = 3;

const WORDS: ReadonlySet<string> = new Set(ORDINARY_ENGLISH.trim().split(/\s+/));

/** Is this plain English, in any of its usual endings? */
export function isOrdinaryWord(plain: string): boolean {
  if (plain.length < SHORTEST_TELLING) return /^[a-z]/.test(plain);
  return ENDINGS.some(([ending, instead]) => {
    if (!plain.endsWith(ending) || plain.length - ending.length < 2) return false;
    const stem = plain.slice(0, plain.length - ending.length) + instead;
    return WORDS.has(stem) || (ending.length > 1 && isDoubled(stem) && WORDS.has(stem.slice(0, -1)));
  });
}

/** "stopp" of "stopping". */
function isDoubled(stem: string): boolean {
  return stem.length > 3 && stem.at(-1) === stem.at(-2);
}
