import type { Crop } from './crop.ts';
import type { CropId } from './crop-names-table.ts';
import { CROP_TRAITS } from './crop-traits-table.ts';
import type { PlantPart } from './hardiness-row.ts';
import { type PairKey, STARTING_PAIRS } from './starting-pairs-table.ts';

/** One organ of one crop: what statements are about and limits are of. */
export interface Subject {
  readonly cropId: CropId;
  readonly part: 'eaten' | 'other';
  readonly pair: PairKey;
  readonly rows: readonly (readonly [crop: string, part: PlantPart])[];
  readonly judgedBy: Crop['judgedBy'];
  readonly hardens: boolean;
  readonly spoiltByIce: boolean;
  /** The plant as sources call it when they name no part. */
  readonly plants: readonly string[];
  /** The crop at large, of which this is one kind. */
  readonly alike?: Subject['rows'];
  /** Where a plant is kept apart in two parts: which of them goes first. */
  readonly ofTwo?: 'first' | 'last';
}

/** The organs of a crop that limits are kept for, the eaten one first. */
export function subjectsOf(cropId: CropId): readonly Subject[] {
  const { pair, rows, judgedBy = 'leaf', spoiltByIce = false, other, alike } = CROP_TRAITS[cropId];
  const plants = [...new Set(rows.map(([crop]) => crop))];
  const eaten: Subject = {
    cropId,
    part: 'eaten',
    pair,
    rows,
    judgedBy,
    hardens: 'hardened' in STARTING_PAIRS[pair],
    spoiltByIce,
    plants,
    ...(alike !== undefined && { alike }),
  };
  if (other === undefined) return [eaten];
  const isHardier = other.isHardier === true;
  return [
    { ...eaten, ofTwo: isHardier ? 'first' : 'last' },
    {
      ...eaten,
      part: 'other',
      pair: other.pair,
      rows: other.rows,
      judgedBy: other.judgedBy ?? 'leaf',
      hardens: 'hardened' in STARTING_PAIRS[other.pair],
      spoiltByIce: false,
      ofTwo: isHardier ? 'last' : 'first',
    },
  ];
}

/** Subjects that the same rows speak of have the same limits. */
export function subjectKey({ cropId, part, pair, rows }: Subject): string {
  return rows.length === 0 ? `${cropId} ${part}` : JSON.stringify([pair, rows]);
}
