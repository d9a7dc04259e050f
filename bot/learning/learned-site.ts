import {
  type BedLearning,
  bedLearning,
  COVER_KEYS,
  type CropId,
  cropById,
  type LaidCovers,
  MS_PER_DAY,
  type ReadNight,
  type SeenOutcome,
} from '../../rules/index.ts';
import { localDay } from '../ground/times.ts';
import type { Garden } from '../outlook/garden.ts';
import { type LearnedSite, type StoredSite, storedGarden } from '../outlook/stored-garden.ts';
import type { Bed } from '../store/port/beds.ts';
import type { ScoredNight } from '../store/port/readings.ts';
import type { Store } from '../store/store.ts';
import { daysOfNight } from './night-days.ts';

/** Older readings would weigh next to nothing. */
const LOOK_BACK_DAYS = 730;

/** A member's site as a garden that knows what was learned there. */
export async function learnedGarden(
  store: Pick<Store, 'predictions' | 'outcomes'>,
  kept: StoredSite,
  now: Date,
): Promise<Garden> {
  return storedGarden({ ...kept, learned: await learnedSite(store, kept, now) });
}

/** What the readings of a site's beds and the outcomes of its crops have taught, worked out anew each time. */
export async function learnedSite(
  store: Pick<Store, 'predictions' | 'outcomes'>,
  { site, beds }: Pick<StoredSite, 'site' | 'beds'>,
  now: Date,
): Promise<LearnedSite> {
  const { memberId, timeZone } = site;
  const since = localDay(new Date(now.getTime() - LOOK_BACK_DAYS * MS_PER_DAY), timeZone);
  const [scored, outcomes] = await Promise.all([
    store.predictions.scored({ kind: 'beds', memberId, bedIds: beds.map(({ id }) => id) }, since),
    outcomesByCrop(store, memberId, beds),
  ]);
  const epochDays = daysOfNight(localDay(now, timeZone));
  const outside = outsideByNight(scored);
  const ofBed = (id: string) => scored.filter(({ prediction }) => prediction.bedId === id);
  const learned = beds.flatMap((bed): [string, BedLearning][] => {
    const nights = readNights(bed, ofBed(bed.id), outside);
    return nights.length === 0 ? [] : [[bed.id, bedLearning(nights, { laid: laidOn(bed.covers, bed), epochDays })]];
  });
  return { beds: new Map(learned), outcomes };
}

/** One thermometer outside serves all beds of a site: the newest prediction and reading of each night that has one. */
function outsideByNight(scored: readonly ScoredNight[]): ReadonlyMap<string, ScoredNight> {
  return new Map(
    scored.filter(({ reading }) => reading.outsideLowC !== undefined).map((each) => [each.reading.night, each]),
  );
}

/** The bed's nights, with the low outside from another bed's reading where its own has none. */
function readNights(
  bed: Bed,
  scored: readonly ScoredNight[],
  outside: ReadonlyMap<string, ScoredNight>,
): readonly ReadNight[] {
  // The newest prediction of a night stands last.
  const own = new Map(scored.map((each) => [each.reading.night, each]));
  const nights = [...new Set([...own.keys(), ...outside.keys()])].toSorted();
  let laid = laidOn([...own.values()][0]?.reading.covers ?? bed.covers, bed);
  return nights.flatMap((night) => {
    const mine = own.get(night);
    if (mine !== undefined) laid = laidOn(mine.reading.covers, bed);
    return readNight(night, laid, mine, outside.get(night)) ?? [];
  });
}

function readNight(
  night: string,
  laid: LaidCovers,
  own: ScoredNight | undefined,
  outside: ScoredNight | undefined,
): ReadNight | undefined {
  const told = own ?? outside;
  if (told === undefined) return undefined;
  // A prediction for other covers tells nothing of these.
  const sameCovers = own !== undefined && own.prediction.covers.join() === own.reading.covers.join();
  const underCoverLowC = sameCovers ? own.reading.underCoverLowC : undefined;
  const outsideLowC = own?.reading.outsideLowC ?? outside?.reading.outsideLowC;
  if (underCoverLowC === undefined && outsideLowC === undefined) return undefined;
  const {
    outsideLowC: bookOutsideC,
    outsideSpreadK,
    underCoverLowC: bookUnderC,
    underCoverSpreadK,
  } = told.prediction.book;
  return {
    epochDays: daysOfNight(night),
    laid,
    book: {
      outsideLowC: bookOutsideC,
      outsideSdK: outsideSpreadK,
      underCoverLowC: bookUnderC,
      underCoverSdK: underCoverSpreadK,
    },
    ...(outsideLowC !== undefined && { outsideLowC }),
    ...(underCoverLowC !== undefined && { underCoverLowC }),
  };
}

/** What a later version kept under keys that this one does not know is passed over. */
export function laidOn(covers: readonly string[], { frame }: Pick<Bed, 'frame'>): LaidCovers {
  const keys = covers.flatMap((cover) => COVER_KEYS.find((key) => key === cover) ?? []);
  return { covers: keys, ...(frame && { walls: frame.walls }) };
}

async function outcomesByCrop(
  store: Pick<Store, 'outcomes'>,
  memberId: string,
  beds: readonly Bed[],
): Promise<ReadonlyMap<CropId, readonly SeenOutcome[]>> {
  const crops = [...new Set(beds.flatMap(({ plantings }) => plantings.map(({ crop }) => crop)))];
  const byCrop = new Map<CropId, SeenOutcome[]>();
  if (crops.length === 0) return byCrop;
  for (const { crop, outcome, leafLowC, hardeningFraction, night, otherIndex } of await store.outcomes.around(
    memberId,
    crops,
  )) {
    const id = cropById(crop)?.id;
    if (id === undefined) continue;
    const seen: SeenOutcome = {
      seen: outcome,
      organLowC: leafLowC,
      hardeningIndex: hardeningFraction,
      epochDays: daysOfNight(night),
      ...(otherIndex !== undefined && { otherIndex }),
    };
    byCrop.set(id, [...(byCrop.get(id) ?? []), seen]);
  }
  return byCrop;
}
