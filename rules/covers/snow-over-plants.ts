import type { Crop } from '../crops/crop.ts';
import type { CropId } from '../crops/crop-names-table.ts';
import type { CoverKey } from './cover-key.ts';

/** Winter crops that stand above ordinary snow; heights of grown plants (common practice). [m] */
const TALL_M: Readonly<Partial<Record<CropId, number>>> = {
  kale: 0.5,
  'red-russian-kale': 0.5,
  'tuscan-kale': 0.7,
  collards: 0.6,
  'brussels-sprouts': 0.8,
  kalettes: 0.8,
  'purple-sprouting-broccoli': 0.8,
  broccoli: 0.5,
  cauliflower: 0.5,
  'overwintering-cauliflower': 0.5,
  romanesco: 0.5,
  cabbage: 0.3,
  'savoy-cabbage': 0.3,
  'napa-cabbage': 0.35,
  leek: 0.5,
  celery: 0.4,
  chard: 0.4,
  cardoon: 0.8,
  artichoke: 0.6,
  'fava-bean': 0.25,
  pea: 0.3,
  'winter-pea': 0.3,
  rosemary: 0.6,
  sage: 0.4,
};
/** Rosettes of salad, spinach and mache, strawberries, young garlic (common practice). [m] */
const LOW_M = 0.1;
/** The forecast tells the depth for its whole square; wind and sun take from a bed (judgement). */
const SURE_FRACTION = 0.5;
/** Less than this over the leaves has gaps (judgement). [m] */
const THINNEST_OVER_M = 0.05;

/**
 * How deep snow surely lies over everything in a bed without covers.
 *
 * @param keys - What lies there.
 * @param crops - What grows there.
 * @param depthM - Least depth that is told for the night. [m]
 * @returns Depth over the plants; `undefined` where a cover lies, where a plant stands out, or where it is too thin. What grows
 * in the soil has no height. [m]
 */
export function snowOverPlantsM(
  keys: readonly CoverKey[],
  crops: readonly Crop[],
  depthM: number | undefined,
): number | undefined {
  if (depthM === undefined || crops.length === 0 || keys.some((key) => key !== 'hoops' && key !== 'jugs'))
    return undefined;
  const sureM = SURE_FRACTION * depthM;
  const tallestM = Math.max(...crops.map((crop) => (crop.judgedBy === 'surface' ? 0 : (TALL_M[crop.id] ?? LOW_M))));
  return depthM >= tallestM + THINNEST_OVER_M && sureM >= THINNEST_OVER_M ? sureM : undefined;
}
