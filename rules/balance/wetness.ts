import { dewPointC } from '../air/humidity.ts';
import type { Bed, Ground } from './bed.ts';
import type { Surroundings } from './surroundings.ts';

/** A film wets and dries with this memory (`judgement`). */
const MEMORY_S = 1800;
/** Dew point this far above the face wets it fully (`judgement`). */
const FULLY_WET_K = 1;
/** A wetness this near to its target has reached it. */
const REACHED_FRACTION = 0.0005;

/**
 * Moves the wetness of every cover towards what the vapour of its two sides asks for. The vapour pressure that counts is the one that the
 * space would have if nothing condensed; so moist soil keeps a film wet once it is wet, as is observed.
 *
 * @param bed - The bed at the end of a step; `wetFraction` of its covers moves.
 * @param around - The surroundings.
 */
export function moveWetness(bed: Bed, around: Surroundings): void {
  findPotentialVapour(bed, around);
  let outsideHPa = around.vapourHPa;
  for (const cover of bed.covers) {
    const insideHPa = cover.below.potentialHPa;
    const excessK = Math.max(dewExcessK(insideHPa, cover.lower.nowC), dewExcessK(outsideHPa, cover.upper.nowC));
    const target = Math.min(1, Math.max(0, excessK / FULLY_WET_K));
    const gap = target - cover.wetFraction;
    cover.wetFraction = Math.abs(gap) < REACHED_FRACTION ? target : cover.wetFraction + gap * bed.wettingFraction;
    outsideHPa = insideHPa;
  }
}

/**
 * Share of the way to its target that wetness goes in a step.
 *
 * @param stepS - Length of the step. [s]
 * @returns Share. [0…1]
 */
export function wettingFraction(stepS: number): number {
  return 1 - Math.exp(-stepS / MEMORY_S);
}

function dewExcessK(vapourHPa: number, faceC: number): number {
  return vapourHPa > 0 ? dewPointC(vapourHPa) - faceC : 0;
}

/** Vapour pressure with soil and leaks alone, from the innermost space outward and back. */
function findPotentialVapour(bed: Bed, around: Surroundings): void {
  const { covers, ground, path } = bed;
  // An inner space that has been eliminated is a source of vapour for the space outside it.
  let innerLoss = 0;
  let innerGain = 0;
  for (let i = covers.length - 1; i >= 0; i--) {
    const space = covers[i]?.below;
    if (space === undefined) break;
    const leak = space.vapourLeak.perUnit;
    let loss = leak + innerLoss;
    let gain = innerGain;
    if (i === covers.length - 1) {
      loss += ground.evaporation.perHPa;
      gain += soilVapour(ground);
    }
    if (i === 0 && path !== undefined) {
      loss += path.evaporation.perHPa;
      gain += soilVapour(path);
    }
    space.potentialBaseHPa = gain / loss;
    space.potentialShareFraction = leak / loss;
    innerLoss = leak * (1 - space.potentialShareFraction);
    innerGain = leak * space.potentialBaseHPa;
  }
  let outsideHPa = around.vapourHPa;
  for (const { below } of covers) {
    below.potentialHPa = below.potentialBaseHPa + below.potentialShareFraction * outsideHPa;
    outsideHPa = below.potentialHPa;
  }
}

function soilVapour(ground: Ground): number {
  const { surface, evaporation } = ground;
  return evaporation.perHPa * (surface.saturationBaseHPa + surface.saturationSlopeHPaPerK * surface.nowC);
}
