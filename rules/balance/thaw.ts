import { FREEZING_HEAT_J_PER_KG, SHELTERED_LEAF_W_PER_M2K } from '../constants.ts';
import type { NightRun } from './night-run.ts';

/** Sap stays liquid down to here. */
const SAP_FREEZES_C = -1;
const MOST_FROZEN_FRACTION = 0.85;
/** Water in a leaf (judgement). */
const LEAF_WATER_KG_PER_M2 = 0.25;
/** Leaf in moving outside air, per side (judgement). */
const OPEN_LEAF_W_PER_M2K = 10;
/** Longwave exchange of both sides of a leaf near freezing: 2·4σT³. */
const LONGWAVE_W_PER_M2K = 9.24;

/**
 * Share of a leaf's water that is ice at its lowest temperature.
 *
 * @param leafLowC - Night minimum of the leaf. [°C]
 * @returns Ideal freezing curve from −1 °C on, at most 0.85.
 *
 * @remarks Hardened leaves and supercooled ones freeze later; textbook curve (`judgement`).
 */
export function frozenFraction(leafLowC: number): number {
  return leafLowC < SAP_FREEZES_C ? Math.min(MOST_FROZEN_FRACTION, 1 - SAP_FREEZES_C / leafLowC) : 0;
}

/**
 * When leaves that froze have thawed all through.
 *
 * @param run - The night and the morning after it.
 * @param lowIndex - Where in the run the leaf is coldest.
 * @returns The instant, to the second; `undefined` when nothing froze, or when the run ends first.
 *
 * @remarks The ice takes up what a leaf above 0 °C would lose to its surroundings; measured leaves under covers thaw within an hour or two of sun.
 */
export function thawedAt(run: NightRun, lowIndex: number): Date | undefined {
  const frozen = frozenFraction(run.leafC[lowIndex] ?? 0);
  if (frozen === 0) return undefined;
  let iceJPerM2 = frozen * LEAF_WATER_KG_PER_M2 * FREEZING_HEAT_J_PER_KG;
  for (let index = lowIndex + 1; index < run.timesMs.length; index += 1) {
    const fromMs = run.timesMs[index - 1] ?? 0;
    const toMs = run.timesMs[index] ?? 0;
    const meanLeafC = ((run.leafC[index - 1] ?? 0) + (run.leafC[index] ?? 0)) / 2;
    const perSide = run.coverCount[index] === 0 ? OPEN_LEAF_W_PER_M2K : SHELTERED_LEAF_W_PER_M2K;
    const meltWPerM2 = (2 * perSide + LONGWAVE_W_PER_M2K) * Math.max(0, meanLeafC);
    const meltJPerM2 = (meltWPerM2 * (toMs - fromMs)) / 1000;
    if (meltJPerM2 >= iceJPerM2) return new Date(Math.round(fromMs + (1000 * iceJPerM2) / meltWPerM2));
    iceJPerM2 -= meltJPerM2;
  }
  return undefined;
}
