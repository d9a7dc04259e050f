import { Solver } from 'odex';
import type { CoverLayer, NightInput } from '../../../rules/index.ts';
import { type SecondGround, secondGround, soilWarming } from './ground.ts';
import { dewPointC, emissionWPerM2, type Outside, outside, saturationHPa, smoothPower } from './outside.ts';

/**
 * A second opinion on the night: the bare bed, or one cover as one node, written anew from the physics page and handed to a
 * general-purpose solver of differential equations. It shares no code with `rules/`, has four times as many soil layers, chooses
 * its own steps of a few seconds, and follows reflections by letting them bounce. Night only: no sun, walls, blanket or jugs.
 */

const LEAF_J_PER_M2K = 1200;
const SHELTERED_LEAF = 4;
const SOIL_EMISSIVITY = 0.96;
const WETTING_S = 1800;
const BOUNCES = 8;
const REPORT_S = 300;
/** The light parts start at air temperature; the specification leaves out the first hour. */
const LEFT_OUT_S = 3600;

interface Light {
  readonly canopyC: number;
  readonly coverC: number;
  readonly airC: number;
  readonly wetFraction: number;
}

interface Fluxes {
  /** Down onto and up from the top of the canopy. */
  readonly ontoCanopy: number;
  readonly fromCanopy: number;
  readonly cover: number;
  readonly canopy: number;
  readonly soil: number;
}

interface Vapour {
  readonly insideHPa: number;
  /** Without dew and condensation. */
  readonly potentialHPa: number;
  readonly condensed: number;
}

export interface SolverTolerance {
  readonly relative: number;
  readonly absolute: number;
}

const USUAL_TOLERANCE: SolverTolerance = { relative: 1e-6, absolute: 1e-4 };

/** Lowest exposed leaf of the night. [°C] */
export function secondLeafLowC(input: NightInput): number {
  return secondNight(input, USUAL_TOLERANCE).leafLowC;
}

export interface SecondNight {
  readonly leafLowC: number;
  /** How often the solver asked how fast everything changes. */
  readonly evaluations: number;
}

/** The night as finely as the solver is told to. */
export function secondNight(input: NightInput, tolerance: SolverTolerance): SecondNight {
  const bed = new SecondBed(input);
  const solver = new Solver(bed.start.length);
  solver.denseOutput = true;
  solver.maxSteps = 1_000_000;
  solver.relativeTolerance = tolerance.relative;
  solver.absoluteTolerance = tolerance.absolute;
  const spanS = (input.end.getTime() - input.start.getTime()) / 1000;
  let lowC = Number.POSITIVE_INFINITY;
  const output = solver.grid(REPORT_S, (timeS, state) => {
    if (timeS >= LEFT_OUT_S) lowC = Math.min(lowC, bed.leafC(timeS, state));
  });
  let evaluations = 0;
  const derivative = (timeS: number, state: number[]) => {
    evaluations += 1;
    return bed.derivative(timeS, state);
  };
  const { outcome } = solver.solve(derivative, 0, [...bed.start], spanS, output);
  if (outcome !== 0) throw new Error('the solver did not reach the morning');
  return { leafLowC: lowC, evaluations };
}

/** The state: heat of each soil layer in MJ m⁻³, then canopy, cover and air in °C and the wetness of the cover. */
class SecondBed {
  readonly start: readonly number[];
  private readonly ground: SecondGround;
  private readonly layer: CoverLayer | undefined;
  private readonly sinceFirstS: number;
  private readonly airHeat: number;
  private readonly gamma: number;
  /** Where the search for the massless surface begins. */
  private surfaceC: number;
  private readonly input: NightInput;

  constructor(input: NightInput) {
    this.input = input;
    this.ground = secondGround(input);
    [this.layer] = input.stack.layers;
    this.sinceFirstS = (input.start.getTime() - input.weather.first.getTime()) / 1000;
    const pressure = Math.exp(-input.site.elevationM / 8434);
    this.airHeat = 1290 * pressure;
    this.gamma = 0.658 * pressure;
    const { cropAirC } = outside(input, this.sinceFirstS);
    this.surfaceC = this.ground.soilC(this.ground.startJPerM3[0] ?? 0);
    this.start = [...this.ground.startJPerM3.map((heat) => heat / 1e6), cropAirC, cropAirC, cropAirC, 0];
  }

  derivative(timeS: number, state: readonly number[]): number[] {
    const around = outside(this.input, this.sinceFirstS + timeS);
    const { soilC, light } = this.split(state);
    const surfaceC = this.balancedSurfaceC(around, soilC[0] ?? Number.NaN, light);
    const { canopy, soil } = this.input;
    const airC = this.layer === undefined ? around.cropAirC : light.airC;
    const fluxes = this.longwave(around, surfaceC, light);
    const vapour = this.vapour(around, surfaceC, light);
    const leafSide = this.leafSide(around);
    const canopyAir = 2 * canopy.leafAreaIndex * leafSide;
    const dew = (canopyAir * Math.max(0, vapour.insideHPa - saturationHPa(light.canopyC))) / this.gamma;
    const touch = (this.layer?.contactWPerM2K ?? 0) * (light.coverC - light.canopyC);
    const canopyGain = fluxes.canopy + canopyAir * (airC - light.canopyC) + dew + touch;
    const intoSoil = (surfaceC - (soilC[0] ?? 0)) / this.topResistance();
    const warming = soilWarming(this.ground, soilC, intoSoil, soil.conductivityWPerMK).map((rate) => rate / 1e6);
    const canopyRate = canopyGain / (LEAF_J_PER_M2K * canopy.leafAreaIndex);
    if (this.layer === undefined) return [...warming, canopyRate, 0, 0, 0];
    const { coverGain, airGain } = this.coverAndAir(this.layer, around, surfaceC, light, fluxes, vapour);
    const leaving = canopyAir * (light.canopyC - light.airC);
    return [
      ...warming,
      canopyRate,
      coverGain / this.layer.heatCapacityJPerM2K,
      (airGain + leaving) / (this.airHeat * this.layer.spaceM),
      (this.wetTarget(around, light, vapour) - light.wetFraction) / WETTING_S,
    ];
  }

  leafC(timeS: number, state: readonly number[]): number {
    const around = outside(this.input, this.sinceFirstS + timeS);
    const { soilC, light } = this.split(state);
    const surfaceC = this.balancedSurfaceC(around, soilC[0] ?? Number.NaN, light);
    const { ontoCanopy, fromCanopy } = this.longwave(around, surfaceC, light);
    const { insideHPa } = this.vapour(around, surfaceC, light);
    const airC = this.layer === undefined ? around.cropAirC : light.airC;
    const side = this.leafSide(around);
    const contact = this.layer?.contactWPerM2K ?? 0;
    const touch = contact / Math.max(0.3, this.input.canopy.leafAreaIndex);
    const gain = (leafC: number) =>
      ontoCanopy +
      fromCanopy -
      2 * emissionWPerM2(leafC) +
      2 * side * (airC - leafC) +
      touch * (light.coverC - leafC) +
      (2 * side * Math.max(0, insideHPa - saturationHPa(leafC))) / this.gamma;
    return root(gain, light.canopyC);
  }

  private split(state: readonly number[]): { soilC: number[]; light: Light } {
    const count = this.ground.thicknessM.length;
    const soilC = state.slice(0, count).map((heat) => this.ground.soilC(heat * 1e6));
    const [canopyC = 0, coverC = 0, airC = 0, wetFraction = 0] = state.slice(count);
    return { soilC, light: { canopyC, coverC, airC, wetFraction } };
  }

  private topResistance(): number {
    const { conductivityWPerMK, mulchResistanceM2KPerW } = this.input.soil;
    return (this.ground.thicknessM[0] ?? 0) / 2 / conductivityWPerMK + mulchResistanceM2KPerW;
  }

  private leafSide({ cropWindMPerS }: Outside): number {
    if (this.layer !== undefined) return SHELTERED_LEAF;
    return Math.max(SHELTERED_LEAF, 5.5 * Math.sqrt(cropWindMPerS / this.input.canopy.leafSizeM));
  }

  private soilAir(around: Outside, surfaceC: number, airC: number): number {
    if (this.layer === undefined) return 0.95 + 6.76 * around.cropWindMPerS ** 0.49;
    const warmer = surfaceC - airC;
    return warmer > 0 ? 1.7 * smoothPower(warmer, 1 / 3) : 1.3 * smoothPower(warmer, 1 / 4);
  }

  /** The surface stores nothing: what reaches it leaves it. */
  private balancedSurfaceC(around: Outside, topC: number, light: Light): number {
    const airC = this.layer === undefined ? around.cropAirC : light.airC;
    const gain = (surfaceC: number) => {
      const { insideHPa } = this.vapour(around, surfaceC, light);
      return (
        this.longwave(around, surfaceC, light).soil +
        this.soilAir(around, surfaceC, airC) * (airC - surfaceC) -
        (this.soilVapour(around, surfaceC, airC) * (saturationHPa(surfaceC) - insideHPa)) / this.gamma +
        (topC - surfaceC) / this.topResistance()
      );
    };
    this.surfaceC = root(gain, this.surfaceC);
    return this.surfaceC;
  }

  private soilVapour(around: Outside, surfaceC: number, airC: number): number {
    return 1 / (1 / this.soilAir(around, surfaceC, airC) + this.input.soil.surfaceResistanceSPerM / this.airHeat);
  }

  private longwave({ downWPerM2 }: Outside, surfaceC: number, light: Light): Fluxes {
    const { transmitted, reflected, emitted } = this.optics(light.wetFraction);
    const canopyPasses = Math.exp(-0.94 * this.input.canopy.leafAreaIndex);
    const canopySends = (1 - canopyPasses) * emissionWPerM2(light.canopyC);
    const coverSends = emitted * emissionWPerM2(light.coverC);
    const soilSends = SOIL_EMISSIVITY * emissionWPerM2(surfaceC);
    let ontoCanopy = transmitted * downWPerM2 + coverSends;
    let ontoSoil = 0;
    let fromBelow = 0;
    let fromCanopy = 0;
    for (let bounce = 0; bounce < BOUNCES; bounce += 1) {
      ontoSoil = canopyPasses * ontoCanopy + canopySends;
      fromBelow = soilSends + (1 - SOIL_EMISSIVITY) * ontoSoil;
      fromCanopy = canopyPasses * fromBelow + canopySends;
      ontoCanopy = transmitted * downWPerM2 + coverSends + reflected * fromCanopy;
    }
    return {
      ontoCanopy,
      fromCanopy,
      cover: emitted * (downWPerM2 + fromCanopy - 2 * emissionWPerM2(light.coverC)),
      canopy: (1 - canopyPasses) * (ontoCanopy + fromBelow - 2 * emissionWPerM2(light.canopyC)),
      soil: SOIL_EMISSIVITY * (ontoSoil - emissionWPerM2(surfaceC)),
    };
  }

  private optics(wetFraction: number) {
    if (this.layer === undefined) return { transmitted: 1, reflected: 0, emitted: 0 };
    const {
      longwaveTransmittedDryFraction: dry,
      longwaveTransmittedWetFraction: wet,
      longwaveReflectedDryFraction: dryBack,
      longwaveReflectedWetFraction: wetBack,
    } = this.layer;
    const transmitted = dry + wetFraction * (wet - dry);
    const reflected = dryBack + wetFraction * (wetBack - dryBack);
    return { transmitted, reflected, emitted: 1 - transmitted - reflected };
  }

  private leak(layer: CoverLayer, around: Outside, airC: number): number {
    const { coverWindMPerS: wind, coverAirC } = around;
    const { leak0MmPerS, leak1MmPerM, leak2MmSPerM2, leakMmPerSK } = layer;
    const mmPerS =
      leak0MmPerS + leak1MmPerM * wind + leak2MmSPerM2 * wind ** 2 + leakMmPerSK * Math.abs(airC - coverAirC);
    return (this.airHeat * mmPerS) / 1000;
  }

  private vapour(around: Outside, surfaceC: number, light: Light): Vapour {
    const { layer } = this;
    const outsideHPa = around.vapourHPa;
    if (layer === undefined) return { insideHPa: outsideHPa, potentialHPa: outsideHPa, condensed: 0 };
    const leak = this.leak(layer, around, light.airC);
    const soil = this.soilVapour(around, surfaceC, light.airC);
    const dry = { weight: leak + soil, sum: leak * outsideHPa + soil * saturationHPa(surfaceC) };
    const face = { weight: this.lowerFace(layer, light), hPa: saturationHPa(light.coverC) };
    const leaves = {
      weight: 2 * this.input.canopy.leafAreaIndex * SHELTERED_LEAF,
      hPa: saturationHPa(light.canopyC),
    };
    // Water settles on the colder of the two first; it only ever lowers the vapour pressure.
    let { weight, sum } = dry;
    for (const sink of [face, leaves].sort((one, other) => one.hPa - other.hPa)) {
      if (sum / weight <= sink.hPa) break;
      weight += sink.weight;
      sum += sink.weight * sink.hPa;
    }
    const insideHPa = sum / weight;
    const condensed = (face.weight * Math.max(0, insideHPa - face.hPa)) / this.gamma;
    return { insideHPa, potentialHPa: dry.sum / dry.weight, condensed };
  }

  private lowerFace(layer: CoverLayer, { coverC, airC }: Light): number {
    return 1.86 * smoothPower(coverC - airC, 1 / 3) * layer.areaRatio;
  }

  private coverAndAir(
    layer: CoverLayer,
    around: Outside,
    surfaceC: number,
    light: Light,
    fluxes: Fluxes,
    { condensed }: Vapour,
  ): { readonly coverGain: number; readonly airGain: number } {
    const { coverC, airC, canopyC } = light;
    const { coverAirC, coverWindMPerS, downWPerM2 } = around;
    const upper = (0.95 + 6.76 * coverWindMPerS ** 0.49) * layer.areaRatio;
    const sides = this.input.stack.geometry.kind === 'arch' ? layer.areaRatio - 1 : 0;
    const { emitted } = this.optics(light.wetFraction);
    const arch = emitted * sides * ((downWPerM2 + emissionWPerM2(coverAirC)) / 2 - emissionWPerM2(coverC));
    const dew = (upper * Math.max(0, around.vapourHPa - saturationHPa(coverC))) / this.gamma;
    const lower = this.lowerFace(layer, light);
    const touch = layer.contactWPerM2K * (canopyC - coverC);
    return {
      coverGain: fluxes.cover + arch + upper * (coverAirC - coverC) + lower * (airC - coverC) + condensed + dew + touch,
      airGain:
        lower * (coverC - airC) +
        this.soilAir(around, surfaceC, airC) * (surfaceC - airC) +
        this.leak(layer, around, airC) * (coverAirC - airC),
    };
  }

  private wetTarget(around: Outside, { coverC }: Light, { potentialHPa }: Vapour): number {
    return Math.max(0, Math.min(1, Math.max(dewPointC(potentialHPa), dewPointC(around.vapourHPa)) - coverC));
  }
}

/** Newton's method with a difference quotient; the functions here fall steadily. */
function root(gain: (bodyC: number) => number, startC: number): number {
  let bodyC = startC;
  for (let trial = 0; trial < 30; trial += 1) {
    const here = gain(bodyC);
    const stepK = (0.001 * here) / (here - gain(bodyC + 0.001));
    bodyC += stepK;
    if (Math.abs(stepK) < 1e-6) break;
  }
  return bodyC;
}
