import type { ForecastColumns, HourlyForecast } from '../../../bot/forecast/forecast.ts';
import type { Garden, GardenBed } from '../../../bot/outlook/garden.ts';
import { type CoverKey, type CropId, MS_PER_H } from '../../../rules/index.ts';
import { dailyCurveC } from '../../../rules/night/daily-curve.ts';

const DAYS_BEHIND = 8;
const DAYS_AHEAD = 3;

/** An invented garden at 43° N on the meridian of Greenwich: its clock is the sun's. */
export const PLAIN_GARDEN: Garden = {
  name: 'Home',
  latitudeDeg: 43,
  longitudeDeg: 0,
  elevationM: 100,
  exposure: 'open',
  timeZone: 'UTC',
  beds: [],
  shed: [],
};

export function gardenBed(
  name: string,
  covers: readonly CoverKey[],
  crops: readonly CropId[],
  more: Partial<GardenBed> & { readonly hardeningIndex?: number } = {},
): GardenBed {
  const { hardeningIndex, ...rest } = more;
  const known = hardeningIndex === undefined ? {} : { hardeningIndex };
  return { name, covers, plantings: crops.map((cropId) => ({ cropId, stage: 'grown', ...known })), ...rest };
}

export interface EvenWeather {
  readonly lowC: number;
  readonly rangeK?: number;
  readonly cloud?: number;
  readonly columns?: Partial<ForecastColumns>;
}

/** Even weather from eight days before to three days after an instant: every day the same, coldest at six. */
export function evenForecast(now: Date, { lowC, rangeK = 12, cloud = 0, columns = {} }: EvenWeather): HourlyForecast {
  const first = new Date(Math.floor(now.getTime() / MS_PER_H) * MS_PER_H - DAYS_BEHIND * 24 * MS_PER_H);
  const hours = (DAYS_BEHIND + DAYS_AHEAD) * 24;
  const all = Array.from({ length: hours }, (_, hour) => hour);
  const clock = (hour: number) => (first.getUTCHours() + hour) % 24;
  return {
    service: 'openmeteo',
    updatedAt: now,
    fetchedAt: now,
    first,
    hours,
    columns: {
      screenC: all.map((hour) => dailyCurveC({ lowC, rangeK, peakAfterH: 8 }, clock(hour) - 6)),
      dewPointC: all.map(() => lowC - 3),
      cloudFraction: all.map(() => cloud),
      wind10MPerS: all.map(() => 2),
      ...columns,
    },
    lowWindows: [],
    credits: [{ text: 'Invented', url: 'https://example.org/' }],
    notes: [],
  };
}
