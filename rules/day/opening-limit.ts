import { keptHardnessFraction } from '../hardening/hardening-index.ts';
import type { Planting } from '../outlook/bed-verdict.ts';
import { OPENING_LIMIT_C } from './opening-advice.ts';

/** 60 °F, where covers are opened over hardened greens: growers open at 50 to 60 °F (`hardened-venting`). [°C] */
const HARDENED_LIMIT_C = 15.6;
/** Plants with less hardness than this have little to lose (judgement). */
const WORTH_KEEPING = 0.3;
/** A day that leaves them this share of it is put up with (judgement). */
const KEPT_FRACTION = 0.9;

/** The temperature among the leaves at which to open a bed, and what asks for it. */
export interface OpeningLimit {
  readonly limitC: number;
  readonly because: 'usual' | 'crop' | 'hardening';
}

/**
 * When to open for what grows in a bed: 24 °C, or less where a crop of it asks for less.
 *
 * @param plantings - What grows there.
 * @see common-practice; the crops' own limits name their sources
 */
export function openingLimit(plantings: readonly Planting[]): OpeningLimit {
  const asked = plantings.flatMap(({ crop }) => crop.ventAboveC?.tempC ?? []);
  const leastC = Math.min(OPENING_LIMIT_C, ...asked);
  return { limitC: leastC, because: leastC < OPENING_LIMIT_C ? 'crop' : 'usual' };
}

/**
 * The limit that keeps hardened plants hard: lower where the day, opened at the usual limit, would be so warm that they soften.
 *
 * @param limit - The usual one of the bed.
 * @param plantings - What grows there.
 * @param dayMeanC - Mean air of day and night under the covers when they are opened at `limit`. [°C]
 * @returns 15.6 °C (60 °F) for hardened plants on such a day, otherwise `limit`.
 *
 * @remarks A short sunny spell between frost nights softens nobody: the mean of the whole day counts (see `hardeningIndex`).
 * @see hardened-venting
 */
export function hardeningLimit(limit: OpeningLimit, plantings: readonly Planting[], dayMeanC: number): OpeningLimit {
  const hard = plantings.some(({ crop, hardeningIndex }) => crop.hardens && hardeningIndex >= WORTH_KEEPING);
  if (!hard || keptHardnessFraction(dayMeanC) >= KEPT_FRACTION || limit.limitC <= HARDENED_LIMIT_C) return limit;
  return { limitC: HARDENED_LIMIT_C, because: 'hardening' };
}
