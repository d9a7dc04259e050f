import { type HeatNetwork, type HeatNode, straightenEmission } from './heat-network.ts';
import { type LadderFloor, type Rung, SOIL_EMISSIVITY, solveLadder } from './ladder.ts';

/** Where the longwave exchange of a bed takes place: rungs of the bed, and of the path beside inner covers. */
export interface LongwaveLayout {
  /** Covers from outside to inside, then the canopy. */
  readonly rungs: readonly Rung[];
  /** Upper and lower face of each cover in turn, canopy, soil surface, and the path's surface if there is one. */
  readonly faces: readonly HeatNode[];
  /** Share of the floor under the inner covers; the rest is path under the outermost cover alone. */
  readonly floorFraction: number;
}

/**
 * Longwave gains of all faces as sums over the black-body emissions of all faces. The weights depend only on optics, so they are found once
 * by lighting one face at a time and are kept until a cover wets, dries or is dressed for the night.
 */
export class LongwaveExchange {
  private readonly layout: LongwaveLayout;
  private readonly floor: LadderFloor = { blackWPerM2: 0, arrivingWPerM2: 0, risingWPerM2: 0 };
  private readonly pathFloor: LadderFloor = { blackWPerM2: 0, arrivingWPerM2: 0, risingWPerM2: 0 };
  private readonly outerRung: readonly Rung[];
  private readonly canopyPlace: number;
  private readonly hasPath: boolean;
  /** Weight of the emission of face `column` in the gain of face `row`; the last column is the sky. */
  private readonly weights: Float64Array;
  /** The same for the flux down onto the canopy plus the flux up from it. */
  private readonly cropWeights: Float64Array;

  constructor(layout: LongwaveLayout) {
    this.layout = layout;
    this.outerRung = layout.rungs.slice(0, 1);
    this.canopyPlace = 2 * (layout.rungs.length - 1);
    this.hasPath = layout.faces.length > this.canopyPlace + 2;
    const columns = layout.faces.length + 1;
    this.weights = new Float64Array(layout.faces.length * columns);
    this.cropWeights = new Float64Array(columns);
  }

  /** Finds the weights anew after the optics of a rung have changed. */
  refresh(): void {
    const count = this.layout.faces.length;
    for (let column = 0; column < count; column++) {
      this.light(column, 1);
      this.record(column, 0);
      this.light(column, 0);
    }
    this.record(count, 1);
  }

  /**
   * Adds the exchange to the balance, straightened about the latest estimates.
   *
   * @param network - The balance.
   * @param skyWPerM2 - Longwave radiation from the sky and what stands around. [W m⁻²]
   */
  addTo(network: HeatNetwork, skyWPerM2: number): void {
    const { faces } = this.layout;
    for (const face of faces) straightenEmission(face);
    let place = 0;
    for (const face of faces) {
      let gain = 0;
      for (const sender of faces) {
        const weight = this.weights[place++] ?? 0;
        network.addLoss(face.row, sender.row, -weight * sender.emissionSlopeWPerM2K);
        gain += weight * sender.emissionBaseWPerM2;
      }
      gain += (this.weights[place++] ?? 0) * skyWPerM2;
      network.addGain(face.row, gain);
    }
  }

  /**
   * Flux that comes down onto the crop plus flux that goes up from it, with the emissions as last straightened.
   *
   * @param skyWPerM2 - Longwave radiation from the sky and what stands around. [W m⁻²]
   * @returns Sum of the two fluxes at the top of the crop. [W m⁻²]
   */
  cropFluxWPerM2(skyWPerM2: number): number {
    let place = 0;
    let flux = 0;
    for (const face of this.layout.faces) flux += (this.cropWeights[place++] ?? 0) * emissionWPerM2(face);
    return flux + (this.cropWeights[place] ?? 0) * skyWPerM2;
  }

  private light(column: number, blackWPerM2: number): void {
    const { canopyPlace } = this;
    if (column <= canopyPlace) {
      const rung = this.layout.rungs[column >> 1];
      if (rung === undefined) return;
      if (column % 2 === 0) rung.upperBlackWPerM2 = blackWPerM2;
      if (column % 2 === 1 || column === canopyPlace) rung.lowerBlackWPerM2 = blackWPerM2;
    } else if (column === canopyPlace + 1) {
      this.floor.blackWPerM2 = blackWPerM2;
    } else {
      this.pathFloor.blackWPerM2 = blackWPerM2;
    }
  }

  private record(column: number, skyWPerM2: number): void {
    const { rungs, faces, floorFraction } = this.layout;
    const stride = faces.length + 1;
    for (let row = 0; row < faces.length; row++) this.weights[row * stride + column] = 0;
    solveLadder(rungs, this.floor, skyWPerM2);
    const canopy = rungs[rungs.length - 1];
    this.cropWeights[column] = canopy === undefined ? 0 : canopy.arrivingWPerM2 + canopy.risingWPerM2;
    this.recordRungs(column, rungs, this.floor, floorFraction);
    this.addWeight(this.canopyPlace + 1, column, floorFraction * floorGain(this.floor));
    if (!this.hasPath) return;
    const pathShare = 1 - floorFraction;
    solveLadder(this.outerRung, this.pathFloor, skyWPerM2);
    this.recordRungs(column, this.outerRung, this.pathFloor, pathShare);
    this.addWeight(this.canopyPlace + 2, column, pathShare * floorGain(this.pathFloor));
  }

  private recordRungs(column: number, rungs: readonly Rung[], floor: LadderFloor, share: number): void {
    for (let i = 0; i < rungs.length; i++) {
      const rung = rungs[i];
      if (rung === undefined) break;
      const rising = (rungs[i + 1] ?? floor).risingWPerM2;
      const upper = share * rung.emittedUpFraction * (rung.arrivingWPerM2 - rung.upperBlackWPerM2);
      const lower = share * rung.emittedDownFraction * (rising - rung.lowerBlackWPerM2);
      const upperPlace = 2 * i;
      this.addWeight(upperPlace, column, upper);
      this.addWeight(upperPlace === this.canopyPlace ? upperPlace : upperPlace + 1, column, lower);
    }
  }

  private addWeight(row: number, column: number, weight: number): void {
    const place = row * (this.layout.faces.length + 1) + column;
    this.weights[place] = (this.weights[place] ?? 0) + weight;
  }
}

function floorGain(floor: LadderFloor): number {
  return SOIL_EMISSIVITY * (floor.arrivingWPerM2 - floor.blackWPerM2);
}

function emissionWPerM2(face: HeatNode): number {
  return face.emissionBaseWPerM2 + face.emissionSlopeWPerM2K * face.nowC;
}
