import type { CoverKey, WallKey } from '../covers/cover-key.ts';
import { COVERS, type CoverKind } from '../covers/cover-table.ts';
import type { NightSite } from '../site-and-weather.ts';
import { SPREADS, type SpreadGroup } from './spread-table.ts';

/** Usual error of a forecast low tonight, and what each further day adds (`forecast-error`). */
const FORECAST_SD_K = 1.8;
const FORECAST_SD_PER_DAY_K = 0.2;
/** The same for a clear calm night, a hollow, or a grid far above or below the bed. */
const HARD_FORECAST_SD_K = 2.5;
const HOLLOW_INVERSION_K = 4.5;
const FAR_HEIGHT_M = 150;
const CLEAR_BELOW_FRACTION = 0.3;
const CALM_BELOW_M_PER_S = 2;
/** Spread of the soil that is already in the table. */
const SOIL_SD_IN_TABLE_K = 1.5;
/** Light and heavy row cover differ by 0.9 K at the leaf on a clear calm night. */
const UNKNOWN_WEIGHT_SD_K = 0.4;
/** With so many hours of weather before sunset the soil has its day's heat (judgement). */
const FULL_DAY_H = 6;
const GROUP_OF_SINGLE: Readonly<Record<CoverKind, SpreadGroup>> = {
  fabric: 'single-fabric',
  cloth: 'single-fabric',
  mat: 'night-cover',
  litter: 'litter-or-snow',
  snow: 'litter-or-snow',
  'low-tunnel': 'film-tunnel',
  frame: 'frame',
  'high-tunnel': 'high-tunnel',
  bell: 'film-tunnel',
  hoops: 'bare',
  jugs: 'bare',
};
const CLOUD_OF_COLUMNS: readonly [number, number, number] = [0, 0.5, 0.95];
const WIND_OF_COLUMNS: readonly [number, number, number] = [1, 2, 4];

/** Where the low of a night comes from. */
export type ForecastKind =
  /** The asker named it: what if. */
  | { readonly kind: 'stated' }
  | {
      readonly kind: 'forecast';
      /** 0 is tonight. [0…10] */
      readonly nightsAhead: number;
      /** Bed less grid of the forecast, when known. [m] */
      readonly heightDifferenceM?: number;
      /** Standard deviation learned from this member's own readings instead of the usual one. [K] */
      readonly learnedSdK?: number;
    };

export type SpreadCause = 'forecast' | 'model' | 'soil' | 'day-unknown' | 'row-cover-weight';

export interface SpreadPart {
  readonly cause: SpreadCause;
  readonly sdK: number;
}

/** How far off a leaf minimum may be, and through what. */
export interface Spread {
  readonly sdK: number;
  /** Largest first; squares add up to the square of `sdK`. */
  readonly parts: readonly SpreadPart[];
}

export interface SpreadInput {
  readonly covers: readonly CoverKey[];
  readonly walls?: WallKey;
  readonly site: Pick<NightSite, 'inversionK'>;
  /** Cloud when the leaf is coldest. [0…1] */
  readonly cloudFraction: number;
  /** Wind at 10 m then. [m s⁻¹] */
  readonly windMPerS: number;
  readonly soilSdK: number;
  /** Half of what the leaf minimum moves when the soil begins so much warmer and colder; by the table when absent. [K] */
  readonly soilShareK?: number;
  /** Hours of weather before sunset that the run began with; a day when absent. [h] */
  readonly sunBeforeNightH?: number;
  readonly forecast: ForecastKind;
}

/**
 * Standard deviation of the leaf minimum.
 *
 * @returns Forecast error scaled by how much of it reaches the leaf, spread of the model, the soil's share beyond that of 1.5 K on an ordinary night, and
 * an unknown weight of row cover and a day before that nobody told of, in quadrature.
 *
 * @remarks Under half or full cloud the truth lies rather on the cold side: a gap in the cloud costs 1–3 K.
 */
export function leafSpread(input: SpreadInput): Spread {
  const row = SPREADS[spreadGroup(input.covers, input.walls)];
  const forecastSdK = forecastLowSdK(input.forecast, input);
  const soilShareK = input.soilShareK ?? row.perSoilK * input.soilSdK;
  const soilBeyondTableK = Math.sqrt(Math.max(0, soilShareK ** 2 - (row.perSoilK * SOIL_SD_IN_TABLE_K) ** 2));
  const parts: SpreadPart[] = [
    { cause: 'forecast', sdK: row.perForecastK * forecastSdK },
    {
      cause: 'model',
      // The table varies sky and wind together: the wider of the two readings.
      sdK: Math.max(
        between(CLOUD_OF_COLUMNS, row.modelSdK, input.cloudFraction),
        between(WIND_OF_COLUMNS, row.modelSdK, input.windMPerS),
      ),
    },
    { cause: 'soil', sdK: soilBeyondTableK },
    { cause: 'day-unknown', sdK: row.withoutDayK * shareOfDayMissing(input.sunBeforeNightH) },
    { cause: 'row-cover-weight', sdK: input.covers.includes('row-cover') ? UNKNOWN_WEIGHT_SD_K : 0 },
  ];
  return {
    sdK: Math.hypot(...parts.map(({ sdK }) => sdK)),
    parts: parts.filter(({ sdK }) => sdK > 0).toSorted((one, other) => other.sdK - one.sdK),
  };
}

/**
 * Standard deviation of a forecast low.
 *
 * @param forecast - Where the low comes from.
 * @param night - Site, sky and wind.
 * @returns 1.8 K tonight, 2.5 K on a clear calm night, in a hollow or 150 m off the forecast's ground, 0.2 K more a day; 0 for a stated low. [K]
 */
export function forecastLowSdK(
  forecast: ForecastKind,
  night: Pick<SpreadInput, 'site' | 'cloudFraction' | 'windMPerS'>,
): number {
  if (forecast.kind === 'stated') return 0;
  const furtherK = FORECAST_SD_PER_DAY_K * forecast.nightsAhead;
  if (forecast.learnedSdK !== undefined) return forecast.learnedSdK + furtherK;
  const clearAndCalm = night.cloudFraction < CLEAR_BELOW_FRACTION && night.windMPerS < CALM_BELOW_M_PER_S;
  const farOff = Math.abs(forecast.heightDifferenceM ?? 0) > FAR_HEIGHT_M;
  const hard = clearAndCalm || farOff || night.site.inversionK >= HOLLOW_INVERSION_K;
  return (hard ? HARD_FORECAST_SD_K : FORECAST_SD_K) + furtherK;
}

/**
 * Which row of the table of spreads holds for a stack: that of its most uncertain part.
 *
 * @param covers - From outside to inside.
 * @param walls - Of a frame.
 */
export function spreadGroup(covers: readonly CoverKey[], walls?: WallKey): SpreadGroup {
  const kinds = covers.map((key) => COVERS[key].kind).filter((kind) => kind !== 'hoops' && kind !== 'jugs');
  if (kinds.length === 0) return 'bare';
  if (kinds.some((kind) => kind === 'litter' || kind === 'snow')) return 'litter-or-snow';
  if (covers.some((key) => COVERS[key].nightAddition !== undefined && key !== 'sheet' && key !== 'burlap'))
    return 'night-cover';
  if (covers.includes('high-tunnel-double')) return 'inside-high-tunnel';
  if (kinds.length > 1) return kinds.includes('high-tunnel') ? 'inside-high-tunnel' : 'two-covers';
  const insulated = kinds[0] === 'frame' && (walls === 'straw-bale' || covers.includes('cold-frame-twin-wall'));
  return insulated ? 'insulated-frame' : GROUP_OF_SINGLE[kinds[0] ?? 'fabric'];
}

function shareOfDayMissing(sunBeforeNightH = FULL_DAY_H): number {
  return 1 - Math.max(0, Math.min(1, sunBeforeNightH / FULL_DAY_H));
}

/** Linear between three columns, level beyond them. */
function between(at: readonly [number, number, number], values: readonly [number, number, number], x: number): number {
  const [left, middle, right] = at;
  const share = (from: number, to: number) => Math.max(0, Math.min(1, (x - from) / (to - from)));
  if (x <= middle) return values[0] + (values[1] - values[0]) * share(left, middle);
  return values[1] + (values[2] - values[1]) * share(middle, right);
}
