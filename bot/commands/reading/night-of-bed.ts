import { type LowsRead, type ReadingDoubt, readingDoubt } from '../../../rules/index.ts';
import { localDay } from '../../ground/times.ts';
import { laidOn } from '../../learning/learned-site.ts';
import type { Prediction, ReadingFacts } from '../../store/port/readings.ts';
import type { Store } from '../../store/store.ts';
import type { OwnBed } from '../bed/own-beds.ts';

/** Why a reading is kept apart; the last one is about the covers, not the lows. */
export type Doubt = ReadingDoubt | 'covers-unsure';

export interface NightLows {
  readonly night: string;
  readonly outsideLowC: number | undefined;
  readonly underCoverLowC: number | undefined;
}

/** A night's reading as it is to be kept, with what had been told of the night. */
export interface WeighedReading {
  readonly facts: Omit<ReadingFacts, 'origin'> & { readonly doubt: Doubt | undefined };
  readonly told: Prediction | undefined;
}

/** What lay over the bed that night. Undefined: nobody knows. */
export interface CoversSaid {
  readonly covers?: readonly string[];
  /** Today's covers lay there all the time. */
  readonly same?: boolean;
}

/** Weighs a night's lows against what had been told; undefined where nobody knows what lay over the bed. */
export async function weighed(
  store: Pick<Store, 'predictions' | 'covered' | 'readings'>,
  bed: OwnBed,
  lows: NightLows,
  said: CoversSaid,
): Promise<WeighedReading | undefined> {
  const { night, outsideLowC, underCoverLowC } = lows;
  const told = (await store.predictions.latest([bed.id], night)).get(bed.id);
  const covers = coversOf(bed, night, told, said);
  if (covers === undefined) return undefined;
  const laid = laidOn(covers, bed);
  const isTold = told !== undefined && told.covers.join() === covers.join();
  const book = isTold ? bookOf(told) : undefined;
  const read = await withDoubtedHalf(store, bed, lows);
  const doubt =
    readingDoubt(read, laid, book) ?? ((await mayDiffer(store, night, read, told, said)) ? 'covers-unsure' : undefined);
  return { facts: { bedId: bed.id, night, outsideLowC, underCoverLowC, doubt, covers }, told };
}

/** A low that stands in doubt stays so when the other one of its night comes later. */
async function withDoubtedHalf(
  store: Pick<Store, 'readings'>,
  { id, memberId }: OwnBed,
  { night, ...lows }: NightLows,
): Promise<LowsRead> {
  const isWhole = lows.outsideLowC !== undefined && lows.underCoverLowC !== undefined;
  const kept = isWhole ? [] : await store.readings.ofBed(memberId, id, night);
  const doubted = kept.find((each) => each.night === night && each.doubt !== undefined);
  const outsideLowC = lows.outsideLowC ?? doubted?.outsideLowC;
  const underCoverLowC = lows.underCoverLowC ?? doubted?.underCoverLowC;
  return { ...(outsideLowC !== undefined && { outsideLowC }), ...(underCoverLowC !== undefined && { underCoverLowC }) };
}

function bookOf({ book }: Prediction) {
  return {
    outsideLowC: book.outsideLowC,
    outsideSdK: book.outsideSpreadK,
    underCoverLowC: book.underCoverLowC,
    underCoverSdK: book.underCoverSpreadK,
  };
}

function coversOf(
  bed: OwnBed,
  night: string,
  told: Prediction | undefined,
  { covers, same }: CoversSaid,
): readonly string[] | undefined {
  if (covers !== undefined) return covers;
  // Who tells a bed tells what has been lying there.
  const haveChanged = bed.coversSince > bed.since;
  const isOlder = haveChanged && night < localDay(bed.coversSince, bed.site.timeZone);
  return isOlder && same !== true ? told?.covers : bed.covers;
}

/** Whoever pressed "covered" where cover was to be added may have laid more than usual. */
async function mayDiffer(
  store: Pick<Store, 'covered'>,
  night: string,
  { underCoverLowC }: LowsRead,
  told: Prediction | undefined,
  { covers }: CoversSaid,
): Promise<boolean> {
  if (covers !== undefined || underCoverLowC === undefined) return false;
  if (told === undefined || told.verdict === 'holds') return false;
  return (await store.covered.marked([told.bedId], night)).has(told.bedId);
}
