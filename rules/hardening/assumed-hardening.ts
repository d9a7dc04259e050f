import type { Crop } from '../crops/crop.ts';
import type { HardeningThere } from './hardening-there.ts';

/** What is known of how hard a planting is. */
export interface HardeningFacts {
  /** Followed from the temperatures under its cover. [0…1] */
  readonly followedIndex?: number;
  /** From the weather or the season at its place, where nobody followed it. */
  readonly there?: HardeningThere;
  /** What its grower says. */
  readonly said?: 'hardened' | 'half-hardened' | 'grown-warm';
}

/** The state to judge by, and whether an answer must own up to it. */
export interface AssumedHardening {
  /** 0 grown warm … 1 fully hardened. */
  readonly hardeningIndex: number;
  /** `weather`, `season`: by {@link hardeningThere}. `no-matter`: cold does not harden this crop. */
  readonly basis: 'followed' | 'said' | 'weather' | 'season' | 'assumed' | 'no-matter';
  /** Index to give a second verdict for, where the first rests on an assumption. */
  readonly otherwiseIndex?: number;
}

/** From here on the other end is that of plants grown warm. */
const HALF_HARDENED = 0.5;
const SAID_INDEX = { hardened: 1, 'half-hardened': 0.5, 'grown-warm': 0 } as const;

/**
 * The hardening to judge a planting by.
 *
 * @param crop - A crop of the table.
 * @param facts - What is known. What the grower says comes before what was followed.
 * @returns The index with its basis, and the other end where it was not said or followed. Without any fact, a question about frost is about plants grown through the cold: taken
 * as hardened, with the verdict for plants grown warm to be given beside it.
 * @throws RangeError when `followedIndex` is outside 0…1.
 *
 * @see judgement
 */
export function assumedHardening(crop: Crop, facts: HardeningFacts = {}): AssumedHardening {
  const { followedIndex, said, there } = facts;
  if (followedIndex !== undefined && !(followedIndex >= 0 && followedIndex <= 1)) {
    throw new RangeError(`followedIndex ${followedIndex} is outside 0…1`);
  }
  if (!crop.hardens) return { hardeningIndex: 0, basis: 'no-matter' };
  if (said !== undefined) return { hardeningIndex: SAID_INDEX[said], basis: 'said' };
  if (followedIndex !== undefined) return { hardeningIndex: followedIndex, basis: 'followed' };
  if (there !== undefined) {
    const { hardeningIndex, basis } = there;
    return { hardeningIndex, basis, otherwiseIndex: hardeningIndex < HALF_HARDENED ? 1 : 0 };
  }
  return { hardeningIndex: 1, basis: 'assumed', otherwiseIndex: 0 };
}
