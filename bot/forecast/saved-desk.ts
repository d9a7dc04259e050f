import { distanceKm } from '../ground/distance.ts';
import { PlainProblem } from '../ground/errors.ts';
import type { ForecastDesk, ForecastPlace, HourlyForecast } from './forecast.ts';

/** Farther away it is another place's weather (judgement: MET Norway and Open-Meteo round to some 10 km). */
const SAME_PLACE_KM = 30;

/**
 * A saved forecast in the place of the live ones; no service is asked.
 *
 * @throws PlainProblem from `forecastFor` when the file is for another place.
 */
export function savedDesk(forecast: HourlyForecast): ForecastDesk {
  return {
    async forecastFor(place) {
      refuseElsewhere(forecast.place, place);
      return forecast;
    },
    warningsFor: async () => ({ kind: 'not-covered' }),
    close: async () => undefined,
  };
}

/** @throws PlainProblem when a saved forecast is for another place than the one asked about. */
export function refuseElsewhere(saved: ForecastPlace | undefined, asked: ForecastPlace): void {
  if (saved === undefined) return;
  const apartKm = distanceKm(saved, asked);
  if (apartKm <= SAME_PLACE_KM) return;
  throw new PlainProblem(
    `That saved forecast is for ${spot(saved)}, ${Math.round(apartKm)} km from ${spot(asked)}. Save the answer for your own place, or check the signs of your latitude and longitude.`,
  );
}

function spot({ latitudeDeg, longitudeDeg }: ForecastPlace): string {
  const north = `${Math.abs(latitudeDeg).toFixed(1)}° ${latitudeDeg < 0 ? 'S' : 'N'}`;
  return `${north}, ${Math.abs(longitudeDeg).toFixed(1)}° ${longitudeDeg < 0 ? 'W' : 'E'}`;
}
