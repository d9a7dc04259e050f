import type { Crop } from '../crops/crop.ts';
import { pickingSizeAt } from './sowing.ts';

/** Plants are set out some three weeks after sowing (common practice). */
const TRANSPLANT_AGE_DAYS = 21;
/** Of a planting that is just said to be growing: taken as half way (judgement). */
const HALF_GROWN_FRACTION = 0.5;

/** How far a planting is, and since when. */
export interface PlantedFacts {
  readonly stage: 'just-set-out' | 'growing' | 'grown';
  /** About noon of the day of that stage. */
  readonly since: Date;
  /** About noon of the day of sowing, where it is known: then it counts, not the stage. */
  readonly sown?: Date;
  /** About noon of the day it was set out; counts where the day of sowing is not known. */
  readonly setOut?: Date;
}

/**
 * When a planting reaches picking size.
 *
 * @param crop - A crop of the table.
 * @param planted - How far it is.
 * @param latitudeDeg - North positive. [°, −90…90]
 * @returns About noon of that day; `since` itself for what is grown; `undefined` for what stands for years.
 *
 * @remarks Without a day of sowing or setting out: what was just set out is three weeks old, what is growing is half way: off by weeks where that is not so.
 * @see pickingSizeAt
 */
export function grownAt(
  crop: Crop,
  { stage, since, sown, setOut }: PlantedFacts,
  latitudeDeg: number,
): Date | undefined {
  if (stage === 'grown') return since;
  const { maturityDays } = crop;
  if (maturityDays === undefined) return undefined;
  if (sown !== undefined) return pickingSizeAt(maturityDays, sown, latitudeDeg);
  const leftDays =
    setOut !== undefined || stage === 'just-set-out'
      ? maturityDays - TRANSPLANT_AGE_DAYS
      : HALF_GROWN_FRACTION * maturityDays;
  return pickingSizeAt(Math.max(1, leftDays), setOut ?? since, latitudeDeg);
}
