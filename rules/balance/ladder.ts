/** Soil sends and takes longwave almost like a black body (`longwave-surfaces`). */
export const SOIL_EMISSIVITY = 0.96;

/**
 * One rung of the longwave ladder: a cover, the canopy or, last, the soil. Its optics, the black-body emission of its faces, and the fluxes
 * that were found for it.
 */
export interface Rung {
  transmittedFraction: number;
  reflectedUpFraction: number;
  reflectedDownFraction: number;
  emittedUpFraction: number;
  emittedDownFraction: number;
  /** σT⁴ of the upper and the lower face. */
  upperBlackWPerM2: number;
  lowerBlackWPerM2: number;
  /** Flux down onto the rung, and up from it. */
  arrivingWPerM2: number;
  risingWPerM2: number;
  /** What rises is base + share · what arrives; the share follows from the optics alone. */
  risingBaseWPerM2: number;
  risingShareFraction: number;
  /** How often, all told, radiation is thrown to and fro between the lower face and what lies below. */
  bouncesRatio: number;
}

/**
 * A rung whose optics are not yet known.
 *
 * @returns The rung.
 */
export function blankRung(): Rung {
  return {
    transmittedFraction: Number.NaN,
    reflectedUpFraction: Number.NaN,
    reflectedDownFraction: Number.NaN,
    emittedUpFraction: Number.NaN,
    emittedDownFraction: Number.NaN,
    upperBlackWPerM2: Number.NaN,
    lowerBlackWPerM2: Number.NaN,
    arrivingWPerM2: Number.NaN,
    risingWPerM2: Number.NaN,
    risingBaseWPerM2: Number.NaN,
    risingShareFraction: Number.NaN,
    bouncesRatio: Number.NaN,
  };
}

/**
 * Sets the optics of a rung with two faces alike.
 *
 * @param rung - The rung.
 * @param transmittedFraction - What passes. [0…1]
 * @param reflectedFraction - What is thrown back. [0…1]
 */
export function setRung(rung: Rung, transmittedFraction: number, reflectedFraction: number): void {
  rung.transmittedFraction = transmittedFraction;
  rung.reflectedUpFraction = reflectedFraction;
  rung.reflectedDownFraction = reflectedFraction;
  rung.emittedUpFraction = 1 - transmittedFraction - reflectedFraction;
  rung.emittedDownFraction = rung.emittedUpFraction;
}

/**
 * The soil as the last rung: opaque, and only its upper face matters.
 *
 * @returns The rung.
 */
export function soilRung(): Rung {
  const rung = blankRung();
  setRung(rung, 0, 1 - SOIL_EMISSIVITY);
  return rung;
}

/**
 * Works out how much of what falls onto each rung comes back up, all reflections below included. To be called when optics have changed.
 *
 * @param rungs - Rungs from the top, soil last; their optical shares are set and their faces dark.
 */
export function setLadderOptics(rungs: readonly Rung[]): void {
  let shareBelow = 0;
  for (let i = rungs.length - 1; i >= 0; i--) {
    const rung = rungs[i] as Rung;
    rung.bouncesRatio = 1 / (1 - rung.reflectedDownFraction * shareBelow);
    shareBelow =
      rung.transmittedFraction * rung.transmittedFraction * rung.bouncesRatio * shareBelow + rung.reflectedUpFraction;
    rung.risingShareFraction = shareBelow;
    rung.upperBlackWPerM2 = 0;
    rung.lowerBlackWPerM2 = 0;
  }
}

/**
 * Fluxes between grey layers from sky to soil. What rises from each rung is found as a linear function of what comes down onto it, from the
 * soil upward; then the sky's radiation is followed down.
 *
 * @param rungs - Rungs from the top, soil last, after `setLadderOptics`; their fluxes are set.
 * @param skyWPerM2 - Longwave radiation onto the top rung. [W m⁻²]
 *
 * @see Two-flux method for plane grey layers (`two-flux`)
 */
export function solveLadder(rungs: readonly Rung[], skyWPerM2: number): void {
  let baseBelow = 0;
  let shareBelow = 0;
  for (let i = rungs.length - 1; i >= 0; i--) {
    const rung = rungs[i] as Rung;
    const sentDown = rung.emittedDownFraction * rung.lowerBlackWPerM2;
    const down = rung.bouncesRatio * (rung.reflectedDownFraction * baseBelow + sentDown);
    baseBelow =
      rung.transmittedFraction * (baseBelow + shareBelow * down) + rung.emittedUpFraction * rung.upperBlackWPerM2;
    shareBelow = rung.risingShareFraction;
    rung.risingBaseWPerM2 = baseBelow;
  }
  let arriving = skyWPerM2;
  for (let i = 0; i < rungs.length; i++) {
    const rung = rungs[i] as Rung;
    rung.arrivingWPerM2 = arriving;
    rung.risingWPerM2 = rung.risingBaseWPerM2 + rung.risingShareFraction * arriving;
    const baseNext = rungs[i + 1]?.risingBaseWPerM2 ?? 0;
    const sentDown = rung.emittedDownFraction * rung.lowerBlackWPerM2;
    arriving =
      rung.bouncesRatio * (rung.transmittedFraction * arriving + rung.reflectedDownFraction * baseNext + sentDown);
  }
}

/**
 * What the upper face of a rung gains. [W m⁻²]
 *
 * @param rung - A rung of a solved ladder.
 * @returns Absorbed less emitted longwave. [W m⁻²]
 */
export function upperGainWPerM2(rung: Rung): number {
  return rung.emittedUpFraction * (rung.arrivingWPerM2 - rung.upperBlackWPerM2);
}

/**
 * What the lower face of a rung gains.
 *
 * @param rung - A rung of a solved ladder.
 * @param below - The rung below it.
 * @returns Absorbed less emitted longwave. [W m⁻²]
 */
export function lowerGainWPerM2(rung: Rung, below: Rung): number {
  return rung.emittedDownFraction * (below.risingWPerM2 - rung.lowerBlackWPerM2);
}
