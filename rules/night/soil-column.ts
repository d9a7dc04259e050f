import { FREEZING_HEAT_J_PER_M3 } from './constants.ts';
import type { HeatNetwork, HeatNode } from './heat-network.ts';
import type { Soil, SoilPoint } from './night-input.ts';

/** Twelve layers, from 10 mm at the top, each 1.347 times as thick as the one above, reach 1 m (`judgement`, tried against 30). */
const LAYER_COUNT = 12;
const FIRST_LAYER_M = 0.01;
const LAYER_GROWTH = 1.3470969148610328;
const BOTTOM_M = 1;
/** Water in soil freezes evenly between 0 °C and this (`judgement`). */
const FROZEN_C = -1;

interface SoilLayer {
  readonly centreM: number;
  readonly thicknessM: number;
  /** To the layer above, or to the surface through the mulch. */
  readonly upWPerM2K: number;
  /** Latest estimate for the end of the step. */
  nowC: number;
  /** Heat content at the beginning of the step. */
  heatJPerM3: number;
  slopeJPerM3K: number;
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
  bottomGainWPerM2 = 0;
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
   * @param startC - Temperature of each layer of `soilLayerCentresM` and, last, of the ground below. [°C]
   */
  constructor(soil: Soil, mulchResistanceM2KPerW: number, startC: readonly number[]) {
    this.heatCapacityJPerM3K = soil.heatCapacityJPerM3K;
    this.freezingJPerM3 = FREEZING_HEAT_J_PER_M3 * soil.freezableFraction;
    const thicknesses = layerThicknessesM();
    const centres = soilLayerCentresM();
    this.layers = thicknesses.map((thicknessM, i) => {
      const centreM = centres[i] ?? 0;
      const nowC = startC[i] ?? 0;
      const upResistance = (centreM - (centres[i - 1] ?? 0)) / soil.conductivityWPerMK;
      return {
        centreM,
        thicknessM,
        upWPerM2K: 1 / (i === 0 ? upResistance + mulchResistanceM2KPerW : upResistance),
        nowC,
        heatJPerM3: this.heatAtJPerM3(nowC),
        slopeJPerM3K: 0.5,
        baseC: nowC,
        shareFraction: 0.5,
        inverseLossM2KPerW: 0.5,
      };
    });
    this.fromBottom = this.layers.toReversed();
    this.bottomC = startC[LAYER_COUNT] ?? 0;
    this.bottomWPerM2K = soil.conductivityWPerMK / (BOTTOM_M - (centres[LAYER_COUNT - 1] ?? 0));
  }

  /**
   * Adds the ground to the balance of its surface, with all layers eliminated.
   *
   * @param network - The balance.
   * @param surface - Surface node.
   * @param areaFraction - Share of the floor that this ground takes. [0…1]
   * @param stepS - Length of the step; 0 holds the ground at its temperature. [s]
   */
  addTo(network: HeatNetwork, surface: HeatNode, areaFraction: number, stepS: number): void {
    const top = this.layers[0];
    if (top === undefined) return;
    if (stepS === 0) {
      network.exchangeWithFixed(surface.row, areaFraction * top.upWPerM2K, top.nowC);
      return;
    }
    this.eliminate(stepS);
    network.addLoss(surface.row, surface.row, areaFraction * top.upWPerM2K * (1 - top.shareFraction));
    network.addGain(surface.row, areaFraction * top.upWPerM2K * top.baseC);
  }

  /**
   * Takes the temperatures that follow from a solved surface as the new estimates.
   *
   * @param surfaceC - Temperature found for the surface. [°C]
   * @returns Whether a layer began or ceased to freeze or thaw, so that the balance needs another pass.
   */
  follow(surfaceC: number): boolean {
    let aboveC = surfaceC;
    let crossed = false;
    for (const layer of this.layers) {
      const foundC = layer.baseC + layer.shareFraction * aboveC;
      if (phase(foundC) !== phase(layer.nowC)) crossed = true;
      layer.nowC = foundC;
      aboveC = foundC;
    }
    return crossed;
  }

  /**
   * Ends the step: moves the heat that flowed and sets the temperatures from the heat content.
   *
   * @param surfaceC - Temperature of the surface at the end of the step. [°C]
   * @returns Gain of stored heat. [J m⁻²]
   */
  settle(surfaceC: number): number {
    const last = this.fromBottom[0];
    this.bottomGainWPerM2 = last === undefined ? 0 : this.bottomWPerM2K * (this.bottomC - last.nowC);
    let fromBelowWPerM2 = this.bottomGainWPerM2;
    let storedJPerM2 = 0;
    for (let i = this.layers.length - 1; i >= 0; i--) {
      const layer = this.layers[i];
      if (layer === undefined) break;
      const aboveC = this.layers[i - 1]?.nowC ?? surfaceC;
      const upWPerM2 = layer.upWPerM2K * (layer.nowC - aboveC);
      const gainJPerM2 = this.stepS * (fromBelowWPerM2 - upWPerM2);
      fromBelowWPerM2 = upWPerM2;
      storedJPerM2 += gainJPerM2;
      layer.heatJPerM3 += gainJPerM2 / layer.thicknessM;
      layer.nowC = this.temperatureAtC(layer.heatJPerM3);
    }
    return storedJPerM2;
  }

  /**
   * Temperature at a depth between the first layer's centre and the bottom.
   *
   * @param depthM - Depth. [m, 0…1]
   * @returns Temperature. [°C]
   */
  temperatureC(depthM: number): number {
    let above = this.layers[0];
    for (const layer of this.layers) {
      if (above !== undefined && layer.centreM >= depthM) {
        const gapM = layer.centreM - above.centreM;
        const share = gapM > 0 ? (depthM - above.centreM) / gapM : 0;
        return above.nowC + share * (layer.nowC - above.nowC);
      }
      above = layer;
    }
    return this.bottomC;
  }

  /** Temperature of each layer from the top and, last, of the ground below. [°C] */
  temperaturesC(): number[] {
    return [...this.layers.map((layer) => layer.nowC), this.bottomC];
  }

  private eliminate(stepS: number): void {
    let stale = stepS !== this.stepS;
    this.stepS = stepS;
    let belowC = this.bottomC;
    let belowShare = 0;
    let downWPerM2K = this.bottomWPerM2K;
    for (const layer of this.fromBottom) {
      const slope = this.slopeAtJPerM3K(layer.nowC);
      const perStep = layer.thicknessM / stepS;
      if (stale || slope !== layer.slopeJPerM3K) {
        // Everything above a layer that begins to freeze has to be eliminated anew; otherwise the factors stand.
        stale = true;
        layer.slopeJPerM3K = slope;
        layer.inverseLossM2KPerW = 1 / (slope * perStep + layer.upWPerM2K + downWPerM2K * (1 - belowShare));
        layer.shareFraction = layer.upWPerM2K * layer.inverseLossM2KPerW;
      }
      const stored = layer.heatJPerM3 - this.heatAtJPerM3(layer.nowC) + slope * layer.nowC;
      layer.baseC = (stored * perStep + downWPerM2K * belowC) * layer.inverseLossM2KPerW;
      belowC = layer.baseC;
      belowShare = layer.shareFraction;
      downWPerM2K = layer.upWPerM2K;
    }
  }

  private heatAtJPerM3(soilC: number): number {
    return this.heatCapacityJPerM3K * soilC + this.freezingJPerM3 * Math.min(1, Math.max(0, soilC - FROZEN_C));
  }

  private slopeAtJPerM3K(soilC: number): number {
    return phase(soilC) === 1 ? this.heatCapacityJPerM3K + this.freezingJPerM3 : this.heatCapacityJPerM3K;
  }

  private temperatureAtC(heatJPerM3: number): number {
    if (heatJPerM3 >= this.freezingJPerM3) return (heatJPerM3 - this.freezingJPerM3) / this.heatCapacityJPerM3K;
    const meltingJPerM3 = heatJPerM3 - this.freezingJPerM3;
    const mixedC = meltingJPerM3 / (this.heatCapacityJPerM3K + this.freezingJPerM3);
    return mixedC > FROZEN_C ? mixedC : heatJPerM3 / this.heatCapacityJPerM3K;
  }
}

/**
 * Depths of the layer centres of every soil column.
 *
 * @returns Depths from the top. [m, 0.005…0.87]
 */
export function soilLayerCentresM(): number[] {
  let topM = 0;
  return layerThicknessesM().map((thicknessM) => {
    const centreM = topM + thicknessM / 2;
    topM += thicknessM;
    return centreM;
  });
}

/**
 * Temperatures of the layers of a soil column from a measured or assumed profile.
 *
 * @param profile - Points in order of depth; between them linear, constant above the first and below the last. [m, °C]
 * @returns Temperature of each layer and, last, at 1 m. [°C]
 */
export function soilStartC(profile: readonly SoilPoint[]): number[] {
  return [...soilLayerCentresM(), BOTTOM_M].map((depthM) => profileC(profile, depthM));
}

function profileC(profile: readonly SoilPoint[], depthM: number): number {
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

function layerThicknessesM(): number[] {
  return Array.from({ length: LAYER_COUNT }, (_, i) => FIRST_LAYER_M * LAYER_GROWTH ** i);
}

/** 0 frozen, 1 freezing or thawing, 2 free of ice. */
function phase(soilC: number): 0 | 1 | 2 {
  if (soilC > 0) return 2;
  return soilC > FROZEN_C ? 1 : 0;
}
