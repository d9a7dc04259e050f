import type { Crop, Tolerance } from '../crops/crop.ts';
import type { CropId } from '../crops/crop-names-table.ts';

/** A plant that comes again from below the ground, whatever becomes of its top. */
export interface CrownFacts {
  /** What dies of the top, in the plural. */
  readonly tops: string;
  /** What has to live. */
  readonly part: string;
  /** Limits of that part as lows of the soil surface, which is colder than it. [°C] */
  readonly firstMarkC: number;
  readonly lt50C: number;
  readonly killC: number;
  /** What to do in winter, in place of picking. */
  readonly care: string;
  /** The top is gone in winter: a dormant bed is judged by what lies below. */
  readonly diesDown: boolean;
}

const MULCH = 'Mulch a hand deep once the soil has frozen, so that it does not thaw and heave.';

/**
 * Crowns, cloves, bulbs and tubers. Limits are judgement, from the coldest zones in which nurseries list them unprotected (common
 * practice), told as soil-surface lows: crowns lie some centimetres deeper. Snow and mulch come in by the surface low itself.
 */
export const CROWNS: Readonly<Partial<Record<CropId, CrownFacts>>> = {
  asparagus: crown(
    'spears and ferns',
    'crown',
    [-20, -25, -30],
    `Nothing to pick in winter: leave the dead ferns or cut them to the ground. ${MULCH}`,
  ),
  rhubarb: crown(
    'stalks and leaves',
    'crown',
    [-20, -25, -30],
    `Clear the dead leaves and keep the buds from rotting wet. ${MULCH}`,
  ),
  horseradish: crown(
    'leaves',
    'root',
    [-20, -25, -30],
    'Dig what you want before the soil freezes; what stays comes again.',
  ),
  'jerusalem-artichoke': crown(
    'stems',
    'tubers',
    [-12, -16, -20],
    'Leave the tubers in the ground and dig as you need them. Mulch, so that you can still dig.',
  ),
  chives: crown('leaves', 'clump', [-20, -25, -30], 'Cut the dead leaves away; nothing else to do.'),
  'garlic-chives': crown('leaves', 'clump', [-14, -18, -22], 'Cut the dead leaves away; nothing else to do.'),
  mint: crown(
    'stems and leaves',
    'runners',
    [-12, -16, -20],
    'Cut the dead stems to the ground. In a pot: set it on the ground out of the wind.',
  ),
  sorrel: crown('leaves', 'root', [-14, -18, -22], 'Pick the last good leaves; it comes again in spring.'),
  garlic: crown('leaf tips', 'cloves', [-13, -17, -21], `Burnt tips do no harm: leave them. ${MULCH}`, false),
  'elephant-garlic': crown('leaf tips', 'cloves', [-9, -12, -15], `Burnt tips do no harm: leave them. ${MULCH}`, false),
  shallot: crown('leaf tips', 'bulbs', [-9, -12, -15], `Burnt tips do no harm. ${MULCH}`, false),
  'multiplier-onion': crown('leaf tips', 'bulbs', [-11, -14, -18], `Burnt tips do no harm. ${MULCH}`, false),
  'walking-onion': crown('leaves', 'bulbs', [-14, -18, -22], 'Nothing to do.'),
  artichoke: crown(
    'leaves and stems',
    'crown',
    [-4, -7, -9],
    'Cut the top back, earth up and cover the crown with a foot of dry straw under something that sheds rain.',
    false,
  ),
  cardoon: crown(
    'leaves and stems',
    'crown',
    [-4, -7, -9],
    'Cut the top back and cover the crown with a foot of dry straw under something that sheds rain.',
    false,
  ),
  strawberry: crown(
    'leaves',
    'crowns',
    [-8, -11, -14],
    'Cover with straw two hands deep once they are dormant and nights stay near −6 °C (20 °F); take it off in spring.',
    false,
  ),
  oregano: crown('leaves', 'root', [-14, -18, -22], 'Leave the dead stems until spring: they shelter the buds.'),
};

function crown(
  tops: string,
  part: string,
  [firstMarkC, lt50C, killC]: readonly [number, number, number],
  care: string,
  diesDown = true,
): CrownFacts {
  return { tops, part, firstMarkC, lt50C, killC, care, diesDown };
}

/** Zones are wide, and soils differ (judgement). [K] */
const SD_K = 2.5;

/**
 * A crop judged by what lies below the ground instead of by its top.
 *
 * @param crop - The crop.
 * @returns The same crop with the limits of its crown, held against the soil surface; `undefined` where it has none.
 */
export function crownOf(crop: Crop): Crop | undefined {
  const facts = CROWNS[crop.id];
  if (facts === undefined) return undefined;
  if (crop.organ === 'crown') return crop;
  const { firstMarkC, lt50C, killC } = facts;
  const tolerance: Tolerance = { firstMarkC, lt50C, killC, sdK: SD_K };
  const { other: _, ...whole } = crop;
  return { ...whole, organ: 'crown', judgedBy: 'surface', hardens: false, hardened: tolerance, unhardened: tolerance };
}

/** Days of the year, north of the equator, from and to which tops have died down: from 10 November to 15 March (judgement). */
const DORMANT_FROM_DAY = 314;
const DORMANT_TO_DAY = 74;
const DAYS_PER_YEAR = 365;
const MS_PER_DAY = 86_400_000;

/**
 * Whether a crop stands without its top at this time of the year.
 *
 * @param crop - The crop.
 * @param date - Any instant of the day.
 * @param latitudeDeg - North positive; south of the equator the year is turned round. [°]
 */
export function isDormant(crop: Crop, date: Date, latitudeDeg: number): boolean {
  if (CROWNS[crop.id]?.diesDown !== true) return false;
  const dayOfYear = Math.floor((date.getTime() - Date.UTC(date.getUTCFullYear(), 0, 1)) / MS_PER_DAY) + 1;
  const northern = latitudeDeg < 0 ? (dayOfYear + DAYS_PER_YEAR / 2) % DAYS_PER_YEAR : dayOfYear;
  return northern >= DORMANT_FROM_DAY || northern <= DORMANT_TO_DAY;
}
