import type { Unit } from '../understood.ts';
import { matchesIn, type SpanText, spansOfMatch } from './span-text.ts';

export interface SaidWind {
  readonly windMPerS?: number;
  readonly gustMPerS?: number;
  /** Spans that said it: none of them is a low. */
  readonly at: readonly number[];
}

const M_PER_S_OF: Readonly<Record<string, number>> = { mph: 0.447_04, kmh: 1 / 3.6, mps: 1, knots: 0.514_44 };

const NUMBER = '(\\d+(?:\\.\\d+)?)(?: (?:-|to|or|and) (\\d+(?:\\.\\d+)?))?';
const WITH_UNIT = new RegExp(
  ` ${NUMBER} (mph|miles per hour|miles an hour|mi / h|kph|kmh|km / h|km h|km hr|m / s|mps|knots|knot|kts|kt|kn)(?= )`,
  'g',
);
/** Words between "wind" and its number. */
const BETWEEN =
  '(?:(?:of|at|to|up|up to|around|about|from|the|only|just|is|are|speed|speeds|:|gusting|n|s|e|w|ne|nw|se|sw|north|south|east|west|northwest|southwest|northeast|southeast) ){0,4}';
const WITHOUT_UNIT = new RegExp(
  `(?<! no| without| any| light| little| less) (winds?|gusts|gust|gusting|gusting to|gusts to|gusts of|breeze) ${BETWEEN}${NUMBER}(?= )(?! (?:f|c|°|deg|degrees?|fahrenheit|celsius|below|mph|kph|kmh|km|m|knots?|kts?|miles) )`,
  'g',
);
/** Faster than any storm (judgement). [m s⁻¹] */
const FASTEST_M_PER_S = 60;
/** Of a range, and of gusts and wind named apart, the words that make a gust. */
const GUST_BEFORE = /\bgust\w*(?: (?!winds?\b)\S+){0,3} $/;
const GUST_AFTER = /^ (?:\S+ )?gusts?\b/;

/** The wind that a question gives in figures; a number with no unit is in the miles or kilometres of the reader. */
export function readWind(read: SpanText, preferred: Unit): SaidWind {
  const said = [
    ...matchesIn(read, WITH_UNIT).map((match) => speed(read, match, unitKey(match[3] ?? ''), 1)),
    ...matchesIn(read, WITHOUT_UNIT).map((match) => speed(read, match, preferred === 'F' ? 'mph' : 'kmh', 2)),
  ].filter(({ mPerS }) => mPerS <= FASTEST_M_PER_S);
  const fastest = (isGust: boolean) => {
    const speeds = said.filter((one) => one.isGust === isGust).map(({ mPerS }) => mPerS);
    return speeds.length === 0 ? undefined : Math.max(...speeds);
  };
  const [windMPerS, gustMPerS] = [fastest(false), fastest(true)];
  return {
    ...(windMPerS !== undefined && { windMPerS }),
    ...(gustMPerS !== undefined && { gustMPerS }),
    at: said.flatMap(({ at }) => at),
  };
}

function speed(read: SpanText, match: RegExpExecArray, unit: string, first: 1 | 2) {
  // Of "5 to 10 mph" the middle is the mean wind.
  const low = Number(match[first]);
  const high = Number(match[first + 1] ?? low);
  const before = read.text.slice(0, match.index + 1);
  const after = read.text.slice(match.index + match[0].length);
  const isGust =
    (first === 2 && (match[1]?.startsWith('gust') ?? false)) || GUST_BEFORE.test(before) || GUST_AFTER.test(after);
  const middle = isGust ? Math.max(low, high) : (low + high) / 2;
  return { mPerS: middle * (M_PER_S_OF[unit] ?? 1), isGust, at: spansOfMatch(read, match) };
}

function unitKey(unit: string): string {
  if (unit.startsWith('k') && unit.includes('h')) return 'kmh';
  if (unit.startsWith('k')) return 'knots';
  return unit === 'm / s' || unit === 'mps' ? 'mps' : 'mph';
}
