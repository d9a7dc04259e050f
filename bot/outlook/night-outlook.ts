import {
  type BedAsLaid,
  type BedNight,
  type BedVerdict,
  bedNight,
  bedVerdict,
  type Canopy,
  COVERS,
  type CoverKey,
  cropById,
  type DayBehind,
  exposedSite,
  harmFraction,
  learnedNight,
  MS_PER_H,
  type NightSite,
  type NightSpan,
  type SharedNight,
  type SoilStart,
  type Step,
  sharedNight,
  snowOverPlantsM,
  stepFor,
  type WeatherSeries,
  withDayBefore,
  without,
} from '../../rules/index.ts';
import type { HourlyForecast } from '../forecast/forecast.ts';
import { nightWeather } from '../weather/night.ts';
import type { NightWeather } from '../weather/night-weather.ts';
import { type BedInPast, bedInPast } from './bed-in-past.ts';
import { plantingOf } from './bed-planting.ts';
import { daysBehind } from './days-behind.ts';
import type { Garden, GardenBed } from './garden.ts';
import { SharedNights } from './shared-nights.ts';
import { soilBehind } from './soil-behind.ts';

/** A garden's night: what each bed comes to and what to do about it. */
export interface NightOutlook {
  readonly garden: Garden;
  readonly night: NightSpan;
  readonly forecast: HourlyForecast;
  readonly weather: NightWeather;
  /** Days without sun, one after the other, up to now. */
  readonly sunlessDays: number;
  /** Most urgent first. */
  readonly beds: readonly BedOutlook[];
}

export interface BedOutlook {
  readonly bed: GardenBed;
  readonly verdict: BedVerdict;
  readonly step: Step;
  readonly past: BedInPast;
}

/** Within it gardens may share what was worked out: ages of forecasts are told by the hour. */
const SAME_TIME_MS = 3_600_000;
const LEAF_SIZE_M = 0.05;
/** Rain that soaks straw laid 10 cm deep (judgement). [mm] */
const SOAKING_RAIN_MM = 5;
/** Rain that leaves the leaves wet (judgement). [mm] */
const WETTING_RAIN_MM = 1;

/**
 * What a night comes to for every bed of a garden.
 *
 * @param now - What time it is; tells past hours from coming ones and how old the forecast is.
 * @param shared - What gardens before have left, where many are worked out.
 * @throws NightForecastError when the forecast does not carry the night.
 */
export function nightOutlook(
  garden: Garden,
  forecast: HourlyForecast,
  night: NightSpan,
  now: Date,
  shared: OutlooksShared = new SharedNights(),
): NightOutlook {
  const key = benchKey(garden, night, now, shared.numberOf(forecast));
  const bench = shared.bench(key, () => benchOf(garden, forecast, night, now));
  const judged = garden.beds
    .filter(({ plantings }) => plantings.length > 0)
    .map((bed) =>
      judgedBed(bed, bench, (keys) =>
        asLearned(
          bed,
          keys,
          shared.night(bedKey(key, bed, keys), bed.learned !== undefined, () => nightUnder(bed, keys, bench)),
        ),
      ),
    );
  judged.sort((a, b) => harmFraction(b.verdict.worst.odds) - harmFraction(a.verdict.worst.odds));
  return {
    garden,
    night,
    forecast,
    weather: bench.weather,
    sunlessDays: bench.sunlessDays,
    beds: withSteps(judged, garden.shed),
  };
}

/** Everything that a bench is made from; the time counts by a few minutes. */
function benchKey(garden: Garden, night: NightSpan, now: Date, forecastNumber: number): string {
  const { latitudeDeg, longitudeDeg, elevationM, exposure, horizonDeg = [] } = garden;
  const time = Math.floor(now.getTime() / SAME_TIME_MS);
  const place = [latitudeDeg, longitudeDeg, elevationM, exposure, ...horizonDeg];
  return [forecastNumber, night.sunset.getTime(), time, ...place].join(' ');
}

/** Everything that a night under a stack is made from. */
function bedKey(key: string, bed: GardenBed, keys: readonly CoverKey[]): string {
  const { covers, frame, soilKind, mulch } = bed;
  const { leafAreaIndex } = canopyOf(bed);
  return `${key} ${JSON.stringify([covers, keys, frame, soilKind, mulch, leafAreaIndex, snowKey(bed, keys)])}`;
}

/** How tall the crops are tells only where snow may cover them: a bed with covers is shared whatever grows in it. */
function snowKey({ plantings }: GardenBed, keys: readonly CoverKey[]): readonly string[] {
  return keys.length > 0 ? [] : [...new Set(plantings.map(({ cropId }) => cropId))].sort();
}

/** For {@link nightOutlook} where many gardens are worked out. */
export type OutlooksShared = SharedNights<Bench>;

/** What all beds of the garden share. */
export interface Bench {
  readonly site: NightSite;
  readonly weather: NightWeather;
  readonly window: { readonly from: Date; readonly to: Date };
  readonly shared: SharedNight;
  readonly nightsAhead: number;
  readonly heightDifferenceM: number | undefined;
  /** Days without sun, one after the other, up to now. */
  readonly sunlessDays: number;
  /** Whole days outside before the night, the last one last. */
  readonly daysBehind: readonly DayBehind[];
  /** Hours from the sunrise before the night at the latest; made up where the forecast begins later. */
  readonly series: WeatherSeries;
  soilUnder(bed: BedAsLaid): SoilStart;
}

/** Site, weather and soil of one night, for working out any bed there. */
export function benchOf(garden: Garden, forecast: HourlyForecast, night: NightSpan, now: Date): Bench {
  const weather = nightWeather(forecast, night, now);
  const elevationM = garden.elevationM ?? forecast.gridElevationM ?? 0;
  const site = gardenSite(garden, elevationM);
  const window = { from: night.sunset, to: new Date(night.sunrise.getTime() + MS_PER_H) };
  const series = withDayBefore(site, weather.series, night.sunset);
  const shared = sharedNight(site, series, window);
  const cloudKnown = !weather.notes.some(({ code }) => code === 'cloud-assumed-clear');
  const soil = soilBehind(site, series, { runFrom: shared.start, at: night.sunset, now, cloudKnown });
  return {
    ...{ site, weather, window, series, shared },
    nightsAhead: Math.max(0, Math.round((night.sunset.getTime() - now.getTime()) / (24 * MS_PER_H))),
    heightDifferenceM:
      forecast.gridElevationM === undefined || garden.elevationM === undefined
        ? undefined
        : garden.elevationM - forecast.gridElevationM,
    sunlessDays: soil.sunlessDays,
    daysBehind: daysBehind(weather.series, night.sunset),
    soilUnder: (bed) => soil.under(bed),
  };
}

/** A garden as the energy balance sees it. */
export function gardenSite(garden: Garden, elevationM: number): NightSite {
  const { horizonDeg } = garden;
  return { ...exposedSite(garden.exposure, { ...garden, elevationM }), ...(horizonDeg && { horizonDeg }) };
}

const UNSOUND = 'a bed of the garden has covers that cannot lie so';

/** A bed judged as it lies, and judged again under any other stack. */
interface JudgedBed {
  readonly bed: GardenBed;
  readonly verdict: BedVerdict;
  readonly past: BedInPast;
  verdictUnder(keys: readonly CoverKey[]): BedVerdict | undefined;
}

function judgedBed(
  bed: GardenBed,
  bench: Bench,
  nightOf: (keys: readonly CoverKey[]) => BedNight | undefined,
): JudgedBed {
  const wet = staysOpenToRain(bed.covers) && (bench.weather.summary.rainBeforeFreezeMm ?? 0) >= WETTING_RAIN_MM;
  const asItLies = nightOf(bed.covers);
  if (asItLies === undefined) throw new RangeError(UNSOUND);
  const past = bedInPast(bed.covers, asItLies, bench);
  const at = { date: bench.window.from, latitudeDeg: bench.site.latitudeDeg };
  const plantings = bed.plantings.flatMap((planting) => plantingOf(planting, wet, past, at));
  const verdictUnder = (keys: readonly CoverKey[]) => {
    const night = keys === bed.covers ? asItLies : nightOf(keys);
    return night && bedVerdict(plantings, keys, night, bench.weather.summary.wind10MPerS);
  };
  const verdict = verdictUnder(bed.covers);
  if (verdict === undefined) throw new RangeError(UNSOUND);
  return { bed, verdict, past, verdictUnder };
}

/** A cover from the shed serves one bed only: first the beds that it brings through, in order of urgency, then the others. */
function withSteps(judged: readonly JudgedBed[], shed: readonly CoverKey[]): BedOutlook[] {
  let left = shed;
  const steps = new Map<JudgedBed, Step>();
  const settle = (each: JudgedBed, onlyIfItHolds: boolean) => {
    const step = stepFor(each.verdict, left, each.verdictUnder);
    if (onlyIfItHolds && step.kind === 'add' && step.fromShed && !step.holds) return;
    if (step.kind === 'add' && step.fromShed) left = without(left, step.added);
    steps.set(each, step);
  };
  for (const each of judged) settle(each, true);
  for (const each of judged) if (!steps.has(each)) settle(each, false);
  return judged.map((each) => ({
    bed: each.bed,
    verdict: each.verdict,
    past: each.past,
    step: steps.get(each) ?? { kind: 'nothing' },
  }));
}

/** A bed's night under a stack; undefined where the covers cannot lie so. */
export function nightUnder(bed: GardenBed, keys: readonly CoverKey[], bench: Bench): BedNight | undefined {
  const { snowDepthM, leastSnowDepthM, rainBeforeFreezeMm = 0 } = bench.weather.summary;
  const overPlantsM = snowOverPlantsM(keys, cropsOf(bed), leastSnowDepthM);
  const night = bedNight(
    {
      site: bench.site,
      weather: bench.series,
      // The soil has the days behind it under the covers that lay there, not under tonight's extra one.
      soil: bench.soilUnder(laidAs(bed)),
      bed: {
        ...laidAs(bed),
        covers: overPlantsM === undefined ? keys : ['snow', ...keys.filter((key) => key === 'jugs')],
        ...snowOn(overPlantsM ?? snowDepthM),
        ...(rainBeforeFreezeMm >= SOAKING_RAIN_MM && { litterIsWet: true }),
      },
      window: bench.window,
      forecast: {
        kind: 'forecast',
        nightsAhead: bench.nightsAhead,
        ...(bench.heightDifferenceM !== undefined && { heightDifferenceM: bench.heightDifferenceM }),
      },
    },
    bench.shared,
  );
  return night.kind === 'night' ? night : undefined;
}

function snowOn(snowDepthM: number | undefined): { readonly snowDepthM?: number } {
  return snowDepthM === undefined ? {} : { snowDepthM };
}

function cropsOf({ plantings }: GardenBed) {
  return plantings.flatMap(({ cropId }) => cropById(cropId) ?? []);
}

/** Snow that surely covers a bed as it lies; undefined where it does not. [m] */
export function snowOverBedM(bed: GardenBed, { summary }: NightWeather): number | undefined {
  return snowOverPlantsM(bed.covers, cropsOf(bed), summary.leastSnowDepthM);
}

/** The night with what the bed's own thermometers have taught; what beds share stays as computed. */
function asLearned(bed: GardenBed, keys: readonly CoverKey[], night: BedNight | undefined): BedNight | undefined {
  if (bed.learned === undefined || night === undefined) return night;
  return learnedNight(night, bed.learned, { covers: keys, ...(bed.frame && { walls: bed.frame.walls }) });
}

/** A bed of a garden as the energy balance takes it, without snow. */
export function laidAs(bed: GardenBed): BedAsLaid {
  const { covers, frame, soilKind, mulch } = bed;
  return {
    covers,
    canopy: canopyOf(bed),
    ...(frame && { frame }),
    ...(soilKind && { soilKind }),
    ...(mulch && { mulch }),
  };
}

/** Seedlings hide little of the soil; anything else counts as open winter greens. */
export function canopyOf({ plantings }: GardenBed): Canopy {
  const seedlings = plantings.every(({ stage }) => stage === 'just-set-out');
  return { leafAreaIndex: seedlings ? 0.3 : 1, leafSizeM: LEAF_SIZE_M };
}

function staysOpenToRain(covers: readonly CoverKey[]): boolean {
  return covers.every((key) => ['fabric', 'cloth', 'litter', 'hoops', 'jugs'].includes(COVERS[key].kind));
}
