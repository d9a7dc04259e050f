import type { CoverKey } from '../covers/cover-key.ts';
import { type FurtherCover, furtherCovers } from '../covers/further-covers.ts';
import type { Odds } from '../verdict/night-verdict.ts';
import type { BedVerdict } from './bed-verdict.ts';
import { suitableCovers } from './suitable-covers.ts';

/** What the bed's crops come to under another stack; `undefined` where the covers cannot lie so. */
export type VerdictUnder = (keys: readonly CoverKey[]) => BedVerdict | undefined;

/** What to do about one bed before it is shut, the cheapest thing that helps. */
export type Step =
  /** Every crop holds as it is. */
  | { readonly kind: 'nothing' }
  /** With more cover every crop holds, or at least fares better than without (`holds` false). */
  | {
      readonly kind: 'add';
      readonly added: readonly CoverKey[];
      readonly keys: readonly CoverKey[];
      /** From what lies in the shed; otherwise from what most growers have. */
      readonly fromShed: boolean;
      readonly holds: boolean;
      readonly after: BedVerdict;
    }
  /** No cover that we know of helps. */
  | { readonly kind: 'none-helps' };

type Addition = Omit<Extract<Step, { kind: 'add' }>, 'fromShed'>;

/** A cover that lowers the harm by less than this is not worth the walk (judgement). */
const WORTH_THE_WALK = 0.1;
/** Less warmth than this is no cure (judgement). [K] */
const LEAST_GAIN_K = 0.8;

/**
 * The cheapest cover with which everything in the bed holds: one from the shed, else two from the shed, else one of those
 * that most growers have. Where nothing makes it hold, the one that helps most.
 *
 * @param now - The bed as it lies.
 * @param shed - Spare covers at hand; a key stands as often as there are pieces. Empty when unknown.
 * @param verdictUnder - What the bed's crops come to under another stack.
 */
export function stepFor(now: BedVerdict, shed: readonly CoverKey[], verdictUnder: VerdictUnder): Step {
  if (now.worst.verdict === 'holds') return { kind: 'nothing' };
  const one = shed.length === 0 ? undefined : best(now, furtherCovers(now.keys, shed), verdictUnder);
  if (one?.holds === true) return { ...one, fromShed: true };
  const two = shed.length < 2 ? undefined : best(now, twoMore(now.keys, shed), verdictUnder);
  if (two?.holds === true) return { ...two, fromShed: true };
  const common = best(now, furtherCovers(now.keys), verdictUnder);
  if (common?.holds === true) return { ...common, fromShed: false };
  const fromShed = leastHarm(one, two);
  if (fromShed !== undefined && !isMuchBetter(common, fromShed)) return { ...fromShed, fromShed: true };
  return common === undefined ? { kind: 'none-helps' } : { ...common, fromShed: false };
}

/** What lies in the shed does not hide a cover that does much more. */
function isMuchBetter(one: Addition | undefined, other: Addition): boolean {
  return one !== undefined && harmOf(other) - harmOf(one) >= WORTH_THE_WALK;
}

function harmOf({ after }: Addition): number {
  return harmFraction(after.worst.odds);
}

/**
 * Harm of a night as one number: a dead plant counts as a whole loss, a burnt leaf as half of one (judgement).
 *
 * @param odds - Of one planting. [0…1]
 */
export function harmFraction(odds: Odds): number {
  return odds.winterkill + 0.5 * odds.leafBurn;
}

/** Two pieces from the shed, each laid where it can lie. */
function twoMore(keys: readonly CoverKey[], shed: readonly CoverKey[]): readonly FurtherCover[] {
  const found = new Map<string, FurtherCover>();
  for (const first of furtherCovers(keys, shed)) {
    for (const second of furtherCovers(first.keys, without(shed, first.added))) {
      const both = {
        keys: second.keys,
        added: [...first.added, ...second.added],
        effort: first.effort + second.effort,
      };
      if (!found.has(both.keys.join())) found.set(both.keys.join(), both);
    }
  }
  return [...found.values()].sort((a, b) => a.effort - b.effort);
}

/**
 * What is left in the shed.
 *
 * @param shed - A key stands as often as there are pieces.
 * @param taken - One piece of each is taken away; pieces that are not there are passed over.
 */
export function without(shed: readonly CoverKey[], taken: readonly CoverKey[]): readonly CoverKey[] {
  const left = [...shed];
  for (const key of taken) {
    const at = left.indexOf(key);
    if (at >= 0) left.splice(at, 1);
  }
  return left;
}

/** The first in order of effort that holds, else the one with the least harm, if it is worth the walk. */
function best(now: BedVerdict, further: readonly FurtherCover[], verdictUnder: VerdictUnder): Addition | undefined {
  let helpsMost: Addition | undefined;
  const atRisk = now.plantings.filter(({ verdict }) => verdict !== 'holds').map(({ planting }) => planting.crop);
  for (const { keys, added } of suitableCovers(further, atRisk)) {
    const after = verdictUnder(keys);
    if (after === undefined) continue;
    // Equal lows are no cure, whatever the odds make of a fraction of a degree.
    if (after.worst.organLowC - lowNow(now, after) < LEAST_GAIN_K) continue;
    const addition: Addition = { kind: 'add', added, keys, holds: after.worst.verdict === 'holds', after };
    if (addition.holds) return addition;
    helpsMost = leastHarm(helpsMost, addition);
  }
  if (helpsMost === undefined) return undefined;
  const savedFraction = harmFraction(now.worst.odds) - harmFraction(helpsMost.after.worst.odds);
  return savedFraction >= WORTH_THE_WALK ? helpsMost : undefined;
}

/** The low of the same planting without the cover. [°C] */
function lowNow({ plantings, worst }: BedVerdict, after: BedVerdict): number {
  return (plantings.find(({ planting }) => planting === after.worst.planting) ?? worst).organLowC;
}

function leastHarm(one: Addition | undefined, other: Addition | undefined): Addition | undefined {
  if (one === undefined || other === undefined) return one ?? other;
  return harmFraction(other.after.worst.odds) < harmFraction(one.after.worst.odds) ? other : one;
}
