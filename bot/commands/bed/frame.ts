import { COVERS, type CoverKey, commonFrame, type FrameBuild, WALL_KEYS, WALLS } from '../../../rules/index.ts';
import { PlainProblem } from '../../ground/errors.ts';
import { shortLength, type UnitSystem } from '../../ground/units.ts';
import { capitalised, list } from '../../text/phrases.ts';
import type { Reader } from '../../text/reader.ts';
import type { OptionSpec } from '../command.ts';
import { maybe, oneOf } from '../options.ts';
import { COMPASS, type CompassPoint, compassIndex, compassPoint, DEG_PER_POINT } from '../typed/compass.ts';
import { typedLengthM, typedSizeM } from '../typed/length.ts';
import { type Read, read, unread } from '../typed/read.ts';

const FRAME_IS_NEEDED = 'size, back, front, facing and walls describe a cold frame: name one among the covers.';
/** No cold frame is smaller or larger (judgement). [m] */
const SIZES_M = { least: 0.3, most: 12 } as const;
const HEIGHTS_M = { least: 0.05, most: 2 } as const;

export const FRAME_OPTIONS: readonly OptionSpec[] = [
  { name: 'size', description: 'Of a cold frame, such as 4 x 8 ft, which is also what I assume', kind: 'text' },
  { name: 'back', description: 'Height of the frame at the back; 12 in unless you say', kind: 'text' },
  { name: 'front', description: 'Height of the frame in front; 8 in unless you say', kind: 'text' },
  {
    name: 'facing',
    description: 'Where the light of the frame slopes to; toward the noon sun unless you say',
    kind: 'text',
    choices: COMPASS.map((value) => ({ label: capitalised(value), value })),
  },
  {
    name: 'walls',
    description: 'What the walls of the frame are made of; wood unless you say',
    kind: 'text',
    choices: WALL_KEYS.map((value) => ({ label: capitalised(WALLS[value].american), value })),
  },
];

export function frameSchema(units: UnitSystem) {
  const small = units === 'us' ? 'in' : 'cm';
  return {
    size: maybe((text) => typedSize(text, units)),
    back: maybe((text) => within(typedLengthM(text, small), HEIGHTS_M, 'A frame is 2 in to 6 ft (5 cm to 2 m) high.')),
    front: maybe((text) => within(typedLengthM(text, small), HEIGHTS_M, 'A frame is 2 in to 6 ft (5 cm to 2 m) high.')),
    facing: maybe(typedFacing),
    walls: maybe(oneOf('walls', WALL_KEYS)),
  };
}

/** Front to back first, whichever way round it was typed. */
function typedSize(text: string, units: UnitSystem): Read<readonly [number, number]> {
  const size = typedSizeM(text, units === 'us' ? 'ft' : 'm');
  if (!size.ok) return size;
  const [depth, length] = [...size.value].sort((a, b) => a - b);
  const fits = (side: number | undefined): side is number =>
    side !== undefined && side >= SIZES_M.least && side <= SIZES_M.most;
  return fits(depth) && fits(length)
    ? read([depth, length])
    : unread('The sides of a frame are 1 to 40 ft (30 cm to 12 m) long.');
}

function typedFacing(text: string): Read<CompassPoint> {
  const point = COMPASS[compassIndex(text.replace(/\s/g, '')) ?? -1];
  return point === undefined ? unread(`facing is one of ${list(COMPASS, 'or')}.`) : read(point);
}

function within(length: Read<number>, limits: { readonly least: number; readonly most: number }, problem: string) {
  return !length.ok || (length.value >= limits.least && length.value <= limits.most) ? length : unread(problem);
}

export interface FrameWish {
  readonly size?: readonly [depthM: number, lengthM: number] | undefined;
  readonly back?: number | undefined;
  readonly front?: number | undefined;
  readonly facing?: CompassPoint | undefined;
  readonly walls?: FrameBuild['walls'] | undefined;
}

export function hasFrame(covers: readonly CoverKey[]): boolean {
  return covers.some((key) => COVERS[key].kind === 'frame');
}

/**
 * The frame as told, over the one known so far or the common one; undefined while nobody has described it.
 *
 * @param known - As kept so far.
 * @throws PlainProblem when there is no frame over the bed, or when its front would be higher than its back.
 */
export function frameFrom(
  wish: FrameWish,
  known: FrameBuild | undefined,
  covers: readonly CoverKey[],
  latitudeDeg: number,
): FrameBuild | undefined {
  const told = [wish.size, wish.back, wish.front, wish.facing, wish.walls].some((value) => value !== undefined);
  if (!hasFrame(covers)) {
    if (told) throw new PlainProblem(FRAME_IS_NEEDED);
    return undefined;
  }
  if (!told) return known;
  const before = known ?? commonFrame(latitudeDeg);
  const [depthM, lengthM] = wish.size ?? [before.depthM, before.lengthM];
  const backM = wish.back ?? Math.max(before.backM, wish.front ?? 0);
  const frontM = wish.front ?? Math.min(before.frontM, backM);
  if (frontM > backM) throw new PlainProblem('The front of a frame is no higher than its back: give back and front.');
  const facingDeg = wish.facing === undefined ? before.facingDeg : COMPASS.indexOf(wish.facing) * DEG_PER_POINT;
  return { depthM, lengthM, backM, frontM, facingDeg, walls: wish.walls ?? before.walls };
}

/** "Frame 4 x 8 ft, 12 in at the back, 8 in in front, facing south, wooden walls (1½ in)". */
export function frameWords(frame: FrameBuild | undefined, latitudeDeg: number, { units, dialect }: Reader): string {
  const { depthM, lengthM, backM, frontM, facingDeg, walls } = frame ?? commonFrame(latitudeDeg);
  const side = (metres: number) => Math.round((units === 'us' ? metres / 0.3048 : metres) * 10) / 10;
  const size = `${side(depthM)} × ${side(lengthM)} ${units === 'us' ? 'ft' : 'm'}`;
  const heights = `${shortLength(backM, units)} at the back, ${shortLength(frontM, units)} in front, facing ${compassPoint(facingDeg)}`;
  return `Frame ${size}, ${heights}, ${WALLS[walls][dialect]}${frame === undefined ? ' (assumed)' : ''}.`;
}
