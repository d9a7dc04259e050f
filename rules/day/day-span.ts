import { MS_PER_MIN } from '../durations.ts';
import { nightFrom, sunTimes } from '../sun/sunrise-sunset.ts';

/** One day, from sunrise to sunset, with the night before it. */
export interface DaySpan {
  /** Sunset of the evening before. */
  readonly sunsetBefore: Date;
  /** When the covers were to be shut that evening. */
  readonly shutBefore: Date;
  readonly sunrise: Date;
  readonly sunset: Date;
  /** Two hours before sunset, but not before solar noon: when the covers are to be shut again. */
  readonly shutBy: Date;
}

/**
 * The day in which an instant lies or, by night, the one that follows.
 *
 * @param at - The instant.
 * @param latitudeDeg - North positive. [°, −90…90]
 * @param longitudeDeg - East positive. [°, −180…180]
 * @returns The day; `undefined` where the sun does not rise or does not set then.
 * @throws RangeError when the instant is invalid or the place is off the globe.
 *
 * @see `nightFrom` for shutting time (common practice)
 */
export function dayFrom(at: Date, latitudeDeg: number, longitudeDeg: number): DaySpan | undefined {
  const night = nightFrom(at, latitudeDeg, longitudeDeg);
  if (night === undefined) return undefined;
  const isDay = at.getTime() < night.sunset.getTime();
  const middle = isDay ? at : new Date(night.sunrise.getTime() + MS_PER_MIN);
  const sun = sunTimes(middle, latitudeDeg, longitudeDeg);
  if (sun.kind !== 'rises') return undefined;
  const before = nightFrom(new Date(sun.sunrise.getTime() - MS_PER_MIN), latitudeDeg, longitudeDeg);
  const after = nightFrom(new Date(sun.sunset.getTime() - MS_PER_MIN), latitudeDeg, longitudeDeg);
  if (before === undefined || after === undefined) return undefined;
  return {
    sunsetBefore: before.sunset,
    shutBefore: before.shutBy,
    sunrise: sun.sunrise,
    sunset: after.sunset,
    shutBy: after.shutBy,
  };
}
