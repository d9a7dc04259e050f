import { assumedClimate, climateGroundC } from '../night/climate.ts';
import { type HardeningDay, hardeningIndex, settledHardeningIndex } from './hardening-index.ts';

/** Where plants have stood, for which nobody followed the temperatures under their covers. */
export interface PastWeather {
  readonly latitudeDeg: number;
  /** Above the sea. [m] */
  readonly elevationM: number;
  /** The night that is judged. */
  readonly at: Date;
  /** Outside, in order, the last one last; may be empty. */
  readonly days: readonly HardeningDay[];
  /** How much warmer than outside their covers keep them by night. [K, ≥ 0; 0 in the open] */
  readonly warmerK: number;
}

/** How hard plants there may be taken to be. */
export interface HardeningThere {
  /** 0 grown warm … 1 fully hardened. */
  readonly hardeningIndex: number;
  /** `weather`: from the days behind. `season`: too few are known, so from date and latitude alone. */
  readonly basis: 'weather' | 'season';
}

/** With fewer days nothing of the weather shows in the plants (judgement). */
const FEWEST_DAYS = 3;
const WEEK_DAYS = 7;
/** Nights of the cold season are so much colder than the mean of day and night (judgement). [K] */
const NIGHT_BELOW_MEAN_K = 4;

/**
 * How hard plants have become where only the weather outside is known.
 *
 * @param past - Place, night, days behind and what the covers add.
 * @returns The index and what it rests on.
 * @throws RangeError when `warmerK` is negative or not a number.
 *
 * @remarks
 * The days are followed from half-way between what the season gives at that latitude and what such nights give in the long
 * run: the season alone knows no maritime place, the week alone no weeks before it (judgement). Covers are taken to warm day and
 * night alike.
 *
 * @see fennell-li-abstract, tamura-2002, sasaki-1996 by way of {@link hardeningIndex}; damped-annual-wave for the season
 */
export function hardeningThere(past: PastWeather): HardeningThere {
  const { warmerK } = past;
  if (!(warmerK >= 0)) throw new RangeError(`warmerK ${warmerK} is below 0`);
  const days = past.days.map(({ lowC, meanC }) => ({ lowC: lowC + warmerK, meanC: meanC + warmerK }));
  const season = seasonHardeningIndex(past);
  if (days.length < FEWEST_DAYS) return { hardeningIndex: season, basis: 'season' };
  const settled = settledHardeningIndex(days.slice(0, WEEK_DAYS));
  return { hardeningIndex: hardeningIndex(days, (season + settled) / 2), basis: 'weather' };
}

/** Hardness of plants long used to the season's nights, under covers that add `warmerK`. */
function seasonHardeningIndex({ latitudeDeg, elevationM, at, warmerK }: PastWeather): number {
  const meanC = climateGroundC(assumedClimate(latitudeDeg, elevationM), at, 0) + warmerK;
  return settledHardeningIndex([{ lowC: meanC - NIGHT_BELOW_MEAN_K, meanC }]);
}

/** From mid September to mid November (month times 100 plus day). */
const AUTUMN_FROM = 915;
const AUTUMN_TO = 1115;
const HALF_HARDENED = 0.5;

/**
 * How hard plants may be taken to be in autumn where no place is known: half hardened from 15 September to 15 November, when weeks
 * of cold nights lie behind them in some gardens and not in others. A question at any other time is about winter, or about
 * plants that its grower describes.
 *
 * @param at - The night. A northern autumn is meant; a place says otherwise.
 * @returns `undefined` outside autumn.
 * @see judgement
 */
export function hardeningInAutumn(at: Date): HardeningThere | undefined {
  const day = (at.getUTCMonth() + 1) * 100 + at.getUTCDate();
  return day >= AUTUMN_FROM && day <= AUTUMN_TO ? { hardeningIndex: HALF_HARDENED, basis: 'season' } : undefined;
}
