/** Where a bed lies and the weather over it. SI units, °C; every instant is a `Date`. */

/** Where the bed lies and how open it is. */
export interface NightSite {
  /** North positive. [°, −90…90] */
  readonly latitudeDeg: number;
  /** East positive. [°, −180…180] */
  readonly longitudeDeg: number;
  /** Height above the sea. [m] */
  readonly elevationM: number;
  /** Share of the sky dome that the bed sees. [0…1] */
  readonly skyViewFraction: number;
  /** Wind at the bed as a share of the open-field wind. [0…1] */
  readonly shelterFraction: number;
  /** Strength of the ground inversion: hill top 0–1.5, level ground 3, frost hollow 5–6. [K] */
  readonly inversionK: number;
  /** Height of what hides the sun, round the compass; as for `horizonAtDeg`. [°, 0…90] */
  readonly horizonDeg?: readonly number[];
}

/** Evenly spaced instants; values between them are interpolated linearly. All arrays have the same length. */
export interface WeatherSeries {
  readonly first: Date;
  readonly stepH: number;
  /** So many hours at the beginning are made up, not forecast. */
  readonly assumedH?: number;
  /** Screen (2 m) air temperature. [°C] */
  readonly screenC: readonly number[];
  /** Dew point; capped at the temperature by the model. [°C] */
  readonly dewPointC: readonly number[];
  /** Total cloud cover. [0…1] */
  readonly cloudFraction: readonly number[];
  /** Wind speed at 10 m. [m s⁻¹] */
  readonly wind10MPerS: readonly number[];
  /** Global radiation at the instants, if a service gave it. [W m⁻²] */
  readonly globalWPerM2?: readonly number[];
}
