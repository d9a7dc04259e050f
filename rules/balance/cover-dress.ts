import type { Cover } from './bed.ts';
import { setRung } from './ladder.ts';
import type { CoverStack, NightBlanket, SnowOnCover } from './night-input.ts';

/** No cover conducts better than this resistance allows; it keeps the two faces apart (`judgement`). */
const LEAST_RESISTANCE_M2K_PER_W = 0.002;
/** Fabrics 0.9, snow 0.98 (`longwave-surfaces`). */
const BLANKET_EMISSIVITY = 0.9;
const SNOW_EMISSIVITY = 0.98;
/** A blanket halves what leaks, snow leaves three tenths of it (`judgement`). */
const BLANKET_LEAK_SHARE = 0.5;
const SNOW_LEAK_SHARE = 0.3;
/** A dusting of less than this changes nothing (`judgement`). */
const LEAST_SNOW_M = 0.02;
/** Density of settled snow, heat capacity of ice, and depth in which the light falls to 1/e (`snow-memory`). */
const SNOW_KG_PER_M3 = 200;
const ICE_HEAT_J_PER_KGK = 2090;
const SNOW_LIGHT_DEPTH_M = 0.05;

/**
 * Sets what a cover is made of for now: resistance, heat capacity and leakage, with blanket and snow if it is the outermost.
 *
 * @param cover - The cover.
 * @param blanket - Blanket that lies on it now.
 * @param snow - Snow that lies on it.
 */
export function dressCover(cover: Cover, blanket: NightBlanket | undefined, snow: SnowOnCover | undefined): void {
  const { layer } = cover;
  let resistance = Math.max(LEAST_RESISTANCE_M2K_PER_W, layer.resistanceM2KPerW);
  let capacity = layer.heatCapacityJPerM2K;
  let leakShare = 1;
  if (blanket !== undefined) {
    resistance += blanket.resistanceM2KPerW;
    capacity += blanket.heatCapacityJPerM2K;
    leakShare *= BLANKET_LEAK_SHARE;
  }
  if (snow !== undefined) {
    resistance += snow.depthM / snow.conductivityWPerMK;
    capacity += snow.depthM * SNOW_KG_PER_M3 * ICE_HEAT_J_PER_KGK;
    leakShare *= SNOW_LEAK_SHARE;
  }
  cover.faceCapacityJPerM2K = (cover.floorFraction * capacity) / 2;
  cover.through.perUnit = (cover.floorFraction * layer.areaRatio) / resistance;
  cover.leakShareFraction = leakShare;
}

/**
 * Sets the longwave optics of a cover from its wetness and dress. Under a blanket or snow it lets nothing through; its upper face is then
 * that of the dress, the blanket's if both lie there.
 *
 * @param cover - The cover.
 * @param isBlanketed - Whether a blanket lies on it now.
 * @param isSnowed - Whether snow lies on it.
 */
export function setOptics(cover: Cover, isBlanketed: boolean, isSnowed: boolean): void {
  const { layer, rung, wetFraction } = cover;
  const dry = 1 - wetFraction;
  const transmitted = dry * layer.longwaveTransmittedDryFraction + wetFraction * layer.longwaveTransmittedWetFraction;
  const reflected = dry * layer.longwaveReflectedDryFraction + wetFraction * layer.longwaveReflectedWetFraction;
  cover.opticsWetFraction = wetFraction;
  if (!isBlanketed && !isSnowed) {
    setRung(rung, transmitted, reflected);
    return;
  }
  setRung(rung, 0, reflected);
  rung.emittedUpFraction = isBlanketed ? BLANKET_EMISSIVITY : SNOW_EMISSIVITY;
  rung.reflectedUpFraction = 1 - rung.emittedUpFraction;
}

/**
 * The snow on a stack, if it is deep enough to count.
 *
 * @param stack - The stack.
 * @returns Snow of at least 2 cm.
 */
export function countingSnow(stack: CoverStack): SnowOnCover | undefined {
  return stack.snow !== undefined && stack.snow.depthM >= LEAST_SNOW_M ? stack.snow : undefined;
}

/**
 * Share of the sun that gets through snow.
 *
 * @param snow - Snow on the cover.
 * @returns Share that passes. [0…1]
 */
export function snowLightFraction(snow: SnowOnCover | undefined): number {
  return snow === undefined ? 1 : Math.exp(-snow.depthM / SNOW_LIGHT_DEPTH_M);
}
