import type {
  ForecastDesk,
  ForecastPlace,
  ForecastWish,
  HourlyForecast,
  OfficialWarnings,
} from '../../bot/forecast/forecast.ts';
import { ForecastServiceError, NoForecastError } from '../../bot/forecast/forecast-error.ts';
import { MS_PER_H } from '../../rules/index.ts';

const PAST_H = 7 * 24;
const AHEAD_H = 5 * 24;
/** Every place has its own weather: warm and cold spells of some nine days. */
const SPELL_H = 9 * 24;

/**
 * Weather without any service, the same for the same place and hour. Invented: colder and milder spells, the coldest hour
 * about sunrise. What stands in `change` makes a forecast differ from it.
 */
export class SyntheticForecasts implements ForecastDesk {
  readonly asked: { readonly place: ForecastPlace; readonly at: Date; readonly wish: ForecastWish }[] = [];
  /** Mean of all hours. [°C] */
  meanC = -2;
  /** Cloud of all hours; else of clear and half clear days in turn. */
  cloudFraction: number | undefined;
  /** Added to every forecast hour that is still to come. [K] */
  shiftK = 0;
  /** While true no service answers. */
  silent = false;
  official: OfficialWarnings = { kind: 'not-covered' };

  async forecastFor(place: ForecastPlace, now: Date, wish: ForecastWish = {}): Promise<HourlyForecast> {
    this.asked.push({ place, at: now, wish });
    await Promise.resolve();
    if (this.silent) {
      const cause = new ForecastServiceError('openmeteo', 'unavailable', 'no answer');
      throw new NoForecastError('No forecast could be had: nobody answered.', [cause]);
    }
    const firstMs = Math.floor(now.getTime() / MS_PER_H) * MS_PER_H - PAST_H * MS_PER_H;
    const hours = PAST_H + AHEAD_H;
    const screenC = Array.from({ length: hours }, (_, i) => {
      const atMs = firstMs + i * MS_PER_H;
      return this.#airC(place, atMs) + (atMs > now.getTime() ? this.shiftK : 0);
    });
    return {
      service: 'openmeteo',
      ...{ updatedAt: now, fetchedAt: now, first: new Date(firstMs), hours, place, gridElevationM: 150 },
      columns: {
        screenC,
        dewPointC: screenC.map((airC) => airC - 3),
        cloudFraction: screenC.map((_, i) => this.cloudFraction ?? (i % 48 < 24 ? 0.1 : 0.6)),
        wind10MPerS: screenC.map(() => 1.5),
      },
      lowWindows: [],
      credits: [{ text: 'Weather data by Open-Meteo.com', url: 'https://open-meteo.com/' }],
      notes: [],
    };
  }

  async warningsFor(): Promise<OfficialWarnings> {
    await Promise.resolve();
    return this.official;
  }

  async close(): Promise<void> {
    await Promise.resolve();
  }

  #airC({ latitudeDeg, longitudeDeg }: ForecastPlace, atMs: number): number {
    const hour = atMs / MS_PER_H;
    const spell = Math.sin((2 * Math.PI * hour) / SPELL_H + latitudeDeg * 3 + longitudeDeg);
    const solarHour = (hour + longitudeDeg / 15) % 24;
    const daily = -Math.cos((2 * Math.PI * (solarHour - 3)) / 24);
    return this.meanC + 6 * spell + 5 * daily;
  }
}
