import { oneSlipFrom } from './one-slip.ts';
import { isOrdinaryWord } from './ordinary-words.ts';

const SHORTEST = 4;
const LONGEST = 16;

/** Is a word one slip of the finger from plain English? Then it is a slip, and names no plant. */
export function isNearOrdinaryWord(word: string): boolean {
  if (word.length < SHORTEST || word.length > LONGEST) return false;
  return oneSlipFrom(word, (slip) => slip.length >= SHORTEST && isOrdinaryWord(slip)) !== undefined;
}
