import type { CoverStack, NightInput, Tending } from '../balance/night-input.ts';
import { nightRun } from '../balance/night-run.ts';
import { leftProfile, profileC } from '../balance/soil-column.ts';
import type { CoverKey, FrameBuild } from '../covers/cover-key.ts';
import { coverStack } from '../covers/cover-stack.ts';
import { commonFrame } from '../covers/frame.ts';
import { MS_PER_DAY, MS_PER_H } from '../durations.ts';
import { type BedAsLaid, OPEN_GREENS } from '../night/bed-night.ts';
import { isGlazed, type SoilStart } from '../night/soil-start.ts';
import { soilOf } from '../night/soil-table.ts';
import type { NightSite, WeatherSeries } from '../site-and-weather.ts';
import { type PreparedWeather, preparedWeather } from '../sky/prepared-weather.ts';
import { type DaySpan, dayFrom } from './day-span.ts';
import { openable } from './openable.ts';
import { OPENING_LIMIT_C } from './opening-advice.ts';

/** The soil does not notice the finer steps of a night: 0.1 K at 10 cm after a week. */
const STEP_MIN = 30;
const TOP_DEPTH_M = 0.1;
/** What the days have left is surer than a guess from their mean; sun and opening are as computed (judgement). */
const FOLLOWED_SD_K = 1;
/** Blankets come off an hour after sunrise (common practice). */
const UNCOVER_AFTER_SUNRISE_MS = MS_PER_H;
/** A cover that is taken off holds no air: as if a side of it were open to its full height. */
const TAKEN_OFF = { areaRatio: 1, heightM: 0.3 } as const;

/** Dirt and dew on film and glass take 10 to 20 % of the light that clean, dry panes let through (judgement). */
const SOILED_LIGHT_SHARE = 0.85;

/** The days gone by of one place, worked out once for all its beds. */
export interface SharedPast {
  readonly start: Date;
  readonly end: Date;
  readonly days: readonly DaySpan[];
  readonly prepared: PreparedWeather;
}

/**
 * What all beds of a place share of the days gone by.
 *
 * @param site - Where.
 * @param weather - Real hours.
 * @param start - When to begin.
 * @param end - When the soil is wanted.
 * @throws RangeError when the weather does not reach from start to end.
 */
export function sharedPast(site: NightSite, weather: WeatherSeries, start: Date, end: Date): SharedPast {
  const days: DaySpan[] = [];
  for (let atMs = start.getTime(); atMs < end.getTime(); ) {
    const day = dayFrom(new Date(atMs), site.latitudeDeg, site.longitudeDeg);
    if (day !== undefined) days.push(day);
    atMs = day === undefined ? atMs + MS_PER_DAY : day.sunset.getTime() + MS_PER_H;
  }
  return { start, end, days, prepared: preparedWeather(site, weather, start, end, STEP_MIN) };
}

/**
 * The soil that the last days have left under a bed's covers: opened when the thermometer among the leaves reaches 24 °C, as wide as it takes, and
 * shut when the opening rule says so; blankets and the like on by night.
 *
 * @param site - Where.
 * @param bed - What has lain there.
 * @param first - Soil at the beginning of the days.
 * @param past - From {@link sharedPast}.
 * @returns Soil at their end; the first one where the covers cannot lie so.
 */
export function soilAfterDays(site: NightSite, bed: BedAsLaid, first: SoilStart, past: SharedPast): SoilStart {
  const input = daysInput(site, bed, first, past);
  if (input === undefined) return first;
  const profile = leftProfile(nightRun(input, { prepared: past.prepared, stepMin: STEP_MIN }).end.soilC);
  const soil10CmC = profileC(profile, TOP_DEPTH_M);
  return { soil10CmC, deepC: first.deepC, profile, sdK: FOLLOWED_SD_K, measured: false };
}

function daysInput(
  site: NightSite,
  bed: BedAsLaid,
  first: SoilStart,
  { start, end, days, prepared }: SharedPast,
): NightInput | undefined {
  const frame = bed.frame ?? commonFrame(site.latitudeDeg);
  const laid = coverStack(bed.covers, {
    frame,
    waterStartC: first.soil10CmC,
    ...(bed.waterKgPerM2 !== undefined && { waterKgPerM2: bed.waterKgPerM2 }),
  });
  if (laid.kind === 'unsound') return undefined;
  const { blanket, ...withoutBlanket } = laid.day;
  const byDay = laid.day === laid.night && blanket !== undefined ? withoutBlanket : laid.day;
  const changes = days
    .flatMap(({ sunrise, shutBy }) => [
      { at: new Date(sunrise.getTime() + UNCOVER_AFTER_SUNRISE_MS), stack: soiled(byDay, bed.covers) },
      { at: shutBy, stack: laid.night },
    ])
    .filter(({ at }) => at > start && at < end);
  return {
    ...{ site, start, end },
    weather: prepared.series,
    soil: soilOf(bed.soilKind ?? 'moist', bed.mulch),
    soilProfile: first.profile,
    canopy: bed.canopy ?? OPEN_GREENS,
    stack: byDay === laid.night ? soiled(byDay, bed.covers) : laid.night,
    ...(byDay !== laid.night && { changes }),
    tending: {
      limitC: OPENING_LIMIT_C,
      openings: openingsOf(bed.covers, frame),
      spans: days.map(({ sunrise, shutBy }) => ({ from: sunrise, to: shutBy })),
    },
  };
}

function soiled(stack: CoverStack, covers: readonly CoverKey[]): CoverStack {
  const [outermost, ...inner] = stack.layers;
  if (outermost === undefined || !covers.some(isGlazed)) return stack;
  const sunTransmittedFraction = SOILED_LIGHT_SHARE * outermost.sunTransmittedFraction;
  return { ...stack, layers: [{ ...outermost, sunTransmittedFraction }, ...inner] };
}

function openingsOf(covers: readonly CoverKey[], frame: FrameBuild): Tending['openings'] {
  const found = openable(covers, frame);
  if (found === undefined) return [];
  return found.without === undefined ? found.openings : [...found.openings, TAKEN_OFF];
}
