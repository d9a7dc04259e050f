import { wordsOf } from './phrases.ts';
import { isCue, isMark, type Span, senseOf } from './span.ts';
import type { SaidBeds } from './understood.ts';

/** Which of the asker's own beds a question names. Linear: each name is looked for once at each word. */
export function readBeds(spans: readonly Span[], bedNames: readonly string[]): SaidBeds {
  const numbers = spans.flatMap((span, at) => (senseOf(span, 'bed') ? numbersAfter(spans, at + 1) : []));
  const words = spans.flatMap(({ plain }) => plain.split(' '));
  const named = bedNames.filter((name) => holds(words, wordsOf(name)));
  const mine = numbers.length > 0 || named.length > 0 || spans.some((_, at) => isOfMine(spans, at));
  return { mine, numbers: [...new Set(numbers)], named };
}

/** How many words may stand between "my" and what is mine. */
const REACH_OF_MINE = 4;

/** "my chard", "I've got some kale", "my beds"; not "my car". */
function isOfMine(spans: readonly Span[], at: number): boolean {
  if (!isCue(spans[at], 'mine')) return false;
  return spans[at]?.plain === 'mine' || spans.slice(at + 1, at + 1 + REACH_OF_MINE).some(isOfGarden);
}

function isOfGarden(span: Span): boolean {
  if (span.kind === 'unexplained' || isCue(span, 'garden', 'lid', 'everything')) return true;
  return OF_GARDEN.some((kind) => senseOf(span, kind) !== undefined);
}

const OF_GARDEN = ['crop', 'plant', 'cover', 'bed', 'state', 'hazard'] as const;

function numbersAfter(spans: readonly Span[], from: number): readonly number[] {
  let at = from;
  while (isMark(spans[at], '#') || ['no', 'number', 'nr'].includes(spans[at]?.plain ?? '')) at += 1;
  const numbers: number[] = [];
  for (;;) {
    const value = spans[at]?.value;
    if (value === undefined || !Number.isInteger(value) || value < 1) return numbers;
    numbers.push(value);
    if (!(isCue(spans[at + 1], 'and') || isMark(spans[at + 1], ',', '&'))) return numbers;
    at += 2;
  }
}

function holds(words: readonly string[], name: readonly string[]): boolean {
  if (name.length === 0) return false;
  return words.some((_, from) => name.every((word, index) => words[from + index] === word));
}
