import type { CoverStack, NightInput } from '../balance/night-input.ts';
import { type NightRun, nightRun } from '../balance/night-run.ts';
import type { CoverKey, FrameBuild } from '../covers/cover-key.ts';
import type { UnsoundOrder } from '../covers/cover-order.ts';
import { coverStack, type SoundStack } from '../covers/cover-stack.ts';
import { commonFrame } from '../covers/frame.ts';
import type { BedLearning } from '../learning/bed-history.ts';
import { learnedRun } from '../learning/learned-night.ts';
import type { BedAsLaid } from '../night/bed-night.ts';
import type { SoilStart } from '../night/soil-start.ts';
import { soilOf } from '../night/soil-table.ts';
import { windowHigh } from '../night/window-summary.ts';
import type { Planting } from '../outlook/bed-verdict.ts';
import type { NightSite, WeatherSeries } from '../site-and-weather.ts';
import { type PreparedWeather, preparedWeather } from '../sky/prepared-weather.ts';
import type { DaySpan } from './day-span.ts';
import { type Openable, openable } from './openable.ts';
import { type OpeningAdvice, openingAdvice } from './opening-advice.ts';
import { hardeningLimit, type OpeningLimit, openingLimit } from './opening-limit.ts';
import { type PickTime, pickTime } from './pick-time.ts';

const HOUR_MS = 3_600_000;
const DAY_MS = 24 * HOUR_MS;
/** Blankets come off an hour after sunrise, when the sun has reached them (common practice). */
const UNCOVER_AFTER_SUNRISE_MS = HOUR_MS;
/** Without warmth to be had a blanket loses more than the light is worth (judgement). [°C] */
const WORTH_UNCOVERING_ABOVE_C = 0;
/** The day's runs begin this long before sunrise: the light parts start in steady state. */
const BEFORE_SUNRISE_MS = HOUR_MS;

/** Weather of a day and the night before it, worked out once for all beds of a place. */
export interface SharedDay {
  readonly day: DaySpan;
  readonly start: Date;
  readonly end: Date;
  readonly prepared: PreparedWeather;
}

export interface BedDayInput {
  readonly site: NightSite;
  readonly weather: WeatherSeries;
  readonly soil: SoilStart;
  readonly bed: BedAsLaid;
  /** What grows there: limits and hardness decide when to open. */
  readonly plantings: readonly Planting[];
  /** What the bed's readings have taught of its nights: it decides when leaves have thawed. */
  readonly learned?: BedLearning;
  /** First instant at which somebody could open; before sunrise counts as sunrise. */
  readonly from: Date;
}

/** A day of one bed. */
export interface BedDay {
  readonly kind: 'day';
  /** What can be opened; absent for a bare bed, straw and the like. */
  readonly opening?: { readonly openable: Openable; readonly limit: OpeningLimit; readonly advice: OpeningAdvice };
  /** Blankets and the like, to be off from then until shutting time. */
  readonly takenOff?: { readonly keys: readonly CoverKey[]; readonly at: Date };
  /** Blankets and the like that may stay on: without them it would not get above freezing either. */
  readonly leftOn?: readonly CoverKey[];
  /** Absent where the night before is not known. */
  readonly pick?: PickTime;
  readonly stack: SoundStack;
}

/**
 * Works out what all beds of a place share for one day.
 *
 * @param site - Where.
 * @param weather - The forecast, from the sunrise before the night before, if it can be had, to the day's sunset.
 * @param day - The day.
 * @throws RangeError when the weather does not reach from sunrise to sunset.
 */
export function sharedDay(site: NightSite, weather: WeatherSeries, day: DaySpan): SharedDay {
  const firstMs = weather.first.getTime();
  const stepMs = weather.stepH * HOUR_MS;
  // On instants of the series, so that the steps of the run meet its hours.
  const onHour = (atMs: number, round: (steps: number) => number) =>
    firstMs + round((atMs - firstMs) / stepMs) * stepMs;
  const start = new Date(Math.max(firstMs, onHour(day.sunrise.getTime() - DAY_MS, Math.floor)));
  const end = new Date(onHour(day.sunset.getTime(), Math.ceil));
  return { day, start, end, prepared: preparedWeather(site, weather, start, end) };
}

/**
 * What to do by day with the covers of a bed, and when its leaves can be picked.
 *
 * @param input - Site, weather, soil, bed and what grows there.
 * @param shared - From {@link sharedDay}.
 * @returns Advice; or why the covers cannot lie so.
 * @throws RangeError when the weather does not span the day or a number is out of range.
 *
 * @remarks
 * The night before is taken with the covers shut as they are named, the day with blankets and the like off from an hour after
 * sunrise, also where they may as well stay on. If hardened plants would soften on such a day, the limit is lowered and the day worked out again.
 */
export function bedDay(input: BedDayInput, shared: SharedDay): BedDay | UnsoundOrder {
  const { day, start, end, prepared } = shared;
  const frame = input.bed.frame ?? commonFrame(input.site.latitudeDeg);
  const uncoverAt = new Date(day.sunrise.getTime() + UNCOVER_AFTER_SUNRISE_MS);
  const stack = stackOf(input, frame, input.bed.covers, { from: day.shutBefore, to: uncoverAt });
  if (stack.kind === 'unsound') return stack;
  const whole = laidInput(input, stack, { from: start, to: end, shutAt: day.shutBefore, uncoverAt });
  const overnight = nightRun(whole, { prepared });
  const opening = openingOf(input, shared, { frame, stack, whole, overnight });
  const off = stack.takenOffByDay;
  const thaws = windowHigh(overnight, 'thermometerC', uncoverAt, end).valueC > WORTH_UNCOVERING_ABOVE_C;
  return {
    kind: 'day',
    ...(opening && { opening }),
    ...(off.length > 0 && (thaws ? { takenOff: { keys: off, at: uncoverAt } } : { leftOn: off })),
    ...(start <= day.sunsetBefore && {
      pick: pickTime({
        run: asLearned(overnight, input),
        nightFrom: day.sunsetBefore,
        sunrise: day.sunrise,
        sunset: day.sunset,
      }),
    }),
    stack,
  };
}

function asLearned(overnight: NightRun, { learned, bed }: BedDayInput): NightRun {
  if (learned === undefined) return overnight;
  return learnedRun(overnight, learned, { covers: bed.covers, ...(bed.frame && { walls: bed.frame.walls }) });
}

function stackOf(
  { bed, soil }: BedDayInput,
  frame: FrameBuild,
  covers: readonly CoverKey[],
  nightCover: { readonly from: Date; readonly to: Date },
): SoundStack | UnsoundOrder {
  return coverStack(covers, {
    frame,
    nightCover,
    waterStartC: soil.soil10CmC,
    ...(bed.snowDepthM !== undefined && { snowDepthM: bed.snowDepthM }),
    ...(bed.snowIsFresh !== undefined && { snowIsFresh: bed.snowIsFresh }),
    ...(bed.waterKgPerM2 !== undefined && { waterKgPerM2: bed.waterKgPerM2 }),
  });
}

interface Span {
  readonly from: Date;
  readonly to: Date;
  readonly shutAt: Date;
  readonly uncoverAt: Date;
}

/** A run under the covers of the evening before until they come off, and under those of the day from then on. */
function laidInput(
  { site, weather, soil, bed }: BedDayInput,
  stack: SoundStack,
  { from, to, shutAt, uncoverAt }: Span,
): NightInput {
  const changes = [
    { at: shutAt, stack: stack.night },
    { at: uncoverAt, stack: stack.day },
  ].filter(({ at }) => at > from && at < to);
  const isNight = from >= shutAt && from < uncoverAt;
  return {
    site,
    weather,
    start: from,
    end: to,
    soil: soilOf(bed.soilKind ?? 'moist', bed.mulch),
    soilProfile: soil.profile,
    canopy: bed.canopy ?? { leafAreaIndex: 1, leafSizeM: 0.05 },
    stack: isNight ? stack.night : stack.day,
    ...(stack.day !== stack.night && changes.length > 0 && { changes }),
  };
}

interface LaidBed {
  readonly frame: FrameBuild;
  readonly stack: SoundStack;
  readonly whole: NightInput;
  readonly overnight: NightRun;
}

function openingOf(input: BedDayInput, shared: SharedDay, laid: LaidBed): BedDay['opening'] {
  const { day, end, prepared, start } = shared;
  const found = openable(input.bed.covers, laid.frame);
  if (found === undefined) return undefined;
  const uncovered = uncoveredStack(laid.frame, found);
  const morning = new Date(Math.max(start.getTime(), hourBefore(day.sunrise, input.weather)));
  const before = morning > start ? nightRun({ ...laid.whole, end: morning }, { prepared }).end : undefined;
  const uncoverAt = new Date(day.sunrise.getTime() + UNCOVER_AFTER_SUNRISE_MS);
  const plan = {
    input: laidInput(input, laid.stack, { from: morning, to: end, shutAt: day.shutBefore, uncoverAt }),
    from: new Date(Math.max(input.from.getTime(), day.sunrise.getTime(), morning.getTime())),
    shutBy: day.shutBy,
    to: day.sunset,
    openings: found.openings,
    ...(uncovered && { uncovered }),
  };
  const adviceAt = ({ limitC }: OpeningLimit) =>
    openingAdvice({ ...plan, limitC }, { prepared, ...(before && { from: before }) });
  const usual = openingLimit(input.plantings);
  const advice = adviceAt(usual);
  const limit = hardeningLimit(usual, input.plantings, dayMeanC(laid.overnight, advice, end));
  return { openable: found, limit, advice: limit === usual ? advice : adviceAt(limit) };
}

/** On an instant of the series. */
function hourBefore(sunrise: Date, { first, stepH }: WeatherSeries): number {
  const stepMs = stepH * HOUR_MS;
  return first.getTime() + Math.floor((sunrise.getTime() - BEFORE_SUNRISE_MS - first.getTime()) / stepMs) * stepMs;
}

function uncoveredStack(frame: FrameBuild, { without }: Openable): CoverStack | undefined {
  if (without === undefined) return undefined;
  const bare = coverStack(without, { frame });
  return bare.kind === 'stack' ? bare.day : undefined;
}

/** Mean air of the 24 hours up to the end, with the high cut off at what the opening lets it reach. */
function dayMeanC(run: NightRun, advice: OpeningAdvice, end: Date): number {
  const cutC = advice.kind === 'stay-shut' ? Number.POSITIVE_INFINITY : advice.thermometerHigh.valueC;
  const fromMs = end.getTime() - DAY_MS;
  let sum = 0;
  let count = 0;
  for (const [index, atMs] of run.timesMs.entries()) {
    if (atMs < fromMs) continue;
    sum += Math.min(cutC, run.airC[index] ?? Number.NaN);
    count += 1;
  }
  return sum / count;
}
