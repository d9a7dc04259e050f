import { celsiusFrom } from '../ground/units.ts';
import { isCue, type Span } from './span.ts';
import { type TemperaturePhrase, temperaturePhrases } from './temperature-phrases.ts';
import { type TemperatureRole, temperatureRoles } from './temperature-roles.ts';
import type { Assumption, Problem, SaidTemperature, Understood, Unit, UnitReason } from './understood.ts';

export interface TemperatureRead {
  readonly temperature?: SaidTemperature;
  readonly lowC?: number;
  /** Said of now, of the past or of the plant itself: no low of the night asked about. */
  readonly isAside?: boolean;
  readonly lowOtherwise?: NonNullable<Understood['lowOtherwise']>;
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

/** The low that a question names, its unit settled, with what was assumed. `ofHeat`: of a cover in the sun, where 31 °C makes sense. */
export function readTemperature(spans: readonly Span[], preferred: Unit, ofHeat = false): TemperatureRead {
  const phrases = temperaturePhrases(spans);
  const roles = temperatureRoles(spans, phrases);
  // "10C now, -4 tonight": one unit said serves for all.
  const unit = phrases.find((phrase) => phrase.unit !== undefined)?.unit;
  const all = phrases.map((phrase, index): Candidate => {
    const settled = settle(
      { ...phrase, ...(ofHeat && { unit: phrase.unit ?? preferred }) },
      unit ?? preferred,
      unit !== undefined,
    );
    return { ...settled, sureness: phrase.sureness, role: roles[index] ?? 'unsaid' };
  });
  const { chosen, otherwise, several } = chosenLow(all);
  if (chosen === undefined) return { assumptions: [] };
  const hours = hoursIn(spans);
  const temperature: SaidTemperature = { ...chosen.temperature, ...(hours !== undefined && { hours }) };
  const assumptions = assumptionsOf(temperature, several, chosen.role);
  if (chosen.lowC < COLDEST_ON_EARTH_C) return { temperature, assumptions, problem: 'impossible-cold' };
  if (chosen.lowC > HOTTEST_ON_EARTH_C) return { temperature, assumptions, problem: 'impossible-heat' };
  return {
    temperature,
    lowC: chosen.lowC,
    assumptions,
    ...((chosen.role === 'now' || chosen.role === 'past') && { isAside: true }),
    ...(otherwise && { lowOtherwise: { lowC: otherwise.lowC, temperature: otherwise.temperature } }),
  };
}

interface Candidate extends Settled {
  readonly sureness: number;
  readonly role: TemperatureRole;
}

interface Chosen {
  readonly chosen?: Candidate | undefined;
  /** The warmer reading, where the text leaves open which is the night's low. */
  readonly otherwise?: Candidate | undefined;
  readonly several: boolean;
}

/**
 * What is called the night's low, else what nothing calls anything else: the colder of several, the other in doubt. A
 * temperature of now, of last year or one that is felt counts only where there is no other.
 */
function chosenLow(all: readonly Candidate[]): Chosen {
  const open = all.filter(({ role }) => role === 'unsaid');
  const lows = all.filter(({ role }) => role === 'low');
  if (lows.length > 0) {
    const low = inOtherUnit(open, coldest(lows));
    const colder = open.filter(
      ({ lowC, sureness }) => sureness > 0 && low !== undefined && lowC < low.lowC - SAME_WITHIN_K,
    );
    const [first] = colder;
    return {
      chosen: first === undefined ? low : coldest(colder),
      otherwise: first && low,
      several: first !== undefined || areSeveral(lows),
    };
  }
  if (open.length > 0) return colderOfOpen(open);
  const others = all.filter(({ role, lowC }) => LOW_AT_NEED.has(role) || (role === 'inside' && lowC > WARMEST_FROST_C));
  return { chosen: surestColdest(others), several: areSeveral(others) };
}

/** "-4 C / 25 F tonight": the same said twice; the first counts. */
function inOtherUnit(open: readonly Candidate[], low: Candidate | undefined): Candidate | undefined {
  if (low === undefined) return undefined;
  const isSame = ({ lowC, sureness }: Candidate) => sureness > 0 && Math.abs(lowC - low.lowC) <= SAME_WITHIN_K;
  return open.find((one) => isSame(one) && one.temperature.unit !== low.temperature.unit) ?? low;
}

function colderOfOpen(open: readonly Candidate[]): Chosen {
  const chosen = surestColdest(open);
  const surest = Math.max(...open.map(({ sureness }) => sureness));
  const equal = open.filter(({ sureness }) => sureness === surest);
  const warmest = equal.reduce((one, other) => (other.lowC > one.lowC ? other : one));
  const several = areSeveral(equal);
  return { chosen, several, ...(several && { otherwise: warmest }) };
}

function surestColdest(some: readonly Candidate[]): Candidate | undefined {
  const surest = Math.max(...some.map(({ sureness }) => sureness));
  return coldest(some.filter(({ sureness }) => sureness === surest));
}

function coldest(some: readonly Candidate[]): Candidate | undefined {
  return some.length === 0 ? undefined : some.reduce((one, other) => (other.lowC < one.lowC ? other : one));
}

function areSeveral(some: readonly Candidate[]): boolean {
  const [first] = some;
  return first !== undefined && some.some(({ lowC }) => Math.abs(lowC - first.lowC) > SAME_WITHIN_K);
}

const LOW_AT_NEED: ReadonlySet<TemperatureRole> = new Set<TemperatureRole>(['now', 'past', 'feels', 'limit']);

/** Nobody calls this a frost; in a closed frame it is the heat of the day. [°C] */
const WARMEST_FROST_C = 12;

function assumptionsOf(
  { unitReason, range }: SaidTemperature,
  several: boolean,
  role: TemperatureRole,
): readonly Assumption[] {
  const assumptions: Assumption[] = [];
  if (role === 'feels') assumptions.push('felt-as-air');
  if (unitReason === 'preferred') assumptions.push('unit-preferred');
  if (unitReason === 'sensible') assumptions.push('unit-sensible');
  if (several) assumptions.push('colder-of-several');
  else if (range) assumptions.push('colder-end');
  return assumptions;
}

interface Settled {
  readonly temperature: SaidTemperature;
  readonly lowC: number;
}

/** `isSaid`: the preferred unit stands in the text, with another number. */
function settle(phrase: TemperaturePhrase, preferred: Unit, isSaid: boolean): Settled {
  const [unit, reason] = unitOf(phrase, preferred);
  const unitReason = isSaid && reason === 'preferred' ? 'said' : reason;
  const zero = phrase.fromFreezing && unit === 'F' ? 32 : 0;
  const isMeantMinus = phrase.afterDash && unit === 'C' && (phrase.range[0] > SENSIBLE.C[1] || phrase.from === 1);
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
