import { airHeatCapacityJPerM3K, psychrometricHPaPerK } from '../air/pressure.ts';
import type { AirSpace, Bed, Cover, Crop, Ground, Wall } from './bed.ts';
import type { BedState } from './bed-state.ts';
import { HeatNetwork } from './heat-network.ts';
import { type HeatNode, heatNode, type VapourNode } from './heat-node.ts';
import { blankRung, type Rung, setRung, soilRung } from './ladder.ts';
import { LongwaveExchange } from './longwave-exchange.ts';
import type { Canopy, CoverLayer, CoverStack, NightInput, Walls } from './night-input.ts';
import { SoilColumn, soilStartC } from './soil-column.ts';
import { jugsIn } from './water-jugs.ts';

/** Longwave that passes a canopy falls by this rate with leaf area (`vanthoor-2011`). */
const LONGWAVE_EXTINCTION = 0.94;

/**
 * A bed ready to run: nodes, links and soil of a stack, with what carries over from an earlier run or stack.
 *
 * @param input - Site, soil and crop.
 * @param stack - What lies over the bed.
 * @param screenC - Air temperature outside, the first estimate of every light node and the start of a new wall. [°C]
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
  const { walls, waterMass, layers } = stack;
  const hasPath = layers.length >= 2 && stack.floorFraction < 1;
  const inner = hasPath ? stack.floorFraction : 1;
  const network = new HeatNetwork();
  const soilC = carried?.soilC ?? soilStartC(input.soilProfile);

  // The order of the nodes is the order of elimination: those with few links first, faces last and together.
  const vapours = layers.map(() => network.vapourNode(vapourHPa));
  const wallNode = walls && network.heatNode(carried?.wallC ?? screenC);
  const jugNode = waterMass && network.heatNode(carried?.waterC ?? waterMass.startC);
  const covers = laidCovers(network, layers, vapours, inner, screenC);
  const outermost = covers[0];
  const innermost = covers[covers.length - 1];
  const crop = laidCrop(network, input.canopy, innermost, inner, screenC);
  const { mulchResistanceM2KPerW } = input.soil;
  const ground = laidGround(network, input, mulchResistanceM2KPerW, soilC, inner, innermost?.below);
  const pathC = carried?.pathSoilC ?? soilC;
  const path = hasPath ? laidGround(network, input, 0, pathC, 1 - inner, outermost?.below) : undefined;
  return {
    stack,
    airHeatJPerM3K: airHeatCapacityJPerM3K(input.site.elevationM),
    latentKPerHPa: 1 / psychrometricHPaPerK(input.site.elevationM),
    soilAlbedoFraction: input.soil.albedoFraction,
    heatWPerM2: input.heatWPerM2 ?? 0,
    network,
    longwave: laidLongwave(covers, crop, ground, path),
    covers,
    outermost,
    innermost,
    crop,
    ground,
    path,
    wall: laidWall(network, walls, wallNode, outermost?.below.air),
    jugs: waterMass && jugNode && jugsIn(network, jugNode, innermost?.below.air, waterMass, inner),
    outerDew: outermost && network.wetLink(outermost.upper, undefined),
    stepS: 0,
    wettingFraction: Number.NaN,
  };
}

function laidCovers(
  network: HeatNetwork,
  layers: readonly CoverLayer[],
  vapours: readonly VapourNode[],
  innerFraction: number,
  screenC: number,
): Cover[] {
  const airs = layers.map(() => network.heatNode(screenC));
  const covers: Cover[] = [];
  for (const [i, layer] of layers.entries()) {
    const outside = covers[i - 1]?.below;
    const air = airs[i] as HeatNode;
    const vapour = vapours[i] as VapourNode;
    const upper = network.heatNode(screenC);
    const lower = network.heatNode(screenC);
    const below = {
      air,
      vapour,
      heightM: layer.spaceM,
      leak: network.link(air, outside?.air),
      vapourLeak: network.link(vapour, outside?.vapour),
      potentialBaseHPa: Number.NaN,
      potentialShareFraction: Number.NaN,
      potentialHPa: Number.NaN,
    };
    covers.push({
      layer,
      floorFraction: i === 0 ? 1 : innerFraction,
      rung: blankRung(),
      upper,
      lower,
      below,
      through: network.link(upper, lower),
      upperAir: network.link(upper, outside?.air),
      lowerAir: network.link(lower, air),
      lowerDew: network.wetLink(lower, vapour),
      wetFraction: Number.NaN,
      opticsWetFraction: Number.NaN,
      faceCapacityJPerM2K: Number.NaN,
      leakShareFraction: Number.NaN,
    });
  }
  return covers;
}

function laidCrop(
  network: HeatNetwork,
  canopy: Canopy,
  innermost: Cover | undefined,
  floorFraction: number,
  screenC: number,
): Crop {
  const leaves = network.heatNode(screenC);
  const touchWPerM2K = floorFraction * (innermost?.layer.contactWPerM2K ?? 0);
  if (innermost !== undefined && touchWPerM2K > 0) network.link(leaves, innermost.lower, touchWPerM2K);
  return {
    canopy,
    floorFraction,
    leaves,
    air: network.link(leaves, innermost?.below.air),
    wet: network.wetLink(leaves, innermost?.below.vapour),
    exposedLeaf: heatNode(leaves.row, screenC),
    sunWPerM2: Number.NaN,
  };
}

function laidWall(
  network: HeatNetwork,
  walls: Walls | undefined,
  node: HeatNode | undefined,
  air: HeatNode | undefined,
): Wall | undefined {
  if (walls === undefined || node === undefined) return undefined;
  return { walls, node, outside: network.link(node, undefined), inside: network.link(node, air) };
}

function laidGround(
  network: HeatNetwork,
  input: NightInput,
  mulchResistanceM2KPerW: number,
  startC: readonly number[],
  floorFraction: number,
  space: AirSpace | undefined,
): Ground {
  const surface = network.heatNode(startC[0] ?? 0);
  return {
    surface,
    column: new SoilColumn(input.soil, mulchResistanceM2KPerW, startC),
    floorFraction,
    air: network.link(surface, space?.air),
    below: network.link(surface, undefined),
    evaporation: network.wetLink(surface, space?.vapour),
    soilM2KPerW: input.soil.surfaceResistanceSPerM / airHeatCapacityJPerM3K(input.site.elevationM) / floorFraction,
  };
}

function laidLongwave(
  covers: readonly Cover[],
  crop: Crop,
  ground: Ground,
  path: Ground | undefined,
): LongwaveExchange {
  const faces = [...covers.flatMap(({ upper, lower }) => [upper, lower]), crop.leaves, ground.surface];
  const leavesPlace = 2 * covers.length;
  const bed = {
    rungs: [...covers.map(({ rung }) => rung), canopyRung(crop.canopy.leafAreaIndex), soilRung()],
    places: [
      ...covers.map((_, i): [number, number] => [2 * i, 2 * i + 1]),
      [leavesPlace, leavesPlace] as const,
      [leavesPlace + 1, leavesPlace + 1] as const,
    ],
    floorFraction: ground.floorFraction,
  };
  const outerRung = covers[0]?.rung;
  if (path === undefined || outerRung === undefined) return new LongwaveExchange(faces, bed, undefined);
  return new LongwaveExchange([...faces, path.surface], bed, {
    rungs: [outerRung, soilRung()],
    places: [
      [0, 1],
      [leavesPlace + 2, leavesPlace + 2],
    ],
    floorFraction: path.floorFraction,
  });
}

function canopyRung(leafAreaIndex: number): Rung {
  const rung = blankRung();
  setRung(rung, Math.exp(-LONGWAVE_EXTINCTION * leafAreaIndex), 0);
  return rung;
}
