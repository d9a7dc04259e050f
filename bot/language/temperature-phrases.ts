import { isCue, isMark, type Span } from './span.ts';
import { countsSomething, type SignedNumber, signedNumberAt } from './temperature-numbers.ts';
import type { Unit } from './understood.ts';

/** A temperature as a stretch of text says it, before its unit is settled. */
export interface TemperaturePhrase {
  /** Colder end first; the same twice when it is no range. In `unit`, or in the unit still to be settled. */
  readonly range: readonly [number, number];
  readonly unit?: Unit;
  /** Counted from the freezing point: "4 degrees below freezing". */
  readonly fromFreezing: boolean;
  /** How sure it is that this is a temperature: 3 unit said, 2 degrees said, 1 after "at" or the like, 0 a lone number. */
  readonly sureness: number;
  readonly from: number;
  readonly next: number;
  /** A dash with a space after it stands before: "kale - 10C" may mean a minus. */
  readonly afterDash: boolean;
}

/** Judgement, after the usual speech of forecasters. */
const DECADE_PARTS = { low: [0, 3], mid: [4, 6], high: [7, 9], whole: [0, 9] } as const;
const TEEN_PARTS = { low: [1, 3], mid: [4, 6], high: [7, 9], whole: [3, 9] } as const;
const SINGLE_PARTS = { low: [1, 3], mid: [4, 6], high: [7, 9], whole: [1, 9] } as const;

type Part = keyof typeof DECADE_PARTS;

/** Every stretch of text that could be a temperature, in order. Linear: each reader looks a few spans ahead. */
export function temperaturePhrases(spans: readonly Span[]): readonly TemperaturePhrase[] {
  const found: TemperaturePhrase[] = [];
  for (let at = 0; at < spans.length; ) {
    const phrase = decadeAt(spans, at) ?? numbersAt(spans, at) ?? wordsAt(spans, at);
    if (phrase && !isOtherNumber(phrase, spans)) found.push(phrase);
    at = phrase?.next ?? at + 1;
  }
  return found;
}

/** "14F", "12-15 °F", "between 8 and 12", "5 below", "4 degrees below freezing". */
function numbersAt(spans: readonly Span[], from: number): TemperaturePhrase | undefined {
  const first = signedNumberAt(spans, from);
  if (first === undefined || countsSomething(spans, first)) return undefined;
  const firstEnd = unitAt(spans, first.next);
  if (DIFFERENCES.has(spans[firstEnd.next]?.plain ?? '')) return undefined;
  if (isLatitude(spans, firstEnd.next)) return undefined;
  const second = otherEndAt(spans, firstEnd, from);
  const end = second ? unitAt(spans, second.next) : firstEnd;
  const below = belowAt(spans, end.next);
  const last = below ? unitAt(spans, below.next) : end;
  const unit = last.unit ?? end.unit ?? firstEnd.unit;
  const numbers = [first.value, second?.value ?? first.value].map((value) => (below ? -Math.abs(value) : value));
  const degrees = firstEnd.degrees || end.degrees || last.degrees || below !== undefined;
  return {
    range: [Math.min(...numbers), Math.max(...numbers)],
    ...(unit && { unit }),
    fromFreezing: below?.freezing ?? false,
    sureness: sureness(spans, from, unit, degrees),
    from,
    next: last.next,
    afterDash: isMark(spans[from - 1], '-'),
  };
}

/** A larger number is some other number where nothing calls it a temperature: among words, and by itself (judgement). */
const LARGEST_LONE = 150;
const LARGEST_BY_ITSELF = 9999;

function isOtherNumber({ sureness: sure, range, from, next }: TemperaturePhrase, spans: readonly Span[]): boolean {
  const largest = from <= 1 && next === spans.length ? LARGEST_BY_ITSELF : LARGEST_LONE;
  return sure === 0 && range.some((value) => Math.abs(value) > largest);
}

/** "4 degrees colder" is no temperature. */
const DIFFERENCES: ReadonlySet<string> = new Set([
  'colder',
  'warmer',
  'cooler',
  'lower',
  'higher',
  'more',
  'less',
  'warmer than',
  'colder than',
  'more than',
]);

function sureness(spans: readonly Span[], from: number, unit: Unit | undefined, degrees: boolean): number {
  if (unit) return 3;
  if (degrees) return 2;
  const before = isCue(spans[from - 1], 'the', 'low-part') ? spans[from - 2] : spans[from - 1];
  if (SAYING.has(before?.plain ?? '')) return 1;
  return isCue(before, 'at-temperature', 'survive', 'fare', 'harm', 'under', 'between', 'fine') ? 1 : 0;
}

/** "The radio says 22." */
const SAYING: ReadonlySet<string> = new Set(
  'had got measured says said say claims shows showing sees thinks reckons maybe'.split(' '),
);

interface UnitEnd {
  readonly unit?: Unit;
  readonly degrees: boolean;
  readonly next: number;
}

function unitAt(spans: readonly Span[], from: number): UnitEnd {
  let next = from;
  while (isMark(spans[next], '°') || isCue(spans[next], 'degrees')) next += 1;
  const degrees = next > from;
  if (isCue(spans[next], 'fahrenheit')) return { unit: 'F', degrees, next: next + 1 };
  if (isCue(spans[next], 'celsius')) return { unit: 'C', degrees, next: next + 1 };
  return { degrees, next };
}

/** "-4 C / 25 F" is one temperature in two units, no range. */
function otherEndAt(spans: readonly Span[], first: UnitEnd, start: number): SignedNumber | undefined {
  const second = rangeEndAt(spans, first.next, start);
  if (second === undefined || first.unit === undefined) return second;
  const { unit } = unitAt(spans, second.next);
  return unit === undefined || unit === first.unit ? second : undefined;
}

/** "45° north", "44 N". */
function isLatitude(spans: readonly Span[], at: number): boolean {
  const plain = spans[at]?.plain ?? '';
  if (['north', 'latitude', 'lat'].includes(plain)) return true;
  return plain === 'n' && (spans[at + 1] === undefined || spans[at + 1]?.kind === 'mark');
}

function rangeEndAt(spans: readonly Span[], from: number, start: number): SignedNumber | undefined {
  const link = spans[from];
  const between = isCue(spans[start - 1], 'between') && isCue(link, 'and');
  const links = isMark(link, '-', '−', '/') || isCue(link, 'range-to') || link?.plain === 'or' || between;
  if (!links) return undefined;
  const second = signedNumberAt(spans, from + 1);
  return second === undefined || countsSomething(spans, second) ? undefined : second;
}

/** "below" by itself counts down from zero only when nothing follows that something could lie below. */
function belowAt(
  spans: readonly Span[],
  at: number,
): { readonly next: number; readonly freezing: boolean } | undefined {
  const span = spans[at];
  if (isCue(span, 'below-freezing')) return { next: at + 1, freezing: true };
  if (isCue(span, 'below-zero')) return { next: at + 1, freezing: false };
  if (span?.plain !== 'below') return undefined;
  const after = spans[at + 1];
  const ends =
    after === undefined ||
    after.kind === 'mark' ||
    isCue(after, 'under', 'with', 'without', 'covered-with', 'fine') ||
    after.senses.every(({ kind }) => kind === 'when' || kind === 'crop' || kind === 'bare');
  return ends && after?.kind !== 'unexplained' ? { next: at + 1, freezing: false } : undefined;
}

/** "mid teens", "low 20s", "upper twenties", "single digits", "negative teens". */
function decadeAt(spans: readonly Span[], from: number): TemperaturePhrase | undefined {
  const negative = isCue(spans[from], 'minus') || isMark(spans[from], '−') || isMark(spans[from], '-');
  const partFrom = negative ? from + 1 : from;
  const part = partAt(spans[partFrom]);
  const secondPart = part && isLink(spans[partFrom + 1]) && partAt(spans[partFrom + 2]) ? 2 : 0;
  const partEnd = part ? partFrom + 1 + secondPart : partFrom;
  const decadeFrom = part && isMark(spans[partEnd], '-') ? partEnd + 1 : partEnd;
  const decade = decadeBaseAt(spans, decadeFrom);
  if (decade === undefined) return undefined;
  const [low, high] = partsOf(decade.base)[part ?? 'whole'];
  const { unit, next } = unitAt(spans, decade.next);
  const range: [number, number] = [decade.base + low, decade.base + high];
  return {
    range: negative ? [-range[1], -range[0]] : range,
    ...(unit && { unit }),
    fromFreezing: false,
    sureness: unit ? 3 : 2,
    from,
    next,
    afterDash: false,
  };
}

function partsOf(base: number): Readonly<Record<Part, readonly [number, number]>> {
  if (base === 0) return SINGLE_PARTS;
  return base === 10 ? TEEN_PARTS : DECADE_PARTS;
}

function isLink(span: Span | undefined): boolean {
  return isMark(span, '-', '/') || isCue(span, 'range-to');
}

function partAt(span: Span | undefined): Part | undefined {
  if (isCue(span, 'low-part')) return 'low';
  if (isCue(span, 'mid-part')) return 'mid';
  return isCue(span, 'high-part') || span?.plain === 'high' ? 'high' : undefined;
}

function decadeBaseAt(
  spans: readonly Span[],
  at: number,
): { readonly base: number; readonly next: number } | undefined {
  const span = spans[at];
  if (isCue(span, 'single-digits')) return { base: 0, next: at + 1 };
  if (isCue(span, 'teens')) return { base: 10, next: at + 1 };
  if (isCue(span, 'twenties')) return { base: 20, next: at + 1 };
  if (isCue(span, 'thirties')) return { base: 30, next: at + 1 };
  if (isCue(span, 'forties')) return { base: 40, next: at + 1 };
  const isTens = span?.value !== undefined && span.value >= 10 && span.value % 10 === 0;
  if (!isTens || span?.value === undefined) return undefined;
  const ending = isMark(spans[at + 1], "'") ? at + 2 : at + 1;
  return spans[ending]?.plain === 's' && spans[ending]?.glued ? { base: span.value, next: ending + 1 } : undefined;
}

/** "below zero", "at freezing" with no number. */
function wordsAt(spans: readonly Span[], from: number): TemperaturePhrase | undefined {
  const span = spans[from];
  const freezing =
    isCue(span, 'at-freezing') || (isCue(span, 'below-freezing') && span?.plain.startsWith('below') === true);
  if (!freezing && !isCue(span, 'below-zero')) return undefined;
  // "How many degrees below zero?" asks for the number.
  if (isCue(spans[from - 1], 'degrees', 'limit', 'how')) return undefined;
  return { range: [0, 0], fromFreezing: freezing, sureness: 1, from, next: from + 1, afterDash: false };
}
