import { KELVIN_AT_ZERO_C, STEFAN_BOLTZMANN_W_PER_M2K4 } from '../constants.ts';

/** Magnus form of the saturation curve (`wmo-magnus`). */
const MAGNUS_HPA = 6.112;
const MAGNUS_SLOPE = 17.62;
const MAGNUS_C = 243.12;

/**
 * A place whose temperature the balance finds. Its tangents straighten the two curves of the balance, black-body emission and saturation
 * vapour pressure, about the latest estimate: value ≈ base + slope · temperature.
 */
export interface HeatNode {
  readonly row: number;
  /** Latest estimate for the end of the step. */
  nowC: number;
  /** At the beginning of the step. */
  beforeC: number;
  /** At the beginning of the step before. */
  earlierC: number;
  /** Heat stored per kelvin, over the length of the step. */
  storeWPerM2K: number;
  sunWPerM2: number;
  emissionBaseWPerM2: number;
  emissionSlopeWPerM2K: number;
  saturationHPa: number;
  saturationBaseHPa: number;
  saturationSlopeHPaPerK: number;
}

/** An air space whose vapour pressure the balance finds; it follows at once, without storage. */
export interface VapourNode {
  readonly row: number;
  nowHPa: number;
  beforeHPa: number;
  earlierHPa: number;
}

/**
 * A heat node at rest.
 *
 * @param row - Its row of the network.
 * @param startC - Its temperature. [°C]
 * @returns The node.
 */
export function heatNode(row: number, startC: number): HeatNode {
  return {
    row,
    nowC: startC,
    beforeC: startC,
    earlierC: startC,
    storeWPerM2K: Number.NaN,
    sunWPerM2: Number.NaN,
    emissionBaseWPerM2: Number.NaN,
    emissionSlopeWPerM2K: Number.NaN,
    saturationHPa: Number.NaN,
    saturationBaseHPa: Number.NaN,
    saturationSlopeHPaPerK: Number.NaN,
  };
}

/**
 * A vapour node at rest.
 *
 * @param row - Its row of the network.
 * @param startHPa - Its vapour pressure. [hPa]
 * @returns The node.
 */
export function vapourNode(row: number, startHPa: number): VapourNode {
  return { row, nowHPa: startHPa, beforeHPa: startHPa, earlierHPa: startHPa };
}

/**
 * Straightens the black-body emission of a node about its latest estimate.
 *
 * @param node - The node; its emission tangent is set.
 */
export function straightenEmission(node: HeatNode): void {
  const kelvin = node.nowC + KELVIN_AT_ZERO_C;
  const cubed = STEFAN_BOLTZMANN_W_PER_M2K4 * kelvin * kelvin * kelvin;
  node.emissionSlopeWPerM2K = 4 * cubed;
  node.emissionBaseWPerM2 = cubed * (kelvin - 4 * node.nowC);
}

/**
 * Straightens the saturation curve of a node about its latest estimate.
 *
 * @param node - The node; its saturation and the tangent are set.
 * @see The Magnus form of `saturationVapourHPa`, written out because this is the innermost loop (`wmo-magnus`)
 */
export function straightenSaturation(node: HeatNode): void {
  const inverse = 1 / (MAGNUS_C + node.nowC);
  const saturation = MAGNUS_HPA * Math.exp(MAGNUS_SLOPE * node.nowC * inverse);
  const slope = saturation * MAGNUS_SLOPE * MAGNUS_C * inverse * inverse;
  node.saturationHPa = saturation;
  node.saturationSlopeHPaPerK = slope;
  node.saturationBaseHPa = saturation - slope * node.nowC;
}
