import { SERVICE_TITLES } from '../forecast/credits.ts';
import { FAILURE_WORDS } from '../forecast/failure-words.ts';
import type { HourlyForecast } from '../forecast/forecast.ts';
import { roughAge } from '../ground/times.ts';
import { difference, temperature } from '../ground/units.ts';
import type { NightNote } from '../weather/night-weather.ts';
import type { Reader } from './reader.ts';

const JUST_MS = 10 * 60_000;

/** "Forecast: the National Weather Service, 3 hours old." */
export function forecastLine(forecast: HourlyForecast, now: Date): string {
  if (forecast.invented) return 'Forecast: a sample that we made up. It is no real weather.';
  const ageMs = now.getTime() - forecast.updatedAt.getTime();
  const age = ageMs < JUST_MS ? 'just updated' : `${roughAge(ageMs)} old`;
  return `Forecast: ${SERVICE_TITLES[forecast.service]}, ${age}.`;
}

/** What a reader must know about the forecast, in order of weight; what changes nothing for a grower stays unsaid. */
export function noteLines(notes: readonly NightNote[], reader: Reader): string[] {
  return notes.flatMap((note) => noteLine(note, reader) ?? []);
}

/** As {@link noteLines}, where it is the day that is told: there a clear sky is the hot side. */
export function dayNoteLines(notes: readonly NightNote[], reader: Reader): string[] {
  return notes.flatMap((note) =>
    note.code === 'cloud-assumed-clear' ? CLOUDLESS_DAY : (noteLine(note, reader) ?? []),
  );
}

const CLOUDLESS_DAY = 'The forecast tells no cloud for some hours: reckoned as clear, the sunny side.';

function noteLine(note: NightNote, { units }: Reader): string | undefined {
  switch (note.code) {
    case 'old-forecast':
      return `This forecast is ${Math.round(note.ageH)} hours old; look again before dark.`;
    case 'services-differ':
      return `${titled(note.other)} has ${temperature(note.otherLowC, units)} where this one has ${temperature(note.lowC, units)}; I used the colder.`;
    case 'fell-back':
      return `${titled(note.from)} ${FAILURE_WORDS[note.because]}; this is from ${SERVICE_TITLES[note.to]}.`;
    case 'cloud-assumed-clear':
      return 'The forecast tells no cloud for part of the night: reckoned as clear, the cold side.';
    case 'wind-assumed-calm':
      return 'The forecast tells no wind for part of the night: reckoned as calm.';
    case 'six-hourly-steps':
      return 'That night is only forecast in six-hour steps: take it as a first warning.';
    case 'lowered-to-service-low':
      return note.byK >= 1
        ? `The service's own low for the night is ${difference(note.byK, units)} below its coldest hour; I used the low.`
        : undefined;
    case 'stored-forecast':
      return `No service answers now: this is the last forecast I had, fetched ${Math.round(note.ageH)} hours ago.`;
    case 'layer-refused':
    case 'past-from-other-service':
    case 'dew-point-from-humidity':
    case 'dew-point-assumed':
    case 'gaps-filled':
    case 'ends-early':
      return undefined;
  }
}

function titled(service: keyof typeof SERVICE_TITLES): string {
  const title = SERVICE_TITLES[service];
  return title.charAt(0).toUpperCase() + title.slice(1);
}
