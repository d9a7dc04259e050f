import type { Crop, Tolerance } from '../crops/crop.ts';

/**
 * Tolerance of a crop at a state between grown warm and fully hardened.
 *
 * @param crop - A crop of the table.
 * @param hardeningIndex - 0 grown warm … 1 fully hardened. [0…1]
 * @returns Its limits as temperatures of the organ; the same at every index for a crop that does not harden.
 * @throws RangeError when `hardeningIndex` is outside 0…1.
 *
 * @see two-thermometers, tolerance-weights (judgement); the limits' own sources stand with the crop
 */
export function toleranceAt(crop: Crop, hardeningIndex: number): Tolerance {
  if (!(hardeningIndex >= 0 && hardeningIndex <= 1)) {
    throw new RangeError(`hardeningIndex ${hardeningIndex} is outside 0…1`);
  }
  const { unhardened: warm, hardened: cold } = crop;
  const at = (from: number, to: number) => from + hardeningIndex * (to - from);
  return {
    firstMarkC: at(warm.firstMarkC, cold.firstMarkC),
    lt50C: at(warm.lt50C, cold.lt50C),
    killC: at(warm.killC, cold.killC),
    sdK: at(warm.sdK, cold.sdK),
  };
}
