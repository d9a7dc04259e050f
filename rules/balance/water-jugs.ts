import { FREEZING_HEAT_J_PER_KG } from '../constants.ts';
import type { HeatNetwork, Link } from './heat-network.ts';
import type { HeatNode } from './heat-node.ts';
import type { WaterMass } from './night-input.ts';
import { nextPhase, type Phase, phaseAt } from './phase.ts';

/** General physics. */
const WATER_HEAT_J_PER_KGK = 4186;
/** Water in jugs freezes evenly between 0 °C and this (`judgement`). */
const FROZEN_C = -0.5;
const FREEZING_SLOPE_J_PER_KGK = WATER_HEAT_J_PER_KGK + FREEZING_HEAT_J_PER_KG / -FROZEN_C;
/** Convection and radiation between a jug and what stands round it (`judgement`). */
const JUG_W_PER_M2K = 8;

/** Water jugs among the crop. Their heat content, freezing included, follows the heat fluxes exactly. */
export interface Jugs {
  readonly node: HeatNode;
  readonly kgPerM2: number;
  /** Surface per area of bed. */
  readonly areaRatio: number;
  readonly air: Link;
  /** What the water stores over a step, straightened about the latest estimate. */
  readonly store: Link;
  phase: Phase;
  /** At the beginning of the step. */
  heatJPerKg: number;
}

/**
 * Jugs at the temperature of their node.
 *
 * @param network - The balance.
 * @param node - Node that holds the temperature.
 * @param air - Air about them; `undefined` in the open.
 * @param mass - How much water, and its surface, per area of bed.
 * @param floorFraction - Share of the outer floor that the bed takes. [0…1]
 * @returns The jugs, per area of the outer floor.
 */
export function jugsIn(
  network: HeatNetwork,
  node: HeatNode,
  air: HeatNode | undefined,
  mass: WaterMass,
  floorFraction: number,
): Jugs {
  return {
    node,
    kgPerM2: mass.kgPerM2 * floorFraction,
    areaRatio: mass.areaRatio,
    air: network.link(node, air, JUG_W_PER_M2K * mass.areaRatio * floorFraction),
    store: network.link(node, undefined),
    phase: phaseAt(node.nowC, FROZEN_C),
    heatJPerKg: contentJPerKg(node.nowC),
  };
}

/**
 * Sets what the jugs store over a step, in the phase that is assumed.
 *
 * @param jugs - The jugs.
 * @param stepS - Length of the step. [s]
 */
export function setJugStore(jugs: Jugs, stepS: number): void {
  const slope = jugs.phase === 'slush' ? FREEZING_SLOPE_J_PER_KGK : WATER_HEAT_J_PER_KGK;
  const warmthJPerKg = jugs.phase === 'ice' ? jugs.heatJPerKg : jugs.heatJPerKg - FREEZING_HEAT_J_PER_KG;
  jugs.store.perUnit = (slope * jugs.kgPerM2) / stepS;
  jugs.store.outsideValue = warmthJPerKg / slope;
}

/**
 * Takes the temperature that the balance found as the new estimate.
 *
 * @param jugs - The jugs.
 * @returns Whether they began or ceased to freeze or thaw, so that the balance needs another pass.
 */
export function followJugs(jugs: Jugs): boolean {
  const phase = nextPhase(jugs.phase, phaseAt(jugs.node.nowC, FROZEN_C));
  const isCrossed = phase !== jugs.phase;
  jugs.phase = phase;
  return isCrossed;
}

/**
 * Ends the step: moves the heat that flowed and sets the temperature from the heat content.
 *
 * @param jugs - The jugs, with the temperature that the balance found.
 * @param airC - Temperature of the air about them at the end of the step. [°C]
 * @param stepS - Length of the step. [s]
 */
export function settleJugs(jugs: Jugs, airC: number, stepS: number): void {
  const gain = stepS * (jugs.air.perUnit * (airC - jugs.node.nowC) + jugs.node.sunWPerM2);
  jugs.heatJPerKg += gain / jugs.kgPerM2;
  jugs.node.nowC = temperatureC(jugs.heatJPerKg);
  jugs.phase = phaseAt(jugs.node.nowC, FROZEN_C);
}

function contentJPerKg(waterC: number): number {
  const meltedFraction = Math.min(1, Math.max(0, (waterC - FROZEN_C) / -FROZEN_C));
  return WATER_HEAT_J_PER_KGK * waterC + FREEZING_HEAT_J_PER_KG * meltedFraction;
}

function temperatureC(heatJPerKg: number): number {
  const overMelted = heatJPerKg - FREEZING_HEAT_J_PER_KG;
  if (overMelted >= 0) return overMelted / WATER_HEAT_J_PER_KGK;
  const mixedC = overMelted / FREEZING_SLOPE_J_PER_KGK;
  return mixedC > FROZEN_C ? mixedC : heatJPerKg / WATER_HEAT_J_PER_KGK;
}
