import type { NightSite } from '../site-and-weather.ts';
import type { PreparedWeather } from '../sky/prepared-weather.ts';
import type { CoverLayer, CoverStack, NightInput, Soil, SoilPoint } from './night-input.ts';

/** The limits of this file keep out slips of the hand and what the balance was not made for (`judgement`). */
const MOST_LAYERS = 3;
/** Shares of light that add up to 1 in decimals may add up to a little more in binary. */
const ROUNDING = 1e-9;

/**
 * Refuses a run that breaks the contract of the model.
 *
 * @param input - The run.
 * @param stepMin - Longest step. [min]
 * @throws RangeError naming the parameter, its value and the limit.
 */
export function checkedInput(input: NightInput, stepMin: number): void {
  within('', 'stepMin', stepMin, 1, 30);
  if (!(input.start.getTime() < input.end.getTime())) throw new RangeError('start is not an instant before end');
  checkSite(input.site);
  checkSoil(input.soil);
  within('canopy.', 'leafAreaIndex', input.canopy.leafAreaIndex, 0.01, 10);
  within('canopy.', 'leafSizeM', input.canopy.leafSizeM, 0.001, 1);
  checkProfile(input.soilProfile);
  within('', 'heatWPerM2', input.heatWPerM2 ?? 0, 0, 500);
  checkStack('stack.', input.stack);
  let previousMs = Number.NEGATIVE_INFINITY;
  for (const [i, { at, stack }] of (input.changes ?? []).entries()) {
    if (!(at.getTime() >= previousMs))
      throw new RangeError(`changes[${i}].at is not an instant after the change before`);
    previousMs = at.getTime();
    checkStack(`changes[${i}].stack.`, stack);
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

function checkSite(site: NightSite): void {
  within('site.', 'latitudeDeg', site.latitudeDeg, -90, 90);
  within('site.', 'longitudeDeg', site.longitudeDeg, -180, 180);
  within('site.', 'elevationM', site.elevationM, -500, 6000);
  within('site.', 'skyViewFraction', site.skyViewFraction, 0, 1);
  within('site.', 'shelterFraction', site.shelterFraction, 0, 1);
  within('site.', 'inversionK', site.inversionK, 0, 10);
  for (const heightDeg of site.horizonDeg ?? []) within('site.', 'horizonDeg', heightDeg, 0, 90);
}

function checkSoil(soil: Soil): void {
  within('soil.', 'conductivityWPerMK', soil.conductivityWPerMK, 0.02, 5);
  within('soil.', 'heatCapacityJPerM3K', soil.heatCapacityJPerM3K, 1e5, 5e6);
  within('soil.', 'freezableFraction', soil.freezableFraction, 0, 1);
  within('soil.', 'surfaceResistanceSPerM', soil.surfaceResistanceSPerM, 0, 1e9);
  within('soil.', 'mulchResistanceM2KPerW', soil.mulchResistanceM2KPerW, 0, 100);
  within('soil.', 'albedoFraction', soil.albedoFraction, 0, 1);
}

function checkProfile(profile: readonly SoilPoint[]): void {
  if (profile.length === 0) throw new RangeError('soilProfile is empty, at least 1 point is needed');
  let aboveM = 0;
  for (const point of profile) {
    within('soilProfile: ', 'depthM', point.depthM, aboveM, 10);
    within('soilProfile: ', 'soilC', point.soilC, -40, 60);
    aboveM = point.depthM;
  }
}

function checkStack(place: string, stack: CoverStack): void {
  const { layers, geometry, walls, waterMass, blanket, snow, vent } = stack;
  within(place, 'layers.length', layers.length, 0, MOST_LAYERS);
  for (const layer of layers) checkLayer(place, layer);
  within(place, 'geometry.heightM', geometry.heightM, 0.01, 10);
  within(place, 'geometry.tiltDeg', geometry.tiltDeg, 0, 80);
  within(place, 'geometry.azimuthDeg', geometry.azimuthDeg, -360, 360);
  within(place, 'floorFraction', stack.floorFraction, 0.01, 1);
  if (walls !== undefined) {
    within(place, 'walls.areaRatio', walls.areaRatio, 0, 20);
    within(place, 'walls.resistanceM2KPerW', walls.resistanceM2KPerW, 0, 100);
    within(place, 'walls.heatCapacityJPerM2K', walls.heatCapacityJPerM2K, 1, 1e7);
  }
  if (waterMass !== undefined) {
    within(place, 'waterMass.kgPerM2', waterMass.kgPerM2, 0.001, 2000);
    within(place, 'waterMass.areaRatio', waterMass.areaRatio, 0, 50);
    within(place, 'waterMass.startC', waterMass.startC, -30, 90);
  }
  if (blanket !== undefined) {
    within(place, 'blanket.resistanceM2KPerW', blanket.resistanceM2KPerW, 0, 100);
    within(place, 'blanket.heatCapacityJPerM2K', blanket.heatCapacityJPerM2K, 0, 1e7);
    checkSpan(place, 'blanket', blanket);
  }
  if (snow !== undefined) {
    within(place, 'snow.depthM', snow.depthM, 0, 5);
    within(place, 'snow.conductivityWPerMK', snow.conductivityWPerMK, 0.01, 3);
  }
  if (vent !== undefined) {
    within(place, 'vent.areaRatio', vent.areaRatio, 0, 10);
    within(place, 'vent.heightM', vent.heightM, 0, 10);
    checkSpan(place, 'vent', vent);
  }
}

function checkLayer(place: string, layer: CoverLayer): void {
  const dry = layer.longwaveTransmittedDryFraction;
  const wet = layer.longwaveTransmittedWetFraction;
  within(place, 'layers: longwaveTransmittedDryFraction', dry, 0, 1);
  within(place, 'layers: longwaveReflectedDryFraction', layer.longwaveReflectedDryFraction, 0, 1 - dry + ROUNDING);
  within(place, 'layers: longwaveTransmittedWetFraction', wet, 0, 1);
  within(place, 'layers: longwaveReflectedWetFraction', layer.longwaveReflectedWetFraction, 0, 1 - wet + ROUNDING);
  within(place, 'layers: resistanceM2KPerW', layer.resistanceM2KPerW, 0, 1e6);
  within(place, 'layers: heatCapacityJPerM2K', layer.heatCapacityJPerM2K, 0, 1e7);
  within(place, 'layers: areaRatio', layer.areaRatio, 1, 5);
  within(place, 'layers: leak0MmPerS', layer.leak0MmPerS, 0, 1000);
  within(place, 'layers: leak1MmPerM', layer.leak1MmPerM, 0, 1000);
  within(place, 'layers: leak2MmSPerM2', layer.leak2MmSPerM2, 0, 1000);
  within(place, 'layers: leakMmPerSK', layer.leakMmPerSK, 0, 100);
  within(place, 'layers: sunTransmittedFraction', layer.sunTransmittedFraction, 0, 1);
  const kept = 1 - layer.sunTransmittedFraction + ROUNDING;
  within(place, 'layers: sunAbsorbedFraction', layer.sunAbsorbedFraction, 0, kept);
  within(place, 'layers: spaceM', layer.spaceM, 0.001, 10);
  within(place, 'layers: contactWPerM2K', layer.contactWPerM2K, 0, 1000);
}

function checkSpan(place: string, name: string, span: { readonly from: Date; readonly to: Date }): void {
  if (span.from.getTime() <= span.to.getTime()) return;
  throw new RangeError(`${place}${name}.from is not an instant before ${place}${name}.to`);
}

/** The name is put together only for the message: this runs for every bed of every garden. */
function within(place: string, name: string, value: number, low: number, high: number): void {
  if (!(value >= low && value <= high)) throw new RangeError(`${place}${name} ${value} is outside ${low}…${high}`);
}
