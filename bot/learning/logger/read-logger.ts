import { setImmediate as nextTurn } from 'node:timers/promises';
import { celsiusFrom } from '../../ground/units.ts';
import { type CsvRow, csvRows } from './csv-rows.ts';
import { type ColumnProblem, type LoggerColumns, loggerColumns, temperatureIn } from './logger-columns.ts';
import {
  type LoggerNights,
  type LoggerPlace,
  type LoggerSample,
  loggerNights,
  morningNights,
} from './logger-nights.ts';
import { type DayOrder, dayOrderOf, Instants, type WrittenTime, writtenTime } from './logger-time.ts';

/** What its grower says of a file. */
export interface LoggerSaid {
  readonly units: 'C' | 'F' | undefined;
  /** IANA name; the place's own where absent. */
  readonly zone: string | undefined;
  readonly holds: 'inside' | 'outside' | undefined;
  /** How the grower writes dates, for a file that does not tell. */
  readonly usualOrder: DayOrder;
}

export type BadRow = {
  readonly line: number;
  readonly reason: 'time' | 'no-such-time' | 'temperature' | 'out-of-range';
};

/** A file as it was understood. */
export interface LoggerFile extends LoggerNights {
  readonly rowCount: number;
  readonly badRows: readonly BadRow[];
  readonly units: 'C' | 'F';
  /** That times without an offset of their own were read in; absent where each has one. */
  readonly zone: string | undefined;
  /** Present where nothing in the file told day from month. */
  readonly assumedOrder: DayOrder | undefined;
  /** Only days are written: each value is the low of that morning. */
  readonly daysOnly: boolean;
  readonly holdsInside: boolean;
  readonly holdsOutside: boolean;
}

export type LoggerProblem = ColumnProblem | 'empty' | 'units-unsaid' | 'too-many-rows' | 'too-many-days';

/** A winter at one row in five minutes. */
const MOST_ROWS = 60_000;
/** As far back as anything is learned from, with a month to spare. */
const MOST_DAYS = 760;
/** Rows read between two turns of everybody else, some milliseconds of work. */
const ROWS_A_TURN = 500;
const COLDEST_C = -60;
const WARMEST_C = 70;

/**
 * Reads a logger's file: good rows are kept, bad ones told by their line. Others are answered between its rows, and days are
 * counted before the sun of any is worked out.
 */
export async function readLogger(
  text: string,
  place: LoggerPlace,
  said: LoggerSaid,
): Promise<LoggerFile | LoggerProblem> {
  const rows = csvRows(text);
  if (rows.length === 0) return 'empty';
  if (rows.length > MOST_ROWS) return 'too-many-rows';
  const columns = loggerColumns(rows, said.holds);
  if (typeof columns === 'string') return columns;
  const data = rows.slice(columns.firstData);
  const timed = data.map((row) => ({ row, time: timeOf(row, columns) }));
  const times = timed.flatMap(({ time }) => time ?? []);
  if (new Set(times.map(({ first, second, third }) => `${first} ${second} ${third}`)).size > MOST_DAYS) {
    return 'too-many-days';
  }
  const units = said.units ?? columns.units ?? unitsInCells(data, columns);
  if (units === undefined) return 'units-unsaid';
  const told = dayOrderOf(times);
  const zone = said.zone ?? columns.zone ?? place.timeZone;
  const instants = new Instants(zone, told ?? said.usualOrder);
  const { samples, badRows } = await sorted(timed, columns, units, instants);
  const daysOnly = times.every(({ clock }) => clock === undefined);
  return {
    ...(daysOnly ? morningNights(samples, zone) : await loggerNights(samples, place)),
    ...{ rowCount: data.length, badRows, units, daysOnly },
    zone: times.every(({ offsetMin }) => offsetMin !== undefined) ? undefined : zone,
    assumedOrder: told === undefined && times.some(({ yearFirst }) => !yearFirst) ? said.usualOrder : undefined,
    holdsInside: columns.inside !== undefined,
    holdsOutside: columns.outside !== undefined,
  };
}

interface TimedRow {
  readonly row: CsvRow;
  readonly time: WrittenTime | undefined;
}

function timeOf({ fields }: CsvRow, { day, clock }: LoggerColumns): WrittenTime | undefined {
  const written = fields[day] ?? '';
  return writtenTime(clock === undefined ? written : `${written} ${fields[clock] ?? ''}`);
}

function unitsInCells(data: readonly CsvRow[], { inside, outside }: LoggerColumns): 'C' | 'F' | undefined {
  const fields = data[0]?.fields ?? [];
  return temperatureIn(fields[inside ?? outside ?? -1])?.units;
}

async function sorted(timed: readonly TimedRow[], columns: LoggerColumns, units: 'C' | 'F', instants: Instants) {
  const samples: LoggerSample[] = [];
  const badRows: BadRow[] = [];
  for (const [index, { row, time }] of timed.entries()) {
    if (index % ROWS_A_TURN === 0) await nextTurn();
    const sample = time === undefined ? 'time' : sampleOf(row, time, columns, units, instants);
    if (typeof sample === 'string') badRows.push({ line: row.line, reason: sample });
    else samples.push(sample);
  }
  return { samples, badRows };
}

function sampleOf(
  { fields }: CsvRow,
  time: WrittenTime,
  { inside, outside }: LoggerColumns,
  units: 'C' | 'F',
  instants: Instants,
): LoggerSample | BadRow['reason'] {
  const at = instants.at(time);
  if (at === undefined) return 'no-such-time';
  const celsius = (column: number | undefined) => {
    const written = column === undefined ? undefined : temperatureIn(fields[column]);
    if (written === undefined) return undefined;
    return (written.units ?? units) === 'F' ? celsiusFrom(written.value) : written.value;
  };
  const [insideC, outsideC] = [celsius(inside), celsius(outside)];
  if (insideC === undefined && outsideC === undefined) return 'temperature';
  const isPossible = (value: number | undefined) => value === undefined || (value >= COLDEST_C && value <= WARMEST_C);
  return isPossible(insideC) && isPossible(outsideC) ? { at, insideC, outsideC } : 'out-of-range';
}
