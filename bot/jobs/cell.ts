import type { ForecastPlace } from '../forecast/forecast.ts';

/** Gardens so near to each other that they share a forecast; `place` is what the services are asked for. */
export interface Cell {
  readonly id: string;
  readonly place: ForecastPlace;
}

/** About 2 km: finer than the grid of any service that is asked, so that sharing costs nothing (judgement). */
const CELL_DEG = 0.02;
/** Services correct air temperature by some 0.65 K in 100 m (judgement). */
const CELL_M = 50;
const DECIMALS = 2;

/** What is worked out for a garden rests on its cell's middle: no service and no ledger learns a front door. */
export function cellOf(site: {
  readonly latitudeDeg: number;
  readonly longitudeDeg: number;
  readonly heightM: number | undefined;
}): Cell {
  const latitudeDeg = toStep(site.latitudeDeg, CELL_DEG);
  const longitudeDeg = toStep(site.longitudeDeg, CELL_DEG);
  const elevationM = site.heightM === undefined ? undefined : toStep(site.heightM, CELL_M);
  return {
    id: `${latitudeDeg.toFixed(DECIMALS)},${longitudeDeg.toFixed(DECIMALS)},${elevationM ?? ''}`,
    place: { latitudeDeg, longitudeDeg, ...(elevationM !== undefined && { elevationM }) },
  };
}

/** The cell of that id; undefined for what is no id. */
export function cellFrom(id: string): Cell | undefined {
  const [latitudeDeg = Number.NaN, longitudeDeg = Number.NaN, elevationM] = id
    .split(',')
    .map((part) => (part === '' ? undefined : Number(part)));
  const cell = cellOf({ latitudeDeg, longitudeDeg, heightM: elevationM });
  return cell.id === id ? cell : undefined;
}

function toStep(value: number, step: number): number {
  const stepped = Number((Math.round(value / step) * step).toFixed(DECIMALS));
  return stepped === 0 ? 0 : stepped;
}
