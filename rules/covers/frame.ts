import type { CoverGeometry, Walls } from '../balance/night-input.ts';
import type { SourceKey } from '../sources.ts';
import type { FrameBuild, WallKey } from './cover-key.ts';

const DEG_PER_RAD = 180 / Math.PI;
const LOG_DIAMETER_M = 0.2;
/** Middle of 0.10–0.14 for softwood. */
const SOFTWOOD_W_PER_MK = 0.12;
/** As in the wooden wall: 27 kJ m⁻² K⁻¹ for 38 mm. */
const SOFTWOOD_J_PER_M3K = 27_000 / 0.038;
/** A round log is, on average over its height, π/4 of its diameter thick. */
const LOG_MEAN_THICKNESS_M = (Math.PI / 4) * LOG_DIAMETER_M;
/** Air to air through a single pane, films included. */
const SINGLE_PANE_M2K_PER_W = 0.17;

/** A wall by its make: how well it holds heat, and the plausible range of that. */
export interface WallFacts {
  readonly american: string;
  readonly british: string;
  readonly resistanceM2KPerW: number;
  readonly resistanceRangeM2KPerW: readonly [number, number];
  readonly heatCapacityJPerM2K: number;
  readonly source: SourceKey;
}

/** Walls of a cold frame. The log wall is 0.2 m softwood: R = mean thickness ÷ conductivity, range from 0.10–0.14 W m⁻¹ K⁻¹. */
export const WALLS: Readonly<Record<WallKey, WallFacts>> = {
  wood: {
    american: 'wooden walls (1½ in)',
    british: 'wooden walls (38 mm)',
    resistanceM2KPerW: 0.32,
    resistanceRangeM2KPerW: [0.25, 0.38],
    heatCapacityJPerM2K: 27_000,
    source: 'cibse-guide-a',
  },
  'straw-bale': {
    american: 'straw-bale walls',
    british: 'straw-bale walls',
    resistanceM2KPerW: 6,
    resistanceRangeM2KPerW: [4, 8],
    heatCapacityJPerM2K: 15_000,
    source: 'wall-memory',
  },
  log: {
    american: 'log walls',
    british: 'log walls',
    resistanceM2KPerW: LOG_MEAN_THICKNESS_M / SOFTWOOD_W_PER_MK,
    resistanceRangeM2KPerW: [LOG_MEAN_THICKNESS_M / 0.14, LOG_MEAN_THICKNESS_M / 0.1],
    heatCapacityJPerM2K: SOFTWOOD_J_PER_M3K * LOG_MEAN_THICKNESS_M,
    source: 'cibse-guide-a',
  },
  concrete: {
    american: 'concrete-block walls',
    british: 'concrete-block walls',
    resistanceM2KPerW: 0.2,
    resistanceRangeM2KPerW: [0.15, 0.3],
    heatCapacityJPerM2K: 180_000,
    source: 'wall-memory',
  },
  metal: {
    american: 'sheet-metal walls',
    british: 'sheet-metal walls',
    resistanceM2KPerW: 0.001,
    resistanceRangeM2KPerW: [0.0005, 0.002],
    heatCapacityJPerM2K: 2000,
    source: 'cibse-guide-a',
  },
};

/**
 * The frame assumed when nobody described one: 4 ft by 8 ft, 12 in at the back and 8 in at the front, of 38 mm wood,
 * facing the equator (common practice).
 *
 * @param latitudeDeg - North positive; its sign decides which way the light faces. [°, −90…90]
 */
export function commonFrame(latitudeDeg: number): FrameBuild {
  return {
    walls: 'wood',
    depthM: 1.22,
    lengthM: 2.44,
    backM: 0.305,
    frontM: 0.203,
    facingDeg: latitudeDeg < 0 ? 0 : 180,
  };
}

/** Mean inside height of a frame. [m] */
export function frameMeanHeightM(frame: FrameBuild): number {
  return (frame.backM + frame.frontM) / 2;
}

/**
 * Shape of a frame for the energy balance: its light tilts by the difference of back and front over the depth.
 *
 * @throws RangeError when a length is not above zero or the front is higher than the back.
 */
export function frameGeometry(frame: FrameBuild): CoverGeometry {
  refuseOddFrame(frame);
  return {
    kind: 'tilt',
    heightM: frameMeanHeightM(frame),
    tiltDeg: Math.atan((frame.backM - frame.frontM) / frame.depthM) * DEG_PER_RAD,
    azimuthDeg: frame.facingDeg,
  };
}

/**
 * Walls of a frame per floor area: perimeter times mean height over the floor.
 *
 * @throws RangeError as {@link frameGeometry}.
 */
export function frameWalls(frame: FrameBuild): Walls {
  refuseOddFrame(frame);
  const { resistanceM2KPerW, heatCapacityJPerM2K } = WALLS[frame.walls];
  return { areaRatio: wallAreaRatio(frame), resistanceM2KPerW, heatCapacityJPerM2K };
}

/**
 * Area of the light of a frame that stands in a high tunnel, with its walls counted as so much more light.
 *
 * @returns Area per floor area, at least 1.
 * @remarks
 * Walls of the energy balance border the outside air, which those of an inner frame do not. Their share is what they let
 * through of what a pane would (judgement): wood a third, straw bales hardly anything.
 */
export function innerFrameAreaRatio(frame: FrameBuild): number {
  refuseOddFrame(frame);
  const resistance = WALLS[frame.walls].resistanceM2KPerW;
  return 1 + (wallAreaRatio(frame) * SINGLE_PANE_M2K_PER_W) / (SINGLE_PANE_M2K_PER_W + resistance);
}

function wallAreaRatio(frame: FrameBuild): number {
  return (2 * (frame.depthM + frame.lengthM) * frameMeanHeightM(frame)) / (frame.depthM * frame.lengthM);
}

function refuseOddFrame(frame: FrameBuild): void {
  for (const name of ['depthM', 'lengthM', 'backM', 'frontM'] as const) {
    if (!(frame[name] > 0 && frame[name] <= 30)) throw new RangeError(`${name} ${frame[name]} is outside 0…30 m`);
  }
  if (!(frame.frontM <= frame.backM)) throw new RangeError(`frontM ${frame.frontM} is above backM ${frame.backM}`);
}
