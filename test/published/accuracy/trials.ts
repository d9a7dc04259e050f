import {
  type BedNight,
  bedNight,
  type CoverKey,
  EIGHTY_PERCENT_SDS,
  type NightSite,
  type NightSky,
  type NightWind,
  nightFrom,
  ordinaryNight,
  soilStart,
  sunTimes,
} from '../../../rules/index.ts';
import { assumedClimate, climateGroundC } from '../../../rules/night/climate.ts';
import { dailyCurveC } from '../../../rules/night/daily-curve.ts';
import table from '../trials.json' with { type: 'json' };
import type { ComparedRow, Comparison } from './comparison.ts';

const HOUR_MS = 3_600_000;
const PEAK_AFTER_NOON_H = 2;
const HOURS_PER_DAY = 24;

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
  'fabric in a high tunnel': 'Michigan State farm 2004; garden weblog 2007',
  'a cold frame': 'garden weblogs 2008, 2011',
};

export const TRIAL_ROWS = table.rows as readonly TrialRow[];

/**
 * Lows measured under covers against those computed from the low outside, cover by cover. The tolerance is the range that an
 * answer gives, so the rows within it show what the range holds: it should be four in five.
 */
export function trialComparisons(): readonly Comparison[] {
  const groups = [...new Set(TRIAL_ROWS.flatMap(({ compared }) => compared?.group ?? []))];
  return [
    ...groups.map((group): Comparison => {
      const rows = TRIAL_ROWS.filter(({ compared }) => compared?.group === group);
      return {
        quantity: `Measured low under ${group}`,
        unit: 'K',
        source: sourcesOf(group),
        standing: 'read',
        tolerance: 'the 80 % range of the answer, without the part of the forecast',
        rows: rows.flatMap(comparedRow),
      };
    }),
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

/** An ordinary night with the sun and the soil of its date; covers have lain for weeks. */
function nightAt(
  row: TrialRow,
  trial: ComparedTrial,
  lowC: number,
  bed: { readonly covers: readonly CoverKey[]; readonly mulch?: 'plastic' },
): BedNight {
  const { sky = 'clear', wind = 'light', soil } = trial;
  const plain = ordinaryNight(lowC, {
    sky,
    wind,
    ...(row.latitudeDeg !== null && { site: { latitudeDeg: row.latitudeDeg } }),
  });
  const { site, assumed } = plain;
  const { sunrise, sunset, dayLengthH, window } = sunOf(trial, site);
  const curve = { lowC, rangeK: assumed.dayRangeK, peakAfterH: dayLengthH / 2 + PEAK_AFTER_NOON_H };
  const screenC = plain.weather.screenC.map((_, hour) => dailyCurveC(curve, hour));
  const usualC = climateGroundC(assumedClimate(site.latitudeDeg, site.elevationM), sunset, 0);
  const night = bedNight({
    site,
    weather: { ...plain.weather, first: sunrise, screenC },
    soil: soilStart({
      site,
      at: sunset,
      weekMeanC: soil === 'season' ? usualC : meanC(screenC.slice(0, HOURS_PER_DAY)),
      coveredForWeeks: bed.covers,
    }),
    bed,
    window,
    forecast: { kind: 'stated' },
  });
  if (night.kind !== 'night') throw new Error(night.problem);
  return night;
}

/** The day before the night of which the date is the morning. */
function sunOf({ date }: ComparedTrial, { latitudeDeg, longitudeDeg }: NightSite) {
  const noonBefore = new Date(Date.parse(`${date}T12:00Z`) - (HOURS_PER_DAY + longitudeDeg / 15) * HOUR_MS);
  const sun = sunTimes(noonBefore, latitudeDeg, longitudeDeg);
  const night = nightFrom(noonBefore, latitudeDeg, longitudeDeg);
  if (sun.kind !== 'rises' || night === undefined) throw new RangeError(`${date}: the sun does not rise and set`);
  return { ...sun, window: { from: night.sunset, to: new Date(night.sunrise.getTime() + HOUR_MS) } };
}

function meanC(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / values.length;
}
