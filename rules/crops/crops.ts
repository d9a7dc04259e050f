import type { Crop, OrganLimits, Tolerance } from './crop.ts';
import { CROP_NAMES, type CropId } from './crop-names-table.ts';
import { CROP_TRAITS } from './crop-traits-table.ts';
import { LIMITS, type LimitsOfOrgan, type LimitsRow } from './limits-table.ts';
import { STARTING_PAIRS } from './starting-pairs-table.ts';

/** Every crop of the table, in the order of the table, with the limits that were fitted to the sources. */
export const CROPS: readonly Crop[] = CROP_NAMES.map((name) => {
  const traits = CROP_TRAITS[name.id];
  const { other: otherLimits, statementCount, ...eaten } = limitsRow(name.id);
  const { other } = traits;
  return {
    id: name.id,
    name,
    organ: traits.organ,
    judgedBy: traits.judgedBy ?? 'leaf',
    hardens: 'hardened' in STARTING_PAIRS[traits.pair],
    ...organLimits(eaten),
    isKnown: statementCount > 0,
    cautions: traits.cautions ?? [],
    ...(other !== undefined &&
      otherLimits !== undefined && {
        other: {
          name: other.name,
          judgedBy: other.judgedBy ?? 'leaf',
          hardens: 'hardened' in STARTING_PAIRS[other.pair],
          ...organLimits(otherLimits),
        },
      }),
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
 * The crop that stands for the kind by which a crop is judged on which nothing is known.
 *
 * @param cropId - Key of a crop of the table.
 * @returns The first crop of the same kind that a source speaks of; `undefined` where none does.
 */
export function knownOfKind(cropId: CropId): Crop | undefined {
  const { pair } = CROP_TRAITS[cropId];
  return CROPS.find((crop) => crop.isKnown && CROP_TRAITS[crop.id].pair === pair);
}

function limitsRow(cropId: CropId): LimitsRow {
  const row = LIMITS[cropId];
  if (row === undefined) throw new RangeError(`${cropId} has no limits yet: run \`npm run limits\``);
  return row;
}

function organLimits({ unhardened, hardened = unhardened }: LimitsOfOrgan): OrganLimits {
  return { unhardened: tolerance(unhardened), hardened: tolerance(hardened) };
}

function tolerance([firstMarkC, lt50C, killC, sdK]: LimitsOfOrgan['unhardened']): Tolerance {
  return { firstMarkC, lt50C, killC, sdK };
}
