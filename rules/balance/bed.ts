import type { HeatNetwork, Link, WetLink } from './heat-network.ts';
import type { HeatNode, VapourNode } from './heat-node.ts';
import type { Rung } from './ladder.ts';
import type { LongwaveExchange } from './longwave-exchange.ts';
import type { Canopy, CoverLayer, CoverStack, Walls } from './night-input.ts';
import type { SoilColumn } from './soil-column.ts';
import type { Jugs } from './water-jugs.ts';

/** Air below a cover. Like everything in a bed it is counted per area of the outermost floor. */
export interface AirSpace {
  readonly air: HeatNode;
  readonly vapour: VapourNode;
  readonly heightM: number;
  /** Air exchange with the space outside, for heat and for vapour. */
  readonly leak: Link;
  readonly vapourLeak: Link;
  /** Vapour pressure that the space would have if nothing condensed: base + share · that of the space outside. */
  potentialBaseHPa: number;
  potentialShareFraction: number;
  potentialHPa: number;
}

/** A cover with its two faces and the air below it. */
export interface Cover {
  readonly layer: CoverLayer;
  readonly floorFraction: number;
  readonly rung: Rung;
  readonly upper: HeatNode;
  readonly lower: HeatNode;
  readonly below: AirSpace;
  /** Through the cover, and from its faces to the air. */
  readonly through: Link;
  readonly upperAir: Link;
  readonly lowerAir: Link;
  readonly lowerDew: WetLink;
  wetFraction: number;
  /** Wetness for which the optics were last worked out. */
  opticsWetFraction: number;
  faceCapacityJPerM2K: number;
  leakShareFraction: number;
}

/** Ground under the crop, or the bare path beside inner covers. */
export interface Ground {
  readonly surface: HeatNode;
  readonly column: SoilColumn;
  readonly floorFraction: number;
  readonly air: Link;
  readonly below: Link;
  readonly evaporation: WetLink;
  /** Resistance of the soil to vapour, in heat units. [m² K W⁻¹] */
  readonly soilM2KPerW: number;
}

/** Sides of a frame. */
export interface Wall {
  readonly walls: Walls;
  readonly node: HeatNode;
  readonly outside: Link;
  readonly inside: Link;
}

/** The crop: all its leaves as one, and one leaf at the top of it. */
export interface Crop {
  readonly canopy: Canopy;
  readonly floorFraction: number;
  readonly leaves: HeatNode;
  readonly air: Link;
  readonly wet: WetLink;
  readonly exposedLeaf: HeatNode;
  /** Sun that reaches the crop. [W per m² of bed] */
  sunWPerM2: number;
}

/** Everything that a run keeps about a bed under one stack. */
export interface Bed {
  readonly stack: CoverStack;
  readonly airHeatJPerM3K: number;
  /** Heat units of an air exchange into latent heat: inverse of the psychrometric constant. [K hPa⁻¹] */
  readonly latentKPerHPa: number;
  readonly soilAlbedoFraction: number;
  /** Electric heat on the soil; counted with the sun that the soil takes in. [W per m² of bed] */
  readonly heatWPerM2: number;
  readonly network: HeatNetwork;
  readonly longwave: LongwaveExchange;
  readonly covers: readonly Cover[];
  readonly outermost: Cover | undefined;
  readonly innermost: Cover | undefined;
  readonly crop: Crop;
  readonly ground: Ground;
  readonly path: Ground | undefined;
  readonly wall: Wall | undefined;
  readonly jugs: Jugs | undefined;
  /** Dew on the outermost cover. */
  readonly outerDew: WetLink | undefined;
  /** Length of the step for which stores were set; 0 for a steady state. */
  stepS: number;
  /** Share of the way to its target that the wetness of a cover goes in such a step. */
  wettingFraction: number;
}
