import {
  type BedNight,
  type BedVerdict,
  bedNight,
  bedVerdict,
  COVERS,
  type CoverKey,
  clearDayLightMJPerM2,
  commonFrame,
  type FrameBuild,
  frameGeometry,
  type NightSite,
  nightFrom,
  ordinaryNight,
  type Planting,
  WALL_KEYS,
  type WallKey,
  without,
} from '../../rules/index.ts';
import type { HourlyForecast } from '../forecast/forecast.ts';
import type { Garden, GardenBed } from './garden.ts';
import { benchOf, canopyOf, gardenSite, nightUnder } from './night-outlook.ts';

/** The night on which the model itself is held against others: clear, calm, a light freeze, the first of December. [°C] */
export const REFERENCE_LOW_C = -4;

const DEG_PER_RAD = 180 / Math.PI;
/** Lights from the usual shallow one to one that looks at the winter sun. [°] */
const TILTS_DEG = [15, 30, 45] as const;

/** A night on which covers are held side by side. */
export interface ComparedNight {
  readonly kind: 'own' | 'reference' | 'stated';
  readonly lowC: number;
  readonly windMPerS: number;
  /** The bed under a stack; undefined where the covers cannot lie so. */
  under(bed: GardenBed, keys: readonly CoverKey[]): BedNight | undefined;
}

/** The coming night at a garden; undefined where the sun does not set. */
export function ownNight(garden: Garden, forecast: HourlyForecast, now: Date): ComparedNight | undefined {
  const span = nightFrom(now, garden.latitudeDeg, garden.longitudeDeg);
  if (span === undefined) return undefined;
  const bench = benchOf(garden, forecast, span, now);
  const { lowC, wind10MPerS } = bench.weather.summary;
  return { kind: 'own', lowC, windMPerS: wind10MPerS, under: (bed, keys) => nightUnder(bed, keys, bench) };
}

/**
 * A night made up from its low, at the garden where one is known.
 *
 * @param lowC - The reference night's where absent.
 */
export function madeUpNight(garden: Garden | undefined, now: Date, lowC?: number): ComparedNight {
  const isReference = lowC === undefined;
  const night = ordinaryNight(lowC ?? REFERENCE_LOW_C, {
    ...(garden && { site: gardenSite(garden, garden.elevationM ?? 0) }),
    ...(isReference ? { sky: 'clear', wind: 'calm' } : { date: now }),
  });
  return {
    kind: isReference ? 'reference' : 'stated',
    lowC: lowC ?? REFERENCE_LOW_C,
    windMPerS: night.assumed.windMPerS,
    under(bed, covers) {
      const { frame, soilKind, mulch } = bed;
      const laid = {
        ...{ covers, canopy: canopyOf(bed) },
        ...(frame && { frame }),
        ...(soilKind && { soilKind }),
        ...(mulch && { mulch }),
      };
      const result = bedNight({ ...night, soil: night.soilUnder(covers), bed: laid });
      return result.kind === 'night' ? result : undefined;
    },
  };
}

/** One stack on the nights compared. */
export interface ComparedStack {
  readonly keys: readonly CoverKey[];
  /** In the order of the nights. [°C] */
  readonly leafLowsC: readonly number[];
  /** Of the first night; absent without crops. */
  readonly verdict: BedVerdict | undefined;
  /** Light that reaches the crop by day. [0…1] */
  readonly lightFraction: number;
  /** Trouble to set up what does not lie there yet, from 1, a light errand; absent for what nobody sets up for a night. */
  readonly effort: number | undefined;
}

/** Stacks side by side, the warmest leaf on the first night first; those that cannot lie so are left out. */
export function comparedStacks(
  stacks: readonly (readonly CoverKey[])[],
  bed: GardenBed,
  plantings: readonly Planting[],
  nights: readonly ComparedNight[],
): readonly ComparedStack[] {
  const all = stacks.flatMap((keys) => {
    const results = nights.map((night) => night.under(bed, keys));
    const [first] = results;
    const [night] = nights;
    if (first === undefined || night === undefined) return [];
    const verdict = plantings.length === 0 ? undefined : bedVerdict(plantings, keys, first, night.windMPerS);
    return {
      keys,
      leafLowsC: results.map((result) => result?.leafLowC ?? Number.NaN),
      verdict,
      lightFraction: first.stack.sunTransmittedFraction,
      effort: effortOf(without(keys, bed.covers)),
    };
  });
  return all.toSorted((a, b) => (b.leafLowsC[0] ?? 0) - (a.leafLowsC[0] ?? 0));
}

function effortOf(keys: readonly CoverKey[]): number | undefined {
  const efforts = keys.map((key) => COVERS[key].effort);
  return efforts.includes(undefined) ? undefined : efforts.reduce<number>((sum, effort) => sum + (effort ?? 0), 0);
}

/** A frame built otherwise, beside the one as it is. */
export interface ComparedFrame {
  readonly change:
    | { readonly kind: 'as-built' }
    | { readonly kind: 'walls'; readonly walls: WallKey }
    | { readonly kind: 'tilt'; readonly tiltDeg: number }
    /** A quilt laid on the light for the night: what the walls are to be measured by. */
    | { readonly kind: 'quilt' };
  readonly frame: FrameBuild;
  /** In the order of the nights. [°C] */
  readonly leafLowsC: readonly number[];
  /** Light that falls on it on a clear shortest day, as a share of that on the frame as built. */
  readonly lightRatio: number;
}

/** The frame of a bed with other walls, steeper lights, and a quilt on it. The first is the one as built. */
export function comparedFrames(
  bed: GardenBed,
  garden: Garden,
  shortestDay: Date,
  nights: readonly ComparedNight[],
): readonly ComparedFrame[] {
  const built = bed.frame ?? commonFrame(garden.latitudeDeg);
  const site = gardenSite(garden, garden.elevationM ?? 0);
  const builtLight = lightOn(built, site, shortestDay);
  const compared = (change: ComparedFrame['change'], frame: FrameBuild, covers = bed.covers): ComparedFrame => ({
    ...{ change, frame },
    leafLowsC: nights.map((night) => night.under({ ...bed, frame }, covers)?.leafLowC ?? Number.NaN),
    lightRatio: lightOn(frame, site, shortestDay) / builtLight,
  });
  const walls = WALL_KEYS.filter((key) => key !== built.walls);
  const tilts = TILTS_DEG.filter((tiltDeg) => tiltDeg > tiltOf(built) + 1);
  return [
    compared({ kind: 'as-built' }, built),
    ...walls.map((key) => compared({ kind: 'walls', walls: key }, { ...built, walls: key })),
    ...tilts.map((tiltDeg) => compared({ kind: 'tilt', tiltDeg }, tilted(built, tiltDeg))),
    ...(isSoft(bed.covers[0]) ? [] : [compared({ kind: 'quilt' }, built, ['quilt', ...bed.covers])]),
  ];
}

/** Something is laid on the light already. */
function isSoft(key: CoverKey | undefined): boolean {
  return key !== undefined && COVERS[key].kind !== 'frame';
}

/** How steep a frame's light lies. [°] */
export function tiltOf({ backM, frontM, depthM }: FrameBuild): number {
  return Math.atan((backM - frontM) / depthM) * DEG_PER_RAD;
}

/** Steeper by a higher back; front and depth stay. */
function tilted(frame: FrameBuild, tiltDeg: number): FrameBuild {
  return { ...frame, backM: frame.frontM + frame.depthM * Math.tan(tiltDeg / DEG_PER_RAD) };
}

function lightOn(frame: FrameBuild, site: NightSite, day: Date): number {
  return clearDayLightMJPerM2(site, frameGeometry(frame), day);
}
