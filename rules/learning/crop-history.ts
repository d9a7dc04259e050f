import type { Crop } from '../crops/crop.ts';
import { toleranceAt } from '../hardening/tolerance-at.ts';
import { afterOutcome, bookHardiness, type HardinessBelief, OUTCOMES, type OutcomeKind } from './crop-learning.ts';

/** How a crop came through one cold night. */
export interface SeenOutcome {
  readonly seen: OutcomeKind;
  /** Leaf low as estimated for that night. [°C] */
  readonly organLowC: number;
  /** 0 grown warm … 1 fully hardened, that night. */
  readonly hardeningIndex: number;
  /** The night's day, counted from 1970. */
  readonly epochDays: number;
  /** Which of the club's other members saw it, by a number for each; absent where it was one's own garden. */
  readonly otherIndex?: number;
}

/** What is believed of a crop, and how many others of the club had a part in it. */
export interface LearnedHardiness extends HardinessBelief {
  /** Others who saw each end; absent where they changed nothing. */
  readonly othersCount?: Readonly<Record<OutcomeKind, number>>;
}

/** Of a leaf low looked back upon (`model-spread`, with the forecast's part, middle of the cover groups). [K] */
const LOW_SD_K = 1.8;
/** Gardens differ in cultivar, soil and watering (`judgement`). [K] */
const BETWEEN_GARDENS_SD_K = 1;

/**
 * How much hardier than the table a crop has proved in a garden.
 *
 * @param crop - A crop of the table.
 * @param hardeningIndex - Tonight's, for the spread of the table. [0…1]
 * @param outcomes - In any order.
 * @returns `undefined` where nothing was learned: the table stands.
 * @throws RangeError when an index is outside 0…1 or a low is not finite.
 *
 * @remarks
 * Each of the others counts once a night, by the gravest that they saw. Nobody's word alone moves a neighbour's limits:
 * the club counts for what it still says without whichever of them pulls hardest, up or down, and for nothing where that
 * depends on who is left out.
 */
export function hardinessLearned(
  crop: Crop,
  hardeningIndex: number,
  outcomes: readonly SeenOutcome[],
): LearnedHardiness | undefined {
  const own = outcomes.filter(({ otherIndex }) => otherIndex === undefined);
  const book = bookHardiness(toleranceAt(crop, hardeningIndex).sdK);
  const believed = after(book, crop, own);
  const club = withoutTheLoudest(believed, crop, onceANight(outcomes));
  if (club !== undefined) return club;
  return own.length === 0 ? undefined : believed;
}

function after(belief: HardinessBelief, crop: Crop, outcomes: readonly SeenOutcome[]): HardinessBelief {
  return outcomes.reduce((before, { seen, organLowC, hardeningIndex, otherIndex }) => {
    const { firstMarkC, lt50C } = toleranceAt(crop, hardeningIndex);
    const sdK = otherIndex === undefined ? LOW_SD_K : Math.hypot(LOW_SD_K, BETWEEN_GARDENS_SD_K);
    return afterOutcome(before, { organLowC, sdK, firstMarkC, lt50C }, seen);
  }, belief);
}

/** One outcome a night of each of the others: the gravest, and of several the one in the warmest bed. */
function onceANight(outcomes: readonly SeenOutcome[]): readonly SeenOutcome[] {
  const kept = new Map<string, SeenOutcome>();
  for (const each of outcomes) {
    if (each.otherIndex === undefined) continue;
    const key = `${each.otherIndex} ${each.epochDays}`;
    const before = kept.get(key);
    if (before === undefined || saysMoreOfHarm(each, before)) kept.set(key, each);
  }
  return [...kept.values()];
}

function saysMoreOfHarm(one: SeenOutcome, other: SeenOutcome): boolean {
  const graver = OUTCOMES.indexOf(one.seen) - OUTCOMES.indexOf(other.seen);
  return graver > 0 || (graver === 0 && one.organLowC > other.organLowC);
}

/** Undefined where fewer than two others said anything, or what they say hangs on one of them. */
function withoutTheLoudest(
  own: HardinessBelief,
  crop: Crop,
  theirs: readonly SeenOutcome[],
): LearnedHardiness | undefined {
  const members = [...new Set(theirs.map(({ otherIndex }) => otherIndex))].toSorted((a, b) => (a ?? 0) - (b ?? 0));
  if (members.length < 2) return undefined;
  const pulls = members
    .map((member) => {
      const alone = after(
        own,
        crop,
        theirs.filter(({ otherIndex }) => otherIndex === member),
      );
      return { member, pullK: alone.hardierK - own.hardierK };
    })
    .toSorted((one, other) => one.pullK - other.pullK);
  const [mostTender, mostHardy] = [pulls[0], pulls.at(-1)].map((loudest) =>
    after(
      own,
      crop,
      theirs.filter(({ otherIndex }) => otherIndex !== loudest?.member),
    ),
  );
  if (mostTender === undefined || mostHardy === undefined) return undefined;
  const [least, most] = [mostHardy.hardierK - own.hardierK, mostTender.hardierK - own.hardierK];
  if (least * most <= 0) return undefined;
  return { ...(Math.abs(least) < Math.abs(most) ? mostHardy : mostTender), othersCount: sawEach(theirs) };
}

function sawEach(theirs: readonly SeenOutcome[]): Record<OutcomeKind, number> {
  const by = (kind: OutcomeKind) =>
    new Set(theirs.filter(({ seen }) => seen === kind).map(({ otherIndex }) => otherIndex)).size;
  return { 'no-mark': by('no-mark'), 'leaf-burn': by('leaf-burn'), lost: by('lost') };
}
