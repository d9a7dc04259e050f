import type { NightSite, WeatherSeries } from '../site-and-weather.ts';

/**
 * What the energy balance of a bed is computed from. SI units, °C; every instant is a `Date`.
 * Nodes and equations: `README.md` beside this file; the unit ends each name.
 */

export interface Soil {
  readonly conductivityWPerMK: number;
  readonly heatCapacityJPerM3K: number;
  /** Share of the volume that is freezable water. [0…1] */
  readonly freezableFraction: number;
  readonly surfaceResistanceSPerM: number;
  readonly mulchResistanceM2KPerW: number;
  readonly albedoFraction: number;
}

export interface SoilPoint {
  readonly depthM: number;
  readonly soilC: number;
}

export interface Canopy {
  /** Leaf area per ground area: seedlings 0.3, open winter greens 1, full 2.5. */
  readonly leafAreaIndex: number;
  readonly leafSizeM: number;
}

/** One cover of a stack, with its dry and wet longwave optics, leakage and light. */
export interface CoverLayer {
  readonly longwaveTransmittedDryFraction: number;
  readonly longwaveReflectedDryFraction: number;
  readonly longwaveTransmittedWetFraction: number;
  readonly longwaveReflectedWetFraction: number;
  readonly resistanceM2KPerW: number;
  readonly heatCapacityJPerM2K: number;
  /** Cover area per floor area. */
  readonly areaRatio: number;
  /** Leakage at rest, per wind, per wind squared, per kelvin. [mm s⁻¹ and per m s⁻¹, (m s⁻¹)², K] */
  readonly leak0MmPerS: number;
  readonly leak1MmPerM: number;
  readonly leak2MmSPerM2: number;
  readonly leakMmPerSK: number;
  readonly sunTransmittedFraction: number;
  readonly sunAbsorbedFraction: number;
  /** Height of the air space under the cover. [m] */
  readonly spaceM: number;
  readonly diffusing: boolean;
  /** Contact conductance to the leaves of a cover that lies on them. [W m⁻² K⁻¹] */
  readonly contactWPerM2K: number;
}

export interface CoverGeometry {
  readonly kind: 'flat' | 'arch' | 'tilt';
  /** Representative height of the outer cover. [m] */
  readonly heightM: number;
  readonly tiltDeg: number;
  /** Direction that a tilted light faces, from north through east. [°] */
  readonly azimuthDeg: number;
}

export interface Walls {
  /** Wall area per floor area. */
  readonly areaRatio: number;
  readonly resistanceM2KPerW: number;
  readonly heatCapacityJPerM2K: number;
}

export interface WaterMass {
  readonly kgPerM2: number;
  readonly areaRatio: number;
  readonly startC: number;
}

/** Mat, quilt, tarp or board laid on the outermost cover between two instants. */
export interface NightBlanket {
  readonly resistanceM2KPerW: number;
  readonly heatCapacityJPerM2K: number;
  readonly from: Date;
  readonly to: Date;
}

export interface SnowOnCover {
  readonly depthM: number;
  readonly conductivityWPerMK: number;
}

/** Opening of the outermost cover between two instants. */
export interface Vent {
  /** Opening area per floor area. */
  readonly areaRatio: number;
  readonly heightM: number;
  readonly from: Date;
  readonly to: Date;
}

/** What lies over the bed, outermost cover first. No layers: the bare bed. */
export interface CoverStack {
  readonly layers: readonly CoverLayer[];
  readonly geometry: CoverGeometry;
  readonly walls?: Walls;
  readonly waterMass?: WaterMass;
  readonly blanket?: NightBlanket;
  readonly snow?: SnowOnCover;
  readonly vent?: Vent;
  /** Share of the floor of the outer space that inner covers occupy. [0…1] */
  readonly floorFraction: number;
}

/** Somebody who opens the outermost cover as far as it takes when the bed gets too warm, and shuts it at the end of each span. */
export interface Tending {
  /** Thermometer among the leaves at which the cover is opened, and opened wider. [°C] */
  readonly limitC: number;
  /** The least first. */
  readonly openings: readonly Pick<Vent, 'areaRatio' | 'heightM'>[];
  /** When somebody is there, in order of time. */
  readonly spans: readonly { readonly from: Date; readonly to: Date }[];
}

export interface NightInput {
  readonly site: NightSite;
  readonly start: Date;
  readonly end: Date;
  readonly weather: WeatherSeries;
  readonly soil: Soil;
  readonly soilProfile: readonly SoilPoint[];
  readonly canopy: Canopy;
  readonly stack: CoverStack;
  /** Electric heat spread over the soil of the bed; none when absent. [W m⁻², 0…500] */
  readonly heatWPerM2?: number;
  /** Stacks that replace the first at the given instants, in order of time. */
  readonly changes?: readonly { readonly at: Date; readonly stack: CoverStack }[];
  /** Opens the cover by day; vents that the stacks have come first. */
  readonly tending?: Tending;
}
