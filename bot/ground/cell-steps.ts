/** About 2 km: finer than the grid of any service that is asked, so that sharing costs nothing (judgement). [°] */
const CELL_DEG = 0.02;
/** Services correct air temperature by some 0.65 K in 100 m (judgement). */
const CELL_M = 50;
const CELL_DECIMALS = 2;

interface Spot {
  readonly latitudeDeg: number;
  readonly longitudeDeg: number;
  /** Above the sea, where known. [m] */
  readonly elevationM?: number;
}

/** The middle of the cell in which a place lies: neighbours share a forecast, and no service learns a front door. */
export function cellMiddle({ latitudeDeg, longitudeDeg, elevationM }: Spot): Spot {
  if (!Number.isFinite(latitudeDeg) || !Number.isFinite(longitudeDeg)) {
    throw new RangeError('A place needs a latitude and a longitude in degrees.');
  }
  return {
    latitudeDeg: toStep(latitudeDeg, CELL_DEG),
    longitudeDeg: toStep(longitudeDeg, CELL_DEG),
    ...(elevationM !== undefined && { elevationM: toStep(elevationM, CELL_M) }),
  };
}

/** Names a cell: "43.12,-76.30,150". */
export function cellId(spot: Spot): string {
  const { latitudeDeg, longitudeDeg, elevationM } = cellMiddle(spot);
  return `${latitudeDeg.toFixed(CELL_DECIMALS)},${longitudeDeg.toFixed(CELL_DECIMALS)},${elevationM ?? ''}`;
}

function toStep(value: number, step: number): number {
  const stepped = Number((Math.round(value / step) * step).toFixed(CELL_DECIMALS));
  return stepped === 0 ? 0 : stepped;
}
