import type { Crop } from '../crops/crop.ts';
import { assumedClimate, climateGroundC } from '../night/climate.ts';

/** What is known of how hard a planting is. */
export interface HardeningFacts {
  /** Followed from the temperatures under its cover. [0…1] */
  readonly followedIndex?: number;
  /** Where and when, of a planting without a history. */
  readonly season?: Season;
  /** What its grower says. */
  readonly said?: 'hardened' | 'half-hardened' | 'grown-warm';
}

/** Day and place of a night. */
export interface Season {
  readonly night: Date;
  /** The middle of the temperate zone if absent. [°, north positive] */
  readonly latitudeDeg?: number;
  readonly elevationM?: number;
}

/** The state to judge by, and whether an answer must own up to it. */
export interface AssumedHardening {
  /** 0 grown warm … 1 fully hardened. */
  readonly hardeningIndex: number;
  /** `no-matter`: cold does not harden this crop. */
  readonly basis: 'followed' | 'said' | 'assumed' | 'assumed-half' | 'no-matter';
  /** Index to give a second verdict for, where the first rests on an assumption. */
  readonly otherwiseIndex?: number;
}

/** The usual latitude where a question names no place (`ordinary-night`). */
const USUAL_LATITUDE_DEG = 40;
/** Plants harden fully in about two weeks of nights below 2 °C (`fennell-li-abstract`), so the air of two weeks ago counts. */
const WEEKS_TO_HARDEN_MS = 14 * 86_400_000;
/** Lows lie some 5 K below the day's mean: a mean of 8 °C is the end of slow hardening, half way to the pace of winter (judgement). */
const FULLY_HARDENED_BELOW_C = 8;
const SUMMER_ABOVE_C = 14;

const SAID_INDEX = { hardened: 1, 'half-hardened': 0.5, 'grown-warm': 0 } as const;

/**
 * The hardening to judge a planting by.
 *
 * @param crop - A crop of the table.
 * @param facts - What is known. What the grower says comes before what was followed.
 * @returns The index with its basis. Without a word, a question about frost is about plants grown through the cold: taken
 * as hardened, or as half hardened where the usual mean of the air two weeks before the night is above 8 °C (October in the middle
 * of the temperate zone, all winter in the south); the verdict for plants grown warm is to be given beside it. Where it is so
 * warm that no frost is near, the next winter is meant.
 * @throws RangeError when `followedIndex` is outside 0…1.
 *
 * @see judgement
 */
export function assumedHardening(crop: Crop, facts: HardeningFacts = {}): AssumedHardening {
  const { followedIndex, said } = facts;
  if (followedIndex !== undefined && !(followedIndex >= 0 && followedIndex <= 1)) {
    throw new RangeError(`followedIndex ${followedIndex} is outside 0…1`);
  }
  if (!crop.hardens) return { hardeningIndex: 0, basis: 'no-matter' };
  if (said !== undefined) return { hardeningIndex: SAID_INDEX[said], basis: 'said' };
  if (followedIndex !== undefined) return { hardeningIndex: followedIndex, basis: 'followed' };
  const isHalf = facts.season !== undefined && isBeforeWinter(facts.season);
  return isHalf
    ? { hardeningIndex: SAID_INDEX['half-hardened'], basis: 'assumed-half', otherwiseIndex: 0 }
    : { hardeningIndex: 1, basis: 'assumed', otherwiseIndex: 0 };
}

function isBeforeWinter({ night, latitudeDeg = USUAL_LATITUDE_DEG, elevationM = 0 }: Season): boolean {
  const climate = assumedClimate(latitudeDeg, elevationM);
  if (climateGroundC(climate, night, 0) > SUMMER_ABOVE_C && climateGroundC(climate, night, 0) > climate.meanC) return false;
  return climateGroundC(climate, new Date(night.getTime() - WEEKS_TO_HARDEN_MS), 0) > FULLY_HARDENED_BELOW_C;
}
