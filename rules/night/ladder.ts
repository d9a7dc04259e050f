/** Soil sends and takes longwave almost like a black body (`longwave-surfaces`). */
export const SOIL_EMISSIVITY = 0.96;

/**
 * One rung of the longwave ladder, a cover or the canopy: its optics, the black-body emission of its faces, and the fluxes found for it.
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
  /** Flux that comes down onto the rung. */
  arrivingWPerM2: number;
  /** Flux that goes up from the rung: `risingBase + risingShare · arriving`. */
  risingWPerM2: number;
  risingBaseWPerM2: number;
  risingShareFraction: number;
}

/** The ground under a ladder. */
export interface LadderFloor {
  blackWPerM2: number;
  arrivingWPerM2: number;
  risingWPerM2: number;
}

/**
 * A rung that neither sends nor stops anything.
 *
 * @returns A rung with every flux at nought.
 */
export function clearRung(): Rung {
  return {
    transmittedFraction: 1,
    reflectedUpFraction: 0,
    reflectedDownFraction: 0,
    emittedUpFraction: 0,
    emittedDownFraction: 0,
    upperBlackWPerM2: 0,
    lowerBlackWPerM2: 0,
    arrivingWPerM2: 0,
    risingWPerM2: 0,
    risingBaseWPerM2: 0,
    risingShareFraction: 0,
  };
}

/**
 * Fluxes of a stack of grey layers between sky and soil, all reflections included. Each rung is solved for what rises from it as a linear
 * function of what comes down onto it, from the soil upward; then the sky's radiation is followed down.
 *
 * @param rungs - Covers and canopy from the top; their `arriving` and `rising` fluxes are set.
 * @param floor - The soil; its fluxes are set.
 * @param skyWPerM2 - Longwave radiation onto the top rung. [W m⁻²]
 *
 * @see Two-flux method for plane grey layers (`two-flux`)
 */
export function solveLadder(rungs: readonly Rung[], floor: LadderFloor, skyWPerM2: number): void {
  let base = SOIL_EMISSIVITY * floor.blackWPerM2;
  let share = 1 - SOIL_EMISSIVITY;
  for (let i = rungs.length - 1; i >= 0; i--) {
    const rung = rungs[i];
    if (rung === undefined) break;
    const bounces = 1 / (1 - rung.reflectedDownFraction * share);
    const downBase = bounces * (rung.reflectedDownFraction * base + rung.emittedDownFraction * rung.lowerBlackWPerM2);
    const downShare = bounces * rung.transmittedFraction;
    base = rung.transmittedFraction * (base + share * downBase) + rung.emittedUpFraction * rung.upperBlackWPerM2;
    share = rung.transmittedFraction * share * downShare + rung.reflectedUpFraction;
    rung.risingBaseWPerM2 = base;
    rung.risingShareFraction = share;
  }
  let down = skyWPerM2;
  for (let i = 0; i < rungs.length; i++) {
    const rung = rungs[i];
    if (rung === undefined) break;
    rung.arrivingWPerM2 = down;
    rung.risingWPerM2 = rung.risingBaseWPerM2 + rung.risingShareFraction * down;
    const next = rungs[i + 1];
    const nextBase = next === undefined ? SOIL_EMISSIVITY * floor.blackWPerM2 : next.risingBaseWPerM2;
    const nextShare = next === undefined ? 1 - SOIL_EMISSIVITY : next.risingShareFraction;
    const fromAbove = rung.transmittedFraction * down + rung.emittedDownFraction * rung.lowerBlackWPerM2;
    down = (fromAbove + rung.reflectedDownFraction * nextBase) / (1 - rung.reflectedDownFraction * nextShare);
  }
  floor.arrivingWPerM2 = down;
  floor.risingWPerM2 = SOIL_EMISSIVITY * floor.blackWPerM2 + (1 - SOIL_EMISSIVITY) * down;
}
