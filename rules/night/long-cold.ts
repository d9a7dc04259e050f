import { frozenFraction } from '../balance/thaw.ts';

/** A day of 24 hours outside that ends where a night begins: the night before and the daylight after it. */
export interface DayBehind {
  /** [°C] */
  readonly lowC: number;
  readonly meanC: number;
  /** Of the daylight after the night. [°C] */
  readonly highC: number;
}

/** How a bed differs from the air outside. */
export interface BedInCold {
  /** Leaf low of the night that is judged. [°C] */
  readonly leafLowC: number;
  /** How much warmer than outside the leaf is at its coldest; negative in the open on clear nights. [K] */
  readonly leafAboveOutsideK: number;
  /** Glazing over it lets the day's sun in. */
  readonly isGlazed: boolean;
}

const FREEZING_C = 0;
/** Under glazing even a dull winter day is so much warmer than outside (judgement). [K] */
export const GLAZED_DAY_K = 4;

/**
 * Nights in which leaves have stayed frozen since they last thawed.
 *
 * @param days - The days behind, in order, the last one last; as many as are known.
 * @param bed - Its night and what covers it.
 * @returns 0 where they do not freeze in the judged night, 1 for the first frozen night after a thaw, and so on; at most one
 * more than there are days.
 *
 * @remarks Leaves count as thawed once the warmest hour of a day is above 0 °C. Sun on a bare frozen leaf below that is left out.
 * @see circumstance-steps for what a third night does; the count itself is judgement
 */
export function frozenNightsInARow(days: readonly DayBehind[], bed: BedInCold): number {
  if (frozenFraction(bed.leafLowC) === 0) return 0;
  const dayK = Math.max(0, bed.leafAboveOutsideK) + (bed.isGlazed ? GLAZED_DAY_K : 0);
  const stayedFrozen = ({ lowC, highC }: DayBehind) =>
    highC + dayK <= FREEZING_C && frozenFraction(lowC + bed.leafAboveOutsideK) > 0;
  const thawed = days.findLastIndex((day) => !stayedFrozen(day));
  return days.length - thawed;
}

/**
 * Moist soil under frost: √(2·k·86400 / latent heat) with k = 1.5 W m⁻¹ K⁻¹ and a quarter of water by volume gives 5.6 cm per
 * root of a kelvin-day; heat from below and the ground's own cover leave about half of it (judgement).
 */
const FROST_M_PER_ROOT_K_DAY = 0.028;

/**
 * How deep the ground is likely to have frozen in a run of freezing days.
 *
 * @param days - The days behind, in order, the last one last.
 * @param warmerK - How much warmer than outside the covers keep the bed. [K, ≥ 0]
 * @returns Depth; 0 after a mean day above freezing. Bare moist soil without snow; off by half. [m]
 * @throws RangeError when `warmerK` is negative or not a number.
 * @see Stefan's formula (`judgement` for its factor)
 */
export function frostDepthM(days: readonly DayBehind[], warmerK: number): number {
  if (!(warmerK >= 0)) throw new RangeError(`warmerK ${warmerK} is below 0`);
  let kelvinDays = 0;
  for (const { meanC } of days) kelvinDays = Math.max(0, kelvinDays - (meanC + warmerK));
  return FROST_M_PER_ROOT_K_DAY * Math.sqrt(kelvinDays);
}
