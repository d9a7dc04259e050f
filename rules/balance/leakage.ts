import { KELVIN_AT_ZERO_C } from '../constants.ts';
import type { Bed, Cover } from './bed.ts';
import type { Vent } from './night-input.ts';
import type { Surroundings } from './surroundings.ts';

type Opening = Pick<Vent, 'areaRatio' | 'heightM'>;

/** General physics. */
const GRAVITY_M_PER_S2 = 9.81;
/** Discharge and wind effect of an opening (`vanthoor-2011`). */
const DISCHARGE_FRACTION = 0.75;
const WIND_EFFECT_FRACTION = 0.09;
const M_PER_MM = 0.001;
/** Even a sealed cover breathes this much, far below what can be measured: vapour needs a way out (`judgement`). */
const SEALED_W_PER_M2K = 1e-6;

/**
 * Sets the air that leaks through covers and streams through a vent, about the latest estimates.
 *
 * @param bed - The bed.
 * @param around - The surroundings.
 * @param vent - Opening of the outermost cover, if it is open.
 */
export function setLeakage(bed: Bed, around: Surroundings, vent: Opening | undefined): void {
  const { outermost } = bed;
  if (outermost === undefined) return;
  let outsideC = around.coverAirC;
  for (const cover of bed.covers) {
    const insideC = cover.below.air.nowC;
    let flowMPerS = leakMPerS(cover, cover === outermost ? around.coverWindMPerS : 0, insideC - outsideC);
    if (cover === outermost && vent !== undefined) {
      flowMPerS += ventFlowMPerS(vent, insideC, outsideC, around.coverWindMPerS);
    }
    const leakWPerM2K = cover.floorFraction * Math.max(SEALED_W_PER_M2K, bed.airHeatJPerM3K * flowMPerS);
    cover.below.leak.perUnit = leakWPerM2K;
    cover.below.vapourLeak.perUnit = leakWPerM2K * bed.latentKPerHPa;
    outsideC = insideC;
  }
  outermost.below.leak.outsideValue = around.coverAirC;
  outermost.below.vapourLeak.outsideValue = around.vapourHPa;
}

function leakMPerS({ layer, leakShareFraction }: Cover, windMPerS: number, warmthK: number): number {
  const windMmPerS = (layer.leak1MmPerM + layer.leak2MmSPerM2 * windMPerS) * windMPerS;
  const leakMmPerS = layer.leak0MmPerS + windMmPerS + layer.leakMmPerSK * Math.abs(warmthK);
  return leakShareFraction * leakMmPerS * M_PER_MM;
}

/**
 * Air that streams through an opening, driven by warmth and wind.
 *
 * @param vent - The opening.
 * @param insideC - Air inside. [°C]
 * @param outsideC - Air outside. [°C]
 * @param windMPerS - Wind at the cover. [m s⁻¹]
 * @returns Flow per area of floor. [m s⁻¹]
 * @see Boulard & Baille 1995 (`boulard-baille-1995`)
 */
export function ventFlowMPerS(vent: Opening, insideC: number, outsideC: number, windMPerS: number): number {
  const meanK = (insideC + outsideC) / 2 + KELVIN_AT_ZERO_C;
  const rise = (2 * GRAVITY_M_PER_S2 * (vent.heightM / 4) * Math.abs(insideC - outsideC)) / meanK;
  return (vent.areaRatio / 2) * DISCHARGE_FRACTION * Math.sqrt(rise + WIND_EFFECT_FRACTION * windMPerS * windMPerS);
}
