import {
  assumedClimate,
  type BedNight,
  bedNight,
  type CoverKey,
  climateGroundC,
  datedNight,
  EIGHTY_PERCENT_SDS,
  type NightSky,
  type NightWind,
  type OrdinaryNight,
  type WeatherSeries,
} from '../../../rules/index.ts';
import further from '../further-pairs.json' with { type: 'json' };
import table from '../trials.json' with { type: 'json' };
import type { ComparedRow, Comparison } from './comparison.ts';

const HOUR_MS = 3_600_000;
const HOURS_PER_DAY = 24;
const OVERCAST_FRACTION = 0.95;

/** A pair of lows as printed, and how its night is understood. */
export interface TrialRow {
  readonly id: string;
  readonly place: string;
  readonly latitudeDeg: number | null;
  readonly period: string;
  readonly coverStack: string;
  readonly outsideMinC: number | null;
  readonly insideMinC: number | null;
  readonly source: string;
  readonly compared?: ComparedTrial;
  readonly notCompared?: string;
}

export interface ComparedTrial {
  readonly group: string;
  /** From outside to inside. */
  readonly covers: CoverKey[];
  /** The night, or the middle of the period. */
  readonly date: string;
  /** Clear where nothing is told. */
  readonly sky?: NightSky;
  /** Light where nothing is told. */
  readonly wind?: NightWind;
  /** Told to be as warm as is usual on that date; absent: as the night itself lets one guess. */
  readonly soil?: 'season';
  /** Told to have been overcast; otherwise the sky of the night. */
  readonly dayBefore?: 'sunless';
  readonly mulch?: 'plastic';
  /** What an outside sensor an inch above the ground hung over; absent: a screen. */
  readonly outsideAbove?: 'bare soil' | 'plastic mulch';
  /** Why the measured low lies outside the range. */
  readonly exception?: string;
}

/** As they are called in a table; the rows name them in full. */
const SOURCES: Readonly<Record<string, string>> = {
  'perforated film on the crop': 'Oregon State University 1988',
  'spunbonded on the crop': 'Oregon State University 1988',
  'two heavy fabrics on hoops': 'Purdue Extension 2018',
  straw: 'Purdue Extension 2018',
  'a high tunnel': 'Purdue Extension 2023; school programme 2015',
  'fabric in a high tunnel': 'Michigan State farm 2004; weblogs 2007, 2020',
  'a cold frame': 'garden weblogs 2008, 2011',
  'a frame with a mat': 'garden weblogs 2010, 2013',
  'two film tunnels and jugs': 'garden weblog 2011',
};

/** Pairs compiled later: `further-pairs.json`. */
export const FURTHER_ROWS = further.rows as readonly TrialRow[];
export const MAIN_ROWS = table.rows as readonly TrialRow[];
export const TRIAL_ROWS = [...MAIN_ROWS, ...FURTHER_ROWS];

/** Nights with such a low outside are hard: they have a line of their own. [°C] */
export const HARD_AT_MOST_C = -5;
/** Its number was set by its one row. */
const MADE_FROM_ITS_ROW = 'straw';
const TOLERANCE = 'the 80 % range of the answer, without the part of the forecast';

/**
 * Lows measured under covers against those computed from the low outside, cover by cover, without hard nights. The tolerance is the range
 * that an answer gives, so the rows within it show what the range holds: it should be four in five.
 */
export function trialComparisons(): readonly Comparison[] {
  const mild = TRIAL_ROWS.filter((row) => !isHard(row) && row.compared !== undefined);
  const groups = [...new Set(mild.flatMap(({ compared }) => compared?.group ?? []))];
  return [
    ...groups.map((group) => ofGroup(group, mild)),
    {
      quantity: 'Trials without a pair of lows under covers of ours',
      unit: '–',
      source: 'abstracts, logs, talks',
      standing: 'read',
      tolerance: 'none',
      rows: [],
      leftOut: TRIAL_ROWS.flatMap((row) =>
        row.notCompared === undefined ? [] : [{ id: named(row), reason: row.notCompared }],
      ),
    },
  ];
}

/** All hard nights under any cover, with those of the frame that was read through a spring. */
export function hardComparison(frame: readonly ComparedRow[]): Comparison {
  const rows = TRIAL_ROWS.filter((row) => isHard(row) && row.compared?.group !== MADE_FROM_ITS_ROW);
  return {
    quantity: 'Measured low under covers on hard nights, outside −5 °C or colder',
    unit: 'K',
    source: 'pairs of farms, weblogs and extension, 2004–2022; the frame of 2018',
    standing: 'read',
    tolerance: TOLERANCE,
    rows: [...rows.flatMap(comparedRow), ...frame],
  };
}

/** Pairs from which a number of ours was taken. */
export function trialsInOurNumbers(): readonly Comparison[] {
  return [ofGroup(MADE_FROM_ITS_ROW, TRIAL_ROWS)];
}

function isHard({ outsideMinC }: TrialRow): boolean {
  return outsideMinC !== null && outsideMinC <= HARD_AT_MOST_C;
}

function ofGroup(group: string, of: readonly TrialRow[]): Comparison {
  return {
    quantity: `Measured low under ${group}`,
    unit: 'K',
    source: sourcesOf(group),
    standing: 'read',
    tolerance: TOLERANCE,
    rows: of.filter(({ compared }) => compared?.group === group).flatMap(comparedRow),
  };
}

function comparedRow(row: TrialRow): ComparedRow[] {
  const { compared, outsideMinC, insideMinC } = row;
  if (compared === undefined || outsideMinC === null || insideMinC === null) return [];
  const { thermometerLowC, spread } = trialNight(row, compared, outsideMinC);
  return [
    {
      id: named(row),
      ours: thermometerLowC,
      theirs: insideMinC,
      tolerance: EIGHTY_PERCENT_SDS * spread.sdK,
      ...(compared.exception !== undefined && { excuse: compared.exception }),
    },
  ];
}

function sourcesOf(group: string): string {
  const source = SOURCES[group];
  if (source === undefined) throw new Error(`No source is known of the group "${group}"`);
  return source;
}

function named({ id, coverStack, place, period, outsideMinC, source }: TrialRow): string {
  return `${id} ${coverStack}, ${place}, ${period}${outsideMinC === null ? '' : `, outside ${outsideMinC} °C`} — ${source}`;
}

function trialNight(row: TrialRow, compared: ComparedTrial, outsideMinC: number): BedNight {
  const { covers, mulch, outsideAbove } = compared;
  const bed = { covers, ...(mulch && { mulch }) };
  if (outsideAbove === undefined) return nightAt(row, compared, outsideMinC, bed);
  const beside = { covers: [], ...(outsideAbove === 'plastic mulch' && { mulch: 'plastic' as const }) };
  let screenC = outsideMinC;
  // A bare bed follows the screen nearly kelvin for kelvin, so this comes to rest at once.
  for (let step = 0; step < 4; step += 1) {
    screenC += outsideMinC - nightAt(row, compared, screenC, beside).thermometerLowC;
  }
  return nightAt(row, compared, screenC, bed);
}

/** The night of its date as `ordinaryNight` makes it for a question; covers have lain for weeks. */
function nightAt(
  row: TrialRow,
  trial: ComparedTrial,
  lowC: number,
  bed: { readonly covers: readonly CoverKey[]; readonly mulch?: 'plastic' },
): BedNight {
  const { sky = 'clear', wind = 'light', soil, date } = trial;
  const site = row.latitudeDeg === null ? {} : { latitudeDeg: row.latitudeDeg };
  const noonBefore = new Date(Date.parse(`${date}T12:00Z`) - HOURS_PER_DAY * HOUR_MS);
  const options = { sky, wind, site, coveredForWeeks: bed.covers };
  const plain = datedNight(lowC, noonBefore, options);
  const { latitudeDeg, elevationM } = plain.site;
  const weekMeanC = climateGroundC(assumedClimate(latitudeDeg, elevationM), noonBefore, 0);
  const dated = soil === 'season' ? datedNight(lowC, noonBefore, { ...options, weekMeanC }) : plain;
  const night = bedNight({ ...dated, ...(trial.dayBefore && { weather: afterSunlessDay(dated) }), bed });
  if (night.kind !== 'night') throw new Error(night.problem);
  return night;
}

function afterSunlessDay({ weather, window }: OrdinaryNight): WeatherSeries {
  const sunsetH = (window.from.getTime() - weather.first.getTime()) / HOUR_MS;
  const cloudFraction = weather.cloudFraction.map((value, hour) => (hour < sunsetH ? OVERCAST_FRACTION : value));
  return { ...weather, cloudFraction };
}
