import { MS_PER_DAY } from '../durations.ts';
import { normalFraction } from '../verdict/normal-fraction.ts';

/** The average day of the first frost of autumn or of the last one of spring, by a thermometer at 2 m. */
export interface AverageFrost {
  readonly at: Date;
  readonly which: 'first' | 'last';
}

/** Years scatter about the average day by so much: 1 in 10 comes two weeks early, 1 in 10 two weeks late (common practice). [days] */
const YEARS_SD_DAYS = 11;
/** A colder low comes so much later in autumn, and so much earlier in spring: 12 days for each 4 °F (judgement). [days K⁻¹] */
const DAYS_PER_K = 12 / 2.22;
/** What the average day is about. [°C] */
const AVERAGE_IS_OF_C = 0;
/** One in ten of a standard normal distribution. */
const TENTH_Z = 1.2816;

/**
 * Share of years in which a low as cold as named has come by a day (of autumn) or still comes after it (in spring).
 *
 * @param average - Average frost of the place, as its gardener or a record gives it.
 * @param day - The day asked about.
 * @param lowC - 0 or colder. [°C, −10…0]
 * @returns Years that have it. [0…1]
 * @throws RangeError when `lowC` is outside its range.
 *
 * @remarks Good to a week for −4 °C and worse for colder: how fast autumn deepens differs from place to place.
 * @see common-practice, judgement
 */
export function frostYearsFraction(average: AverageFrost, day: Date, lowC: number): number {
  const late = (day.getTime() - averageMs(average, lowC)) / MS_PER_DAY / YEARS_SD_DAYS;
  return average.which === 'first' ? normalFraction(late) : normalFraction(-late);
}

/**
 * The day after which (in spring) or before which (in autumn) one year in ten has a low as cold as named.
 *
 * @param average - Average frost of the place.
 * @param lowC - 0 or colder. [°C, −10…0]
 * @throws RangeError when `lowC` is outside its range.
 * @see common-practice, judgement
 */
export function oneYearInTen(average: AverageFrost, lowC: number): Date {
  const outwards = average.which === 'first' ? -1 : 1;
  return new Date(averageMs(average, lowC) + outwards * TENTH_Z * YEARS_SD_DAYS * MS_PER_DAY);
}

function averageMs({ at, which }: AverageFrost, lowC: number): number {
  if (!(lowC >= -10 && lowC <= AVERAGE_IS_OF_C)) throw new RangeError(`lowC ${lowC} is outside −10…0`);
  const laterDays = (AVERAGE_IS_OF_C - lowC) * DAYS_PER_K;
  return at.getTime() + (which === 'first' ? laterDays : -laterDays) * MS_PER_DAY;
}
