import { difference, shortLength } from '../ground/units.ts';
import type { NightOutlook } from '../outlook/night-outlook.ts';
import type { Reader } from './reader.ts';

/** From the third night without a thaw limits are raised by this: `circumstance-steps`. [K] */
const THIRD_NIGHT_K = 1.5;
const THIRD_NIGHT = 3;
/** Shallower frost is gone by noon, and reaches no root (judgement). [m] */
const TOLD_FROM_M = 0.05;
/** So much snow keeps frost out of the ground (judgement). [m] */
const SHELTERING_SNOW_M = 0.1;

/** Wind that dries leaves over frozen ground (judgement). [m/s] */
const DRYING_WIND_M_PER_S = 5;

/** What a long cold does beyond the low of one night: leaves that do not thaw, and frost in the ground. */
export function longColdLines({ beds, weather }: NightOutlook, reader: Reader): string[] {
  const nights = Math.max(0, ...beds.map(({ past }) => past.frozenNights));
  const depthM = Math.max(0, ...beds.map(({ past }) => past.frostDepthM));
  const crops = beds.flatMap(({ verdict }) => verdict.plantings.map(({ planting }) => planting.crop));
  const lines: string[] = [];
  if (nights >= THIRD_NIGHT) {
    const step = difference(THIRD_NIGHT_K, reader.units);
    lines.push(
      `${ordinal(nights)} night in a row without a thaw: plants take ${step} less than in a first frost; I count that.`,
    );
  }
  if (depthM >= TOLD_FROM_M && (weather.summary.snowDepthM ?? 0) < SHELTERING_SNOW_M) {
    lines.push(
      [
        `Ground without mulch or snow is likely frozen about ${shortLength(depthM, reader.units)} deep.`,
        ...(crops.some(({ judgedBy }) => judgedBy === 'surface')
          ? ['Dig roots before it goes deeper, or mulch them thickly.']
          : []),
        ...(weather.summary.wind10MPerS > DRYING_WIND_M_PER_S
          ? ['Frozen roots drink nothing: shelter leaves from the wind.']
          : []),
      ].join(' '),
    );
  }
  return lines;
}

/** "Third", "21st". */
function ordinal(count: number): string {
  const word = ['Third', 'Fourth', 'Fifth', 'Sixth', 'Seventh', 'Eighth', 'Ninth', 'Tenth'][count - THIRD_NIGHT];
  return word ?? `${count}th`;
}
