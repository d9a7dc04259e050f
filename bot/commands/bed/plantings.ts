import { DateTime } from 'luxon';
import type { Crop } from '../../../rules/index.ts';
import { PlainProblem } from '../../ground/errors.ts';
import type { Bed, PlantingFacts, Stage } from '../../store/port/beds.ts';
import type { Store } from '../../store/store.ts';
import type { MonthDay } from '../typed/month-day.ts';
import { pastDay } from '../typed/past-day.ts';

/** Enough for a mixed bed, and a bound on one night's work (judgement). */
const MOST_CROPS = 20;
/** So long a plant counts as just set out (judgement). */
const JUST_DAYS = 14;

export interface Sown {
  readonly crops: readonly Crop[];
  readonly stage: Stage | undefined;
  readonly hardened: boolean | undefined;
  readonly sown: MonthDay | undefined;
  readonly setOut: MonthDay | undefined;
  /** Local date at the bed. */
  readonly today: string;
}

/** @throws PlainProblem when a bed would hold too many crops. */
export function refuseCrowding(crops: number): void {
  if (crops > MOST_CROPS) throw new PlainProblem(`A bed holds at most ${MOST_CROPS} crops here; part it in two.`);
}

/** Crops that are new in a bed, as they are told. */
export function newPlantings({ crops, stage, hardened, today, ...days }: Sown): readonly PlantingFacts[] {
  const told = dates(days, today);
  const facts = { stage: stage ?? usualStage(told.setOut, today), since: today, hardened, ...told };
  return crops.map(({ id }) => ({ crop: id, ...facts }));
}

/** What was set out a little while ago is not yet growing away. */
function usualStage(setOut: string | undefined, today: string): Stage {
  if (setOut === undefined) return 'growing';
  return DateTime.fromISO(today).diff(DateTime.fromISO(setOut), 'days').days < JUST_DAYS ? 'just-set-out' : 'growing';
}

/** Puts crops into a bed; one that grows there already gets the stage, state and days that are told. */
export async function sow(store: Store, bed: Bed, told: Sown): Promise<void> {
  const { stage, hardened, today } = told;
  const present = new Map(bed.plantings.map((planting) => [planting.crop, planting]));
  const added = newPlantings({ ...told, crops: told.crops.filter((crop) => !present.has(crop.id)) });
  refuseCrowding(bed.plantings.length + added.length);
  for (const crop of told.crops) {
    const planting = present.get(crop.id);
    if (planting === undefined) continue;
    await store.plantings.change(bed.memberId, planting.id, {
      ...(stage !== undefined && stage !== planting.stage && { stage, since: today }),
      ...(hardened !== undefined && { hardened }),
      ...dates(told, today),
    });
  }
  for (const facts of added) await store.plantings.add(bed.memberId, bed.id, facts);
}

function dates({ sown, setOut }: Pick<Sown, 'sown' | 'setOut'>, today: string): Pick<PlantingFacts, 'sown' | 'setOut'> {
  return { ...(sown && { sown: pastDay(sown, today) }), ...(setOut && { setOut: pastDay(setOut, today) }) };
}
