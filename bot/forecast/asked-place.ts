import type { ForecastPlace } from './forecast.ts';

/** About 110 m: no service wants more than four decimals, neighbours share answers, and no service learns a front door. */
const DECIMALS = 3;

/** The place as it is told to services: rounded, without trailing zeros. */
export function askedPlace(place: ForecastPlace): ForecastPlace {
  const { elevationM } = place;
  return {
    latitudeDeg: rounded(place.latitudeDeg),
    longitudeDeg: rounded(place.longitudeDeg),
    ...(elevationM === undefined ? {} : { elevationM: Math.round(elevationM) }),
  };
}

/** Names a rounded place among stored forecasts. */
export function placeKey(place: ForecastPlace): string {
  const { latitudeDeg, longitudeDeg, elevationM } = askedPlace(place);
  return `${latitudeDeg},${longitudeDeg},${elevationM ?? ''}`;
}

function rounded(degrees: number): number {
  if (!Number.isFinite(degrees)) throw new RangeError('A place needs a latitude and a longitude in degrees.');
  const value = Number(degrees.toFixed(DECIMALS));
  return value === 0 ? 0 : value;
}
