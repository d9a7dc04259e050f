import type { CoverLayer, SnowOnCover } from '../balance/night-input.ts';
import type { CoverKey, FrameBuild } from './cover-key.ts';
import { COVERS, type CoverKind, type NightAddition } from './cover-table.ts';
import { frameMeanHeightM, innerFrameAreaRatio } from './frame.ts';
import { coveredSkin, isPorous, laidSkin, layerOf, touchingSkin } from './layer.ts';
import { MATERIALS, type MaterialKey, type Skin } from './material-table.ts';
import { comesOffByDay, type StackPart } from './stack-parts.ts';

/** Leaves against a cover that lies on them. */
const CONTACT_W_PER_M2K = 4;
const SNOW_KG_PER_M3 = 200;
const ICE_J_PER_KG_K = 2090;
/** Depth of the snow in the table of materials. */
const TABLE_SNOW_M = 0.1;
const FRESH_SNOW_W_PER_MK = 0.1;
/** Middle of 0.12–0.3 (`snow-memory`); fresh snow is by `moene-van-dam`. */
const SETTLED_SNOW_W_PER_MK = 0.2;
/** Double less single polyethylene in a trade table of R-values (`glazing-r-values`): what the air between two skins adds. */
const BETWEEN_SKINS_M2K_PER_W = 0.13;
/** Skin of a vessel 40 cm wide and 30 cm high over its own floor would be 4; most of it sees its neighbours and the soil beside it (judgement). */
const BELL_AREA_RATIO = 1.6;
/** Leaks of a high tunnel: doors and a long base (judgement, within `infiltration-tables`). [mm s⁻¹ and per m s⁻¹] */
const HIGH_TUNNEL_LEAK = { leak0MmPerS: 0.3, leak1MmPerM: 0.2 } as const;
/** Of the outer of two skins, which is clamped to the frame. */
const OUTER_SKIN_LEAK = { leak0MmPerS: 0.05, leak1MmPerM: 0.03 } as const;

/** A layer before its place in the stack is known. */
export interface PartSkin {
  /** With everything on. */
  readonly night: Skin;
  /** What comes and goes on a cover that itself stays as it is: the outermost cover can be reckoned so. */
  readonly topped?: { readonly below: Skin; readonly addition: NightAddition };
}

/**
 * The skin of one part of a stack: its base, light covers that touch it, and what is laid on for the night.
 *
 * @param part - Covers that touch.
 * @param frame - The frame as built, for the thickness of its twin-wall.
 * @throws RangeError when the part holds no cover.
 * @remarks Among soft covers that touch, the order makes no difference worth reckoning.
 */
export function partSkin(part: StackPart, frame: FrameBuild): PartSkin {
  const laid = part.base === undefined ? !part.held : COVERS[part.base].kind === 'litter';
  const staying = part.soft.filter((key) => !comesOffByDay(key)).map((key) => softSkin(key, laid));
  const leaving = part.soft.filter(comesOffByDay);
  const below = touching(part.base === undefined ? staying : [...staying, baseSkin(part.base, frame)]);
  const top = touching(leaving.map((key) => softSkin(key, laid)));
  if (below === undefined || top === undefined) return { night: onlyOf(below ?? top) };
  const addition = additionOf(leaving);
  const night = coveredSkin(below, addition, top, laid);
  return isPorous(below) ? { night } : { night, topped: { below, addition } };
}

/** Where a part lies in its stack. */
export interface PartPlace {
  readonly outside: readonly StackPart[];
  /** The next part further in. */
  readonly inner: StackPart | undefined;
  readonly frame: FrameBuild;
}

/** A double-skin tunnel with nothing inside, outer skin first. */
export function doubleTunnelLayers(): readonly [CoverLayer, CoverLayer] {
  const film: Skin = MATERIALS.film.skin;
  return [layerOf({ ...film, ...OUTER_SKIN_LEAK }, 1.5, 0.1), layerOf({ ...film, ...HIGH_TUNNEL_LEAK }, 1.5, 2.2)];
}

/**
 * Gives the skin of a part its shape, from where it lies.
 *
 * @param skin - From {@link partSkin}, with or without what lies on it.
 * @param part - The part.
 * @param place - What is around it.
 *
 * @remarks Areas are arc length over width of common hoops; heights hardly matter (both judgement, as is the split of the
 * space between an outer and an inner cover).
 */
export function placedLayer(skin: Skin, part: StackPart, { outside, inner, frame }: PartPlace): CoverLayer {
  const kind = part.base === undefined ? 'soft' : COVERS[part.base].kind;
  if (kind === 'high-tunnel') return layerOf(skin, 1.5, inner ? 2 : 2.2);
  if (kind === 'low-tunnel') return lowTunnelLayer(skin, part, outside, inner);
  if (kind === 'frame') return frameLayer(skin, outside, inner, frame);
  if (kind === 'bell') return layerOf(skin, BELL_AREA_RATIO, 0.3);
  if (kind === 'litter') return layerOf(skin, 1, 0.04, CONTACT_W_PER_M2K);
  return softLayer(skin, part, { outside, inner, frame });
}

/** Snow that lies on a bed or on its covers. */
export interface LyingSnow {
  readonly depthM: number;
  /** Fallen within a day: half as conducting as settled snow. */
  readonly isFresh: boolean;
}

/** Snow on the crop itself. */
export function snowLayer({ depthM, isFresh }: LyingSnow): CoverLayer {
  const { skin } = MATERIALS.snow;
  const deep: Skin = {
    ...skin,
    resistanceM2KPerW: depthM / snowWPerMK(isFresh),
    heatCapacityJPerM2K: depthM * SNOW_KG_PER_M3 * ICE_J_PER_KG_K,
    sunTransmittedFraction: skin.sunTransmittedFraction ** (depthM / TABLE_SNOW_M),
  };
  return layerOf(deep, 1, 0.04, CONTACT_W_PER_M2K);
}

/** Snow on the outermost cover. */
export function snowOn({ depthM, isFresh }: LyingSnow): SnowOnCover {
  return { depthM, conductivityWPerMK: snowWPerMK(isFresh) };
}

function snowWPerMK(isFresh: boolean): number {
  return isFresh ? FRESH_SNOW_W_PER_MK : SETTLED_SNOW_W_PER_MK;
}

function isBase(part: StackPart | undefined, kind: CoverKind): boolean {
  return part?.base !== undefined && COVERS[part.base].kind === kind;
}

function isHeld(part: StackPart): boolean {
  return part.held || isBase(part, 'low-tunnel');
}

function lowTunnelLayer(
  skin: Skin,
  part: StackPart,
  outside: readonly StackPart[],
  inner: StackPart | undefined,
): CoverLayer {
  const isSecond = outside.some((over) => isBase(over, 'low-tunnel'));
  const isFilm = part.base !== undefined && COVERS[part.base].materials[0] !== 'film-perforated';
  const areaRatio = isSecond ? 1.35 : isFilm ? 1.45 : 1.4;
  if (inner === undefined) return layerOf(skin, areaRatio, isSecond || !isFilm ? 0.4 : 0.45);
  if (isBase(inner, 'low-tunnel')) return layerOf(skin, areaRatio, 0.08);
  return layerOf(skin, areaRatio, inner.held ? 0.15 : 0.35);
}

function frameLayer(
  skin: Skin,
  outside: readonly StackPart[],
  inner: StackPart | undefined,
  frame: FrameBuild,
): CoverLayer {
  const areaRatio = outside.length > 0 ? innerFrameAreaRatio(frame) : 1;
  const heightM = frameMeanHeightM(frame);
  if (inner === undefined) return layerOf(skin, areaRatio, heightM);
  return layerOf(skin, areaRatio, inner.held ? 0.4 * heightM : Math.max(0.02, heightM - 0.1));
}

function softLayer(skin: Skin, part: StackPart, { outside, inner, frame }: PartPlace): CoverLayer {
  const underFrame = outside.some((over) => isBase(over, 'frame'));
  if (!part.held) return layerOf(skin, underFrame ? 1.05 : 1.1, 0.1, CONTACT_W_PER_M2K);
  if (underFrame) return layerOf(skin, 1.05, 0.6 * frameMeanHeightM(frame));
  const areaRatio = outside.length === 0 ? 1.4 : 1.2;
  if (inner) return layerOf(skin, areaRatio, isHeld(inner) ? 0.1 : 0.3);
  if (outside.length === 0) return layerOf(skin, areaRatio, 0.4);
  return layerOf(skin, areaRatio, isBase(outside.at(-1), 'high-tunnel') ? 0.35 : 0.3);
}

function softSkin(key: CoverKey, laid: boolean): Skin {
  const material = COVERS[key].materials[0] ?? 'fabric-medium';
  return laid ? laidSkin(material) : MATERIALS[material].skin;
}

function baseSkin(key: CoverKey, frame: FrameBuild): Skin {
  const { kind, materials } = COVERS[key];
  const skin: Skin = MATERIALS[baseMaterial(key, frame)].skin;
  if (kind !== 'high-tunnel') return skin;
  const inner = { ...skin, ...HIGH_TUNNEL_LEAK };
  return materials.length === 1 ? inner : touchingSkin({ ...skin, ...OUTER_SKIN_LEAK }, inner, BETWEEN_SKINS_M2K_PER_W);
}

function baseMaterial(key: CoverKey, frame: FrameBuild): MaterialKey {
  if (key === 'cold-frame-twin-wall' && frame.twinWallMm === 10) return 'twin-wall-10';
  return COVERS[key].materials[0] ?? 'film';
}

function touching(skins: readonly Skin[]): Skin | undefined {
  const [outermost, ...further] = skins;
  return outermost && further.reduce((outer, inner) => touchingSkin(outer, inner), outermost);
}

function onlyOf(skin: Skin | undefined): Skin {
  if (skin === undefined) throw new RangeError('part has neither a base nor a soft cover');
  return skin;
}

function additionOf(keys: readonly CoverKey[]): NightAddition {
  const additions = keys.map((key) => COVERS[key].nightAddition).filter((addition) => addition !== undefined);
  return {
    resistanceM2KPerW: additions.reduce((sum, { resistanceM2KPerW }) => sum + resistanceM2KPerW, 0),
    heatCapacityJPerM2K: additions.reduce((sum, { heatCapacityJPerM2K }) => sum + heatCapacityJPerM2K, 0),
    source: 'cloth-memory',
  };
}
