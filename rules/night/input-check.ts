import type { PreparedWeather } from '../sky/prepared-weather.ts';
import type { Canopy, CoverLayer, CoverStack, NightInput, NightSite, Soil, SoilPoint } from './night-input.ts';

/** Lowest and highest value that a field may have. */
type Limits<T> = Readonly<Partial<Record<keyof T, readonly [low: number, high: number]>>>;

const SITE: Limits<NightSite> = {
  latitudeDeg: [-90, 90],
  longitudeDeg: [-180, 180],
  elevationM: [-500, 6000],
  skyViewFraction: [0, 1],
  shelterFraction: [0, 1],
  inversionK: [0, 10],
};
const SOIL: Limits<Soil> = {
  conductivityWPerMK: [0.02, 5],
  heatCapacityJPerM3K: [1e5, 5e6],
  freezableFraction: [0, 1],
  surfaceResistanceSPerM: [0, 1e9],
  mulchResistanceM2KPerW: [0, 100],
  albedoFraction: [0, 1],
};
const SOIL_POINT: Limits<SoilPoint> = { depthM: [0, 10], soilC: [-40, 60] };
const CANOPY: Limits<Canopy> = { leafAreaIndex: [0.01, 10], leafSizeM: [0.001, 1] };
const LAYER: Limits<CoverLayer> = {
  longwaveTransmittedDryFraction: [0, 1],
  longwaveReflectedDryFraction: [0, 1],
  longwaveTransmittedWetFraction: [0, 1],
  longwaveReflectedWetFraction: [0, 1],
  resistanceM2KPerW: [0, 1e6],
  heatCapacityJPerM2K: [0, 1e7],
  areaRatio: [1, 5],
  leak0MmPerS: [0, 1000],
  leak1MmPerM: [0, 1000],
  leak2MmSPerM2: [0, 1000],
  leakMmPerSK: [0, 100],
  sunTransmittedFraction: [0, 1],
  sunAbsorbedFraction: [0, 1],
  spaceM: [0.001, 10],
  contactWPerM2K: [0, 1000],
};
const MOST_LAYERS = 3;

/**
 * Refuses a run that breaks the contract of the model.
 *
 * @param input - The run.
 * @param stepMin - Longest step. [min]
 * @throws RangeError naming the parameter, its value and the limit.
 */
export function checkedInput(input: NightInput, stepMin: number): void {
  within('stepMin', stepMin, 1, 30);
  if (!(input.start.getTime() < input.end.getTime())) throw new RangeError('start is not an instant before end');
  refuseOutside('site', input.site, SITE);
  refuseOutside('soil', input.soil, SOIL);
  refuseOutside('canopy', input.canopy, CANOPY);
  checkProfile(input.soilProfile);
  checkStack('stack', input.stack);
  let previousMs = Number.NEGATIVE_INFINITY;
  for (const [i, { at, stack }] of (input.changes ?? []).entries()) {
    if (!(at.getTime() >= previousMs))
      throw new RangeError(`changes[${i}].at is not an instant after the change before`);
    previousMs = at.getTime();
    checkStack(`changes[${i}].stack`, stack);
  }
}

/**
 * Refuses prepared weather that belongs to another place or leaves out part of a run.
 *
 * @param weather - Prepared weather.
 * @param input - The run.
 * @throws RangeError naming what does not fit.
 */
export function checkedPrepared(weather: PreparedWeather, input: NightInput): void {
  const { latitudeDeg, longitudeDeg } = input.site;
  if (weather.latitudeDeg !== latitudeDeg || weather.longitudeDeg !== longitudeDeg) {
    throw new RangeError(`prepared weather is for another place than site ${latitudeDeg}, ${longitudeDeg}`);
  }
  const { first, stepH, screenC } = weather.series;
  const firstMs = first.getTime();
  const lastMs = firstMs + (screenC.length - 1) * stepH * 3_600_000;
  if (!(input.start.getTime() >= firstMs && input.end.getTime() <= lastMs)) {
    throw new RangeError(`prepared weather ends before or begins after the run from ${input.start.toISOString()}`);
  }
}

function checkProfile(profile: readonly SoilPoint[]): void {
  if (profile.length === 0) throw new RangeError('soilProfile is empty, at least 1 point is needed');
  let aboveM = Number.NEGATIVE_INFINITY;
  for (const [i, point] of profile.entries()) {
    refuseOutside(`soilProfile[${i}]`, point, SOIL_POINT);
    if (!(point.depthM >= aboveM))
      throw new RangeError(`soilProfile[${i}].depthM ${point.depthM} is above the point before`);
    aboveM = point.depthM;
  }
}

function checkStack(name: string, stack: CoverStack): void {
  if (stack.layers.length > MOST_LAYERS) {
    throw new RangeError(`${name}.layers has ${stack.layers.length} covers, at most ${MOST_LAYERS} are modelled`);
  }
  for (const [i, layer] of stack.layers.entries()) checkLayer(`${name}.layers[${i}]`, layer);
  within(`${name}.geometry.heightM`, stack.geometry.heightM, 0.01, 10);
  within(`${name}.geometry.tiltDeg`, stack.geometry.tiltDeg, 0, 80);
  within(`${name}.geometry.azimuthDeg`, stack.geometry.azimuthDeg, -360, 360);
  within(`${name}.floorFraction`, stack.floorFraction, 0.01, 1);
  const { walls, waterMass, blanket, snow, vent } = stack;
  if (walls !== undefined) {
    refuseOutside(`${name}.walls`, walls, {
      areaRatio: [0, 20],
      resistanceM2KPerW: [0, 100],
      heatCapacityJPerM2K: [1, 1e7],
    });
  }
  if (waterMass !== undefined) {
    refuseOutside(`${name}.waterMass`, waterMass, { kgPerM2: [0.001, 2000], areaRatio: [0, 50], startC: [-30, 90] });
  }
  if (blanket !== undefined) {
    refuseOutside(`${name}.blanket`, blanket, { resistanceM2KPerW: [0, 100], heatCapacityJPerM2K: [0, 1e7] });
    checkSpan(`${name}.blanket`, blanket);
  }
  if (snow !== undefined) refuseOutside(`${name}.snow`, snow, { depthM: [0, 5], conductivityWPerMK: [0.01, 3] });
  if (vent !== undefined) {
    refuseOutside(`${name}.vent`, vent, { areaRatio: [0, 10], heightM: [0, 10] });
    checkSpan(`${name}.vent`, vent);
  }
}

function checkLayer(name: string, layer: CoverLayer): void {
  refuseOutside(name, layer, LAYER);
  const dry = layer.longwaveTransmittedDryFraction + layer.longwaveReflectedDryFraction;
  const wet = layer.longwaveTransmittedWetFraction + layer.longwaveReflectedWetFraction;
  const sun = layer.sunTransmittedFraction + layer.sunAbsorbedFraction;
  for (const [what, sum] of Object.entries({ 'longwave dry': dry, 'longwave wet': wet, sun })) {
    if (!(sum <= 1 + 1e-9))
      throw new RangeError(`${name} passes and keeps or reflects ${sum} of its ${what} light, at most 1`);
  }
}

function checkSpan(name: string, span: { readonly from: Date; readonly to: Date }): void {
  if (!(span.from.getTime() <= span.to.getTime()))
    throw new RangeError(`${name}.from is not an instant before ${name}.to`);
}

function refuseOutside<T extends object>(name: string, values: T, limits: Limits<T>): void {
  for (const key of Object.keys(limits) as (keyof T & string)[]) {
    const [low, high] = limits[key] ?? [0, 0];
    within(`${name}.${key}`, values[key] as number, low, high);
  }
}

function within(name: string, value: number, low: number, high: number): void {
  if (!(value >= low && value <= high)) throw new RangeError(`${name} ${value} is outside ${low}…${high}`);
}
