import { VERDICTS } from '../../rules/index.ts';
import type { BedOutlook } from '../outlook/night-outlook.ts';
import type { Prediction } from '../store/port/readings.ts';

/** So much colder at the leaf is news wherever leaves freeze. */
const MATERIAL_FALL_K = 2;
/** The model is no finer: less is no reason to call a bed that held uncertain. */
const LEAST_FALL_K = 0.5;
const FREEZING_C = 0;

/** Has a bed's night become so much worse than what its grower was told that they must hear of it? */
export function hasWorsened(told: Prediction | undefined, { verdict }: BedOutlook): boolean {
  const rank = rankOf(verdict.worst.verdict);
  if (told === undefined) return rank > rankOf('holds');
  const fallK = told.leafLowC - verdict.night.leafLowC;
  if (fallK >= MATERIAL_FALL_K && verdict.night.leafLowC < FREEZING_C) return true;
  if (rank <= rankOf(told.verdict)) return false;
  return rank > rankOf('on the edge') || fallK >= LEAST_FALL_K;
}

/** A word that this version does not know counts as the mildest. */
function rankOf(verdict: string): number {
  const words: readonly string[] = VERDICTS;
  return words.indexOf(verdict);
}
