import type { ForecastPlace } from './forecast.ts';

/** South, north, west, east. [°] */
type Box = readonly [number, number, number, number];

/** Coarse on purpose: they hold parts of Canada and Mexico, where the service's own "not covered" decides. */
const BOXES: readonly Box[] = [
  [24.3, 49.5, -125.1, -66.8],
  [51, 71.6, -180, -129.9],
  [51, 54, 172, 180],
  [18.5, 22.6, -160.7, -154.5],
  [17.5, 18.8, -67.6, -64.3],
  [13, 20.8, 144.4, 146.3],
  [-14.7, -10.8, -171.3, -168],
];

/** Might the National Weather Service cover this place: the states, Puerto Rico and the islands? */
export function mayBeNwsArea({ latitudeDeg, longitudeDeg }: ForecastPlace): boolean {
  return BOXES.some(
    ([south, north, west, east]) =>
      latitudeDeg >= south && latitudeDeg <= north && longitudeDeg >= west && longitudeDeg <= east,
  );
}
