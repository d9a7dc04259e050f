import { airHeatCapacityJPerM3K, psychrometricHPaPerK } from '../air/pressure.ts';
import type { BedState } from './bed-state.ts';
import { HeatNetwork, type HeatNode, heatNode, type VapourNode } from './heat-network.ts';
import { clearRung, type Rung } from './ladder.ts';
import { LongwaveExchange } from './longwave-exchange.ts';
import type { Canopy, CoverLayer, CoverStack, NightInput, NightSite, Walls } from './night-input.ts';
import { SoilColumn, soilStartC } from './soil-column.ts';
import { type Jugs, jugsAt } from './water-jugs.ts';

/** Longwave transmittance falls by this per unit of leaf area (`vanthoor-2011`). */
const LONGWAVE_EXTINCTION = 0.94;

/** Air below a cover. */
export interface AirSpace {
  readonly air: HeatNode;
  readonly vapour: VapourNode;
  readonly heightM: number;
  /** Share of the outer floor that the space stands on; all its exchanges are counted per area of the outer floor. */
  readonly floorFraction: number;
  /** Air exchange with the space outside. [W m⁻² K⁻¹] */
  leakWPerM2K: number;
  /** Vapour pressure that the space would have if nothing condensed: base + share · that of the space outside. */
  potentialBaseHPa: number;
  potentialShareFraction: number;
  potentialHPa: number;
}

/** A cover with its two faces and the air below it. */
export interface Cover {
  readonly layer: CoverLayer;
  readonly rung: Rung;
  readonly upper: HeatNode;
  readonly lower: HeatNode;
  readonly below: AirSpace;
  readonly floorFraction: number;
  wetFraction: number;
  /** Wetness for which the optics were last worked out. */
  opticsWetFraction: number;
  faceCapacityJPerM2K: number;
  conductanceWPerM2K: number;
  leakShareFraction: number;
  lowerAirWPerM2K: number;
  /** Sun absorbed in the whole cover. [W m⁻²] */
  sunWPerM2: number;
}

/** Ground under the crop, or the bare path beside inner covers. */
export interface Ground {
  readonly surface: HeatNode;
  readonly column: SoilColumn;
  readonly floorFraction: number;
  airWPerM2K: number;
  /** Conductance for vapour from the soil to the air, in heat units. */
  vapourWPerM2K: number;
  sunWPerM2: number;
}

/** Sides of a frame. */
export interface Wall {
  readonly walls: Walls;
  readonly node: HeatNode;
  sunWPerM2: number;
}

/** Everything that a run keeps about a bed under one stack. */
export interface Bed {
  readonly site: NightSite;
  readonly stack: CoverStack;
  readonly canopy: Canopy;
  readonly airHeatJPerM3K: number;
  readonly psychrometricHPaPerK: number;
  readonly soilResistanceSPerM: number;
  readonly soilAlbedoFraction: number;
  readonly covers: readonly Cover[];
  readonly leaves: HeatNode;
  readonly ground: Ground;
  readonly path: Ground | undefined;
  readonly wall: Wall | undefined;
  readonly jugs: Jugs | undefined;
  readonly network: HeatNetwork;
  readonly longwave: LongwaveExchange;
  readonly heatNodes: readonly HeatNode[];
  isSunlit: boolean;
  /** Sun that reaches the crop. [W per m² of bed] */
  cropSunWPerM2: number;
  /** Sun absorbed by all leaves. [W per m² of outer floor] */
  leafSunWPerM2: number;
  exposedLeafC: number;
  stepS: number;
}

/**
 * A bed ready to run: nodes, soil and exchange of a stack, with what carries over from an earlier run or stack.
 *
 * @param input - Site, soil and crop.
 * @param stack - What lies over the bed.
 * @param screenC - Air temperature outside, the first estimate of every light node and the start of a wall. [°C]
 * @param vapourHPa - Vapour pressure outside. [hPa]
 * @param carried - Soil, wall and water of an earlier run.
 * @returns The bed; its light nodes are not yet in balance.
 */
export function bedUnder(
  input: NightInput,
  stack: CoverStack,
  screenC: number,
  vapourHPa: number,
  carried: BedState | undefined,
): Bed {
  const count = stack.layers.length;
  const hasPath = count >= 2 && stack.floorFraction < 1;
  const inner = hasPath ? stack.floorFraction : 1;
  let row = count;
  const nextNode = (startC: number) => heatNode(row++, startC);

  const wall = stack.walls && { walls: stack.walls, node: nextNode(carried?.wallC ?? screenC), sunWPerM2: 0.5 };
  const jugs = stack.waterMass && jugsAt(stack.waterMass, inner, nextNode(carried?.waterC ?? stack.waterMass.startC));
  const bedSoilC = carried?.soilC ?? soilStartC(input.soilProfile);
  const path = hasPath ? ground(input, 0, carried?.pathSoilC ?? bedSoilC, 1 - inner, nextNode) : undefined;
  const spaces = stack.layers.map((layer, i) =>
    airSpace(i, layer.spaceM, i === 0 ? 1 : inner, nextNode(screenC), vapourHPa),
  );
  const covers = stack.layers.flatMap((layer, i) => {
    const below = spaces[i];
    return below === undefined ? [] : [cover(layer, below, nextNode(screenC), nextNode(screenC))];
  });
  const leaves = nextNode(screenC);
  const bedGround = ground(input, input.soil.mulchResistanceM2KPerW, bedSoilC, inner, nextNode);

  const faces = [...covers.flatMap(({ upper, lower }) => [upper, lower]), leaves, bedGround.surface];
  if (path !== undefined) faces.push(path.surface);
  const rungs = [...covers.map(({ rung }) => rung), canopyRung(input.canopy.leafAreaIndex)];
  const heatNodes = [...spaces.map(({ air }) => air), ...faces];
  if (wall !== undefined) heatNodes.push(wall.node);
  if (jugs !== undefined) heatNodes.push(jugs.node);
  return {
    site: input.site,
    stack,
    canopy: input.canopy,
    airHeatJPerM3K: airHeatCapacityJPerM3K(input.site.elevationM),
    psychrometricHPaPerK: psychrometricHPaPerK(input.site.elevationM),
    soilResistanceSPerM: input.soil.surfaceResistanceSPerM,
    soilAlbedoFraction: input.soil.albedoFraction,
    covers,
    leaves,
    ground: bedGround,
    path,
    wall,
    jugs,
    network: new HeatNetwork(row),
    longwave: new LongwaveExchange({ rungs, faces, floorFraction: inner }),
    heatNodes,
    isSunlit: false,
    cropSunWPerM2: 0.5,
    leafSunWPerM2: 0.5,
    exposedLeafC: screenC,
    stepS: 0.5,
  };
}

function airSpace(row: number, heightM: number, floorFraction: number, air: HeatNode, vapourHPa: number): AirSpace {
  return {
    air,
    vapour: { row, nowHPa: vapourHPa, beforeHPa: vapourHPa, earlierHPa: vapourHPa },
    heightM,
    floorFraction,
    leakWPerM2K: 0.5,
    potentialBaseHPa: vapourHPa,
    potentialShareFraction: 0.5,
    potentialHPa: vapourHPa,
  };
}

function cover(layer: CoverLayer, below: AirSpace, upper: HeatNode, lower: HeatNode): Cover {
  return {
    layer,
    rung: clearRung(),
    upper,
    lower,
    below,
    floorFraction: below.floorFraction,
    wetFraction: 0.5,
    opticsWetFraction: 0.5,
    faceCapacityJPerM2K: 0.5,
    conductanceWPerM2K: 0.5,
    leakShareFraction: 0.5,
    lowerAirWPerM2K: 0.5,
    sunWPerM2: 0.5,
  };
}

function ground(
  input: NightInput,
  mulchResistanceM2KPerW: number,
  startC: readonly number[],
  floorFraction: number,
  nextNode: (startC: number) => HeatNode,
): Ground {
  return {
    surface: nextNode(startC[0] ?? 0),
    column: new SoilColumn(input.soil, mulchResistanceM2KPerW, startC),
    floorFraction,
    airWPerM2K: 0.5,
    vapourWPerM2K: 0.5,
    sunWPerM2: 0.5,
  };
}

function canopyRung(leafAreaIndex: number): Rung {
  const transmittedFraction = Math.exp(-LONGWAVE_EXTINCTION * leafAreaIndex);
  const emitted = 1 - transmittedFraction;
  return { ...clearRung(), transmittedFraction, emittedUpFraction: emitted, emittedDownFraction: emitted };
}
