import type { Span } from '../span.ts';

/** A question as one line of plain words, numbers in digits, that knows which span each place comes from. */
export interface SpanText {
  readonly text: string;
  readonly spans: readonly Span[];
  /** Where each span begins in `text`. */
  readonly starts: readonly number[];
}

export function spanText(spans: readonly Span[]): SpanText {
  const starts: number[] = [];
  let text = ' ';
  for (const { plain, value } of spans) {
    starts.push(text.length);
    text += `${value === undefined ? plain : String(value)} `;
  }
  return { text, spans, starts };
}

/** Each place where a pattern holds. The pattern is global, begins with a space and ends before one. */
export function matchesIn({ text }: SpanText, pattern: RegExp): readonly RegExpExecArray[] {
  return [...text.matchAll(pattern)];
}

/** The spans that a match touches. */
export function spansOfMatch({ starts }: SpanText, match: RegExpExecArray): readonly number[] {
  const from = match.index;
  const to = match.index + match[0].length;
  return starts.flatMap((start, at) => (start > from && start < to ? [at] : []));
}

/** The same spans with some of them said to mean nothing, so that "10 inches" is no low and snow in the path no cover. */
export function silenced(spans: readonly Span[], which: ReadonlySet<number>): readonly Span[] {
  if (which.size === 0) return spans;
  return spans.map((span, at) => {
    if (!which.has(at)) return span;
    const { value: _, ...rest } = span;
    return { ...rest, kind: 'phrase', senses: [{ kind: 'ordinary' }] };
  });
}
