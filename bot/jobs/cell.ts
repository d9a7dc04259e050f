import type { ForecastPlace } from '../forecast/forecast.ts';
import { cellId, cellMiddle } from '../ground/cell-steps.ts';

/** Gardens so near to each other that they share a forecast; `place` is what the services are asked for. */
export interface Cell {
  readonly id: string;
  readonly place: ForecastPlace;
}

/** What is worked out for a garden rests on its cell's middle: no service and no ledger learns a front door. */
export function cellOf(site: {
  readonly latitudeDeg: number;
  readonly longitudeDeg: number;
  readonly heightM: number | undefined;
}): Cell {
  const { latitudeDeg, longitudeDeg, heightM } = site;
  const spot = { latitudeDeg, longitudeDeg, ...(heightM !== undefined && { elevationM: heightM }) };
  return { id: cellId(spot), place: cellMiddle(spot) };
}

/** The cell of that id; undefined for what is no id. */
export function cellFrom(id: string): Cell | undefined {
  const [latitudeDeg = Number.NaN, longitudeDeg = Number.NaN, elevationM] = id
    .split(',')
    .map((part) => (part === '' ? undefined : Number(part)));
  if (!Number.isFinite(latitudeDeg) || !Number.isFinite(longitudeDeg)) return undefined;
  const cell = cellOf({ latitudeDeg, longitudeDeg, heightM: elevationM });
  return cell.id === id ? cell : undefined;
}
