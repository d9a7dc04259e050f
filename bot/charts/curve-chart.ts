import type { UnitSystem } from '../ground/units.ts';

/** A temperature at an instant. */
export interface CurvePoint {
  readonly at: Date;
  readonly tempC: number;
  /** Half of the range round this value, where it is not the same all along the curve. [K] */
  readonly halfBandK?: number;
}

export interface ChartCurve {
  /** Said beside its end: "leaf", "outside". */
  readonly label: string;
  readonly points: readonly CurvePoint[];
  /** `main` is what decides; `beside` what it is held against; `other` the same bed handled otherwise. */
  readonly role: 'main' | 'beside' | 'other';
  /** Half of the range round it that holds four nights in five. [K] */
  readonly halfBandK?: number;
}

/** A temperature that must not be passed. */
export interface ChartLimit {
  /** Said on its line: "spinach marks". */
  readonly label: string;
  readonly tempC: number;
  /** A mark is drawn lighter than a loss. */
  readonly weight: 'mark' | 'loss';
}

/** A time that matters, said above the picture. */
export interface ChartMoment {
  readonly label: string;
  readonly at: Date;
}

/** Temperatures over some hours, as a picture or as characters show them. */
export interface CurveChart {
  readonly title: string;
  readonly subtitle: string;
  readonly units: UnitSystem;
  readonly timeZone: string;
  readonly from: Date;
  readonly to: Date;
  /** Drawn darker. */
  readonly night?: { readonly from: Date; readonly to: Date };
  readonly curves: readonly ChartCurve[];
  readonly limits: readonly ChartLimit[];
  /** Under the picture in place of hours: the nights of a week. Each value of a curve is then drawn as a dot. */
  readonly marks?: readonly ChartMoment[];
  /** In order of time. */
  readonly moments: readonly ChartMoment[];
  /** The same said in a sentence or two. */
  readonly altText: string;
  /** What a reader may wonder about, said under the picture. */
  readonly note?: string;
}
