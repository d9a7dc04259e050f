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
}

/**
 * When a planting reaches picking size.
 *
 * @param crop - A crop of the table.
 * @param planted - How far it is.
 * @param latitudeDeg - North positive. [°, −90…90]
 * @returns About noon of that day; `since` itself for what is grown; `undefined` for what stands for years.
 *
 * @remarks What was just set out is three weeks old, what is growing is half way: off by weeks where that is not so.
 * @see pickingSizeAt
 */
export function grownAt(crop: Crop, { stage, since }: PlantedFacts, latitudeDeg: number): Date | undefined {
  if (stage === 'grown') return since;
  const { maturityDays } = crop;
  if (maturityDays === undefined) return undefined;
  const left = stage === 'just-set-out' ? maturityDays - TRANSPLANT_AGE_DAYS : HALF_GROWN_FRACTION * maturityDays;
  return pickingSizeAt(Math.max(1, left), since, latitudeDeg);
}
