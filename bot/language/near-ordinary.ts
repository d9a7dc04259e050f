import { isOrdinaryWord } from './ordinary-words.ts';

const LETTERS = 'abcdefghijklmnopqrstuvwxyz';
const LONGEST = 16;

/** Is a word one slip of the finger from plain English? Then it is a slip, and names no plant. */
export function isNearOrdinaryWord(word: string): boolean {
  if (word.length > LONGEST) return false;
  for (let at = 0; at <= word.length; at += 1) {
    if (slipsAt(word, at).some(isOrdinaryWord)) return true;
  }
  return false;
}

/** With a letter left out, swapped, mistaken or added at a place. */
function slipsAt(word: string, at: number): readonly string[] {
  const [front, back] = [word.slice(0, at), word.slice(at)];
  const changed = [...LETTERS].flatMap((letter) => [
    front + letter + back,
    ...(back ? [front + letter + back.slice(1)] : []),
  ]);
  if (back.length > 0) changed.push(front + back.slice(1));
  if (back.length > 1) changed.push(front + back.charAt(1) + back.charAt(0) + back.slice(2));
  return changed.filter((slip) => slip.length >= SHORTEST);
}

/** Shorter words pass for ordinary whatever they are. */
const SHORTEST = 4;
