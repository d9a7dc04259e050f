import type { Crop, Tolerance } from '../crops/crop.ts';

/**
 * A limit that moves down while its spread grows would make a hardened plant look worse on a mild night. The spread may
 * only grow so fast that this begins where the odds are below 1 in 100 (judgement): 2.33 standard deviations.
 */
const OVERTAKEN_BEYOND_SDS = 2.33;

/**
 * Tolerance of a crop at a state between grown warm and fully hardened.
 *
 * @param crop - A crop of the table.
 * @param hardeningIndex - 0 grown warm … 1 fully hardened. [0…1]
 * @returns Its limits as temperatures of the organ; the same at every index for a crop that does not harden.
 * @throws RangeError when `hardeningIndex` is outside 0…1.
 *
 * @see two-thermometers, limit-statements (judgement); the limits' own sources stand with the crop
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
    sdK: Math.min(at(warm.sdK, cold.sdK), warm.sdK + (hardeningIndex * leastGainK(crop)) / OVERTAKEN_BEYOND_SDS),
  };
}

/** How far hardening lowers the limit that it lowers least. */
function leastGainK({ unhardened: warm, hardened: cold }: Crop): number {
  return Math.min(warm.firstMarkC - cold.firstMarkC, warm.lt50C - cold.lt50C);
}
