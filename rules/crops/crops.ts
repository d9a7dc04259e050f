import type { Crop } from './crop.ts';
import { CROP_NAMES, type CropId } from './crop-names-table.ts';
import { CROP_TRAITS } from './crop-traits-table.ts';
import { STARTING_PAIRS } from './starting-pairs-table.ts';
import { type CropDerivation, derivedTolerance } from './tolerance.ts';

/** Every crop of the table, in the order of the table, with tolerances derived from the sources. */
export const CROPS: readonly Crop[] = CROP_NAMES.map((name) => {
  const traits = CROP_TRAITS[name.id];
  const { unhardened, hardened } = derivedTolerance(traits);
  return {
    id: name.id,
    name,
    organ: traits.organ,
    judgedBy: traits.judgedBy ?? 'leaf',
    hardens: 'hardened' in STARTING_PAIRS[traits.pair],
    unhardened: unhardened.tolerance,
    hardened: hardened.tolerance,
    cautions: traits.cautions ?? [],
    ...(traits.maturityDays === undefined ? {} : { maturityDays: traits.maturityDays }),
    ...(traits.ventAboveC === undefined ? {} : { ventAboveC: traits.ventAboveC }),
  };
});

const BY_ID: ReadonlyMap<string, Crop> = new Map(CROPS.map((crop) => [crop.id, crop]));

/**
 * The crop of a stored or typed key.
 *
 * @param cropId - Key such as `red-russian-kale`.
 * @returns The crop; `undefined` when no crop has that key.
 */
export function cropById(cropId: string): Crop | undefined {
  return BY_ID.get(cropId);
}

/**
 * How the tolerances of a crop came about: which rows, weights and conversions led to each limit.
 *
 * @param cropId - Key of a crop of the table.
 * @see tolerance.ts
 */
export function derivation(cropId: CropId): CropDerivation {
  return derivedTolerance(CROP_TRAITS[cropId]);
}
