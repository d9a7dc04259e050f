import { cellMiddle } from '../ground/cell-steps.ts';
import type { ForecastPlace } from './forecast.ts';

/** The place as it is told to services, shared by all who garden in that cell. */
export function askedPlace(place: ForecastPlace): ForecastPlace {
  return cellMiddle(place);
}

/** Names a cell among stored forecasts. */
export function placeKey(place: ForecastPlace): string {
  const { latitudeDeg, longitudeDeg, elevationM } = askedPlace(place);
  return `${latitudeDeg},${longitudeDeg},${elevationM ?? ''}`;
}
