import type { CoverKey, FrameBuild } from '../covers/cover-key.ts';
import { COVERS } from '../covers/cover-table.ts';
import { comesOffByDay } from '../covers/stack-parts.ts';
import { PROP_SIZES_M, type SizedOpening } from './opening-advice.ts';
import { proppedLight, raisedSide } from './vent-opening.ts';

/** Bed under the hoops of a low tunnel (common practice). [m] */
const LOW_TUNNEL_WIDTH_M = 1;
/** A small high tunnel: 16 ft (judgement). [m] */
const HIGH_TUNNEL_WIDTH_M = 5;
/** Along both sides, a hand to a little below the shoulder (judgement). [m] */
const ROLL_UP_SIZES_M = [0.1, 0.2, 0.4, 0.8] as const;

/** How a grower lets air in. */
export type OpeningWay = 'prop-light' | 'raise-side' | 'roll-up-sides' | 'uncover';

/** The cover of a stack that is opened by day. */
export interface Openable {
  readonly way: OpeningWay;
  readonly cover: CoverKey;
  /** The least first; none for fabric, which is either on or off. */
  readonly openings: readonly SizedOpening[];
  /** What is left when it is taken off, from outside to inside; absent for a high tunnel, which stays. */
  readonly without?: readonly CoverKey[];
}

/**
 * What can be opened of a stack by day: its outermost cover that stays on then.
 *
 * @param keys - Covers from outside to inside. Blankets and the like are off by day, so they do not count.
 * @param frame - The frame as built.
 * @returns Cover, sizes and what is left under it; `undefined` when nothing can be opened: a bare bed, straw, or snow on top.
 */
export function openable(keys: readonly CoverKey[], frame: FrameBuild): Openable | undefined {
  if (keys[0] === 'snow') return undefined;
  const byDay = keys.filter((key) => !comesOffByDay(key));
  const at = byDay.findIndex((key) => key !== 'hoops' && key !== 'jugs');
  const cover = byDay[at];
  if (cover === undefined) return undefined;
  const without = withoutIdleHoops(byDay.toSpliced(at, 1));
  switch (COVERS[cover].kind) {
    case 'frame':
      return { way: 'prop-light', cover, openings: sized(PROP_SIZES_M, (m) => proppedIn(frame, m)), without };
    case 'low-tunnel':
      return { way: 'raise-side', cover, openings: sized(PROP_SIZES_M, lowTunnelSide), without };
    case 'high-tunnel':
      return { way: 'roll-up-sides', cover, openings: sized(ROLL_UP_SIZES_M, highTunnelSides) };
    case 'fabric':
      return { way: 'uncover', cover, openings: [], without };
    default:
      return undefined;
  }
}

function proppedIn({ depthM, lengthM }: FrameBuild, propM: number) {
  return proppedLight(propM, depthM, lengthM);
}

function lowTunnelSide(raisedM: number) {
  return raisedSide(raisedM, LOW_TUNNEL_WIDTH_M);
}

function highTunnelSides(raisedM: number) {
  const side = raisedSide(raisedM, HIGH_TUNNEL_WIDTH_M);
  return { ...side, areaRatio: 2 * side.areaRatio };
}

function sized(sizesM: readonly number[], opening: (sizeM: number) => Omit<SizedOpening, 'sizeM'>): SizedOpening[] {
  return sizesM.map((sizeM) => ({ ...opening(sizeM), sizeM }));
}

/** Hoops whose cover is gone stand idle and would only hold up the order. */
function withoutIdleHoops(keys: readonly CoverKey[]): readonly CoverKey[] {
  return keys.filter((key, index) => key !== 'hoops' || index > 0);
}
