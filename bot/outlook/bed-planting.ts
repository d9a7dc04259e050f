import {
  assumedHardening,
  type Crop,
  cropById,
  crownOf,
  hardinessLearned,
  isDormant,
  type Planting,
} from '../../rules/index.ts';
import type { BedInPast } from './bed-in-past.ts';
import type { GardenPlanting } from './garden.ts';

/** When and where, for what dies down in winter. */
export interface DormantAt {
  readonly date: Date;
  readonly latitudeDeg: number;
}

/** What grows there and how hard it is; nothing where the table does not know the crop. */
export function plantingOf(
  planting: GardenPlanting,
  wetThenFrozen: boolean,
  past?: BedInPast,
  at?: DormantAt,
): Planting[] {
  const known = cropById(planting.cropId);
  if (known === undefined) return [];
  const sleeps = at !== undefined && isDormant(known, at.date, at.latitudeDeg);
  const crop = sleeps ? (crownOf(known) ?? known) : known;
  const { hardeningIndex, ...assumed } = stateOf(crop, planting, past);
  const learned = hardinessLearned(crop, hardeningIndex, planting.outcomes ?? []);
  return [
    {
      crop,
      hardeningIndex,
      ...assumed,
      circumstances: {
        nightsInARow: past?.frozenNights ?? 0,
        matureHead: crop.organ === 'head' && planting.stage === 'grown',
        smallRosette: crop.organ === 'leaf' && planting.stage === 'just-set-out' && hardeningIndex > 0,
        wetThenFrozen,
      },
      ...(learned && { learned }),
    },
  ];
}

/** What the grower said or the bot followed; else what the weather behind and the season have made of it. */
function stateOf(
  crop: Crop,
  { hardeningIndex: known, stage }: GardenPlanting,
  past: BedInPast | undefined,
): Pick<Planting, 'hardeningIndex' | 'assumedFrom' | 'otherwiseIndex'> {
  // Those of a shop or a windowsill are soft; who has hardened them off can say so.
  if (known === undefined && crop.hardens && stage === 'just-set-out') {
    return { hardeningIndex: 0, assumedFrom: 'set-out', otherwiseIndex: 1 };
  }
  const facts = known === undefined ? past && { there: past.hardening } : { followedIndex: known };
  const { hardeningIndex, basis, otherwiseIndex } = assumedHardening(crop, facts);
  if (otherwiseIndex === undefined || basis === 'followed' || basis === 'said' || basis === 'no-matter') {
    return { hardeningIndex };
  }
  return { hardeningIndex, assumedFrom: basis, otherwiseIndex };
}
