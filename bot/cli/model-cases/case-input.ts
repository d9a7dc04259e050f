import type { CoverGeometry, CoverLayer, CoverStack, NightInput, WeatherSeries } from '../../../rules/index.ts';
import type { CaseInput } from './case-schema.ts';

/** The input of a case in the words of the rules. */
export function nightInputOf(input: CaseInput): NightInput {
  const { site, soil, crop } = input;
  return {
    site: {
      latitudeDeg: site.lat,
      longitudeDeg: site.lon,
      elevationM: site.elevation,
      skyViewFraction: site.skyView,
      shelterFraction: site.shelter,
      inversionK: site.inversion,
    },
    start: new Date(input.start),
    end: new Date(input.end),
    weather: weatherOf(input.weather),
    soil: {
      conductivityWPerMK: soil.conductivity,
      heatCapacityJPerM3K: soil.heatCapacity,
      freezableFraction: soil.freezable,
      surfaceResistanceSPerM: soil.surfaceResistance,
      mulchResistanceM2KPerW: soil.mulchR,
      albedoFraction: soil.albedo,
    },
    soilProfile: input.soilProfile.map(({ z, T }) => ({ depthM: z, soilC: T })),
    canopy: { leafAreaIndex: crop.lai, leafSizeM: crop.leafSize },
    stack: stackOf(input),
  };
}

function weatherOf(weather: CaseInput['weather']): WeatherSeries {
  const { temperature, cloud, globalRadiation } = weather;
  return {
    first: new Date(weather.first),
    stepH: weather.stepHours,
    screenC: temperature,
    dewPointC: weather.dewPoint,
    cloudFraction: cloud ?? temperature.map(() => 0),
    wind10MPerS: weather.wind10m,
    ...(globalRadiation && { globalWPerM2: globalRadiation }),
  };
}

function stackOf({ layers, geometry, walls, waterMass, blanket, snow, vent, floorFraction }: CaseInput): CoverStack {
  return {
    layers: layers.map(layerOf),
    geometry: geometryOf(geometry),
    floorFraction,
    ...(walls && {
      walls: { areaRatio: walls.area, resistanceM2KPerW: walls.R, heatCapacityJPerM2K: walls.C },
    }),
    ...(waterMass && { waterMass: { kgPerM2: waterMass.kg, areaRatio: waterMass.area, startC: waterMass.T0 } }),
    ...(blanket && {
      blanket: { resistanceM2KPerW: blanket.R, heatCapacityJPerM2K: blanket.C, ...spanOf(blanket) },
    }),
    ...(snow && { snow: { depthM: snow.depth, conductivityWPerMK: snow.k } }),
    ...(vent && { vent: { areaRatio: vent.area, heightM: vent.height, ...spanOf(vent) } }),
  };
}

function layerOf(layer: CaseInput['layers'][number]): CoverLayer {
  return {
    longwaveTransmittedDryFraction: layer.lwTrans,
    longwaveReflectedDryFraction: layer.lwRefl,
    longwaveTransmittedWetFraction: layer.lwTransWet,
    longwaveReflectedWetFraction: layer.lwReflWet,
    resistanceM2KPerW: layer.R,
    heatCapacityJPerM2K: layer.C,
    areaRatio: layer.area,
    leak0MmPerS: layer.leak0,
    leak1MmPerM: layer.leak1,
    leak2MmSPerM2: layer.leak2,
    leakMmPerSK: layer.leakT,
    sunTransmittedFraction: layer.swTrans,
    sunAbsorbedFraction: layer.swAbs,
    spaceM: layer.space,
    diffusing: layer.diffusing,
    contactWPerM2K: layer.contact,
  };
}

function geometryOf(geometry: CaseInput['geometry']): CoverGeometry {
  if (geometry.kind !== 'tilt') return { kind: geometry.kind, heightM: geometry.height, tiltDeg: 0, azimuthDeg: 0 };
  const { height, tiltDeg, azimuthDeg } = geometry;
  return { kind: 'tilt', heightM: height, tiltDeg, azimuthDeg };
}

function spanOf({ from, to }: { readonly from: string; readonly to: string }): { from: Date; to: Date } {
  return { from: new Date(from), to: new Date(to) };
}
