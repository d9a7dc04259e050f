import type { CoverKey } from '../covers/cover-key.ts';
import { COVERS } from '../covers/cover-table.ts';
import type { FurtherCover } from '../covers/further-covers.ts';
import type { Crop } from '../crops/crop.ts';
import { type HarvestKind, harvestKind } from '../harvest/harvest-table.ts';

/** What grows from below the ground: loose straw or leaves keep it, and come off in spring. */
const MULCHED: ReadonlySet<HarvestKind> = new Set<HarvestKind>(['root', 'tuber', 'bulb', 'perennial']);

/** Roots, bulbs and crowns are mulched; leaves, heads and fruit are not buried in loose straw for a night (common practice). */
export function isMulched(crop: Crop): boolean {
  return crop.judgedBy === 'surface' || MULCHED.has(harvestKind(crop));
}

/**
 * The covers that a grower would lay on these crops, in the order of the trouble.
 *
 * @param further - Ways to lay one more cover, least effort first.
 * @param crops - What grows in the bed and is at risk.
 * @returns Without loose straw and leaves where anything is no root, bulb or crown; with them first where all are.
 */
export function suitableCovers(further: readonly FurtherCover[], crops: readonly Crop[]): readonly FurtherCover[] {
  const litter = further.filter(({ added }) => added.some(isLitter));
  const others = further.filter(({ added }) => !added.some(isLitter));
  return crops.length > 0 && crops.every(isMulched) ? [...litter, ...others] : others;
}

function isLitter(key: CoverKey): boolean {
  return COVERS[key].kind === 'litter';
}
