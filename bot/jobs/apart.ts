import { MS_PER_H } from '../../rules/index.ts';

/** What tells whether two gardens can be served by one post. */
export interface Timed {
  /** When it shuts, or when its sun rises. */
  readonly at: Date;
  /** When its member joined. */
  readonly since: Date;
}

/** Gardens that one post serves. */
export interface Party<T> {
  /** Ends the kind of its rows in the ledger; empty for the party of the member who joined first. */
  readonly suffix: string;
  /** In order of their times, at least one. */
  readonly all: readonly T[];
}

/** Gardens that shut within this time of each other are told together (judgement). */
const TOGETHER_H = 2;

/**
 * Parts gardens of very different times, so that none moves another's post.
 *
 * @param leadH - So long before its time a garden's post is due. Who joined later changes no party that was told already.
 */
export function parties<T extends Timed>(all: readonly T[], leadH: number): readonly Party<T>[] {
  const inOrder = all.toSorted((a, b) => a.at.getTime() - b.at.getTime());
  const isPunctual = ({ at, since }: Timed) => since.getTime() <= at.getTime() - leadH * MS_PER_H;
  const groups: T[][] = [];
  for (const each of [...inOrder.filter(isPunctual), ...inOrder.filter((one) => !isPunctual(one))]) {
    const near = groups.find(([first]) => first !== undefined && hoursApart(first.at, each.at) <= TOGETHER_H);
    if (near === undefined) groups.push([each]);
    else near.push(each);
  }
  const oldest = inOrder.reduce<T | undefined>((old, each) => (old && old.since <= each.since ? old : each), undefined);
  return groups
    .map((group) => ({
      suffix: oldest !== undefined && group.includes(oldest) ? '' : `-at-${group[0]?.at.toISOString().slice(8, 13)}`,
      all: group.toSorted((a, b) => a.at.getTime() - b.at.getTime()),
    }))
    .toSorted((a, b) => (a.all[0]?.at.getTime() ?? 0) - (b.all[0]?.at.getTime() ?? 0));
}

function hoursApart(one: Date, other: Date): number {
  return Math.abs(one.getTime() - other.getTime()) / MS_PER_H;
}
