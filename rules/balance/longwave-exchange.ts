import type { EmissionWeights } from './heat-network.ts';
import { type HeatNode, straightenEmission } from './heat-node.ts';
import { lowerGainWPerM2, type Rung, setLadderOptics, solveLadder, upperGainWPerM2 } from './ladder.ts';

/** One column of floor from sky to soil. */
export interface LadderPart {
  /** Covers from outside to inside, canopy if there is one, soil. */
  readonly rungs: readonly Rung[];
  /** Places in the list of all faces of each rung's upper and lower face; the canopy's two faces share a place, and so do the soil's. */
  readonly places: readonly (readonly [upperIndex: number, lowerIndex: number])[];
  /** Share of the floor. [0…1] */
  readonly floorFraction: number;
}

/**
 * Longwave gains of all faces as weighted sums over the emissions of all faces. The weights depend only on optics, so they are found once, by
 * lighting one face at a time, and kept until a cover wets, dries or is dressed for the night.
 */
export class LongwaveExchange implements EmissionWeights {
  readonly firstRow: number;
  readonly weights: Float64Array;
  readonly basesWPerM2: Float64Array;
  readonly slopesWPerM2K: Float64Array;
  readonly outerGainsWPerM2: Float64Array;
  private readonly faces: readonly HeatNode[];
  private readonly bed: LadderPart;
  private readonly path: LadderPart | undefined;
  /** Share of the sky's radiation that each face gains, and share of the radiation of what stands round the bed. */
  private readonly skyWeights: Float64Array;
  private archSurplusFraction = 0;
  /** Weight of each face's emission in the two fluxes at the top of the crop. */
  private readonly cropWeights: Float64Array;
  private cropSkyFraction = 0;

  /**
   * @param faces - All faces in the order of their rows: upper and lower in turn from the outermost cover; then canopy, soil, path.
   * @param bed - The bed: covers, canopy, soil.
   * @param path - The path beside inner covers: outermost cover, soil.
   */
  constructor(faces: readonly HeatNode[], bed: LadderPart, path: LadderPart | undefined) {
    this.faces = faces;
    this.bed = bed;
    this.path = path;
    this.firstRow = faces[0]?.row ?? 0;
    this.weights = new Float64Array(faces.length * faces.length);
    this.basesWPerM2 = new Float64Array(faces.length);
    this.slopesWPerM2K = new Float64Array(faces.length);
    this.outerGainsWPerM2 = new Float64Array(faces.length);
    this.skyWeights = new Float64Array(faces.length);
    this.cropWeights = new Float64Array(faces.length);
  }

  /**
   * Finds the weights anew after optics have changed.
   *
   * @param archSurplusFraction - Surface of an arch beyond its floor area, times its emissivity: it sees half sky, half the ground around.
   */
  refresh(archSurplusFraction: number): void {
    this.weights.fill(0);
    this.skyWeights.fill(0);
    this.refreshPart(this.bed);
    if (this.path !== undefined) this.refreshPart(this.path);
    this.archSurplusFraction = archSurplusFraction;
    this.weights[0] = (this.weights[0] as number) - archSurplusFraction;
  }

  /**
   * Straightens the emission of all faces and sets what they gain from outside.
   *
   * @param skyWPerM2 - Longwave radiation onto the bed. [W m⁻²]
   * @param aroundWPerM2 - Emission of the ground around. [W m⁻²]
   */
  straighten(skyWPerM2: number, aroundWPerM2: number): void {
    const { faces, skyWeights, outerGainsWPerM2, basesWPerM2, slopesWPerM2K } = this;
    for (let i = 0; i < faces.length; i++) {
      const face = faces[i] as HeatNode;
      straightenEmission(face);
      basesWPerM2[i] = face.emissionBaseWPerM2;
      slopesWPerM2K[i] = face.emissionSlopeWPerM2K;
      outerGainsWPerM2[i] = (skyWeights[i] as number) * skyWPerM2;
    }
    const sides = (this.archSurplusFraction * (skyWPerM2 + aroundWPerM2)) / 2;
    outerGainsWPerM2[0] = (outerGainsWPerM2[0] as number) + sides;
  }

  /**
   * Flux that comes down onto the crop plus flux that goes up from it, with the emissions as last straightened.
   *
   * @param skyWPerM2 - Longwave radiation onto the bed. [W m⁻²]
   * @returns Sum of the two fluxes at the top of the crop. [W m⁻²]
   */
  cropFluxWPerM2(skyWPerM2: number): number {
    let flux = this.cropSkyFraction * skyWPerM2;
    for (let i = 0; i < this.faces.length; i++) {
      flux += (this.cropWeights[i] as number) * this.emissionWPerM2(i);
    }
    return flux;
  }

  /**
   * What the whole bed gains from sky and surroundings, by following the radiation down and up again instead of adding up the faces.
   *
   * @param skyWPerM2 - Longwave radiation onto the bed. [W m⁻²]
   * @param aroundWPerM2 - Emission of the ground around. [W m⁻²]
   * @returns Net longwave, sides of an arch included. [W m⁻²]
   */
  netWPerM2(skyWPerM2: number, aroundWPerM2: number): number {
    const sides = this.archSurplusFraction * ((skyWPerM2 + aroundWPerM2) / 2 - this.emissionWPerM2(0));
    const parts = this.path === undefined ? [this.bed] : [this.bed, this.path];
    return parts.reduce((sum, part) => sum + this.netOfPartWPerM2(part, skyWPerM2), sides);
  }

  private netOfPartWPerM2({ rungs, places, floorFraction }: LadderPart, skyWPerM2: number): number {
    setLadderOptics(rungs);
    for (const [i, rung] of rungs.entries()) {
      const [upper, lower] = places[i] ?? [0, 0];
      rung.upperBlackWPerM2 = this.emissionWPerM2(upper);
      rung.lowerBlackWPerM2 = this.emissionWPerM2(lower);
    }
    solveLadder(rungs, skyWPerM2);
    return floorFraction * (skyWPerM2 - (rungs[0]?.risingWPerM2 ?? 0));
  }

  private emissionWPerM2(place: number): number {
    const face = this.faces[place] as HeatNode;
    return face.emissionBaseWPerM2 + face.emissionSlopeWPerM2K * face.nowC;
  }

  private refreshPart(part: LadderPart): void {
    const { rungs, places } = part;
    setLadderOptics(rungs);
    for (let i = 0; i < rungs.length; i++) {
      const rung = rungs[i] as Rung;
      const [upper, lower] = places[i] as readonly [number, number];
      rung.upperBlackWPerM2 = 1;
      if (upper === lower) rung.lowerBlackWPerM2 = 1;
      this.record(part, upper, 0);
      rung.upperBlackWPerM2 = 0;
      if (upper !== lower) {
        rung.lowerBlackWPerM2 = 1;
        this.record(part, lower, 0);
      }
      rung.lowerBlackWPerM2 = 0;
    }
    this.record(part, -1, 1);
  }

  /** Solves a ladder with one face lit, or with the sky lit, and takes the gains as weights. */
  private record(part: LadderPart, litPlace: number, skyWPerM2: number): void {
    const { rungs, places, floorFraction } = part;
    solveLadder(rungs, skyWPerM2);
    const gains = skyWPerM2 === 0 ? this.weights : this.skyWeights;
    const stride = skyWPerM2 === 0 ? this.faces.length : 1;
    const offset = skyWPerM2 === 0 ? litPlace : 0;
    for (let i = 0; i < rungs.length; i++) {
      const rung = rungs[i] as Rung;
      const [upper, lower] = places[i] as readonly [number, number];
      const upperEntry = upper * stride + offset;
      gains[upperEntry] = (gains[upperEntry] as number) + floorFraction * upperGainWPerM2(rung);
      const below = rungs[i + 1];
      if (below === undefined) break;
      const lowerEntry = lower * stride + offset;
      gains[lowerEntry] = (gains[lowerEntry] as number) + floorFraction * lowerGainWPerM2(rung, below);
    }
    if (part === this.bed) this.recordCrop(litPlace);
  }

  private recordCrop(litPlace: number): void {
    const { rungs } = this.bed;
    const canopy = rungs[rungs.length - 2] as Rung;
    const flux = canopy.arrivingWPerM2 + canopy.risingWPerM2;
    if (litPlace < 0) this.cropSkyFraction = flux;
    else this.cropWeights[litPlace] = flux;
  }
}
