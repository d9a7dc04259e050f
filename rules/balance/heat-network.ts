import { type HeatNode, heatNode, type VapourNode, vapourNode } from './heat-node.ts';

/** Exchange between a node and another, or the air outside, whose value is known. [W m⁻² per K, or per hPa of latent heat] */
export interface Link {
  readonly row: number;
  /** `undefined`: outside. */
  readonly otherRow: number | undefined;
  perUnit: number;
  /** Temperature or vapour pressure outside, for a link that leads there. [°C or hPa] */
  outsideValue: number;
}

/** Water that leaves a surface for an air space, or settles from it, with its latent heat. Without a space: the air outside. */
export interface WetLink {
  readonly surface: HeatNode;
  readonly vapour: VapourNode | undefined;
  perHPa: number;
}

/** The part of the longwave exchange that the balance needs: how much of each face's emission every face gains. */
export interface EmissionWeights {
  /** Rows of the faces follow each other. */
  readonly firstRow: number;
  /** For each face in turn: the weight of every face's emission. */
  readonly weights: Float64Array;
  /** Emission of each face: base + slope · temperature. [W m⁻², W m⁻² K⁻¹] */
  readonly basesWPerM2: Float64Array;
  readonly slopesWPerM2K: Float64Array;
  /** What each face gains from sky and surroundings. [W m⁻²] */
  readonly outerGainsWPerM2: Float64Array;
}

/**
 * The balance of all nodes of a bed, straightened about the latest estimates: each row says that what flows into a node is what it stores.
 * Links are laid once; a pass sets their strength, then the rows are assembled and solved.
 *
 * Arrays are read within their bounds by construction; hence the asserted element type.
 */
export class HeatNetwork {
  /** All heat nodes, in the order in which they were made. */
  readonly nodes: HeatNode[] = [];
  private size = 0;
  private matrix = new Float64Array(0);
  private load = new Float64Array(0);
  private readonly innerLinks: Link[] = [];
  private readonly outerLinks: Link[] = [];
  private readonly wetLinks: WetLink[] = [];

  /** Makes a place whose temperature is to be found. [°C] */
  heatNode(startC: number): HeatNode {
    const node = heatNode(this.size++, startC);
    this.nodes.push(node);
    return node;
  }

  /** Makes an air space whose vapour pressure is to be found. [hPa] */
  vapourNode(startHPa: number): VapourNode {
    return vapourNode(this.size++, startHPa);
  }

  /** Lays a link between two nodes of the same kind, or to the outside if there is no other. */
  link(node: { readonly row: number }, other: { readonly row: number } | undefined, perUnit = Number.NaN): Link {
    const link = { row: node.row, otherRow: other?.row, perUnit, outsideValue: Number.NaN };
    (other === undefined ? this.outerLinks : this.innerLinks).push(link);
    return link;
  }

  /** Lets water leave and settle on a surface. */
  wetLink(surface: HeatNode, vapour: VapourNode | undefined): WetLink {
    const link = { surface, vapour, perHPa: Number.NaN };
    this.wetLinks.push(link);
    return link;
  }

  /**
   * Assembles all rows and solves them.
   *
   * @param emission - Longwave exchange between the faces.
   * @param outsideHPa - Vapour pressure outside. [hPa]
   */
  solve(emission: EmissionWeights, outsideHPa: number): void {
    this.clear(emission.firstRow);
    this.setEmission(emission);
    this.addStores();
    this.addLinks();
    this.addWetLinks(outsideHPa);
    this.eliminate();
    this.substitute();
  }

  /** The value found for a row: °C of a heat node, hPa of a vapour node. */
  foundValue(row: number): number {
    return this.load[row] as number;
  }

  /** Empties the rows above the faces. A loop, because for so few entries it is faster than `fill`. */
  private clear(firstFaceRow: number): void {
    if (this.load.length !== this.size) {
      this.matrix = new Float64Array(this.size * this.size);
      this.load = new Float64Array(this.size);
    }
    const { matrix, load, size } = this;
    const end = firstFaceRow * size;
    for (let i = 0; i < end; i++) matrix[i] = 0;
    for (let row = 0; row < firstFaceRow; row++) load[row] = 0;
  }

  /** Writes the rows of the faces anew, with longwave alone. */
  private setEmission(emission: EmissionWeights): void {
    const { matrix, load, size } = this;
    const { firstRow, weights, basesWPerM2, slopesWPerM2K, outerGainsWPerM2 } = emission;
    const count = basesWPerM2.length;
    let place = 0;
    for (let i = 0; i < count; i++) {
      let entry = (firstRow + i) * size;
      for (let column = 0; column < firstRow; column++) matrix[entry++] = 0;
      let gain = outerGainsWPerM2[i] as number;
      for (let sender = 0; sender < count; sender++) {
        const weight = weights[place++] as number;
        matrix[entry++] = -weight * (slopesWPerM2K[sender] as number);
        gain += weight * (basesWPerM2[sender] as number);
      }
      load[firstRow + i] = gain;
    }
  }

  private addStores(): void {
    const { matrix, load, size } = this;
    for (const { row, storeWPerM2K, beforeC, sunWPerM2 } of this.nodes) {
      const own = row * size + row;
      matrix[own] = (matrix[own] as number) + storeWPerM2K;
      load[row] = (load[row] as number) + storeWPerM2K * beforeC + sunWPerM2;
    }
  }

  private addLinks(): void {
    const { matrix, load, size } = this;
    for (const { row, otherRow, perUnit } of this.innerLinks) {
      const other = otherRow as number;
      const own = row * size + row;
      const across = row * size + other;
      const back = other * size + row;
      const otherOwn = other * size + other;
      matrix[own] = (matrix[own] as number) + perUnit;
      matrix[across] = (matrix[across] as number) - perUnit;
      matrix[back] = (matrix[back] as number) - perUnit;
      matrix[otherOwn] = (matrix[otherOwn] as number) + perUnit;
    }
    for (const { row, perUnit, outsideValue } of this.outerLinks) {
      const own = row * size + row;
      matrix[own] = (matrix[own] as number) + perUnit;
      load[row] = (load[row] as number) + perUnit * outsideValue;
    }
  }

  private addWetLinks(outsideHPa: number): void {
    const { matrix, load, size } = this;
    for (const { surface, vapour, perHPa } of this.wetLinks) {
      if (perHPa === 0) continue;
      const { row } = surface;
      const perK = perHPa * surface.saturationSlopeHPaPerK;
      const base = perHPa * surface.saturationBaseHPa;
      const own = row * size + row;
      matrix[own] = (matrix[own] as number) + perK;
      load[row] = (load[row] as number) - base;
      if (vapour === undefined) {
        load[row] = (load[row] as number) + perHPa * outsideHPa;
        continue;
      }
      const across = row * size + vapour.row;
      const back = vapour.row * size + row;
      const air = vapour.row * size + vapour.row;
      matrix[across] = (matrix[across] as number) - perHPa;
      matrix[back] = (matrix[back] as number) - perK;
      matrix[air] = (matrix[air] as number) + perHPa;
      load[vapour.row] = (load[vapour.row] as number) + base;
    }
  }

  /**
   * No pivot is sought: every node exchanges with its surroundings, so the diagonal dominates. Its inverse is left in its place.
   */
  private eliminate(): void {
    const { matrix, load, size } = this;
    for (let pivot = 0; pivot < size; pivot++) {
      const pivotStart = pivot * size;
      const inverse = 1 / (matrix[pivotStart + pivot] as number);
      matrix[pivotStart + pivot] = inverse;
      for (let row = pivot + 1; row < size; row++) {
        const rowStart = row * size;
        const factor = (matrix[rowStart + pivot] as number) * inverse;
        if (factor === 0) continue;
        for (let column = pivot + 1; column < size; column++) {
          const entry = rowStart + column;
          matrix[entry] = (matrix[entry] as number) - factor * (matrix[pivotStart + column] as number);
        }
        load[row] = (load[row] as number) - factor * (load[pivot] as number);
      }
    }
  }

  private substitute(): void {
    const { matrix, load, size } = this;
    for (let row = size - 1; row >= 0; row--) {
      const rowStart = row * size;
      let rest = load[row] as number;
      for (let column = row + 1; column < size; column++) {
        rest -= (matrix[rowStart + column] as number) * (load[column] as number);
      }
      load[row] = rest * (matrix[rowStart + row] as number);
    }
  }
}
