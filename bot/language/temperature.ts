import { celsiusFrom } from '../ground/units.ts';
import { isCue, type Span } from './span.ts';
import { type TemperaturePhrase, temperaturePhrases } from './temperature-phrases.ts';
import type { Assumption, Problem, SaidTemperature, Unit, UnitReason } from './understood.ts';

export interface TemperatureRead {
  readonly temperature?: SaidTemperature;
  readonly lowC?: number;
  readonly assumptions: readonly Assumption[];
  readonly problem?: Problem;
}

/** Lows that somebody asks about in earnest, by unit (judgement): above 8 °C nothing in the table is at risk. */
const SENSIBLE: Readonly<Record<Unit, readonly [number, number]>> = { F: [-50, 75], C: [-45, 8] };

/** No air near the ground has been measured outside of these (−89.2 °C and 56.7 °C, weather extremes of the WMO). [°C] */
const COLDEST_ON_EARTH_C = -90;
const HOTTEST_ON_EARTH_C = 57;

/** Two temperatures this close are the same one said in both units. */
const SAME_WITHIN_K = 1;

/** The low that a question names, its unit settled, with what was assumed. */
export function readTemperature(spans: readonly Span[], preferred: Unit): TemperatureRead {
  const all = temperaturePhrases(spans).filter((phrase) => !isDaytimeHigh(spans, phrase));
  const surest = Math.max(...all.map(({ sureness }) => sureness));
  const settled = all.filter(({ sureness }) => sureness === surest).map((phrase) => settle(phrase, preferred));
  const [first] = settled;
  if (first === undefined) return { assumptions: [] };
  const several = settled.some(({ lowC }) => Math.abs(lowC - first.lowC) > SAME_WITHIN_K);
  const chosen = several ? settled.reduce((one, other) => (other.lowC < one.lowC ? other : one)) : first;
  const hours = hoursIn(spans);
  const temperature: SaidTemperature = { ...chosen.temperature, ...(hours !== undefined && { hours }) };
  const assumptions = assumptionsOf(temperature, several);
  if (chosen.lowC < COLDEST_ON_EARTH_C) return { temperature, assumptions, problem: 'impossible-cold' };
  if (chosen.lowC > HOTTEST_ON_EARTH_C) return { temperature, assumptions, problem: 'impossible-heat' };
  return { temperature, lowC: chosen.lowC, assumptions };
}

function assumptionsOf({ unitReason, range }: SaidTemperature, several: boolean): readonly Assumption[] {
  const assumptions: Assumption[] = [];
  if (unitReason === 'preferred') assumptions.push('unit-preferred');
  if (unitReason === 'sensible') assumptions.push('unit-sensible');
  if (several) assumptions.push('colder-of-several');
  else if (range) assumptions.push('colder-end');
  return assumptions;
}

function isDaytimeHigh(spans: readonly Span[], { from, next, sureness }: TemperaturePhrase): boolean {
  const before = isCue(spans[from - 1], 'the', 'at-temperature') ? spans[from - 2] : spans[from - 1];
  return isCue(before, 'high') || (isCue(spans[from - 1], 'high') && sureness > 0) || isSaidOfDay(spans[next]);
}

function isSaidOfDay(span: Span | undefined): boolean {
  return span !== undefined && ['by day', 'during the day', 'daytime'].includes(span.plain);
}

interface Settled {
  readonly temperature: SaidTemperature;
  readonly lowC: number;
}

function settle(phrase: TemperaturePhrase, preferred: Unit): Settled {
  const [unit, unitReason] = unitOf(phrase, preferred);
  const zero = phrase.fromFreezing && unit === 'F' ? 32 : 0;
  const isMeantMinus = phrase.afterDash && unit === 'C' && phrase.range[0] > SENSIBLE.C[1];
  const ends = isMeantMinus ? phrase.range.map((end) => -end).reverse() : phrase.range.map((end) => end + zero);
  const [low = 0, high = 0] = ends;
  const temperature: SaidTemperature = {
    value: low,
    unit,
    unitReason,
    ...(low !== high && { range: [low, high] as const }),
  };
  return { temperature, lowC: unit === 'C' ? low : celsiusFrom(low) };
}

function unitOf({ unit, range, fromFreezing }: TemperaturePhrase, preferred: Unit): readonly [Unit, UnitReason] {
  if (unit) return [unit, 'said'];
  const other: Unit = preferred === 'F' ? 'C' : 'F';
  const isSensible = (candidate: Unit) => range[0] >= SENSIBLE[candidate][0] && range[0] <= SENSIBLE[candidate][1];
  return fromFreezing || isSensible(preferred) || !isSensible(other) ? [preferred, 'preferred'] : [other, 'sensible'];
}

const WORDS_FOR_HOURS: ReadonlyMap<string, number> = new Map([
  ['couple', 2],
  ['few', 3],
  ['several', 4],
  ['half', 0.5],
  ['an', 1],
  ['a', 1],
]);

/** "for a couple of hours", "for 90 minutes". */
function hoursIn(spans: readonly Span[]): number | undefined {
  const durations = spans.flatMap((span, at) => {
    const perUnit = hoursPer(span);
    const amount = perUnit === undefined ? undefined : amountBefore(spans, at);
    return perUnit === undefined || amount === undefined ? [] : [perUnit * amount];
  });
  return durations[0];
}

function hoursPer(span: Span): number | undefined {
  if (isCue(span, 'hours')) return 1;
  return isCue(span, 'minutes') ? 1 / 60 : undefined;
}

/** How many words a duration has at most before its unit: "for about half an". */
const LONGEST_DURATION = 5;

/** The number between "for" and the unit; the article of "a couple" gives way. */
function amountBefore(spans: readonly Span[], at: number): number | undefined {
  const before = spans.slice(Math.max(0, at - LONGEST_DURATION), at);
  const start = before.findLastIndex((span) => isCue(span, 'duration'));
  if (start < 0) return undefined;
  const amounts = before
    .slice(start + 1)
    .map((span) => span.value ?? WORDS_FOR_HOURS.get(span.plain))
    .filter((value) => value !== undefined);
  const [first, second] = amounts;
  return first === 1 && second !== undefined ? second : first;
}
