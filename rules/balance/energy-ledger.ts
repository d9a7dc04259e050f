import type { Scene } from './balance.ts';
import type { Bed, Ground } from './bed.ts';
import type { Link, WetLink } from './heat-network.ts';

/** Where the heat of a bed came from and went to in one step, per area of the outermost floor. All but `stored` are gains. [W m⁻²] */
export interface EnergyLedger {
  readonly atMs: number;
  readonly longwaveWPerM2: number;
  readonly outsideAirWPerM2: number;
  readonly vapourWPerM2: number;
  readonly sunWPerM2: number;
  readonly deepSoilWPerM2: number;
  readonly storedWPerM2: number;
}

/**
 * Heat of what stores it beyond one step, to be taken before the step.
 *
 * @param bed - The bed.
 * @returns Heat in soil and jugs. [J m⁻²]
 */
export function groundHeatJPerM2({ ground, path, jugs }: Bed): number {
  const jugHeat = jugs === undefined ? 0 : jugs.kgPerM2 * jugs.heatJPerKg;
  const pathHeat = path === undefined ? 0 : path.floorFraction * path.column.heatJPerM2();
  return ground.floorFraction * ground.column.heatJPerM2() + pathHeat + jugHeat;
}

/**
 * Adds up what crossed the outside of a bed in the step that has just been made, from the physical fluxes and not from the equations that were
 * solved: the two agree to rounding when nothing was lost or counted twice.
 *
 * @param scene - The bed after a step.
 * @param atMs - End of the step. [ms since 1970]
 * @param groundBeforeJPerM2 - `groundHeatJPerM2` before the step.
 * @returns The ledger.
 */
export function energyLedger(scene: Scene, atMs: number, groundBeforeJPerM2: number): EnergyLedger {
  const { bed, around } = scene;
  const { nodes } = bed.network;
  const light = nodes.reduce((sum, node) => sum + node.storeWPerM2K * (node.nowC - node.beforeC), 0);
  return {
    atMs,
    longwaveWPerM2: bed.longwave.netWPerM2(around.skyWPerM2, around.aroundWPerM2),
    outsideAirWPerM2: outsideAirWPerM2(bed),
    vapourWPerM2: vapourWPerM2(bed, around.vapourHPa),
    sunWPerM2: nodes.reduce((sum, node) => sum + node.sunWPerM2, 0),
    deepSoilWPerM2: deepWPerM2(bed.ground) + (bed.path === undefined ? 0 : deepWPerM2(bed.path)),
    storedWPerM2: light + (groundHeatJPerM2(bed) - groundBeforeJPerM2) / bed.stepS,
  };
}

function outsideAirWPerM2({ outermost, crop, ground, wall, jugs }: Bed): number {
  const gain = (link: Link, nowC: number) => link.perUnit * (link.outsideValue - nowC);
  const wallGain = wall === undefined ? 0 : gain(wall.outside, wall.node.nowC);
  if (outermost !== undefined) {
    const { upper, upperAir, below } = outermost;
    return wallGain + gain(upperAir, upper.nowC) + gain(below.leak, below.air.nowC);
  }
  const jugGain = jugs === undefined ? 0 : gain(jugs.air, jugs.node.nowC);
  const wallInside = wall === undefined ? 0 : gain(wall.inside, wall.node.nowC);
  return wallGain + wallInside + jugGain + gain(crop.air, crop.leaves.nowC) + gain(ground.air, ground.surface.nowC);
}

function vapourWPerM2({ outermost, outerDew, crop, ground }: Bed, outsideHPa: number): number {
  if (outermost === undefined) return latentGain(ground.evaporation, outsideHPa) + latentGain(crop.wet, outsideHPa);
  const { vapour, vapourLeak } = outermost.below;
  const dew = outerDew === undefined ? 0 : latentGain(outerDew, outsideHPa);
  return vapourLeak.perUnit * (outsideHPa - vapour.nowHPa) + dew;
}

function latentGain({ surface, perHPa }: WetLink, airHPa: number): number {
  return perHPa * (airHPa - surface.saturationBaseHPa - surface.saturationSlopeHPaPerK * surface.nowC);
}

function deepWPerM2({ column, floorFraction }: Ground): number {
  return floorFraction * column.bottomGainWPerM2;
}
