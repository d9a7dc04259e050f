/** A point on the earth. [°] */
export interface EarthPoint {
  readonly latitudeDeg: number;
  readonly longitudeDeg: number;
}

/** Mean radius of the earth (IUGG). [km] */
const EARTH_KM = 6371.0088;
const RAD_PER_DEG = Math.PI / 180;

/** Great-circle distance by the haversine formula, exact enough for places (0.5 % from the ellipsoid). [km] */
export function distanceKm(one: EarthPoint, other: EarthPoint): number {
  const halfLatitude = Math.sin(((other.latitudeDeg - one.latitudeDeg) * RAD_PER_DEG) / 2);
  const halfLongitude = Math.sin(((other.longitudeDeg - one.longitudeDeg) * RAD_PER_DEG) / 2);
  const cosines = Math.cos(one.latitudeDeg * RAD_PER_DEG) * Math.cos(other.latitudeDeg * RAD_PER_DEG);
  return 2 * EARTH_KM * Math.asin(Math.min(1, Math.hypot(halfLatitude, Math.sqrt(cosines) * halfLongitude)));
}
