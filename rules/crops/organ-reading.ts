import type { HardinessRow, Thermometer } from './hardiness-row.ts';

/** How much colder than its thermometer the organ was, with the doubt in that. [K] */
interface Step {
  readonly colderK: number;
  readonly sdK: number;
}

/** Bare leaf below the outside low on an ordinary frost night (`two-thermometers`). [K] */
const BARE_LEAF_DEPRESSION_K = 2;
/** Doubt in that: lists mix still nights with windy ones (`two-thermometers`). [K] */
export const BARE_LEAF_SD_K = 1;
/** Leaf below the outside low under a row cover laid on, under a sheet in a film tunnel, in a glass frame (`night-model-covered`). [K] */
const ROW_COVER_COLDER_K = 0.3;
const TUNNEL_AND_SHEET_COLDER_K = -6.1;
const COLD_FRAME_COLDER_K = -3.2;
/** Spread of the gain of such covers: fabric, double layer, frame (`two-thermometers`). [K] */
const ROW_COVER_SD_K = 0.7;
const TUNNEL_AND_SHEET_SD_K = 1.5;
const COLD_FRAME_SD_K = 2;

const STEPS: Readonly<Record<Thermometer, Step>> = {
  organ: { colderK: 0, sdK: 0 },
  screen: { colderK: BARE_LEAF_DEPRESSION_K, sdK: BARE_LEAF_SD_K },
  'inside-air': { colderK: 0, sdK: BARE_LEAF_SD_K },
  'row-cover': { colderK: ROW_COVER_COLDER_K, sdK: Math.hypot(BARE_LEAF_SD_K, ROW_COVER_SD_K) },
  'tunnel-and-sheet': {
    colderK: TUNNEL_AND_SHEET_COLDER_K,
    sdK: Math.hypot(BARE_LEAF_SD_K, TUNNEL_AND_SHEET_SD_K),
  },
  'cold-frame': { colderK: COLD_FRAME_COLDER_K, sdK: Math.hypot(BARE_LEAF_SD_K, COLD_FRAME_SD_K) },
};

/** A row as a temperature of the organ. */
export interface OrganReading {
  /** [°C] */
  readonly organC: number;
  /** Doubt from the place of the thermometer. [K] */
  readonly sdK: number;
  /** Added to the source's reading to get `organC`. [K] */
  readonly stepK: number;
  /** True where the plant was alive at `organC`: a bound, not a value. */
  readonly aliveThere: boolean;
}

/**
 * A row as a temperature of the exposed organ.
 *
 * @param row - A row whose organ hangs in the air; roots in the soil need the soil's temperature instead.
 * @returns The converted reading, with the doubt that the conversion adds.
 *
 * @remarks
 * Outside lows are read as ordinary frost nights. Lists mix still nights (4 K) with windy and overcast ones (near 0),
 * which is the standard deviation of 1 K.
 *
 * Plants under covers are read by the night model at the outside lows of the rows, -9 to -13 °C.
 *
 * @see two-thermometers (judgement), night-model-covered
 */
export function organReading(row: HardinessRow): OrganReading {
  const step = STEPS[row.thermometer];
  const aliveThere = typeof row.value !== 'number';
  const readC = typeof row.value === 'number' ? row.value : row.value.colderThanC;
  return { organC: readC - step.colderK, sdK: step.sdK, stepK: -step.colderK, aliveThere };
}
