/** What of a bed outlasts a change of covers: a later run can start from it. */
export interface BedState {
  /** Soil layers from the top and, last, the ground below them. [°C] */
  readonly soilC: readonly number[];
  /** The same for the path beside inner covers. */
  readonly pathSoilC?: readonly number[];
  readonly wallC?: number;
  readonly waterC?: number;
}
