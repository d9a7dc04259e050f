import type { Crop } from '../../../rules/index.ts';
import { PlainProblem } from '../../errors.ts';
import type { Bed, Stage } from '../../store/port/beds.ts';
import type { Store } from '../../store/store.ts';

/** Enough for a mixed bed, and a bound on one night's work (judgement). */
const MOST_CROPS = 20;

export interface Sown {
  readonly crops: readonly Crop[];
  readonly stage: Stage | undefined;
  readonly hardened: boolean | undefined;
  /** Local date at the bed. */
  readonly today: string;
}

/** @throws PlainProblem when a bed would hold too many crops. */
export function refuseCrowding(crops: number): void {
  if (crops > MOST_CROPS) throw new PlainProblem(`A bed holds at most ${MOST_CROPS} crops here; part it in two.`);
}

/** Puts crops into a bed; one that grows there already gets the stage and state that are told. */
export async function sow(store: Store, bed: Bed, { crops, stage, hardened, today }: Sown): Promise<void> {
  const present = new Map(bed.plantings.map((planting) => [planting.crop, planting]));
  const added = crops.filter((crop) => !present.has(crop.id));
  refuseCrowding(bed.plantings.length + added.length);
  for (const crop of crops) {
    const planting = present.get(crop.id);
    if (planting === undefined) {
      const facts = { crop: crop.id, stage: stage ?? 'growing', since: today, hardened };
      await store.plantings.add(bed.memberId, bed.id, facts);
    } else {
      await store.plantings.change(bed.memberId, planting.id, {
        ...(stage !== undefined && stage !== planting.stage && { stage, since: today }),
        ...(hardened !== undefined && { hardened }),
      });
    }
  }
}
