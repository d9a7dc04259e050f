import { MS_PER_DAY, type NightSpan, nightFrom, sunTimes } from '../../rules/index.ts';
import { BoundedMap } from '../ground/bounded-map.ts';
import { localDay } from '../ground/times.ts';

/** A place with its clock. */
export interface Clocked {
  readonly latitudeDeg: number;
  readonly longitudeDeg: number;
  /** IANA name. */
  readonly timeZone: string;
}

/** A night of a place under the name that the ledger and readings use: the local day of its evening, `2026-12-31`. */
export interface CalendarNight extends NightSpan {
  readonly name: string;
}

/** A day of a place under the same name. */
export interface CalendarDay {
  readonly name: string;
  readonly noon: Date;
  /** Undefined while the sun does not rise, or does not set. */
  readonly sunrise: Date | undefined;
}

const MS_PER_DEG = 240_000;
/** True noon is at most 17 minutes off the mean sun's. */
const PAST_TRUE_NOON_MS = 30 * 60_000;
const KEPT = 20_000;

/** The mean sun's day in which an instant lies at a longitude, counted from 1970. */
export function solarDay(at: Date, longitudeDeg: number): number {
  return Math.floor((at.getTime() + longitudeDeg * MS_PER_DEG) / MS_PER_DAY);
}

/**
 * Nights and days of places. Each is found and named by the mean sun's noon before it, which comes every 24 hours: so no
 * name is left out and none comes twice, even where sunset falls past midnight or clocks change.
 */
export class Calendar {
  readonly #nights = new BoundedMap<string, { readonly night: CalendarNight | undefined }>(KEPT);
  readonly #days = new BoundedMap<string, CalendarDay>(KEPT);
  /** Days by the names of their nights. */
  readonly #dayOfName = new BoundedMap<string, number>(KEPT);

  /** The night after the noon of that day; undefined where the sun then stays up. */
  night(place: Clocked, day: number): CalendarNight | undefined {
    const { latitudeDeg, longitudeDeg, timeZone } = place;
    const key = keyOf(place, day);
    const known = this.#nights.get(key);
    if (known !== undefined) return known.night;
    const noon = noonOf(day, longitudeDeg);
    const span = nightFrom(new Date(noon.getTime() + PAST_TRUE_NOON_MS), latitudeDeg, longitudeDeg);
    const night = span === undefined ? undefined : { ...span, name: localDay(noon, timeZone) };
    this.#nights.set(key, { night });
    return night;
  }

  day(place: Clocked, day: number): CalendarDay {
    const key = keyOf(place, day);
    const known = this.#days.get(key);
    if (known !== undefined) return known;
    const noon = noonOf(day, place.longitudeDeg);
    const sun = sunTimes(noon, place.latitudeDeg, place.longitudeDeg);
    const sunrise = sun.kind === 'rises' ? sun.sunrise : undefined;
    const made = { name: localDay(noon, place.timeZone), noon, sunrise };
    this.#days.set(key, made);
    return made;
  }

  /** The night of that name. */
  named(place: Clocked, name: string): CalendarNight | undefined {
    const day = this.#dayNamed(place, name);
    return day === undefined ? undefined : this.night(place, day);
  }

  /** The day of that name. */
  dayNamed(place: Clocked, name: string): CalendarDay | undefined {
    const day = this.#dayNamed(place, name);
    return day === undefined ? undefined : this.day(place, day);
  }

  #dayNamed(place: Clocked, name: string): number | undefined {
    const key = `${place.longitudeDeg} ${place.timeZone} ${name}`;
    const known = this.#dayOfName.get(key);
    if (known !== undefined) return known;
    const near = solarDay(new Date(`${name}T12:00:00Z`), 0);
    const day = [near, near - 1, near + 1].find(
      (each) => localDay(noonOf(each, place.longitudeDeg), place.timeZone) === name,
    );
    if (day !== undefined) this.#dayOfName.set(key, day);
    return day;
  }
}

function keyOf({ latitudeDeg, longitudeDeg, timeZone }: Clocked, day: number): string {
  return `${latitudeDeg} ${longitudeDeg} ${timeZone} ${day}`;
}

function noonOf(day: number, longitudeDeg: number): Date {
  return new Date((day + 0.5) * MS_PER_DAY - longitudeDeg * MS_PER_DEG);
}
