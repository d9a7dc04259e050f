import { MS_PER_DAY, MS_PER_H } from '../durations.ts';
import { refusePlaceOffTheGlobe } from '../sun/place.ts';
import { sunTimes } from '../sun/sunrise-sunset.ts';

/** Growers' rule: leaves hardly grow while the sun is up for less than this. */
const SHORT_DAY_H = 10;
const JUNE = 5;
const DECEMBER = 11;
/** From a midwinter to the midsummer on either side of it. */
const HALF_YEAR_DAYS = 182;

/** The part of a winter with less than ten hours between sunrise and sunset. */
export interface DarkWeeks {
  /** About noon, by the sun, of the first day under ten hours. */
  readonly firstDay: Date;
  /** About noon, by the sun, of the last day under ten hours. */
  readonly lastDay: Date;
  /** Days under ten hours, first and last included. */
  readonly dayCount: number;
}

/**
 * The days under ten hours at a place: those in which an instant lies or the next to come.
 *
 * @param at - The instant.
 * @param latitudeDeg - North positive; south of the equator the weeks lie around June. [°, −90…90]
 * @param longitudeDeg - East positive. [°, −180…180]
 * @returns First and last day; `undefined` where no day is that short, up to about 32° from the equator.
 * @throws RangeError when the instant is invalid or the place is off the globe.
 *
 * @remarks Sunrise to sunset with standard refraction. Without refraction the dates would be 5 to 10 days out.
 * @see Ten hours: growers' and educators' usage (`ten-hour-rule`); light sum and soil temperature matter more
 */
export function darkWeeks(at: Date, latitudeDeg: number, longitudeDeg: number): DarkWeeks | undefined {
  refusePlaceOffTheGlobe(at, latitudeDeg, longitudeDeg);
  const year = at.getUTCFullYear();
  for (const winter of [year - 1, year, year + 1]) {
    const weeks = darkWeeksAround(midwinterNoonMs(winter, latitudeDeg, longitudeDeg), latitudeDeg, longitudeDeg);
    if (weeks === undefined) return undefined;
    if (at.getTime() < weeks.lastDay.getTime() + MS_PER_DAY / 2) return weeks;
  }
  return undefined;
}

function midwinterNoonMs(year: number, latitudeDeg: number, longitudeDeg: number): number {
  const solsticeMonth = latitudeDeg < 0 ? JUNE : DECEMBER;
  return Date.UTC(year, solsticeMonth, 21, 12) - (longitudeDeg / 15) * MS_PER_H;
}

function darkWeeksAround(midwinterMs: number, latitudeDeg: number, longitudeDeg: number): DarkWeeks | undefined {
  const isDark = (days: number): boolean =>
    isShortDay(new Date(midwinterMs + days * MS_PER_DAY), latitudeDeg, longitudeDeg);
  if (!isDark(0)) return undefined;
  const daysBefore = lastDarkDay((days) => isDark(-days));
  const daysAfter = lastDarkDay(isDark);
  return {
    firstDay: new Date(midwinterMs - daysBefore * MS_PER_DAY),
    lastDay: new Date(midwinterMs + daysAfter * MS_PER_DAY),
    dayCount: daysBefore + daysAfter + 1,
  };
}

/** Days lengthen steadily from midwinter on, so halving the half-year finds the last short one. */
function lastDarkDay(isDark: (days: number) => boolean): number {
  let darkDays = 0;
  let brightDays = HALF_YEAR_DAYS;
  while (brightDays - darkDays > 1) {
    const middleDays = Math.floor((darkDays + brightDays) / 2);
    if (isDark(middleDays)) darkDays = middleDays;
    else brightDays = middleDays;
  }
  return darkDays;
}

function isShortDay(at: Date, latitudeDeg: number, longitudeDeg: number): boolean {
  const day = sunTimes(at, latitudeDeg, longitudeDeg);
  if (day.kind === 'rises') return day.dayLengthH < SHORT_DAY_H;
  return day.kind === 'polar-night';
}
