import type { CoverKey } from '../covers/cover-key.ts';
import { furtherCovers } from '../covers/further-covers.ts';
import type { BedVerdict } from './bed-verdict.ts';

/** What the bed's crops come to under another stack; `undefined` where the covers cannot lie so. */
export type VerdictUnder = (keys: readonly CoverKey[]) => BedVerdict | undefined;

/** What to do about one bed before it is shut, the cheapest thing that helps. */
export type Step =
  /** Every crop holds as it is. */
  | { readonly kind: 'nothing' }
  /** With one more cover every crop holds, or at least fares better than without (`holds` false). */
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

/** A cover that lowers the odds of a mark by less than this is not worth the walk (judgement). */
const WORTH_THE_WALK = 0.1;

/**
 * The cheapest further cover with which everything in the bed holds: from the shed if something there does, else from what
 * most growers have. Where nothing makes it hold, the one that helps most.
 *
 * @param now - The bed as it lies.
 * @param shed - Spare covers at hand; empty when unknown.
 * @param verdictUnder - What the bed's crops come to under another stack; `undefined` where the stack is not sound.
 */
export function stepFor(now: BedVerdict, shed: readonly CoverKey[], verdictUnder: VerdictUnder): Step {
  if (now.worst.verdict === 'holds') return { kind: 'nothing' };
  const fromShed = best(now, shed.length === 0 ? [] : furtherCovers(now.keys, shed), verdictUnder);
  if (fromShed?.holds === true) return { ...fromShed, fromShed: true };
  const common = best(now, furtherCovers(now.keys), verdictUnder);
  if (common?.holds === true) return { ...common, fromShed: false };
  if (fromShed !== undefined) return { ...fromShed, fromShed: true };
  if (common !== undefined) return { ...common, fromShed: false };
  return { kind: 'none-helps' };
}

type Addition = Omit<Extract<Step, { kind: 'add' }>, 'fromShed'>;

/** The first in order of effort that holds, else the one with the lowest odds of a mark, if it is worth the walk. */
function best(
  now: BedVerdict,
  further: readonly { readonly keys: readonly CoverKey[]; readonly added: readonly CoverKey[] }[],
  verdictUnder: VerdictUnder,
): Addition | undefined {
  let helpsMost: Addition | undefined;
  for (const { keys, added } of further) {
    const after = verdictUnder(keys);
    if (after === undefined) continue;
    const holds = after.worst.verdict === 'holds';
    const addition: Addition = { kind: 'add', added, keys, holds, after };
    if (holds) return addition;
    if (harm(after) < harm(helpsMost?.after ?? now)) helpsMost = addition;
  }
  return helpsMost !== undefined && harm(now) - harm(helpsMost.after) >= WORTH_THE_WALK ? helpsMost : undefined;
}

/** A dead plant counts as a whole loss, a burnt leaf as half of one (judgement). */
function harm({ worst }: BedVerdict): number {
  return worst.odds.winterkill + 0.5 * worst.odds.leafBurn;
}
