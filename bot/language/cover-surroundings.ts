import { isCue, type Span, senseOf } from './span.ts';

/** The words around a cover, as the tables of {@link standingOf} look at them: single spaces, what is named made one word. */
export interface Surroundings {
  /** In its own clause, without the words that belong to the cover itself ("the", "old", "two layers of"). */
  readonly before: string;
  readonly after: string;
  /** All that follows, whatever the clause, up to the next cover. */
  readonly later: string;
  /** What stands right behind it, across marks: "blanket: no". */
  readonly behind: string;
}

/** Words looked at on each side; bounds the work on a long text. */
const REACH = 14;

/** Where a new clause begins; "and" goes on with the old one. */
const CLAUSE_ENDS: ReadonlySet<string> = new Set(
  '. ! ? ; , ( ) but so because cause cuz though although however while whereas except otherwise'.split(' '),
);

/** `covers`: places of the covers named. */
export function surroundingsOf(spans: readonly Span[], at: number, covers: ReadonlySet<number>): Surroundings {
  const named = (index: number) => namedWord(spans, index, covers);
  const before: string[] = [];
  let from = at - 1;
  while (from >= at - LONGEST_LEAD && isLead(spans, from)) from -= 1;
  for (; from >= Math.max(0, at - REACH); from -= 1) before.unshift(...named(from));
  const after: string[] = [];
  for (let index = at + 1; index < Math.min(spans.length, at + 1 + REACH); index += 1) after.push(...named(index));
  const cut = before.findLastIndex((word, index) => CLAUSE_ENDS.has(word) && !joinsCovers(before, index));
  const end = after.findIndex((word) => CLAUSE_ENDS.has(word));
  const next = after.indexOf(COVER);
  return {
    before: before.slice(cut + 1).join(' '),
    after: after.slice(0, end < 0 ? after.length : end).join(' '),
    later: after.slice(0, next < 0 ? after.length : next).join(' '),
    behind: after.slice(0, 4).join(' '),
  };
}

export const COVER = 'COVER';

/** "no blanket, fleece or sheet": such a comma lists. */
function joinsCovers(words: readonly string[], at: number): boolean {
  return words[at] === ',' && words[at - 1] === COVER && (at === words.length - 1 || words[at + 1] === COVER);
}

const LONGEST_LEAD = 5;

const LEAD_WORDS: ReadonlySet<string> = new Set(
  (
    'the a an my our your any some this that these those old new big small thin thick light heavy wool woollen cotton cheap ' +
    'spare own second extra usual good decent proper single double plain'
  ).split(' '),
);

/** An article or adjective of the cover: "the old", "two layers of". */
function isLead(spans: readonly Span[], at: number): boolean {
  const span = spans[at];
  if (span === undefined || span.kind === 'mark' || isCue(span, 'without') || span.value === 0) return false;
  if (span.plain === 'of') return isMeasure(spans[at - 1]);
  return span.kind === 'number' || LEAD_WORDS.has(span.plain) || isMeasure(span);
}

/** "layers", "thick", "0.55 oz", "3 inches". */
function isMeasure(span: Span | undefined): boolean {
  const measures = senseOf(span, 'layers') ?? senseOf(span, 'weight');
  return measures !== undefined || isCue(span, 'grams', 'ounces', 'counted');
}

/** What the text says of the sky, of crops and of their state is no word about a cover. */
function namedWord(spans: readonly Span[], at: number, covers: ReadonlySet<number>): readonly string[] {
  const span = spans[at];
  if (span === undefined) return [];
  if (covers.has(at)) return [senseOf(span, 'bare') ? 'BARE' : COVER];
  if (senseOf(span, 'crop') ?? senseOf(span, 'plant')) return ['CROP'];
  if (senseOf(span, 'sky')) return ['SKY'];
  if (senseOf(span, 'state')) return ['STATE'];
  if (span.value === 0 && covers.has(at + 1)) return ['zero'];
  if (span.value !== undefined) return ['NUM'];
  return span.plain.split(' ');
}
