import type { OutsideInstant } from '../sky/prepared-weather.ts';
import type { Bed, Cover } from './bed.ts';
import { setInnerConvection, setOuterConvection } from './convection.ts';
import { countingSnow, dressCover, setOptics } from './cover-dress.ts';
import { findExposedLeaf } from './exposed-leaf.ts';
import { setLeakage } from './leakage.ts';
import type { Vent } from './night-input.ts';
import { setSun } from './shortwave.ts';
import { type Exposure, type Surroundings, setSurroundings } from './surroundings.ts';
import { setVapour } from './vapour.ts';
import { followJugs, setJugStore, settleJugs } from './water-jugs.ts';
import { moveWetness, wettingFraction } from './wetness.ts';

/** Heat capacity of a leaf (`vanthoor-2011`). */
const LEAF_HEAT_J_PER_M2K = 1200;
/** A pass that moves no estimate by more than this is the last one (`judgement`: halving the step moves no minimum by 0.05 K). */
const SETTLED_K = 0.15;
const MOST_PASSES = 12;
const START_SETTLED_K = 0.01;
const MOST_START_PASSES = 60;
/** Stiffness that holds wall and water at their start while everything light finds its balance. [W m⁻² K⁻¹] */
const HELD_W_PER_M2K = 1e9;
/** Optics are worked out anew when the wetness of a cover has moved by this. */
const OPTICS_STEP_FRACTION = 0.003;
const LEAST_VAPOUR_HPA = 0.01;

/** A bed, how open it stands, and what it feels at the moment. */
export interface Scene {
  readonly bed: Bed;
  readonly exposure: Exposure;
  readonly around: Surroundings;
  isBlanketed: boolean;
  vent: Pick<Vent, 'areaRatio' | 'heightM'> | undefined;
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
  for (const node of bed.network.nodes) {
    node.sunWPerM2 = 0;
    node.storeWPerM2K = 0;
  }
  setScene(scene, outside, true);
  setStores(bed, 0);
  for (let pass = 0; pass < MOST_START_PASSES; pass++) {
    if (solvePass(scene, START_SETTLED_K)) break;
  }
  for (const node of bed.network.nodes) {
    node.beforeC = node.nowC;
    node.earlierC = node.nowC;
  }
  for (const { below } of bed.covers) {
    below.vapour.beforeHPa = below.vapour.nowHPa;
    below.vapour.earlierHPa = below.vapour.nowHPa;
  }
  bed.crop.exposedLeaf.nowC = bed.crop.leaves.nowC;
  findExposedLeaf(bed, scene.around);
}

/**
 * Moves a bed over one implicit step, to the weather of its end.
 *
 * @param scene - The bed; its nodes, soil, wetness and leaf move to the end of the step.
 * @param outside - Weather at the end of the step.
 * @param stepS - Length of the step. [s]
 * @param isChanged - Whether a blanket was laid on or taken off, or a vent opened or shut, at the beginning of the step.
 */
export function advance(scene: Scene, outside: OutsideInstant, stepS: number, isChanged: boolean): void {
  const { bed, around } = scene;
  setScene(scene, outside, isChanged);
  // After a steady state or a change of covers there is no trend to go by, and a short step tells little of a long one.
  extrapolate(bed, bed.stepS === 0 || isChanged ? 0 : Math.min(1, stepS / bed.stepS));
  if (isChanged || stepS !== bed.stepS) setStores(bed, stepS);
  for (let pass = 1; pass <= MOST_PASSES; pass++) {
    if (solvePass(scene, SETTLED_K)) break;
  }
  settleStores(bed, around);
  moveWetness(bed, around);
  findExposedLeaf(bed, around);
}

function setScene(scene: Scene, outside: OutsideInstant, isDressChanged: boolean): void {
  const { bed, around, isBlanketed } = scene;
  const snow = countingSnow(bed.stack);
  setSurroundings(around, scene.exposure, outside);
  setOuterConvection(bed, around);
  setSun(bed, outside, isBlanketed, snow);
  if (isDressChanged) {
    for (const cover of bed.covers) dressCover(cover, undefined, undefined);
    if (bed.outermost !== undefined) dressCover(bed.outermost, isBlanketed ? bed.stack.blanket : undefined, snow);
  }
  if (isDressChanged || bed.covers.some(areOpticsStale)) refreshOptics(bed, isBlanketed, snow !== undefined);
}

function refreshOptics(bed: Bed, isBlanketed: boolean, isSnowed: boolean): void {
  const { outermost } = bed;
  for (const cover of bed.covers) setOptics(cover, false, false);
  if (outermost !== undefined) setOptics(outermost, isBlanketed, isSnowed);
  const isArch = outermost !== undefined && bed.stack.geometry.kind === 'arch';
  bed.longwave.refresh(isArch ? outermost.rung.emittedUpFraction * (outermost.layer.areaRatio - 1) : 0);
}

function areOpticsStale(cover: Cover): boolean {
  return Math.abs(cover.wetFraction - cover.opticsWetFraction) >= OPTICS_STEP_FRACTION;
}

/** First estimate: every node goes on as in the step before. */
function extrapolate(bed: Bed, stretch: number): void {
  for (const node of bed.network.nodes) {
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
}

/** Solves the balance about the latest estimates; says whether they were good enough. */
function solvePass(scene: Scene, settledK: number): boolean {
  const { bed, around } = scene;
  const { network, longwave, ground, path, jugs, stepS } = bed;
  longwave.straighten(around.skyWPerM2, around.aroundWPerM2);
  setInnerConvection(bed);
  setLeakage(bed, around, scene.vent);
  setVapour(bed, around);
  ground.column.setLink(ground.below, ground.floorFraction, stepS);
  path?.column.setLink(path.below, path.floorFraction, stepS);
  if (jugs !== undefined && stepS > 0) setJugStore(jugs, stepS);
  network.solve(longwave, around.vapourHPa);
  const isSettled = takeFound(bed, settledK);
  return stepS === 0 ? isSettled : isPhaseKept(bed) && isSettled;
}

function takeFound(bed: Bed, settledK: number): boolean {
  const { network } = bed;
  let isSettled = true;
  for (const node of network.nodes) {
    const foundC = network.foundValue(node.row);
    if (Math.abs(foundC - node.nowC) > settledK) isSettled = false;
    node.nowC = foundC;
  }
  for (const { below } of bed.covers) below.vapour.nowHPa = network.foundValue(below.vapour.row);
  return isSettled;
}

/** Lets soil and jugs follow; says whether nothing began or ceased to freeze or thaw. */
function isPhaseKept({ ground, path, jugs }: Bed): boolean {
  const isSoilCrossed = ground.column.follow(ground.surface);
  const isPathCrossed = path?.column.follow(path.surface) ?? false;
  const areJugsCrossed = jugs !== undefined && followJugs(jugs);
  return !isSoilCrossed && !isPathCrossed && !areJugsCrossed;
}

/** Sets what every node stores over a step of this length. */
function setStores(bed: Bed, stepS: number): void {
  const { crop, wall, jugs } = bed;
  const perS = stepS === 0 ? 0 : 1 / stepS;
  bed.stepS = stepS;
  bed.wettingFraction = wettingFraction(stepS);
  for (const cover of bed.covers) {
    const { air, heightM } = cover.below;
    cover.upper.storeWPerM2K = cover.faceCapacityJPerM2K * perS;
    cover.lower.storeWPerM2K = cover.faceCapacityJPerM2K * perS;
    air.storeWPerM2K = cover.floorFraction * bed.airHeatJPerM3K * heightM * perS;
  }
  crop.leaves.storeWPerM2K = crop.floorFraction * LEAF_HEAT_J_PER_M2K * crop.canopy.leafAreaIndex * perS;
  if (wall !== undefined) {
    const { areaRatio, heatCapacityJPerM2K } = wall.walls;
    wall.node.storeWPerM2K = stepS === 0 ? HELD_W_PER_M2K : areaRatio * heatCapacityJPerM2K * perS;
  }
  if (jugs !== undefined && stepS === 0) {
    jugs.store.perUnit = HELD_W_PER_M2K;
    jugs.store.outsideValue = jugs.node.nowC;
  }
}

function settleStores({ ground, path, jugs, innermost, stepS }: Bed, around: Surroundings): void {
  ground.column.settle(ground.surface);
  path?.column.settle(path.surface);
  if (jugs !== undefined) settleJugs(jugs, innermost?.below.air.nowC ?? around.cropAirC, stepS);
}
