import type { Cue } from './cue-words-table.ts';
import type { Sense } from './sense.ts';

/** A piece of a question: a phrase of the vocabulary, a number, a mark, or a word that nothing explains. */
export interface Span {
  readonly kind: 'phrase' | 'number' | 'mark' | 'unexplained';
  /** Every meaning that the phrase has; its neighbours decide. */
  readonly senses: readonly Sense[];
  /** As it is looked up, slips of the finger put right. */
  readonly plain: string;
  readonly said: string;
  /** No space before it. */
  readonly glued: boolean;
  /** Of a number. */
  readonly value?: number;
  /** It was read in spite of a slip of the finger. */
  readonly corrected: boolean;
}

type SenseOf<K extends Sense['kind']> = Extract<Sense, { readonly kind: K }>;

/** The meaning of a kind that a span has, if it has one. */
export function senseOf<K extends Sense['kind']>(span: Span | undefined, kind: K): SenseOf<K> | undefined {
  return span?.senses.find((sense): sense is SenseOf<K> => sense.kind === kind);
}

export function isCue(span: Span | undefined, ...cues: readonly Cue[]): boolean {
  return span?.senses.some((sense) => sense.kind === 'cue' && cues.includes(sense.cue)) ?? false;
}

export function isMark(span: Span | undefined, ...marks: readonly string[]): boolean {
  return span?.kind === 'mark' && marks.includes(span.plain);
}
