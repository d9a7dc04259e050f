import {
  assumedHardening,
  type BedNight,
  type BedVerdict,
  bedNight,
  bedVerdict,
  type Canopy,
  COVERS,
  type CoverKey,
  cropById,
  crownOf,
  exposedSite,
  hardinessLearned,
  harmFraction,
  isDormant,
  learnedNight,
  MS_PER_H,
  type NightSite,
  type NightSpan,
  type Planting,
  type SharedNight,
  type SoilStart,
  type Step,
  sharedNight,
  snowOverPlantsM,
  stepFor,
  without,
} from '../../rules/index.ts';
import type { HourlyForecast } from '../forecast/forecast.ts';
import { nightWeather } from '../weather/night.ts';
import type { NightWeather } from '../weather/night-weather.ts';
import type { Garden, GardenBed, GardenPlanting } from './garden.ts';
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
}

/** Within it gardens may share what was worked out: ages of forecasts are told by the hour. */
const SAME_TIME_MS = 3_600_000;
const LEAF_SIZE_M = 0.05;
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
  soilUnder(covers: readonly CoverKey[]): SoilStart;
}

/** Site, weather and soil of one night, for working out any bed there. */
export function benchOf(garden: Garden, forecast: HourlyForecast, night: NightSpan, now: Date): Bench {
  const weather = nightWeather(forecast, night, now);
  const elevationM = garden.elevationM ?? forecast.gridElevationM ?? 0;
  const site = gardenSite(garden, elevationM);
  const window = { from: night.sunset, to: new Date(night.sunrise.getTime() + MS_PER_H) };
  const soil = soilBehind(site, weather.series, night.sunset, now);
  return {
    site,
    weather,
    window,
    shared: sharedNight(site, weather.series, window),
    nightsAhead: Math.max(0, Math.round((night.sunset.getTime() - now.getTime()) / (24 * MS_PER_H))),
    heightDifferenceM:
      forecast.gridElevationM === undefined || garden.elevationM === undefined
        ? undefined
        : garden.elevationM - forecast.gridElevationM,
    sunlessDays: soil.sunlessDays,
    soilUnder: (covers) => soil.under(covers),
  };
}

/** A garden as the energy balance sees it. */
export function gardenSite(garden: Garden, elevationM: number): NightSite {
  const { horizonDeg } = garden;
  return { ...exposedSite(garden.exposure, { ...garden, elevationM }), ...(horizonDeg && { horizonDeg }) };
}

/** A bed judged as it lies, and judged again under any other stack. */
interface JudgedBed {
  readonly bed: GardenBed;
  readonly verdict: BedVerdict;
  verdictUnder(keys: readonly CoverKey[]): BedVerdict | undefined;
}

function judgedBed(
  bed: GardenBed,
  bench: Bench,
  nightOf: (keys: readonly CoverKey[]) => BedNight | undefined,
): JudgedBed {
  const wet = staysOpenToRain(bed.covers) && (bench.weather.summary.rainBeforeFreezeMm ?? 0) >= WETTING_RAIN_MM;
  const at = { date: bench.window.from, latitudeDeg: bench.site.latitudeDeg };
  const plantings = bed.plantings.flatMap((planting) => plantingOf(planting, wet, at));
  const verdictUnder = (keys: readonly CoverKey[]) => {
    const night = nightOf(keys);
    return night && bedVerdict(plantings, keys, night, bench.weather.summary.wind10MPerS);
  };
  const verdict = verdictUnder(bed.covers);
  if (verdict === undefined) throw new RangeError('a bed of the garden has covers that cannot lie so');
  return { bed, verdict, verdictUnder };
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
  return judged.map((each) => ({ bed: each.bed, verdict: each.verdict, step: steps.get(each) ?? { kind: 'nothing' } }));
}

/** A bed's night under a stack; undefined where the covers cannot lie so. */
export function nightUnder(bed: GardenBed, keys: readonly CoverKey[], bench: Bench): BedNight | undefined {
  const { snowDepthM, leastSnowDepthM } = bench.weather.summary;
  const overPlantsM = snowOverPlantsM(keys, cropsOf(bed), leastSnowDepthM);
  const night = bedNight(
    {
      site: bench.site,
      weather: bench.weather.series,
      // The soil has the days behind it under the covers that lay there, not under tonight's extra one.
      soil: bench.soilUnder(bed.covers),
      bed: {
        covers: overPlantsM === undefined ? keys : ['snow', ...keys.filter((key) => key === 'jugs')],
        canopy: canopyOf(bed),
        ...(bed.frame && { frame: bed.frame }),
        ...(bed.soilKind && { soilKind: bed.soilKind }),
        ...(bed.mulch && { mulch: bed.mulch }),
        ...snowOn(overPlantsM ?? snowDepthM),
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

/** Seedlings hide little of the soil; anything else counts as open winter greens. */
export function canopyOf({ plantings }: GardenBed): Canopy {
  const seedlings = plantings.every(({ stage }) => stage === 'just-set-out');
  return { leafAreaIndex: seedlings ? 0.3 : 1, leafSizeM: LEAF_SIZE_M };
}

function staysOpenToRain(covers: readonly CoverKey[]): boolean {
  return covers.every((key) => ['fabric', 'cloth', 'litter', 'hoops', 'jugs'].includes(COVERS[key].kind));
}

/** When and where, for what dies down in winter. */
export interface DormantAt {
  readonly date: Date;
  readonly latitudeDeg: number;
}

/** What grows there and how hard it is; nothing where the table does not know the crop. */
export function plantingOf(planting: GardenPlanting, wetThenFrozen: boolean, at?: DormantAt): Planting[] {
  const known = cropById(planting.cropId);
  if (known === undefined) return [];
  const sleeps = at !== undefined && isDormant(known, at.date, at.latitudeDeg);
  const crop = sleeps ? (crownOf(known) ?? known) : known;
  const facts =
    planting.hardeningIndex === undefined
      ? planting.stage === 'just-set-out'
        ? ({ said: 'grown-warm' } as const)
        : {}
      : { followedIndex: planting.hardeningIndex };
  const { hardeningIndex } = assumedHardening(crop, facts);
  const learned = hardinessLearned(crop, hardeningIndex, planting.outcomes ?? []);
  return [
    {
      crop,
      hardeningIndex,
      circumstances: {
        matureHead: crop.organ === 'head' && planting.stage === 'grown',
        smallRosette: crop.organ === 'leaf' && planting.stage === 'just-set-out' && hardeningIndex > 0,
        wetThenFrozen,
      },
      ...(learned && { learned }),
    },
  ];
}
