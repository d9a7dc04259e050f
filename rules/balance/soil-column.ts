import { FREEZING_HEAT_J_PER_M3 } from '../constants.ts';
import type { Link } from './heat-network.ts';
import type { HeatNode } from './heat-node.ts';
import type { Soil, SoilPoint } from './night-input.ts';
import { nextPhase, type Phase, phaseAt } from './phase.ts';

/** Twelve layers, from 10 mm at the top, each 1.347 times as thick as the one above, reach 1 m (`judgement`, tried against 30). */
const LAYER_COUNT = 12;
const FIRST_LAYER_M = 0.01;
const LAYER_GROWTH = 1.3470969148610328;
const BOTTOM_M = 1;
const THICKNESSES_M: readonly number[] = Array.from(
  { length: LAYER_COUNT },
  (_, i) => FIRST_LAYER_M * LAYER_GROWTH ** i,
);
/** Depths of the layer centres of every soil column. [m] */
export const SOIL_LAYER_CENTRES_M: readonly number[] = layerCentresM();
const TEN_CM_M = 0.1;
/** First layer whose centre lies below 10 cm. */
const BELOW_TEN_CM = SOIL_LAYER_CENTRES_M.findIndex((centreM) => centreM > TEN_CM_M);
/** Water in soil freezes evenly between 0 °C and this (`judgement`). */
const FROZEN_C = -1;

interface SoilLayer {
  readonly centreM: number;
  readonly thicknessM: number;
  /** To the layer above, or to the surface through the mulch. */
  readonly upWPerM2K: number;
  /** Latest estimate for the end of the step. */
  nowC: number;
  phase: Phase;
  /** Heat content at the beginning of the step. */
  heatJPerM3: number;
  slopeJPerM3K: number;
  /** Thickness over the length of the step, and the inverse. */
  depthRateMPerS: number;
  slownessSPerM: number;
  /** What lies below eliminated: temperature = base + share · temperature of the layer above. */
  baseC: number;
  shareFraction: number;
  inverseLossM2KPerW: number;
}

/**
 * Heat in the ground below a bed. The heat content, freezing included, follows the heat fluxes exactly; the temperature follows from it.
 */
export class SoilColumn {
  /** Heat that came up through the bottom in the last step. [W m⁻²] */
  bottomGainWPerM2 = Number.NaN;
  private readonly layers: readonly SoilLayer[];
  private readonly fromBottom: readonly SoilLayer[];
  private readonly heatCapacityJPerM3K: number;
  private readonly freezingJPerM3: number;
  private readonly bottomC: number;
  private readonly bottomWPerM2K: number;
  private stepS = 0;

  /**
   * @param soil - What the ground is made of.
   * @param mulchResistanceM2KPerW - Resistance of a mulch on it. [m² K W⁻¹]
   * @param startC - Temperature of each layer of `SOIL_LAYER_CENTRES_M` and, last, of the ground below. [°C]
   */
  constructor(soil: Soil, mulchResistanceM2KPerW: number, startC: readonly number[]) {
    this.heatCapacityJPerM3K = soil.heatCapacityJPerM3K;
    this.freezingJPerM3 = FREEZING_HEAT_J_PER_M3 * soil.freezableFraction;
    this.layers = SOIL_LAYER_CENTRES_M.map((centreM, i) => {
      const nowC = startC[i] ?? Number.NaN;
      const upResistance = (centreM - (SOIL_LAYER_CENTRES_M[i - 1] ?? 0)) / soil.conductivityWPerMK;
      return {
        centreM,
        thicknessM: THICKNESSES_M[i] ?? Number.NaN,
        upWPerM2K: 1 / (i === 0 ? upResistance + mulchResistanceM2KPerW : upResistance),
        nowC,
        phase: phaseAt(nowC, FROZEN_C),
        heatJPerM3: this.heatAtJPerM3(nowC),
        slopeJPerM3K: Number.NaN,
        depthRateMPerS: Number.NaN,
        slownessSPerM: Number.NaN,
        baseC: Number.NaN,
        shareFraction: Number.NaN,
        inverseLossM2KPerW: Number.NaN,
      };
    });
    this.fromBottom = this.layers.toReversed();
    this.bottomC = startC[LAYER_COUNT] ?? Number.NaN;
    this.bottomWPerM2K = soil.conductivityWPerMK / (BOTTOM_M - (SOIL_LAYER_CENTRES_M[LAYER_COUNT - 1] ?? 0));
  }

  /**
   * Sets the link between the surface and the ground, with all layers eliminated: the surface feels one temperature behind one resistance.
   *
   * @param link - Link from the surface.
   * @param areaFraction - Share of the floor that this ground takes. [0…1]
   * @param stepS - Length of the step; 0 holds the ground at its temperature. [s]
   */
  setLink(link: Link, areaFraction: number, stepS: number): void {
    const top = this.layers[0] as SoilLayer;
    if (stepS === 0) {
      link.perUnit = areaFraction * top.upWPerM2K;
      link.outsideValue = top.nowC;
      return;
    }
    this.eliminate(stepS);
    const rest = 1 - top.shareFraction;
    link.perUnit = areaFraction * top.upWPerM2K * rest;
    link.outsideValue = top.baseC / rest;
  }

  /**
   * Takes the temperatures that follow from a solved surface as the new estimates.
   *
   * @param surface - The surface, with the temperature that was found for it.
   * @returns Whether a layer began or ceased to freeze or thaw, so that the balance needs another pass.
   */
  follow(surface: HeatNode): boolean {
    let aboveC = surface.nowC;
    let isCrossed = false;
    for (const layer of this.layers) {
      const foundC = layer.baseC + layer.shareFraction * aboveC;
      const phase = nextPhase(layer.phase, phaseAt(foundC, FROZEN_C));
      if (phase !== layer.phase) isCrossed = true;
      layer.phase = phase;
      layer.nowC = foundC;
      aboveC = foundC;
    }
    return isCrossed;
  }

  /**
   * Ends the step: moves the heat that flowed and sets the temperatures from the heat content.
   *
   * @param surface - The surface at the end of the step.
   */
  settle(surface: HeatNode): void {
    let aboveC = surface.nowC;
    let upper: SoilLayer | undefined;
    let intoUpperWPerM2 = 0;
    for (const layer of this.layers) {
      const downWPerM2 = layer.upWPerM2K * (aboveC - layer.nowC);
      if (upper !== undefined) this.store(upper, intoUpperWPerM2 - downWPerM2);
      intoUpperWPerM2 = downWPerM2;
      aboveC = layer.nowC;
      upper = layer;
    }
    this.bottomGainWPerM2 = this.bottomWPerM2K * (this.bottomC - aboveC);
    if (upper !== undefined) this.store(upper, intoUpperWPerM2 + this.bottomGainWPerM2);
  }

  /** Heat above that of ground at 0 °C and frozen. [J m⁻²] */
  heatJPerM2(): number {
    return this.layers.reduce((sum, layer) => sum + layer.heatJPerM3 * layer.thicknessM, 0);
  }

  /** Temperature at 10 cm. [°C] */
  tenCmC(): number {
    const above = this.layers[BELOW_TEN_CM - 1] as SoilLayer;
    const below = this.layers[BELOW_TEN_CM] as SoilLayer;
    const share = (TEN_CM_M - above.centreM) / (below.centreM - above.centreM);
    return above.nowC + share * (below.nowC - above.nowC);
  }

  /** Temperature of each layer from the top and, last, of the ground below. [°C] */
  temperaturesC(): number[] {
    return [...this.layers.map((layer) => layer.nowC), this.bottomC];
  }

  private eliminate(stepS: number): void {
    let isStale = stepS !== this.stepS;
    this.stepS = stepS;
    let belowC = this.bottomC;
    let belowShare = 0;
    let downWPerM2K = this.bottomWPerM2K;
    for (const layer of this.fromBottom) {
      const slope = layer.phase === 'slush' ? this.heatCapacityJPerM3K + this.freezingJPerM3 : this.heatCapacityJPerM3K;
      if (isStale || slope !== layer.slopeJPerM3K) {
        // Everything above a layer that begins to freeze has to be eliminated anew; otherwise the factors stand.
        isStale = true;
        layer.slopeJPerM3K = slope;
        layer.depthRateMPerS = layer.thicknessM / stepS;
        layer.slownessSPerM = stepS / layer.thicknessM;
        const store = slope * layer.depthRateMPerS;
        layer.inverseLossM2KPerW = 1 / (store + layer.upWPerM2K + downWPerM2K * (1 - belowShare));
        layer.shareFraction = layer.upWPerM2K * layer.inverseLossM2KPerW;
      }
      // In each phase heat = slope · temperature + what melting has taken up at 0 °C.
      const warmthJPerM3 = layer.phase === 'ice' ? layer.heatJPerM3 : layer.heatJPerM3 - this.freezingJPerM3;
      layer.baseC = (warmthJPerM3 * layer.depthRateMPerS + downWPerM2K * belowC) * layer.inverseLossM2KPerW;
      belowC = layer.baseC;
      belowShare = layer.shareFraction;
      downWPerM2K = layer.upWPerM2K;
    }
  }

  private store(layer: SoilLayer, gainWPerM2: number): void {
    layer.heatJPerM3 += gainWPerM2 * layer.slownessSPerM;
    layer.nowC = this.temperatureAtC(layer.heatJPerM3);
    layer.phase = phaseAt(layer.nowC, FROZEN_C);
  }

  private heatAtJPerM3(soilC: number): number {
    return this.heatCapacityJPerM3K * soilC + this.freezingJPerM3 * Math.min(1, Math.max(0, soilC - FROZEN_C));
  }

  private temperatureAtC(heatJPerM3: number): number {
    const overMeltedJPerM3 = heatJPerM3 - this.freezingJPerM3;
    if (overMeltedJPerM3 >= 0) return overMeltedJPerM3 / this.heatCapacityJPerM3K;
    const mixedC = overMeltedJPerM3 / (this.heatCapacityJPerM3K + this.freezingJPerM3);
    return mixedC > FROZEN_C ? mixedC : heatJPerM3 / this.heatCapacityJPerM3K;
  }
}

/**
 * Temperatures of the layers of a soil column from a measured or assumed profile.
 *
 * @param profile - Points in order of depth; between them linear, constant above the first and below the last. [m, °C]
 * @returns Temperature of each layer and, last, at 1 m. [°C]
 */
export function soilStartC(profile: readonly SoilPoint[]): number[] {
  return [...SOIL_LAYER_CENTRES_M, BOTTOM_M].map((depthM) => profileC(profile, depthM));
}

/**
 * The profile from which a column starts again where a run has left it.
 *
 * @param soilC - Temperature of each layer and, last, at 1 m, as in a `BedState`. [°C]
 * @returns Points at the layers' centres, and at 1 m.
 */
export function leftProfile(soilC: readonly number[]): SoilPoint[] {
  return [...SOIL_LAYER_CENTRES_M, BOTTOM_M].map((depthM, i) => ({ depthM, soilC: soilC[i] ?? Number.NaN }));
}

/**
 * Temperature of a profile at a depth.
 *
 * @param profile - Points in order of depth; constant above the first and below the last. [m, °C]
 * @param depthM - Depth. [m]
 */
export function profileC(profile: readonly SoilPoint[], depthM: number): number {
  let above = profile[0];
  for (const point of profile) {
    if (above !== undefined && point.depthM >= depthM) {
      const gapM = point.depthM - above.depthM;
      const share = gapM > 0 ? (depthM - above.depthM) / gapM : 0;
      return above.soilC + share * (point.soilC - above.soilC);
    }
    above = point;
  }
  return above?.soilC ?? 0;
}

function layerCentresM(): number[] {
  let topM = 0;
  return THICKNESSES_M.map((thicknessM) => {
    topM += thicknessM;
    return topM - thicknessM / 2;
  });
}
