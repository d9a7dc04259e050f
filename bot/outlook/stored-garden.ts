import {
  type BedLearning,
  COVER_KEYS,
  type CropId,
  cropById,
  MULCH_KINDS,
  type SeenOutcome,
  SOIL_KINDS,
} from '../../rules/index.ts';
import type { Bed, Planting, SpareCover } from '../store/port/beds.ts';
import type { Site } from '../store/port/sites.ts';
import type { Garden, GardenBed, GardenPlanting } from './garden.ts';

/** What readings and outcomes have taught of a site: by the id of a bed, and by crop. */
export interface LearnedSite {
  readonly beds: ReadonlyMap<string, BedLearning>;
  readonly outcomes: ReadonlyMap<CropId, readonly SeenOutcome[]>;
}

/** What is kept of one site of a member, as a night is worked out for it. */
export interface StoredSite {
  readonly site: Site;
  readonly beds: readonly Bed[];
  readonly spareCovers: readonly SpareCover[];
  /** What readings and outcomes have taught of it. */
  readonly learned?: LearnedSite;
}

/** A member's site as a garden. What a later version kept under keys that this one does not know is passed over. */
export function storedGarden({ site, beds, spareCovers, learned }: StoredSite): Garden {
  const { name, latitudeDeg, longitudeDeg, heightM, exposure, timeZone, horizonDeg } = site;
  return {
    ...{ name, latitudeDeg, longitudeDeg, exposure, timeZone },
    ...(heightM !== undefined && { elevationM: heightM }),
    ...(horizonDeg.length > 0 && { horizonDeg }),
    beds: beds.map((bed) => gardenBed(bed, learned)),
    shed: spareCovers.flatMap(({ cover, count }) => {
      const key = known(COVER_KEYS, cover);
      return key === undefined ? [] : new Array<typeof key>(count).fill(key);
    }),
  };
}

function gardenBed(
  { id, name, plantings, covers, frame, soil, mulch }: Bed,
  learned: LearnedSite | undefined,
): GardenBed {
  const soilKind = known(SOIL_KINDS, soil);
  const mulchKind = known(MULCH_KINDS, mulch);
  const bedLearned = learned?.beds.get(id);
  return {
    name,
    plantings: plantings.flatMap((planting) => gardenPlanting(planting, learned)),
    covers: covers.flatMap((cover) => known(COVER_KEYS, cover) ?? []),
    ...(frame && { frame }),
    ...(soilKind && { soilKind }),
    ...(mulchKind && { mulch: mulchKind }),
    ...(bedLearned && { learned: bedLearned }),
  };
}

/** What the grower says of hardening counts until the bot has followed the bed's own temperatures. */
function gardenPlanting(
  { crop, stage, hardened, hardening }: Planting,
  learned: LearnedSite | undefined,
): GardenPlanting[] {
  const cropId = cropById(crop)?.id;
  if (cropId === undefined) return [];
  const hardeningIndex = hardening?.fraction ?? (hardened === undefined ? undefined : Number(hardened));
  const outcomes = learned?.outcomes.get(cropId);
  return [{ cropId, stage, ...(hardeningIndex !== undefined && { hardeningIndex }), ...(outcomes && { outcomes }) }];
}

function known<K extends string>(keys: readonly K[], key: string | undefined): K | undefined {
  return keys.find((each) => each === key);
}
