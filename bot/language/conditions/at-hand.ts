import { matchesIn, type SpanText } from './span-text.ts';

const OWNED =
  / (?:i have|ive got|i got|weve got|we have|i also have|have|got) (?:\S+ ){1,14}?(?:in the (?:shed|garage|barn|house|attic)|on hand|to hand|at hand|to spare|spare)(?= )/g;
const ALL_THERE_IS =
  / (?:what (?:do )?i have|what have i got|what ive got|only thing i have(?: is)?|all i have(?: is)?)(?= ).*/g;

export interface AtHandRead {
  /** Spans of what lies in the shed, not on the bed. */
  readonly at: readonly number[];
  /** "another in the shed": one more of what lies there already. */
  readonly another: boolean;
}

/** What somebody has to lay on, as against what lies there already. */
export function readAtHand(read: SpanText): AtHandRead {
  const found = [...matchesIn(read, OWNED), ...matchesIn(read, ALL_THERE_IS)];
  const at = found.flatMap((match) =>
    read.starts.flatMap((start, span) => (start > match.index && start < match.index + match[0].length ? [span] : [])),
  );
  return { at, another: found.some(([text]) => / (?:another|a second|one more) /.test(`${text} `)) };
}
