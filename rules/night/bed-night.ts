import type { Canopy, CoverStack, NightInput, Vent } from '../balance/night-input.ts';
import { type NightRun, nightRun } from '../balance/night-run.ts';
import { frozenFraction, thawedAt } from '../balance/thaw.ts';
import type { CoverKey, FrameBuild } from '../covers/cover-key.ts';
import type { UnsoundOrder } from '../covers/cover-order.ts';
import { coverStack, type SoundStack } from '../covers/cover-stack.ts';
import { commonFrame } from '../covers/frame.ts';
import type { NightSite, WeatherSeries } from '../site-and-weather.ts';
import { outsideAt, type PreparedWeather, preparedWeather } from '../sky/prepared-weather.ts';
import { nightFrom, sunTimes } from '../sun/sunrise-sunset.ts';
import type { BookNight } from './book-night.ts';
import type { SoilStart } from './soil-start.ts';
import { type MulchKind, type SoilKind, soilOf } from './soil-table.ts';
import { type ForecastKind, leafSpread, type Spread } from './spread.ts';

const HOUR_MS = 3_600_000;
const MINUTE_MS = 60_000;
const COARSE_STEP_MIN = 30;
/** Blankets come off an hour after sunrise (common practice). */
const UNCOVER_AFTER_SUNRISE_H = 1;
/** Long enough for leaves to thaw. */
const RUN_ON_H = 8;
/** Polar night or day: no sunrise to begin with. */
const SPIN_UP_WITHOUT_SUN_H = 12;
/** Jugs have more of the day's sun than the soil at 10 cm (judgement). */
const JUGS_ABOVE_SOIL_K = 2;
/** Open winter greens with leaves of 5 cm (judgement). */
export const OPEN_GREENS: Canopy = { leafAreaIndex: 1, leafSizeM: 0.05 };

export interface TimeWindow {
  readonly from: Date;
  readonly to: Date;
}

/** Weather of a night, worked out once for all beds of a place. */
export interface SharedNight {
  readonly start: Date;
  readonly end: Date;
  readonly sunset: Date;
  /** Where weather that was forecast or seen begins; before it the day is made up. */
  readonly knownFrom: Date;
  /** When blankets and the like are on. */
  readonly nightCover: TimeWindow;
  readonly prepared: PreparedWeather;
}

/** A bed as its grower describes it. */
export interface BedAsLaid {
  /** From outside to inside; none for a bare bed. */
  readonly covers: readonly CoverKey[];
  readonly frame?: FrameBuild;
  readonly canopy?: Canopy;
  readonly soilKind?: SoilKind;
  readonly mulch?: MulchKind;
  readonly snowDepthM?: number;
  readonly snowIsFresh?: boolean;
  readonly waterKgPerM2?: number;
  /** Water that is set out at shutting time, this warm; it stands there from the day before when absent. [°C] */
  readonly waterAtDuskC?: number;
  /** Outermost cover that stays open all night. */
  readonly opening?: Pick<Vent, 'areaRatio' | 'heightM'>;
  /** Electric heat spread over the soil. [W m⁻², 0…500] */
  readonly heatWPerM2?: number;
  /** Rain has soaked the straw or leaves on top. */
  readonly litterIsWet?: boolean;
}

export interface BedNightInput {
  readonly site: NightSite;
  /** From the sunrise before, if it can be had, to some hours after the night. */
  readonly weather: WeatherSeries;
  readonly soil: SoilStart;
  readonly bed: BedAsLaid;
  /** When the leaf minimum is looked for. */
  readonly window: TimeWindow;
  readonly forecast: ForecastKind;
}

/** A night of one bed. */
export interface BedNight {
  readonly kind: 'night';
  readonly leafLowC: number;
  readonly leafLowAt: Date;
  readonly airLowC: number;
  /** Of an unshielded thermometer among the leaves: what a reading is held against. */
  readonly thermometerLowC: number;
  readonly surfaceLowC: number;
  /** Forecast low at 2 m. */
  readonly screenLowC: number;
  /** Air at crop level beside the bed. */
  readonly outsideAirLowC: number;
  /** What forecast and physics alone had said, where readings have moved the lows. */
  readonly book?: BookNight;
  /** Share of the leaves' water that freezes at the low. [0…0.85] */
  readonly frozenFraction: number;
  /** When frozen leaves have thawed; absent when they do not freeze, or not before the run ends. */
  readonly thawAt?: Date;
  readonly spread: Spread;
  readonly stack: SoundStack;
  readonly run: NightRun;
}

/**
 * Works out what all beds of a place share for one night.
 *
 * @param site - Where.
 * @param weather - The forecast.
 * @param window - The night.
 * @param runOnH - How much longer the beds are followed, for leaves to thaw; no longer than the weather goes. [h]
 * @throws RangeError when the weather does not reach from the beginning to the end of the window.
 */
export function sharedNight(
  site: NightSite,
  weather: WeatherSeries,
  window: TimeWindow,
  runOnH: number = RUN_ON_H,
): SharedNight {
  const night = nightFrom(window.from, site.latitudeDeg, site.longitudeDeg);
  const sunset = night?.sunset ?? window.from;
  const sun = sunTimes(new Date(sunset.getTime() - MINUTE_MS), site.latitudeDeg, site.longitudeDeg);
  const startMs = sun.kind === 'rises' ? sun.sunrise.getTime() : sunset.getTime() - SPIN_UP_WITHOUT_SUN_H * HOUR_MS;
  const firstMs = weather.first.getTime();
  const stepMs = weather.stepH * HOUR_MS;
  const lastMs = firstMs + (weather.screenC.length - 1) * stepMs;
  // On an instant of the series, so that the steps of the run meet its lows.
  const start = new Date(firstMs + Math.max(0, Math.floor((startMs - firstMs) / stepMs)) * stepMs);
  const end = new Date(Math.min(lastMs, window.to.getTime() + runOnH * HOUR_MS));
  const uncoverMs = (night?.sunrise ?? window.to).getTime() + UNCOVER_AFTER_SUNRISE_H * HOUR_MS;
  return {
    start,
    end,
    sunset,
    knownFrom: new Date(Math.max(start.getTime(), firstMs + (weather.assumedH ?? 0) * HOUR_MS)),
    nightCover: { from: night?.shutBy ?? window.from, to: new Date(uncoverMs) },
    prepared: preparedWeather(site, weather, start, end),
  };
}

/**
 * The night of a bed under the covers that its grower names.
 *
 * @param input - Site, weather, soil, bed and the hours that count.
 * @param shared - From {@link sharedNight}, where several beds of one place are asked for.
 * @returns Lows, thaw and how far off they may be; or why the covers cannot lie so.
 * @throws RangeError when the weather does not span the window or a number is out of range.
 *
 * @remarks
 * Blankets, quilts, sheets, tarps and mats go on at shutting time and come off an hour after sunrise; what passes light stays.
 * Leaves that touch a cover run colder than `leafLowC` (`stack.touchesLeaves`).
 */
export function bedNight(
  input: BedNightInput,
  shared: SharedNight = sharedNight(input.site, input.weather, input.window),
): BedNight | UnsoundOrder {
  const { site, soil, bed } = input;
  const frame = bed.frame ?? commonFrame(site.latitudeDeg);
  const stack = coverStack(bed.covers, {
    frame,
    ...(bed.snowDepthM !== undefined && { snowDepthM: bed.snowDepthM }),
    ...(bed.snowIsFresh !== undefined && { snowIsFresh: bed.snowIsFresh }),
    ...(bed.waterKgPerM2 !== undefined && { waterKgPerM2: bed.waterKgPerM2 }),
    ...(bed.litterIsWet !== undefined && { litterIsWet: bed.litterIsWet }),
    waterStartC: bed.waterAtDuskC ?? soil.soil10CmC + JUGS_ABOVE_SOIL_K,
    nightCover: shared.nightCover,
  });
  if (stack.kind === 'unsound') return stack;
  const run = nightRun(nightInput(input, stack, shared), { prepared: shared.prepared });
  return nightOf(input, stack, run, shared);
}

function nightInput({ site, weather, soil, bed }: BedNightInput, stack: SoundStack, shared: SharedNight): NightInput {
  const { start, end, nightCover } = shared;
  const common = {
    site,
    start,
    end,
    weather,
    soil: soilOf(bed.soilKind ?? 'moist', bed.mulch),
    soilProfile: soil.profile,
    canopy: bed.canopy ?? OPEN_GREENS,
    ...(bed.heatWPerM2 !== undefined && { heatWPerM2: bed.heatWPerM2 }),
  };
  const opened = (laid: CoverStack) => withOpening(laid, bed.opening, start, end);
  const [day, night] = [opened(withoutWater(stack.day, bed)), opened(stack.night)];
  if (stack.day === stack.night && bed.waterAtDuskC === undefined) return { ...common, stack: night };
  return {
    ...common,
    stack: day,
    changes: [
      { at: nightCover.from, stack: night },
      { at: nightCover.to, stack: day },
    ],
  };
}

function withOpening(laid: CoverStack, opening: BedAsLaid['opening'], from: Date, to: Date): CoverStack {
  if (opening === undefined || opening.areaRatio === 0 || laid.layers.length === 0) return laid;
  return { ...laid, vent: { ...opening, from, to } };
}

/** Water that is set out at dusk does not stand there by day. */
function withoutWater(laid: CoverStack, { waterAtDuskC }: BedAsLaid): CoverStack {
  if (waterAtDuskC === undefined) return laid;
  const { waterMass: _, ...rest } = laid;
  return rest;
}

function nightOf(input: BedNightInput, stack: SoundStack, run: NightRun, shared: SharedNight): BedNight {
  const { site, soil, bed, window, forecast } = input;
  const { first, last } = stepsWithin(run, window);
  const low = lowest(run.leafC, first, last);
  const leafLowC = run.leafC[low] ?? Number.NaN;
  const leafLowAt = new Date(run.timesMs[low] ?? Number.NaN);
  const valueAt = (values: Float64Array) => values[lowest(values, first, last)] ?? Number.NaN;
  const thawAt = thawedAt(run, low);
  const outside = outsideAt(shared.prepared, leafLowAt.getTime());
  return {
    kind: 'night',
    leafLowC,
    leafLowAt,
    airLowC: valueAt(run.airC),
    thermometerLowC: valueAt(run.thermometerC),
    surfaceLowC: valueAt(run.soilSurfaceC),
    screenLowC: valueAt(run.screenC),
    outsideAirLowC: valueAt(run.cropLevelAirC),
    frozenFraction: frozenFraction(leafLowC),
    ...(thawAt && { thawAt }),
    spread: leafSpread({
      covers: bed.covers,
      ...(bed.frame && { walls: bed.frame.walls }),
      site,
      cloudFraction: cloudAt(shared.prepared.series, leafLowAt),
      windMPerS: outside.wind10MPerS,
      soilSdK: soil.sdK,
      ...(stack.night.layers.length > 0 && { soilShareK: soilShareK(input, stack, shared) }),
      sunBeforeNightH: (shared.sunset.getTime() - shared.knownFrom.getTime()) / HOUR_MS,
      forecast,
    }),
    stack,
    run,
  };
}

/**
 * Half of what the leaf minimum moves between a soil that is warmer and one that is colder by its standard deviation: far more where the cold
 * one has spent the heat of its freezing than on an ordinary night. In coarse steps, for a difference.
 */
function soilShareK(input: BedNightInput, stack: SoundStack, shared: SharedNight): number {
  const { soil, window } = input;
  const base = { ...nightInput(input, stack, shared), end: window.to };
  const leafLowC = (byK: number) => {
    const soilProfile = soil.profile.map(({ depthM, soilC }) => ({ depthM, soilC: soilC + byK }));
    const run = nightRun({ ...base, soilProfile }, { prepared: shared.prepared, stepMin: COARSE_STEP_MIN });
    const { first, last } = stepsWithin(run, window);
    return run.leafC[lowest(run.leafC, first, last)] ?? Number.NaN;
  };
  return Math.max(0, leafLowC(soil.sdK) - leafLowC(-soil.sdK)) / 2;
}

/** Indices of the first and last step inside a window. */
function stepsWithin(run: NightRun, { from, to }: TimeWindow): { first: number; last: number } {
  const first = run.timesMs.findIndex((atMs) => atMs >= from.getTime());
  const last = run.timesMs.findLastIndex((atMs) => atMs <= to.getTime());
  if (first < 0 || last < first) throw new RangeError('window lies outside the weather');
  return { first, last };
}

function lowest(values: Float64Array, first: number, last: number): number {
  let at = first;
  for (let index = first; index <= last; index += 1) {
    if ((values[index] ?? Number.NaN) < (values[at] ?? Number.NaN)) at = index;
  }
  return at;
}

function cloudAt({ first, stepH, cloudFraction }: WeatherSeries, at: Date): number {
  const hour = Math.round((at.getTime() - first.getTime()) / (stepH * HOUR_MS));
  return cloudFraction[Math.max(0, Math.min(cloudFraction.length - 1, hour))] ?? 0;
}
