import type { TypedQuestion } from './typed-questions.ts';

/** A question with one slip of the finger in it. */
export interface Mistyped {
  readonly question: TypedQuestion;
  readonly ask: string;
}

/** Two letters leave nothing to be told from: "no" and "on". */
const SHORTEST_MISTYPED = 4;

/** `count` questions with one typo each, the same every time. Numbers and words of three letters stay as they are. */
export function mistyped(questions: readonly TypedQuestion[], count: number, seed: number): readonly Mistyped[] {
  const next = randomFrom(seed);
  return Array.from({ length: count }, (_, index) => {
    const question = questions[index % questions.length];
    if (question === undefined) throw new RangeError('mistyped: there must be questions to begin with');
    return { question, ask: withOneTypo(question.ask, next) };
  });
}

function withOneTypo(text: string, next: () => number): string {
  const words = [...text.matchAll(/[a-z]+/gi)].filter(([word]) => word.length >= SHORTEST_MISTYPED);
  const match = words[Math.floor(next() * words.length)];
  if (match === undefined) return text;
  const [word] = match;
  return text.slice(0, match.index) + slipped(word, next) + text.slice(match.index + word.length);
}

/** A letter left out, doubled, swapped with its neighbour or mistaken for another; the first stays. */
function slipped(word: string, next: () => number): string {
  const at = 1 + Math.floor(next() * (word.length - 2));
  const [front, letter, back] = [word.slice(0, at), word.charAt(at), word.slice(at + 1)];
  const other = String.fromCharCode(97 + Math.floor(next() * 26));
  const slips = [
    front + back,
    front + letter + letter + back,
    front + back.charAt(0) + letter + back.slice(1),
    front + other + back,
  ];
  return slips[Math.floor(next() * slips.length)] ?? word;
}

/** Linear congruential generator (Numerical Recipes, "quick and dirty"): enough to pick letters. */
function randomFrom(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0;
    return state / 2 ** 32;
  };
}
