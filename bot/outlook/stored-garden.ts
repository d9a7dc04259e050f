import { COVER_KEYS, cropById, MULCH_KINDS, SOIL_KINDS } from '../../rules/index.ts';
import type { Bed, Planting, SpareCover } from '../store/port/beds.ts';
import type { Site } from '../store/port/sites.ts';
import type { Garden, GardenBed, GardenPlanting } from './garden.ts';

/** What is kept of one site of a member, as a night is worked out for it. */
export interface StoredSite {
  readonly site: Site;
  readonly beds: readonly Bed[];
  readonly spareCovers: readonly SpareCover[];
}

/** A member's site as a garden. What a later version kept under keys that this one does not know is passed over. */
export function storedGarden({ site, beds, spareCovers }: StoredSite): Garden {
  const { name, latitudeDeg, longitudeDeg, heightM, exposure, timeZone } = site;
  return {
    ...{ name, latitudeDeg, longitudeDeg, exposure, timeZone },
    ...(heightM !== undefined && { elevationM: heightM }),
    beds: beds.map(gardenBed),
    shed: spareCovers.flatMap(({ cover, count }) => {
      const key = known(COVER_KEYS, cover);
      return key === undefined ? [] : new Array<typeof key>(count).fill(key);
    }),
  };
}

function gardenBed({ name, plantings, covers, frame, soil, mulch }: Bed): GardenBed {
  const soilKind = known(SOIL_KINDS, soil);
  const mulchKind = known(MULCH_KINDS, mulch);
  return {
    name,
    plantings: plantings.flatMap(gardenPlanting),
    covers: covers.flatMap((cover) => known(COVER_KEYS, cover) ?? []),
    ...(frame && { frame }),
    ...(soilKind && { soilKind }),
    ...(mulchKind && { mulch: mulchKind }),
  };
}

/** What the grower says of hardening counts until the bot has followed the bed's own temperatures. */
function gardenPlanting({ crop, stage, hardened, hardening }: Planting): GardenPlanting[] {
  const cropId = cropById(crop)?.id;
  if (cropId === undefined) return [];
  const hardeningIndex = hardening?.fraction ?? (hardened === undefined ? undefined : Number(hardened));
  return [{ cropId, stage, ...(hardeningIndex !== undefined && { hardeningIndex }) }];
}

function known<K extends string>(keys: readonly K[], key: string | undefined): K | undefined {
  return keys.find((each) => each === key);
}
