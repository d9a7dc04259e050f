import { blackBodyWPerM2, KELVIN_AT_ZERO_C } from './constants.ts';

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
  emissionBaseWPerM2: number;
  emissionSlopeWPerM2K: number;
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
    emissionBaseWPerM2: 0.5,
    emissionSlopeWPerM2K: 0.5,
    saturationBaseHPa: 0.5,
    saturationSlopeHPaPerK: 0.5,
  };
}

/**
 * Straightens the black-body emission of a node about its latest estimate.
 *
 * @param node - The node; its emission tangent is set.
 */
export function straightenEmission(node: HeatNode): void {
  const emission = blackBodyWPerM2(node.nowC);
  const slope = (4 * emission) / (node.nowC + KELVIN_AT_ZERO_C);
  node.emissionSlopeWPerM2K = slope;
  node.emissionBaseWPerM2 = emission - slope * node.nowC;
}

/**
 * Straightens the saturation curve of a node about its latest estimate.
 *
 * @param node - The node; its saturation tangent is set.
 * @returns Saturation vapour pressure at the estimate. [hPa]
 * @see The Magnus form of `saturationVapourHPa`, written out because this is the innermost loop (`wmo-magnus`)
 */
export function straightenSaturation(node: HeatNode): number {
  const offset = MAGNUS_C + node.nowC;
  const saturation = MAGNUS_HPA * Math.exp((MAGNUS_SLOPE * node.nowC) / offset);
  const slope = (saturation * MAGNUS_SLOPE * MAGNUS_C) / (offset * offset);
  node.saturationSlopeHPaPerK = slope;
  node.saturationBaseHPa = saturation - slope * node.nowC;
  return saturation;
}

/** The linear balance of all nodes of a bed: rows say that the heat (or vapour) into a node is what it stores. */
export class HeatNetwork {
  readonly size: number;
  private readonly matrix: Float64Array;
  private readonly load: Float64Array;

  constructor(size: number) {
    this.size = size;
    this.matrix = new Float64Array(size * size);
    this.load = new Float64Array(size);
  }

  /** Forgets all exchanges. */
  clear(): void {
    this.matrix.fill(0);
    this.load.fill(0);
  }

  /** Adds what the node of `row` loses per unit of the node of `column`. [W m⁻² per unit] */
  addLoss(row: number, column: number, lossPerUnit: number): void {
    const place = row * this.size + column;
    this.matrix[place] = (this.matrix[place] ?? 0) + lossPerUnit;
  }

  /** Adds a gain that does not depend on the unknowns. [W m⁻²] */
  addGain(row: number, gainWPerM2: number): void {
    this.load[row] = (this.load[row] ?? 0) + gainWPerM2;
  }

  /** Exchange between two nodes of the same kind. [W m⁻² per unit of difference] */
  exchange(row: number, otherRow: number, perUnit: number): void {
    this.addLoss(row, row, perUnit);
    this.addLoss(otherRow, otherRow, perUnit);
    this.addLoss(row, otherRow, -perUnit);
    this.addLoss(otherRow, row, -perUnit);
  }

  /** Exchange with surroundings whose value is known. [W m⁻² per unit of difference] */
  exchangeWithFixed(row: number, perUnit: number, fixed: number): void {
    this.addLoss(row, row, perUnit);
    this.addGain(row, perUnit * fixed);
  }

  /** Water that leaves a wet surface for an air space, or settles there: the surface loses its latent heat. [W m⁻² hPa⁻¹] */
  evaporate(surface: HeatNode, vapour: VapourNode, perHPa: number): void {
    const perK = perHPa * surface.saturationSlopeHPaPerK;
    const base = perHPa * surface.saturationBaseHPa;
    this.addLoss(surface.row, surface.row, perK);
    this.addLoss(surface.row, vapour.row, -perHPa);
    this.addGain(surface.row, -base);
    this.addLoss(vapour.row, vapour.row, perHPa);
    this.addLoss(vapour.row, surface.row, -perK);
    this.addGain(vapour.row, base);
  }

  /** The same towards air whose vapour pressure is known. [W m⁻² hPa⁻¹, hPa] */
  evaporateOutside(surface: HeatNode, outsideHPa: number, perHPa: number): void {
    this.addLoss(surface.row, surface.row, perHPa * surface.saturationSlopeHPaPerK);
    this.addGain(surface.row, perHPa * (outsideHPa - surface.saturationBaseHPa));
  }

  /**
   * Solves the balance by elimination. No pivot is sought: each node exchanges with its surroundings, so the diagonal dominates. Rows
   * come in the order vapour, wall, water, air, faces, so that the sparse ones go first.
   */
  solve(): void {
    const { size, matrix } = this;
    for (let pivot = 0; pivot < size; pivot++) {
      const inverse = 1 / (matrix[pivot * size + pivot] ?? 0);
      for (let row = pivot + 1; row < size; row++) {
        const factor = (matrix[row * size + pivot] ?? 0) * inverse;
        if (factor !== 0) this.subtractRow(row, pivot, factor);
      }
    }
    for (let row = size - 1; row >= 0; row--) this.backSubstitute(row);
  }

  /** The value found for a row: °C of a heat node, hPa of a vapour node. */
  found(row: number): number {
    return this.load[row] ?? 0;
  }

  private subtractRow(row: number, pivot: number, factor: number): void {
    const { size, matrix, load } = this;
    let place = row * size + pivot + 1;
    let pivotPlace = pivot * size + pivot + 1;
    for (let column = pivot + 1; column < size; column++) {
      matrix[place] = (matrix[place] ?? 0) - factor * (matrix[pivotPlace] ?? 0);
      place++;
      pivotPlace++;
    }
    load[row] = (load[row] ?? 0) - factor * (load[pivot] ?? 0);
  }

  private backSubstitute(row: number): void {
    const { size, matrix, load } = this;
    let rest = load[row] ?? 0;
    for (let column = row + 1; column < size; column++) {
      rest -= (matrix[row * size + column] ?? 0) * (load[column] ?? 0);
    }
    load[row] = rest / (matrix[row * size + row] ?? 0);
  }
}
