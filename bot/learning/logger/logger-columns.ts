import type { CsvRow } from './csv-rows.ts';
import { isClock, writtenTime } from './logger-time.ts';

/** Which column of a file holds what. */
export interface LoggerColumns {
  /** The first row with a time in it. */
  readonly firstData: number;
  readonly day: number;
  /** Where the clock has a column of its own. */
  readonly clock: number | undefined;
  readonly inside: number | undefined;
  readonly outside: number | undefined;
  /** As the heading tells it. */
  readonly units: 'C' | 'F' | undefined;
  /** East of Greenwich, as the heading tells it. */
  readonly zone: string | undefined;
}

export type ColumnProblem =
  /** No line has a time that can be read. */
  | 'no-times'
  /** No column can hold temperatures. */
  | 'no-temperatures'
  /** Several columns may, and nothing tells which is inside. */
  | 'unclear-columns';

/** Before the times there may be a title and headings. */
const MOST_HEADING_ROWS = 30;
const INSIDE = ['inside', 'indoor', 'under', 'cover', 'bed', 'frame', 'tunnel', 'hoop', 'innen'];
const OUTSIDE = ['outside', 'outdoor', 'ambient', 'open', 'außen', 'aussen'];
const OTHER = [
  'humid',
  'dew',
  'batt',
  'volt',
  'lux',
  'light',
  'press',
  'hpa',
  'rh',
  'vpd',
  'signal',
  'max',
  'high',
  'co2',
];
const COUNTERS = ['#', 'no', 'no.', 'nr', 'record', 'id', 'index', 'sample'];
const GREENWICH = /(?:GMT|UTC)\s?([+-]\d{2}):?(\d{2})/;

/**
 * Finds times and temperatures in a file.
 *
 * @param holds - What a single column of temperatures holds, as its grower says; `inside` where the heading does not tell.
 */
export function loggerColumns(
  rows: readonly CsvRow[],
  holds: 'inside' | 'outside' | undefined,
): LoggerColumns | ColumnProblem {
  const firstData = rows.slice(0, MOST_HEADING_ROWS).findIndex(({ fields }) => fields.some(isTime));
  const data = rows[firstData]?.fields;
  if (data === undefined) return 'no-times';
  const day = data.findIndex(isTime);
  const nextIsClock = isClock(data[day + 1] ?? '');
  const heading = rows[firstData - 1]?.fields ?? [];
  const used = new Set([day, ...(nextIsClock ? [day + 1] : [])]);
  const candidates = temperatureColumns(rows.slice(firstData), heading, used);
  const roles = rolesOf(candidates, heading, holds);
  if (typeof roles === 'string') return roles;
  return {
    ...{ firstData, day, ...roles },
    clock: nextIsClock ? day + 1 : undefined,
    units: unitsOf(candidates.map((column) => heading[column] ?? '')),
    zone: zoneOf(heading[day] ?? ''),
  };
}

function isTime(text: string): boolean {
  return writtenTime(text) !== undefined;
}

const ROWS_TRIED = 50;

/** Columns of numbers whose heading does not name something else. */
function temperatureColumns(data: readonly CsvRow[], heading: readonly string[], used: ReadonlySet<number>): number[] {
  const tried = data.slice(0, ROWS_TRIED);
  const width = Math.max(...tried.map(({ fields }) => fields.length));
  return Array.from({ length: width }, (_, column) => column).filter((column) => {
    const name = (heading[column] ?? '').toLowerCase();
    if (used.has(column) || COUNTERS.includes(name) || OTHER.some((word) => name.includes(word))) return false;
    return tried.filter(({ fields }) => temperatureIn(fields[column]) !== undefined).length > tried.length / 2;
  });
}

type Roles = Pick<LoggerColumns, 'inside' | 'outside'>;

function rolesOf(
  candidates: readonly number[],
  heading: readonly string[],
  holds: 'inside' | 'outside' | undefined,
): Roles | ColumnProblem {
  if (candidates.length === 0) return 'no-temperatures';
  const named = (words: readonly string[]) =>
    candidates.filter((column) => words.some((word) => (heading[column] ?? '').toLowerCase().includes(word)));
  const outside = named(OUTSIDE);
  const inside = named(INSIDE).filter((column) => !outside.includes(column));
  if (inside.length > 1 || outside.length > 1) return 'unclear-columns';
  const rest = candidates.filter((column) => !inside.includes(column) && !outside.includes(column));
  if (inside.length + outside.length > 0) {
    // Of two columns one of which is named, the other is the other one.
    const left = candidates.length === 2 ? rest[0] : undefined;
    return { inside: inside[0] ?? left, outside: outside[0] ?? left };
  }
  if (rest.length > 1) return 'unclear-columns';
  return holds === 'outside' ? { inside: undefined, outside: rest[0] } : { inside: rest[0], outside: undefined };
}

/** `21.5`, `-1,5`, `21.5 °F`; nothing else. */
const NUMBER = /^([-−+]?\d{1,4}(?:[.,]\d{1,20})?)\s?°?\s?([CcFf])?$/;

export interface WrittenTemperature {
  readonly value: number;
  readonly units: 'C' | 'F' | undefined;
}

export function temperatureIn(text: string | undefined): WrittenTemperature | undefined {
  const match = NUMBER.exec((text ?? '').trim());
  if (match === null) return undefined;
  const [, number = '', unit] = match;
  const value = Number(number.replace('−', '-').replace(',', '.'));
  return { value, units: unit === undefined ? undefined : unit.toUpperCase() === 'F' ? 'F' : 'C' };
}

/** Undefined where headings are silent or disagree. */
function unitsOf(headings: readonly string[]): 'C' | 'F' | undefined {
  const told = new Set(headings.flatMap((name) => unitIn(name) ?? []));
  return told.size === 1 ? [...told][0] : undefined;
}

const FAHRENHEIT = /fahrenheit|°\s?f\b|\bdeg\s?f\b|[([_ ]f[)\]]?$/i;
const CELSIUS = /celsius|centigrade|°\s?c\b|\bdeg\s?c\b|[([_ ]c[)\]]?$/i;

function unitIn(name: string): 'C' | 'F' | undefined {
  if (FAHRENHEIT.test(name)) return 'F';
  return CELSIUS.test(name) ? 'C' : undefined;
}

function zoneOf(name: string): string | undefined {
  const match = GREENWICH.exec(name);
  return match === null ? undefined : `UTC${match[1]}:${match[2]}`;
}
