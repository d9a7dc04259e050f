const DAYS_PER_YEAR = 365.25;
const DAY_MS = 86_400_000;
/** The year's warmth goes down 2.2 m before it is damped to 1/e (`damped-annual-wave`). */
const DAMPING_DEPTH_M = 2.2;
/** Around 20 July and, south of the equator, half a year later. */
const WARMEST_DAY_NORTH = 201;
/** Cooling of the yearly mean with height (`standard-atmosphere`). */
const LAPSE_K_PER_M = 0.0065;

/** Yearly course of the air temperature at a place. */
export interface Climate {
  readonly meanC: number;
  /** Half the difference of the warmest and the coldest month. */
  readonly halfRangeK: number;
  readonly warmestDay: number;
}

/**
 * The climate assumed for a place of which only latitude and height are known.
 *
 * @param latitudeDeg - North positive. [°, −90…90]
 * @param elevationM - Height above the sea. [m]
 * @returns A middle between maritime and continental (judgement): 28 °C less 0.4 K per degree of latitude in the mean, 0.3 K
 * per degree in the half-range. Off by up to 5 K in the mean and 6 K in the half-range: good for soil at depth, not for air.
 */
export function assumedClimate(latitudeDeg: number, elevationM: number): Climate {
  const fromEquatorDeg = Math.abs(latitudeDeg);
  return {
    meanC: 28 - 0.4 * fromEquatorDeg - LAPSE_K_PER_M * elevationM,
    halfRangeK: 0.3 * fromEquatorDeg,
    warmestDay: latitudeDeg < 0 ? WARMEST_DAY_NORTH - DAYS_PER_YEAR / 2 : WARMEST_DAY_NORTH,
  };
}

/**
 * Usual ground temperature on a date, from the climate alone.
 *
 * @param climate - Yearly course of the air.
 * @param at - The date.
 * @param depthM - Depth; 0 is the air above. [m, 0…10]
 * @returns The damped and delayed yearly wave. [°C]
 *
 * @see Heat conduction into a half-space with a yearly wave (`damped-annual-wave`)
 */
export function climateGroundC(climate: Climate, at: Date, depthM: number): number {
  const damping = depthM / DAMPING_DEPTH_M;
  const phase = (2 * Math.PI * (dayOfYear(at) - climate.warmestDay)) / DAYS_PER_YEAR - damping;
  return climate.meanC + climate.halfRangeK * Math.exp(-damping) * Math.cos(phase);
}

/** Day of the year in UTC, 1 on 1 January. */
function dayOfYear(at: Date): number {
  return Math.floor((at.getTime() - Date.UTC(at.getUTCFullYear(), 0, 1)) / DAY_MS) + 1;
}
