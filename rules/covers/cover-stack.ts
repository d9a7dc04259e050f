import type { CoverGeometry, CoverStack, NightBlanket, WaterMass } from '../balance/night-input.ts';
import type { CoverKey, FrameBuild } from './cover-key.ts';
import { isSoft, orderProblem, type UnsoundOrder } from './cover-order.ts';
import { COVERS, type NightAddition } from './cover-table.ts';
import { commonFrame, frameGeometry, frameWalls } from './frame.ts';
import { doubleTunnelLayers, type LyingSnow, partSkin, placedLayer, snowLayer, snowOn } from './part-layers.ts';
import { comesOffByDay, fewerParts, partsByDay, type StackPart, stackParts } from './stack-parts.ts';

/** The energy balance carries three covers; more are reckoned as if the innermost touched, which is colder. */
const MOST_LAYERS = 3;
/** Beds take this much of the floor of a high tunnel, paths the rest (judgement). */
const BEDS_IN_HIGH_TUNNEL_FRACTION = 0.6;
/** Skin of a 3.8 l jug per kilogram of water. [m² kg⁻¹] */
const JUG_M2_PER_KG = 0.028;
const FEWEST_JUGS_KG_PER_M2 = 20;
/** Three gallons in a ring of 45 cm (makers' figures, `common-practice`). [kg m⁻²] */
const WATER_WALL_KG_PER_M2 = 70;
/** A depth that hoops and lights commonly carry after a snowfall (judgement, on the small side). */
const ASSUMED_SNOW_M = 0.05;
/** Less snow than this shuts out neither cold nor light. */
const THINNEST_SNOW_M = 0.02;
/** 10 cm soil of 6 °C and 2 K more. */
const JUGS_START_C = 8;
/** Snow lets light down to 1/e in this depth. */
const SNOW_LIGHT_DEPTH_M = 0.05;
/** Height of the outermost cover, where its wind and air are taken. */
const HIGH_TUNNEL_HEIGHT_M = 2;
const HOOP_HEIGHT_M = 0.35;
const LAID_HEIGHT_M = 0.15;
const LITTER_HEIGHT_M = 0.1;
/** Half of a household blanket: thinner covers are nearly as cold below as above (judgement). */
const COLD_TOUCH_BELOW_M2K_PER_W = 0.1;
/** Resistance of soaked straw, as a share of dry (judgement). */
const WET_LITTER_SHARE = 0.4;
const ALWAYS = { from: new Date(-8.64e15), to: new Date(8.64e15) } as const;

export interface StackOptions {
  /** The frame as built; the common one when absent. */
  readonly frame?: FrameBuild;
  /** Depth where snow is among the covers; 5 cm when absent. [m, 0…10; less than 2 cm counts as none] */
  readonly snowDepthM?: number;
  /** Snow fell within a day; settled, the worse blanket, when absent. */
  readonly snowIsFresh?: boolean;
  /** Rain has soaked the straw or leaves: they hold two fifths of the warmth that they hold dry. */
  readonly litterIsWet?: boolean;
  /** Water in jugs where they are among the covers; 20 when absent. [kg m⁻², 0…200] */
  readonly waterKgPerM2?: number;
  /** Water when the run begins: the 10 cm soil and 2 K more. [°C] */
  readonly waterStartC?: number;
  /** When blankets and the like lie on another cover; all the time when absent. */
  readonly nightCover?: { readonly from: Date; readonly to: Date };
}

/** Something about a stack that an answer should say. */
export type StackNote =
  | 'row-cover-weight-assumed'
  | 'leaves-as-straw'
  | 'frame-assumed'
  | 'snow-depth-assumed'
  | 'water-assumed'
  | 'hoops-bare'
  | 'jugs-in-the-open'
  | 'inner-covers-as-touching';

export interface SoundStack {
  readonly kind: 'stack';
  /** With everything on. */
  readonly night: CoverStack;
  /** With blankets and the like taken off; `night` itself when they only lie on another cover, which has its window. */
  readonly day: CoverStack;
  /** What comes off by day. */
  readonly takenOffByDay: readonly CoverKey[];
  /** A thin cover lies on the leaves: those it touches run as cold as the cover. What insulates is as warm below as they are. */
  readonly touchesLeaves: boolean;
  /** Sun that reaches the crop by day, square on. [0…1] */
  readonly sunTransmittedFraction: number;
  readonly notes: readonly StackNote[];
}

/**
 * What covers named from outside to inside do to a bed, ready for the energy balance.
 *
 * @param keys - Covers from outside to inside; none is a bare bed. `hoops` hold off the leaves what is named just before them.
 * @param options - Frame, snow, water and when night covers lie.
 * @returns The stack by night and by day, or why the covers cannot lie so and how they could.
 * @throws RangeError when an option is out of range.
 *
 * @remarks
 * Covers that touch are one layer. Blankets, quilts, sheets, tarps and mats on another cover insulate it between the times
 * given; on their own, or inside, they are layers that are absent by day.
 */
export function coverStack(keys: readonly CoverKey[], options: StackOptions = {}): SoundStack | UnsoundOrder {
  refuseOddOptions(options);
  const problem = orderProblem(keys);
  if (problem) return problem;
  const snowM = keys[0] === 'snow' ? (options.snowDepthM ?? ASSUMED_SNOW_M) : 0;
  const allParts = stackParts(keys.filter((key) => key !== 'jugs' && key !== 'snow'));
  const parts = fewerParts(allParts, MOST_LAYERS);
  const plan: Plan = {
    options,
    frame: options.frame ?? commonFrame(1),
    ...(snowM >= THINNEST_SNOW_M && { snow: { depthM: snowM, isFresh: options.snowIsFresh ?? false } }),
    jugs: keys.includes('jugs') || keys.includes('water-wall'),
    ...(keys.includes('water-wall') && { waterKgPerM2: WATER_WALL_KG_PER_M2 }),
  };
  const night = builtStack(parts, plan);
  // Under snow nothing is taken off.
  const day = plan.snow || !layersChange(parts, plan.frame) ? night : builtStack(partsByDay(parts), plan);
  return {
    kind: 'stack',
    night,
    day,
    takenOffByDay: plan.snow ? [] : keys.filter(comesOffByDay),
    touchesLeaves: night.layers.some(
      (layer) => layer.contactWPerM2K > 0 && layer.resistanceM2KPerW < COLD_TOUCH_BELOW_M2K_PER_W,
    ),
    sunTransmittedFraction: sunTransmittedFraction(day),
    notes: stackNotes(keys, options, parts.length < allParts.length),
  };
}

interface Plan {
  readonly options: StackOptions;
  readonly frame: FrameBuild;
  /** Snow on top of it all. */
  readonly snow?: LyingSnow;
  readonly jugs: boolean;
  /** Water that a cover itself holds. */
  readonly waterKgPerM2?: number;
}

function builtStack(parts: readonly StackPart[], plan: Plan): CoverStack {
  const { frame, snow } = plan;
  if (parts.length === 0 && snow) return snowedIn(snow, plan);
  // What lies on the outermost cover has a window of its own, unless snow holds it down.
  const topped = snow === undefined && parts[0] ? partSkin(parts[0], frame).topped : undefined;
  const single = parts.map((part, index) => {
    const skin = index === 0 && topped ? topped.below : partSkin(part, frame).night;
    const layer = placedLayer(skin, part, { outside: parts.slice(0, index), inner: parts[index + 1], frame });
    const isSoaked = plan.options.litterIsWet === true && index === 0 && isLitter(part);
    return isSoaked ? { ...layer, resistanceM2KPerW: WET_LITTER_SHARE * layer.resistanceM2KPerW } : layer;
  });
  const layers = isDoubleTunnelAlone(parts) ? doubleTunnelLayers() : single;
  const outermost = parts[0]?.base;
  return {
    layers,
    geometry: geometryOf(parts[0], frame),
    ...(outermost !== undefined && COVERS[outermost].kind === 'frame' && { walls: frameWalls(frame) }),
    ...(plan.jugs && layers.length > 0 && { waterMass: waterMass(plan) }),
    ...(topped && { blanket: nightBlanket(topped.addition, plan.options) }),
    ...(snow && { snow: snowOn(snow) }),
    floorFraction: isHighTunnel(outermost) && parts.length > 1 ? BEDS_IN_HIGH_TUNNEL_FRACTION : 1,
  };
}

function isLitter({ base }: StackPart): boolean {
  return base !== undefined && COVERS[base].kind === 'litter';
}

/** Snow on the crop itself. */
function snowedIn(snow: LyingSnow, plan: Plan): CoverStack {
  return {
    layers: [snowLayer(snow)],
    geometry: { kind: 'flat', heightM: LITTER_HEIGHT_M, tiltDeg: 0, azimuthDeg: 0 },
    ...(plan.jugs && { waterMass: waterMass(plan) }),
    floorFraction: 1,
  };
}

/** Whether taking off what comes off by day does more than end a blanket's window. */
function layersChange(parts: readonly StackPart[], frame: FrameBuild): boolean {
  return parts.some(
    (part, index) =>
      (part.base !== undefined && comesOffByDay(part.base)) ||
      (part.soft.some(comesOffByDay) && (index > 0 || partSkin(part, frame).topped === undefined)),
  );
}

function geometryOf(outermost: StackPart | undefined, frame: FrameBuild): CoverGeometry {
  const flat = { kind: 'flat', tiltDeg: 0, azimuthDeg: 0 } as const;
  if (outermost === undefined) return { ...flat, heightM: LAID_HEIGHT_M };
  if (outermost.base === undefined) {
    return outermost.held ? { ...flat, kind: 'arch', heightM: HOOP_HEIGHT_M } : { ...flat, heightM: LAID_HEIGHT_M };
  }
  const { kind } = COVERS[outermost.base];
  if (kind === 'frame') return frameGeometry(frame);
  if (kind === 'high-tunnel') return { ...flat, kind: 'arch', heightM: HIGH_TUNNEL_HEIGHT_M };
  if (kind === 'low-tunnel' || kind === 'bell') return { ...flat, kind: 'arch', heightM: HOOP_HEIGHT_M };
  return { ...flat, heightM: LITTER_HEIGHT_M };
}

function isHighTunnel(key: CoverKey | undefined): boolean {
  return key !== undefined && COVERS[key].kind === 'high-tunnel';
}

function isDoubleTunnelAlone(parts: readonly StackPart[]): boolean {
  return parts.length === 1 && parts[0]?.base === 'high-tunnel-double';
}

function waterMass({ waterKgPerM2: held, options }: Plan): WaterMass {
  const { waterKgPerM2 = held ?? FEWEST_JUGS_KG_PER_M2, waterStartC = JUGS_START_C } = options;
  return { kgPerM2: waterKgPerM2, areaRatio: JUG_M2_PER_KG * waterKgPerM2, startC: waterStartC };
}

function nightBlanket(addition: NightAddition, { nightCover = ALWAYS }: StackOptions): NightBlanket {
  const { resistanceM2KPerW, heatCapacityJPerM2K } = addition;
  return { resistanceM2KPerW, heatCapacityJPerM2K, ...nightCover };
}

function sunTransmittedFraction({ layers, snow }: CoverStack): number {
  const throughLayers = layers.reduce((product, layer) => product * layer.sunTransmittedFraction, 1);
  return snow ? throughLayers * Math.exp(-snow.depthM / SNOW_LIGHT_DEPTH_M) : throughLayers;
}

function stackNotes(keys: readonly CoverKey[], options: StackOptions, merged: boolean): readonly StackNote[] {
  const covered = keys.some((key) => key !== 'hoops' && key !== 'jugs');
  const due: readonly (readonly [StackNote, boolean])[] = [
    ['row-cover-weight-assumed', keys.includes('row-cover')],
    ['leaves-as-straw', keys.includes('leaves')],
    ['frame-assumed', options.frame === undefined && keys.some((key) => COVERS[key].kind === 'frame')],
    ['snow-depth-assumed', options.snowDepthM === undefined && keys.includes('snow')],
    ['water-assumed', options.waterKgPerM2 === undefined && covered && keys.includes('jugs')],
    ['hoops-bare', keys.some((key, index) => key === 'hoops' && isIdle(keys[index - 1]))],
    ['jugs-in-the-open', keys.includes('jugs') && !covered],
    ['inner-covers-as-touching', merged],
  ];
  return due.filter(([, isDue]) => isDue).map(([note]) => note);
}

function isIdle(over: CoverKey | undefined): boolean {
  return over === undefined || !(isSoft(over) || COVERS[over].kind === 'low-tunnel');
}

function refuseOddOptions({ snowDepthM = 0, waterKgPerM2 = 0 }: StackOptions): void {
  if (!(snowDepthM >= 0 && snowDepthM <= 10)) throw new RangeError(`snowDepthM ${snowDepthM} is outside 0…10`);
  if (!(waterKgPerM2 >= 0 && waterKgPerM2 <= 200)) {
    throw new RangeError(`waterKgPerM2 ${waterKgPerM2} is outside 0…200`);
  }
}
