import type { Crop } from '../crops/crop.ts';
import { toleranceAt } from '../hardening/tolerance-at.ts';
import { afterOutcome, bookHardiness, type HardinessBelief, type OutcomeKind } from './crop-learning.ts';

/** How a crop came through one cold night. */
export interface SeenOutcome {
  readonly seen: OutcomeKind;
  /** Leaf low as estimated for that night. [°C] */
  readonly organLowC: number;
  /** 0 grown warm … 1 fully hardened, that night. */
  readonly hardeningIndex: number;
  /** Whose garden: a club's other gardens count, but less. */
  readonly garden: 'own' | 'club';
}

/** Of a leaf low looked back upon (`model-spread`, with the forecast's part, middle of the cover groups). [K] */
const LOW_SD_K = 1.8;
/** Gardens differ in cultivar, soil and watering (`judgement`). [K] */
const BETWEEN_GARDENS_SD_K = 1;

/**
 * How much hardier than the table a crop has proved in a garden.
 *
 * @param crop - A crop of the table.
 * @param hardeningIndex - Tonight's, for the spread of the table. [0…1]
 * @param outcomes - In any order.
 * @returns `undefined` without outcomes: the table stands.
 * @throws RangeError when an index is outside 0…1 or a low is not finite.
 */
export function hardinessLearned(
  crop: Crop,
  hardeningIndex: number,
  outcomes: readonly SeenOutcome[],
): HardinessBelief | undefined {
  if (outcomes.length === 0) return undefined;
  let belief = bookHardiness(toleranceAt(crop, hardeningIndex).sdK);
  for (const outcome of outcomes) {
    const { firstMarkC, lt50C } = toleranceAt(crop, outcome.hardeningIndex);
    const sdK = outcome.garden === 'own' ? LOW_SD_K : Math.hypot(LOW_SD_K, BETWEEN_GARDENS_SD_K);
    belief = afterOutcome(belief, { organLowC: outcome.organLowC, sdK, firstMarkC, lt50C }, outcome.seen);
  }
  return belief;
}
