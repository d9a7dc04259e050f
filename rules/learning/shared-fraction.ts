import { COVERS } from '../covers/cover-table.ts';
import type { LaidCovers } from './book-spread.ts';

/**
 * Correlation of the lasting offsets of one bed under two stacks, in draws of the model's inputs (`learning-bench`): what
 * lies under both stays the same, the covers' own properties do not.
 */
const MORE_ON_TOP = 0.7;
const OTHER_COVERS = 0.5;
const BARE_AND_COVERED = 0.3;

/** Do the same covers lie over the bed? Hoops and jugs count too. */
export function isSameStack(one: LaidCovers, other: LaidCovers): boolean {
  return one.walls === other.walls && one.covers.join() === other.covers.join();
}

/**
 * How much of what was learned under one stack holds under another.
 *
 * @returns 0.7 where all covers of one lie in the other too, 0.5 between other covers, 0.3 between bare and covered. [0…1]
 * @see learning-bench
 */
export function sharedFraction(one: LaidCovers, other: LaidCovers): number {
  const covers = one.covers.filter(isCover);
  const others = other.covers.filter(isCover);
  if ((covers.length === 0) !== (others.length === 0)) return BARE_AND_COVERED;
  const contained = covers.every((key) => others.includes(key)) || others.every((key) => covers.includes(key));
  return contained ? MORE_ON_TOP : OTHER_COVERS;
}

function isCover(key: LaidCovers['covers'][number]): boolean {
  return COVERS[key].kind !== 'hoops' && COVERS[key].kind !== 'jugs';
}
