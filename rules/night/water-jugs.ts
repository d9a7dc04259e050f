import { FREEZING_HEAT_J_PER_KG } from './constants.ts';
import type { HeatNetwork, HeatNode } from './heat-network.ts';
import type { WaterMass } from './night-input.ts';

const WATER_HEAT_J_PER_KGK = 4186;
/** Water in jugs freezes evenly between 0 °C and this (`judgement`). */
const FROZEN_C = -0.5;
/** Convection and radiation between a jug and what stands round it (`judgement`). */
const JUG_W_PER_M2K = 8;

/** Water jugs among the crop. Their heat content, freezing included, follows the heat fluxes exactly. */
export interface Jugs {
  readonly node: HeatNode;
  readonly kgPerM2: number;
  readonly areaRatio: number;
  readonly exchangeWPerM2K: number;
  readonly floorFraction: number;
  /** At the beginning of the step. [J per m² of outer floor] */
  heatJPerM2: number;
  sunWPerM2: number;
}

/**
 * Jugs at a temperature.
 *
 * @param mass - How much water, and its surface.
 * @param floorFraction - Share of the outer floor that the bed takes. [0…1]
 * @param node - Node that holds the temperature.
 * @returns The jugs, per area of the outer floor.
 */
export function jugsAt(mass: WaterMass, floorFraction: number, node: HeatNode): Jugs {
  const kgPerM2 = mass.kgPerM2 * floorFraction;
  return {
    node,
    kgPerM2,
    areaRatio: mass.areaRatio,
    exchangeWPerM2K: JUG_W_PER_M2K * mass.areaRatio * floorFraction,
    floorFraction,
    heatJPerM2: kgPerM2 * heatJPerKg(node.nowC),
    sunWPerM2: 0.5,
  };
}

/**
 * Adds the stored heat of the jugs to the balance, straightened about the latest estimate.
 *
 * @param network - The balance.
 * @param jugs - The jugs.
 * @param stepS - Length of the step. [s]
 */
export function addJugStorage(network: HeatNetwork, jugs: Jugs, stepS: number): void {
  const { row, nowC } = jugs.node;
  const perStep = jugs.kgPerM2 / stepS;
  const slope = isFreezing(nowC) ? WATER_HEAT_J_PER_KGK + FREEZING_HEAT_J_PER_KG / -FROZEN_C : WATER_HEAT_J_PER_KGK;
  network.addLoss(row, row, slope * perStep);
  network.addGain(row, (slope * nowC - heatJPerKg(nowC)) * perStep + jugs.heatJPerM2 / stepS);
}

/**
 * Ends the step: moves the heat that flowed and sets the temperature from the heat content.
 *
 * @param jugs - The jugs, with the temperature that the balance found.
 * @param airC - Temperature of the air about them at the end of the step. [°C]
 * @param stepS - Length of the step. [s]
 * @returns Gain of stored heat. [J m⁻²]
 */
export function settleJugs(jugs: Jugs, airC: number, stepS: number): number {
  const gain = stepS * (jugs.exchangeWPerM2K * (airC - jugs.node.nowC) + jugs.sunWPerM2);
  jugs.heatJPerM2 += gain;
  jugs.node.nowC = temperatureC(jugs.heatJPerM2 / jugs.kgPerM2);
  return gain;
}

/**
 * Whether a jug begins or ceases to freeze or thaw between two temperatures.
 *
 * @param fromC - One temperature. [°C]
 * @param toC - The other. [°C]
 * @returns True when the heat curve bends between them.
 */
export function jugsCross(fromC: number, toC: number): boolean {
  return isFreezing(fromC) !== isFreezing(toC) || fromC > 0 !== toC > 0;
}

function isFreezing(waterC: number): boolean {
  return waterC <= 0 && waterC > FROZEN_C;
}

function heatJPerKg(waterC: number): number {
  const meltedFraction = Math.min(1, Math.max(0, (waterC - FROZEN_C) / -FROZEN_C));
  return WATER_HEAT_J_PER_KGK * waterC + FREEZING_HEAT_J_PER_KG * meltedFraction;
}

function temperatureC(contentJPerKg: number): number {
  const belowMelted = contentJPerKg - FREEZING_HEAT_J_PER_KG;
  if (belowMelted >= 0) return belowMelted / WATER_HEAT_J_PER_KGK;
  const mixedC = belowMelted / (WATER_HEAT_J_PER_KGK + FREEZING_HEAT_J_PER_KG / -FROZEN_C);
  return mixedC > FROZEN_C ? mixedC : contentJPerKg / WATER_HEAT_J_PER_KGK;
}
