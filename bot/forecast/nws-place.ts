import { z } from 'zod';
import type { ForecastPlace } from './forecast.ts';

const position = z.tuple([z.number(), z.number()]).rest(z.number());
const point = z.looseObject({ type: z.literal('Point'), coordinates: position });
const polygon = z.looseObject({ type: z.literal('Polygon'), coordinates: z.array(z.array(position).min(4)).min(1) });
const collection = z.looseObject({ type: z.literal('GeometryCollection'), geometries: z.array(z.unknown()) });

/** A grid cell is 2.5 km wide; a shape much larger is no cell and says nothing about where the forecast is for. */
const WIDEST_CELL_DEG = 0.2;

/** The place that a saved National Weather Service answer is for: its point, or the middle of its grid cell. */
export function placeOfGeometry(geometry: unknown): ForecastPlace | undefined {
  const gathered = collection.safeParse(geometry).data;
  if (gathered !== undefined) return gathered.geometries.map(placeOfShape).find((place) => place !== undefined);
  return placeOfShape(geometry);
}

function placeOfShape(shape: unknown): ForecastPlace | undefined {
  const spot = point.safeParse(shape).data;
  if (spot !== undefined) return { latitudeDeg: spot.coordinates[1], longitudeDeg: spot.coordinates[0] };
  const ring = polygon.safeParse(shape).data?.coordinates[0];
  if (ring === undefined) return undefined;
  const longitudeDeg = middle(ring.map(([longitude]) => longitude));
  const latitudeDeg = middle(ring.map(([, latitude]) => latitude));
  return longitudeDeg === undefined || latitudeDeg === undefined ? undefined : { latitudeDeg, longitudeDeg };
}

function middle(degrees: readonly number[]): number | undefined {
  const low = Math.min(...degrees);
  const high = Math.max(...degrees);
  return high - low <= WIDEST_CELL_DEG ? (low + high) / 2 : undefined;
}
