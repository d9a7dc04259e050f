import type { Crop } from '../crops/crop.ts';
import type { Step } from '../outlook/step.ts';
import type { NightVerdict } from '../verdict/night-verdict.ts';
import { type HarvestKind, harvestKind } from './harvest-table.ts';

/** What to do before a freeze with a crop that is ready. */
export type HarvestChoice = 'leave' | 'cover' | 'pick';

/** Kinds of which nothing is gained by waiting: the first frost ends them, whatever lies over them (common practice). */
const TENDER: ReadonlySet<HarvestKind> = new Set<HarvestKind>(['tender-fruit', 'hard-squash', 'tender-leaf']);
/** Less than this chance of a mark is no reason to strip a tender plant (judgement). */
const SLIGHT_FRACTION = 0.05;

/**
 * Whether to pick a crop before a night, to cover it, or to let it stand.
 *
 * @param crop - The crop.
 * @param verdict - What the night does to it as it lies.
 * @param step - The least cover that helps.
 * @returns `pick`: what is ready comes in, whatever is laid over the plants. Fruit of tender crops always comes in before its
 * freezing point; a cover then only saves the plant.
 */
export function harvestChoice(crop: Crop, verdict: NightVerdict, step: Step): HarvestChoice {
  const isTender = TENDER.has(harvestKind(crop));
  if (isTender) return 1 - verdict.odds.noMark < SLIGHT_FRACTION ? 'leave' : 'pick';
  if (verdict.verdict === 'holds') return 'leave';
  return step.kind === 'add' && step.holds ? 'cover' : 'pick';
}
