import type { Bed } from './bed.ts';
import { KELVIN_AT_ZERO_C } from './constants.ts';
import type { Vent } from './night-input.ts';
import type { Surroundings } from './surroundings.ts';

const GRAVITY_M_PER_S2 = 9.81;
const DISCHARGE = 0.75;
const WIND_EFFECT = 0.09;
const M_PER_MM = 0.001;
/** Even a sealed cover breathes this much, far below what can be measured: vapour needs a way out. */
const SEALED_W_PER_M2K = 1e-6;

/**
 * Adds the air that leaks through covers and streams through a vent to the balance.
 *
 * @param bed - The bed; the leakage of each space is kept in it.
 * @param around - The surroundings.
 * @param vent - Opening of the outermost cover, if it is open.
 */
export function addLeakage(bed: Bed, around: Surroundings, vent: Vent | undefined): void {
  const { network, airHeatJPerM3K } = bed;
  let outsideC = around.coverAirC;
  let outsideRow: number | undefined;
  for (const cover of bed.covers) {
    const { layer, below } = cover;
    const insideC = below.air.nowC;
    let leakMmPerS = layer.leak0MmPerS + layer.leakMmPerSK * Math.abs(insideC - outsideC);
    if (outsideRow === undefined) {
      const windMPerS = around.coverWindMPerS;
      leakMmPerS += (layer.leak1MmPerM + layer.leak2MmSPerM2 * windMPerS) * windMPerS;
    }
    let flowMPerS = leakMmPerS * M_PER_MM * cover.leakShareFraction;
    if (outsideRow === undefined && vent !== undefined) {
      flowMPerS += ventFlowMPerS(vent, insideC, outsideC, around.coverWindMPerS);
    }
    below.leakWPerM2K = cover.floorFraction * Math.max(SEALED_W_PER_M2K, airHeatJPerM3K * flowMPerS);
    if (outsideRow === undefined) network.exchangeWithFixed(below.air.row, below.leakWPerM2K, outsideC);
    else network.exchange(below.air.row, outsideRow, below.leakWPerM2K);
    outsideC = insideC;
    outsideRow = below.air.row;
  }
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
export function ventFlowMPerS(vent: Vent, insideC: number, outsideC: number, windMPerS: number): number {
  const meanK = (insideC + outsideC) / 2 + KELVIN_AT_ZERO_C;
  const rise = (2 * GRAVITY_M_PER_S2 * (vent.heightM / 4) * Math.abs(insideC - outsideC)) / meanK;
  return (vent.areaRatio / 2) * DISCHARGE * Math.sqrt(rise + WIND_EFFECT * windMPerS * windMPerS);
}
