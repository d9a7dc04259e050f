import {
  type Canopy,
  type CoverKey,
  coverStack,
  type FrameBuild,
  type NightRun,
  type NightSite,
  nightRun,
  type Soil,
  type SoundStack,
  type StackOptions,
  soilOf,
  soilProfile,
  type WeatherSeries,
} from '../../../rules/index.ts';

/** Hourly air of the model's reference night, from 07 h local time (UTC − 5) of 1 December; low −4, high 8. [°C] */
export const REFERENCE_SCREEN_C: readonly number[] = [
  -4, -1.33, 1.21, 3.48, 5.38, 6.81, 7.7, 8, 7.12, 5, 3.62, 2.43, 1.4, 0.51, -0.26, -0.92, -1.5, -1.99, -2.42, -2.79,
  -3.11, -3.38, -3.62, -3.82, -4, -1.33, 1.21, 3.48, 5.38, 6.81, 7.7, 8, 7.12, 5,
];
export const REFERENCE_LOW_C = -4;
const FIRST = new Date('2025-12-01T12:00Z');
export const REFERENCE_WINDOW = { from: new Date('2025-12-01T22:00Z'), to: new Date('2025-12-02T13:00Z') };
/** Blankets of the model's table of night additions. */
export const REFERENCE_NIGHT_COVER = { from: new Date('2025-12-01T21:30Z'), to: new Date('2025-12-02T13:30Z') };
export const REFERENCE_SITE: NightSite = {
  latitudeDeg: 40,
  longitudeDeg: -75,
  elevationM: 0,
  skyViewFraction: 1,
  shelterFraction: 0.8,
  inversionK: 3,
};
export const REFERENCE_FRAME: FrameBuild = {
  walls: 'wood',
  depthM: 1.22,
  lengthM: 2.44,
  backM: 0.305,
  frontM: 0.203,
  facingDeg: 180,
};

/** What differs from the reference night. */
export interface Departures {
  readonly cloudFraction?: number;
  readonly windMPerS?: number;
  /** The whole curve is moved to this low, the dew point with it. */
  readonly lowC?: number;
  readonly soil10CmC?: number;
  readonly deepC?: number;
  readonly soil?: Soil;
  readonly canopy?: Canopy;
  readonly stack?: StackOptions;
  /** Snow that falls on the covers at dusk. [m] */
  readonly duskSnowM?: number;
}

export interface ReferenceLows {
  readonly leafC: number;
  readonly airC: number;
  /** Air at crop level in the open. */
  readonly outsideC: number;
  readonly run: NightRun;
  readonly leafLowIndex: number;
}

export function referenceWeather({
  cloudFraction = 0,
  windMPerS = 1,
  lowC = REFERENCE_LOW_C,
}: Departures): WeatherSeries {
  return {
    first: FIRST,
    stepH: 1,
    screenC: REFERENCE_SCREEN_C.map((screenC) => screenC + lowC - REFERENCE_LOW_C),
    dewPointC: REFERENCE_SCREEN_C.map(() => lowC - 3),
    cloudFraction: REFERENCE_SCREEN_C.map(() => cloudFraction),
    wind10MPerS: REFERENCE_SCREEN_C.map(() => windMPerS),
  };
}

/** Lows of the reference night under covers; blankets and the like all the time unless `stack.nightCover` says when. */
export function referenceLows(covers: readonly CoverKey[], departures: Departures = {}): ReferenceLows {
  const { soil10CmC = 6, deepC = 9, canopy = { leafAreaIndex: 1, leafSizeM: 0.05 } } = departures;
  const options = { frame: REFERENCE_FRAME, waterStartC: soil10CmC + 2, ...departures.stack };
  const stack = soundStack(covers, options);
  const later =
    departures.duskSnowM === undefined
      ? stack
      : soundStack(['snow', ...covers], { ...options, snowDepthM: departures.duskSnowM });
  const nightCover = departures.stack?.nightCover ?? REFERENCE_NIGHT_COVER;
  const changes = [
    { at: nightCover.from, stack: later.night },
    { at: nightCover.to, stack: later.day },
  ];
  const comesAndGoes = later !== stack || (departures.stack?.nightCover !== undefined && stack.day !== stack.night);
  const run = nightRun({
    site: REFERENCE_SITE,
    start: FIRST,
    end: new Date(FIRST.getTime() + 33 * 3_600_000),
    weather: referenceWeather(departures),
    soil: departures.soil ?? soilOf('moist'),
    soilProfile: soilProfile(soil10CmC, deepC),
    canopy,
    stack: comesAndGoes ? stack.day : stack.night,
    ...(comesAndGoes && { changes }),
  });
  return { ...lowsOf(run), run };
}

function soundStack(covers: readonly CoverKey[], options: StackOptions): SoundStack {
  const stack = coverStack(covers, options);
  if (stack.kind === 'unsound') throw new Error(`${covers.join(', ')}: ${stack.problem}`);
  return stack;
}

function lowsOf(run: NightRun): Omit<ReferenceLows, 'run'> {
  const first = run.timesMs.findIndex((atMs) => atMs >= REFERENCE_WINDOW.from.getTime());
  const last = run.timesMs.findLastIndex((atMs) => atMs <= REFERENCE_WINDOW.to.getTime());
  const low = (values: Float64Array) => Math.min(...values.slice(first, last + 1));
  const leafC = low(run.leafC);
  return {
    leafC,
    airC: low(run.airC),
    outsideC: low(run.cropLevelAirC),
    leafLowIndex: run.leafC.indexOf(leafC, first),
  };
}
