import { isCue, isMark, type Span, senseOf } from './span.ts';

/** A number with its sign, read at a place in the text. */
export interface SignedNumber {
  readonly value: number;
  /** First span after it. */
  readonly next: number;
  readonly from: number;
}

/** "four and a half". */
function withHalf(spans: readonly Span[], number: SignedNumber): SignedNumber {
  const words = spans
    .slice(number.next, number.next + 3)
    .map(({ plain }) => plain)
    .join(' ');
  return words === 'and a half' ? { ...number, value: number.value + 0.5, next: number.next + 3 } : number;
}

const LARGEST_COUNT = 12;

/** Reads "14", "-14", "− 14", "minus fourteen". */
export function signedNumberAt(spans: readonly Span[], from: number): SignedNumber | undefined {
  const span = spans[from];
  const after = spans[from + 1];
  if (span?.value !== undefined) return withHalf(spans, { value: span.value, next: from + 1, from });
  if (after?.value === undefined) return undefined;
  if (isCue(span, 'minus') || isMinus(spans, from)) return { value: -after.value, next: from + 2, from };
  return undefined;
}

/** A true minus always; a hyphen when it touches the number, or when a temperature is awaited. */
export function isMinus(spans: readonly Span[], at: number): boolean {
  const span = spans[at];
  if (isMark(span, '−')) return true;
  if (!isMark(span, '-')) return false;
  // "kale-10F": the hyphen joins.
  if (span?.glued && spans[at - 1]?.kind !== 'mark') return false;
  return (spans[at + 1]?.glued ?? false) || isCue(spans[at - 1], 'at-temperature');
}

/** Is this number of something else: beds, layers, weeks, inches, a date, a time of day? */
export function countsSomething(spans: readonly Span[], number: SignedNumber): boolean {
  const { from, next, value } = number;
  if (isNamedByWordBefore(spans, from) || isPartOfTime(spans, from, next)) return true;
  return (
    isCountedByWordAfter(spans, next, value) ||
    countsPlants(spans, number) ||
    isPronounOrCount(spans, number) ||
    countsThings(spans, number)
  );
}

/** "the one with the lid", "two of them", "a bad one": a small number in letters, where nothing makes it a temperature. */
function isPronounOrCount(spans: readonly Span[], { from, next, value }: SignedNumber): boolean {
  if (value < 1 || value > LARGEST_COUNT || next !== from + 1 || /^\d/.test(spans[from]?.plain ?? '')) return false;
  if (isCue(spans[next], 'degrees', 'fahrenheit', 'celsius', 'below-zero', 'below-freezing')) return false;
  if (isMark(spans[next], '°', '-') || spans[next]?.plain === 'below' || isCue(spans[from - 1], 'minus')) return false;
  const isRange = isCue(spans[next], 'range-to', 'or', 'and') && spans[next + 1]?.value !== undefined;
  if (spans[from]?.plain === 'one') return !isRange && !isCue(spans[from - 1], 'at-temperature', 'range-to');
  return COUNTED_ON.test(spans[next]?.plain ?? '') || COUNTING.test(spans[from - 1]?.plain ?? '');
}

const COUNTED_ON =
  /^(of|of them|more|others?|that|which|with|are|were|look|looks|have|small|big|little|young|different|kinds?|sorts?|left|in|went|got)$/;
const COUNTING = /^(the|these|those|my|our|all|other|last|first|only|another|every|no|some|or)$/;

/** "two coats", "90 dollars": a number before a plain noun, where nothing before it speaks of a temperature. */
function countsThings(spans: readonly Span[], { from, next }: SignedNumber): boolean {
  const after = spans[next];
  if (isDimension(spans, from, next) || isOfWind(spans, from)) return true;
  if (senseOf(after, 'hazard') && !isCue(spans[from - 1], 'at-temperature')) return true;
  if (after?.kind === 'unexplained' && after.plain.length > 3) return true;
  if (after?.kind !== 'phrase' || after.senses.some(({ kind }) => kind !== 'ordinary')) return false;
  if (isCue(spans[from - 1], 'at-temperature', 'survive', 'fare', 'low-part') || isCue(spans[from], 'minus'))
    return false;
  return /^\w{4,}$/.test(after.plain) && !GOES_ON.has(after.plain);
}

/** "20 by 30 ft", but not "20 by 3 am". */
function isDimension(spans: readonly Span[], from: number, next: number): boolean {
  const second = spans[next]?.plain === 'by' ? next + 1 : spans[from - 1]?.plain === 'by' ? from : -1;
  if (second < 0 || spans[second]?.value === undefined || spans[second - 2]?.value === undefined) return false;
  return !/^(am|pm|oclock|a|p|in|tonight|tomorrow|this)$/.test(spans[second + 1]?.plain ?? '');
}

/** "the wind is blowing forty". */
function isOfWind(spans: readonly Span[], from: number): boolean {
  return senseOf(spans[from - 1], 'sky')?.sky.wind === 'windy' && !isCue(spans[from - 1], 'at-temperature');
}

/** Plain words that a temperature may stand before. */
const GOES_ON: ReadonlySet<string> = new Set(
  'outside outdoors here there when while with because before after until till again expected coming predicted forecast possible maybe please thanks though then also even only just this that what will does should would could they them their these those where which your yours from into over some somewhere degree probably already sometime early late ahead yikes help anyone worried tomorrow during where out'.split(
    ' ',
  ),
);

/** "12 lettuces", but not "at 12 lettuce …". */
function countsPlants(spans: readonly Span[], { from, next, value }: SignedNumber): boolean {
  if (!Number.isInteger(value) || value < 1 || isCue(spans[from - 1], 'at-temperature')) return false;
  if (/^(nights?|nighttime|tonight|overnight|lows?|min)$/.test(spans[from - 1]?.plain ?? '')) return false;
  return senseOf(spans[next], 'crop') !== undefined;
}

function isNamedByWordBefore(spans: readonly Span[], from: number): boolean {
  const before = spans[from - 1];
  if (senseOf(before, 'bed') || isCue(before, 'zone', 'month') || isMark(before, '#', '$', '£', '€')) return true;
  return isListedBed(spans, from);
}

const MOST_BEDS_LISTED = 12;

/** The "3" of "beds 1, 2 and 3". */
function isListedBed(spans: readonly Span[], from: number): boolean {
  for (let at = from - 1; at > from - 2 * MOST_BEDS_LISTED; at -= 2) {
    if (senseOf(spans[at], 'bed')) return true;
    if (!(isCue(spans[at], 'and') || isMark(spans[at], ',', '&')) || spans[at - 1]?.value === undefined) return false;
  }
  return false;
}

function isCountedByWordAfter(spans: readonly Span[], next: number, value: number): boolean {
  const after = spans[next];
  if (isCue(after, 'counted', 'hours', 'minutes', 'infant', 'grams', 'ounces', 'month') || isMark(after, '%', '"', '”'))
    return true;
  if (isLayerUncounted(after) || senseOf(after, 'bed')) return true;
  if (isCue(after, 'or') && spans[next + 1]?.value !== undefined) return isCountedByWordAfter(spans, next + 2, value);
  return Number.isInteger(value) && value >= 1 && value <= LARGEST_COUNT && countsCovers(spans, next, value);
}

/** "layers"; "double" brings its own count. */
function isLayerUncounted(span: Span | undefined): boolean {
  const layers = senseOf(span, 'layers');
  return layers !== undefined && layers.count === undefined;
}

/** "3 blankets", "2 thick quilts". */
function countsCovers(spans: readonly Span[], next: number, value: number): boolean {
  const after = spans[next];
  if (senseOf(after, 'cover')) return isPlural(after) || value === 1;
  return (
    senseOf(after, 'weight') !== undefined &&
    senseOf(spans[next + 1], 'cover') !== undefined &&
    isPlural(spans[next + 1])
  );
}

/** "3 blankets" counts blankets; "5 blanket" is a hasty "5°, blanket". */
export function isPlural(span: Span | undefined): boolean {
  return span?.plain.endsWith('s') ?? false;
}

function isPartOfTime(spans: readonly Span[], from: number, next: number): boolean {
  const colonAfter = isMark(spans[next], ':') && (spans[next]?.glued ?? false) && spans[next + 1]?.value !== undefined;
  const colonBefore = isMark(spans[from - 1], ':') && spans[from - 2]?.value !== undefined;
  return colonAfter || colonBefore;
}
