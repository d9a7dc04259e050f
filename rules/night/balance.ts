import type { OutsideInstant } from '../sky/prepared-weather.ts';
import type { Bed, Cover } from './bed.ts';
import { addConvection } from './convection.ts';
import { countingSnow, dressCover, setOptics } from './cover-dress.ts';
import { findExposedLeaf } from './exposed-leaf.ts';
import { addLeakage } from './leakage.ts';
import type { Vent } from './night-input.ts';
import { setSun } from './shortwave.ts';
import { type Exposure, type Surroundings, setSurroundings } from './surroundings.ts';
import { addVapour } from './vapour.ts';
import { addJugStorage, jugsCross, settleJugs } from './water-jugs.ts';
import { moveWetness } from './wetness.ts';

const LEAF_HEAT_J_PER_M2K = 1200;
/** A pass that moves no estimate by more than this is the last one. */
const SETTLED_K = 0.15;
const MOST_PASSES = 4;
const START_SETTLED_K = 0.01;
const MOST_START_PASSES = 60;
/** Stiffness that holds wall and water at their start while everything light finds its balance. [W m⁻² K⁻¹] */
const HELD_W_PER_M2K = 1e9;
/** Optics are worked out anew when the wetness of a cover has moved by this. */
const OPTICS_STEP_FRACTION = 0.001;
const LEAST_VAPOUR_HPA = 0.01;

/** A bed, how open it stands, and what it feels at the moment. */
export interface Scene {
  readonly bed: Bed;
  readonly exposure: Exposure;
  readonly around: Surroundings;
  isBlanketed: boolean;
  vent: Vent | undefined;
}

/**
 * Brings everything light of a bed into steady state with the weather of an instant; soil, walls and water hold their temperature and the
 * covers are dry.
 *
 * @param scene - The bed; its nodes are set.
 * @param outside - Weather of the instant.
 */
export function settleStart(scene: Scene, outside: OutsideInstant): void {
  const { bed } = scene;
  for (const cover of bed.covers) cover.wetFraction = 0;
  setScene(scene, outside, true);
  for (let pass = 0; pass < MOST_START_PASSES; pass++) {
    if (solvePass(scene, 0, START_SETTLED_K)) break;
  }
  for (const node of bed.heatNodes) {
    node.beforeC = node.nowC;
    node.earlierC = node.nowC;
  }
  for (const { below } of bed.covers) {
    below.vapour.beforeHPa = below.vapour.nowHPa;
    below.vapour.earlierHPa = below.vapour.nowHPa;
  }
  bed.exposedLeafC = bed.leaves.nowC;
  findExposedLeaf(bed, scene.around);
}

/**
 * Moves a bed over one implicit step, to the weather of its end.
 *
 * @param scene - The bed; its nodes, soil, wetness and leaf move to the end of the step.
 * @param outside - Weather at the end of the step.
 * @param stepS - Length of the step. [s]
 * @param isDressChanged - Whether a blanket was laid on or taken off at the beginning of the step.
 */
export function advance(scene: Scene, outside: OutsideInstant, stepS: number, isDressChanged: boolean): void {
  const { bed, around } = scene;
  setScene(scene, outside, isDressChanged);
  extrapolate(bed, stepS);
  for (let pass = 1; pass <= MOST_PASSES; pass++) {
    if (solvePass(scene, stepS, SETTLED_K)) break;
  }
  settleStores(scene, stepS);
  moveWetness(bed, around, stepS);
  findExposedLeaf(bed, around);
}

function setScene(scene: Scene, outside: OutsideInstant, isDressChanged: boolean): void {
  const { bed, around, isBlanketed } = scene;
  const snow = countingSnow(bed.stack);
  setSurroundings(around, scene.exposure, outside);
  setSun(bed, outside, isBlanketed, snow);
  if (isDressChanged) {
    for (const cover of bed.covers) dressCover(cover, undefined, undefined);
    const outer = bed.covers[0];
    if (outer !== undefined) dressCover(outer, isBlanketed ? bed.stack.blanket : undefined, snow);
  }
  if (isDressChanged || bed.covers.some(areOpticsStale)) refreshOptics(bed, isBlanketed, snow !== undefined);
}

function refreshOptics(bed: Bed, isBlanketed: boolean, isSnowed: boolean): void {
  for (const cover of bed.covers) setOptics(cover, false, false);
  const outer = bed.covers[0];
  if (outer !== undefined) setOptics(outer, isBlanketed, isSnowed);
  bed.longwave.refresh();
}

function areOpticsStale(cover: Cover): boolean {
  return Math.abs(cover.wetFraction - cover.opticsWetFraction) >= OPTICS_STEP_FRACTION;
}

/** First estimate: every node goes on as in the step before. */
function extrapolate(bed: Bed, stepS: number): void {
  const stretch = stepS / bed.stepS;
  for (const node of bed.heatNodes) {
    node.beforeC = node.nowC;
    node.nowC += (node.beforeC - node.earlierC) * stretch;
    node.earlierC = node.beforeC;
  }
  for (const { below } of bed.covers) {
    const { vapour } = below;
    vapour.beforeHPa = vapour.nowHPa;
    vapour.nowHPa = Math.max(LEAST_VAPOUR_HPA, vapour.nowHPa + (vapour.beforeHPa - vapour.earlierHPa) * stretch);
    vapour.earlierHPa = vapour.beforeHPa;
  }
  bed.stepS = stepS;
}

/** Assembles and solves the balance about the latest estimates; says whether they were good enough. */
function solvePass(scene: Scene, stepS: number, settledK: number): boolean {
  const { bed, around } = scene;
  const { network } = bed;
  network.clear();
  addStorage(bed, stepS);
  bed.longwave.addTo(network, around.skyWPerM2);
  addArchSides(bed, around);
  addConvection(bed, around);
  addLeakage(bed, around, scene.vent);
  addVapour(bed, around);
  addSun(bed);
  bed.ground.column.addTo(network, bed.ground.surface, bed.ground.floorFraction, stepS);
  bed.path?.column.addTo(network, bed.path.surface, bed.path.floorFraction, stepS);
  network.solve();
  return takeFound(bed, stepS, settledK);
}

function takeFound(bed: Bed, stepS: number, settledK: number): boolean {
  const { network, ground, path, jugs } = bed;
  let isSettled = jugs === undefined || !jugsCross(jugs.node.nowC, network.found(jugs.node.row));
  for (const node of bed.heatNodes) {
    const foundC = network.found(node.row);
    if (Math.abs(foundC - node.nowC) > settledK) isSettled = false;
    node.nowC = foundC;
  }
  for (const { below } of bed.covers) below.vapour.nowHPa = network.found(below.vapour.row);
  if (stepS === 0) return isSettled;
  if (ground.column.follow(ground.surface.nowC)) isSettled = false;
  if (path?.column.follow(path.surface.nowC) === true) isSettled = false;
  return isSettled;
}

function addStorage(bed: Bed, stepS: number): void {
  const { network, wall, jugs } = bed;
  if (stepS === 0) {
    if (wall !== undefined) network.exchangeWithFixed(wall.node.row, HELD_W_PER_M2K, wall.node.beforeC);
    if (jugs !== undefined) network.exchangeWithFixed(jugs.node.row, HELD_W_PER_M2K, jugs.node.beforeC);
    return;
  }
  const perS = 1 / stepS;
  for (const cover of bed.covers) {
    const { air } = cover.below;
    const facePerS = cover.faceCapacityJPerM2K * perS;
    network.exchangeWithFixed(cover.upper.row, facePerS, cover.upper.beforeC);
    network.exchangeWithFixed(cover.lower.row, facePerS, cover.lower.beforeC);
    const airCapacity = cover.floorFraction * bed.airHeatJPerM3K * cover.below.heightM;
    network.exchangeWithFixed(air.row, airCapacity * perS, air.beforeC);
  }
  const leafCapacity = bed.ground.floorFraction * LEAF_HEAT_J_PER_M2K * bed.canopy.leafAreaIndex;
  network.exchangeWithFixed(bed.leaves.row, leafCapacity * perS, bed.leaves.beforeC);
  if (wall !== undefined) {
    const wallCapacity = wall.walls.areaRatio * wall.walls.heatCapacityJPerM2K;
    network.exchangeWithFixed(wall.node.row, wallCapacity * perS, wall.node.beforeC);
  }
  if (jugs !== undefined) addJugStorage(network, jugs, stepS);
}

/** The sides of an arch see half sky, half the ground around (crossed strings, `two-flux`). */
function addArchSides(bed: Bed, around: Surroundings): void {
  const outer = bed.covers[0];
  if (outer === undefined || bed.stack.geometry.kind !== 'arch') return;
  const surplus = outer.rung.emittedUpFraction * (outer.layer.areaRatio - 1);
  const { upper } = outer;
  const seenWPerM2 = (around.skyWPerM2 + around.aroundWPerM2) / 2;
  bed.network.addGain(upper.row, surplus * (seenWPerM2 - upper.emissionBaseWPerM2));
  bed.network.addLoss(upper.row, upper.row, surplus * upper.emissionSlopeWPerM2K);
}

function addSun(bed: Bed): void {
  if (!bed.isSunlit) return;
  const { network, wall, jugs, path } = bed;
  for (const cover of bed.covers) {
    network.addGain(cover.upper.row, cover.sunWPerM2 / 2);
    network.addGain(cover.lower.row, cover.sunWPerM2 / 2);
  }
  network.addGain(bed.leaves.row, bed.leafSunWPerM2);
  network.addGain(bed.ground.surface.row, bed.ground.sunWPerM2);
  if (wall !== undefined) network.addGain(wall.node.row, wall.sunWPerM2);
  if (jugs !== undefined) network.addGain(jugs.node.row, jugs.sunWPerM2);
  if (path !== undefined) network.addGain(path.surface.row, path.sunWPerM2);
}

function settleStores(scene: Scene, stepS: number): void {
  const { bed, around } = scene;
  bed.ground.column.settle(bed.ground.surface.nowC);
  bed.path?.column.settle(bed.path.surface.nowC);
  const cropAirC = bed.covers[bed.covers.length - 1]?.below.air.nowC ?? around.cropAirC;
  if (bed.jugs !== undefined) settleJugs(bed.jugs, cropAirC, stepS);
}
