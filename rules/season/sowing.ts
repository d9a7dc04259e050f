import { MS_PER_DAY } from '../durations.ts';
import { almanacSun } from '../sun/almanac-sun.ts';
import { extraterrestrialMJPerM2 } from '../sun/daily-light.ts';
import { darkWeeks } from './dark-weeks.ts';

/** Daily light at which lettuce grows at full speed (`lettuce-light`). */
const FULL_LIGHT_MOL_PER_M2 = 17;
/** Photosynthetic photons in sunlight (`photon-yield`). */
const MOL_PER_MJ = 2.04;
/** Share of the sunlight above the air that reaches the ground when the sun shines half the day (`fao-56`, eq. 35). */
const AIR_TRANSMITTED_FRACTION = 0.5;
/** Judgement: one cover of film, glass or fabric, not quite clean. */
const COVER_TRANSMITTED_FRACTION = 0.7;
const FULL_LIGHT_MJ_PER_M2 = FULL_LIGHT_MOL_PER_M2 / MOL_PER_MJ / AIR_TRANSMITTED_FRACTION / COVER_TRANSMITTED_FRACTION;
/** What the cold of autumn adds to the days on the seed packet, consensus, 10 to 21 (`autumn-slowdown`). */
const COLD_DAYS = 14;
const LONGEST_MATURITY_DAYS = 270;

/** The last sowing that is grown before the dark weeks. */
export interface LastSowing {
  /** About noon, by the sun, of the last day to sow; a week either way is within the doubt. */
  readonly sowBy: Date;
  /** About noon of the first day under ten hours: grown by then, the crop stands ready through the dark weeks. */
  readonly readyBy: Date;
  /** Days from sowing to picking size in that falling light and warmth. */
  readonly growingDays: number;
}

/**
 * Last day to sow a crop so that it reaches picking size before the days fall under ten hours.
 *
 * @param maturityDays - Days from sowing to picking size on the seed packet, for spring weather. [1…270]
 * @param at - An instant in the dark weeks meant, or before them and after the last ones.
 * @param latitudeDeg - North positive. [°, −90…90]
 * @param longitudeDeg - East positive. [°, −180…180]
 * @returns The sowing; `undefined` where no day is under ten hours, so that no such deadline exists.
 * @throws RangeError when a parameter is out of range.
 *
 * @remarks Each day counts for the share that its light is of full-speed light, at most one; then the cold of autumn adds two weeks.
 * @see `pickingSizeAt` for the sources
 */
export function lastSowing(
  maturityDays: number,
  at: Date,
  latitudeDeg: number,
  longitudeDeg: number,
): LastSowing | undefined {
  refuseMaturity(maturityDays);
  const weeks = darkWeeks(at, latitudeDeg, longitudeDeg);
  if (weeks === undefined) return undefined;
  const readyMs = weeks.firstDay.getTime();
  let grownDays = 0;
  let growingDays = COLD_DAYS;
  while (grownDays < maturityDays) {
    growingDays += 1;
    grownDays += lightFraction(readyMs - growingDays * MS_PER_DAY, latitudeDeg);
  }
  return { sowBy: new Date(readyMs - growingDays * MS_PER_DAY), readyBy: weeks.firstDay, growingDays };
}

/**
 * When a crop sown in late summer, autumn or winter reaches picking size.
 *
 * @param maturityDays - Days from sowing to picking size on the seed packet, for spring weather. [1…270]
 * @param sownAt - About noon of the day of sowing. Sown before late summer it is ready up to two weeks sooner than stated.
 * @param latitudeDeg - North positive. [°, −90…90]
 * @returns About noon of the day it is big enough.
 * @throws RangeError when a parameter is out of range.
 *
 * @remarks Light: sunlight above the air (`fao-56`) through half-clear air and a cover against the light at which lettuce grows at
 * full speed (`lettuce-light`, `photon-yield`). Cold: the consensus addition of two weeks (`autumn-slowdown`).
 */
export function pickingSizeAt(maturityDays: number, sownAt: Date, latitudeDeg: number): Date {
  refuseMaturity(maturityDays);
  let grownDays = 0;
  let days = 0;
  while (grownDays < maturityDays) {
    grownDays += lightFraction(sownAt.getTime() + days * MS_PER_DAY, latitudeDeg);
    days += 1;
  }
  return new Date(sownAt.getTime() + (days + COLD_DAYS) * MS_PER_DAY);
}

function lightFraction(atMs: number, latitudeDeg: number): number {
  return Math.min(1, extraterrestrialMJPerM2(latitudeDeg, almanacSun(new Date(atMs))) / FULL_LIGHT_MJ_PER_M2);
}

function refuseMaturity(maturityDays: number): void {
  if (!(maturityDays >= 1 && maturityDays <= LONGEST_MATURITY_DAYS)) {
    throw new RangeError(`maturityDays ${maturityDays} is outside 1…${LONGEST_MATURITY_DAYS}`);
  }
}
