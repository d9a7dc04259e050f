import type {
  CoverGeometry,
  CoverLayer,
  CoverStack,
  NightInput,
  NightSite,
  Soil,
  Walls,
  WeatherSeries,
} from '../../../rules/index.ts';
import { REFERENCE_SCREEN_C, REFERENCE_SITE, REFERENCE_WINDOW } from '../covers/reference-night.ts';

/** Stacks of the physics page, section 12, typed in from its tables and not taken from our cover table. */

/** τ dry, ρ dry, τ wet, ρ wet, R, C, r, w₀, w₁, w₂, w_T, τ_S, α_S, h, diffusing. */
type Row = readonly [...numbers: number[], diffusing: boolean];

const ROWS = {
  F19: [0.6, 0.1, 0.3, 0.07, 0.002, 40, 1.4, 1, 0, 2, 0.09, 0.85, 0.02, 0.4, true],
  F30: [0.5, 0.12, 0.22, 0.07, 0.003, 60, 1.4, 0.7, 0, 1.2, 0.06, 0.75, 0.03, 0.4, true],
  F50: [0.35, 0.15, 0.12, 0.07, 0.006, 90, 1.4, 0.5, 0, 0.7, 0.035, 0.55, 0.05, 0.4, true],
  PE: [0.7, 0.05, 0.2, 0.05, 0.002, 300, 1.45, 0.1, 0.1, 0, 0, 0.86, 0.04, 0.45, false],
  PEP: [0.72, 0.05, 0.25, 0.05, 0.002, 100, 1.4, 1.5, 3, 0, 0.3, 0.86, 0.03, 0.4, false],
  GL: [0, 0.12, 0, 0.06, 0.004, 6600, 1, 0.1, 0.1, 0, 0, 0.84, 0.08, 0.25, false],
  PC4: [0.02, 0.08, 0.02, 0.06, 0.082, 960, 1, 0.1, 0.1, 0, 0, 0.8, 0.07, 0.25, false],
  PC10: [0.02, 0.08, 0.02, 0.06, 0.155, 2000, 1, 0.1, 0.1, 0, 0, 0.77, 0.08, 0.25, false],
} as const satisfies Record<string, Row>;

export type SpecLayer = keyof typeof ROWS;

export function specLayer(name: SpecLayer, changes: Partial<CoverLayer> = {}): CoverLayer {
  const [tauDry, rhoDry, tauWet, rhoWet, R, C, r, w0, w1, w2, wT, tauSun, alphaSun, h, diffusing] = ROWS[name];
  return {
    longwaveTransmittedDryFraction: tauDry,
    longwaveReflectedDryFraction: rhoDry,
    longwaveTransmittedWetFraction: tauWet,
    longwaveReflectedWetFraction: rhoWet,
    resistanceM2KPerW: R,
    heatCapacityJPerM2K: C,
    areaRatio: r,
    leak0MmPerS: w0,
    leak1MmPerM: w1,
    leak2MmSPerM2: w2,
    leakMmPerSK: wT,
    sunTransmittedFraction: tauSun,
    sunAbsorbedFraction: alphaSun,
    spaceM: h,
    diffusing,
    contactWPerM2K: 0,
    ...changes,
  };
}

const WALLS = {
  wood: { areaRatio: 0.63, resistanceM2KPerW: 0.32, heatCapacityJPerM2K: 27e3 },
  straw: { areaRatio: 0.63, resistanceM2KPerW: 6, heatCapacityJPerM2K: 15e3 },
  metal: { areaRatio: 0.63, resistanceM2KPerW: 0.001, heatCapacityJPerM2K: 2e3 },
} as const satisfies Record<string, Walls>;

const ARCH: CoverGeometry = { kind: 'arch', heightM: 0.35, tiltDeg: 0, azimuthDeg: 0 };
const HIGH_ARCH: CoverGeometry = { ...ARCH, heightM: 2 };
const FLAT: CoverGeometry = { kind: 'flat', heightM: 0.15, tiltDeg: 0, azimuthDeg: 0 };
const TILT: CoverGeometry = { kind: 'tilt', heightM: 0.25, tiltDeg: 4.8, azimuthDeg: 180 };

function under(geometry: CoverGeometry, ...layers: CoverLayer[]): CoverStack {
  return { layers, geometry, floorFraction: 1 };
}

export const BARE: CoverStack = under(FLAT);

export function hoops(name: SpecLayer): CoverStack {
  return under(ARCH, specLayer(name));
}

export function laid(name: 'F19' | 'F30' | 'F50'): CoverStack {
  const windLeak = { F19: 1.4, F30: 0.8, F50: 0.5 }[name];
  const changes = { areaRatio: 1.1, spaceM: 0.1, contactWPerM2K: 4, leak2MmSPerM2: windLeak };
  return under(FLAT, specLayer(name, changes));
}

export function frame(name: SpecLayer, wall: keyof typeof WALLS): CoverStack {
  return { ...under(TILT, specLayer(name, { areaRatio: 1, spaceM: 0.25 })), walls: WALLS[wall] };
}

export const DOUBLE_TUNNEL = under(
  ARCH,
  specLayer('PE', { spaceM: 0.08 }),
  specLayer('PE', { areaRatio: 1.35, spaceM: 0.4 }),
);

export function fabricInTunnel(name: 'F19' | 'F30'): CoverStack {
  return under(ARCH, specLayer('PE', { spaceM: 0.15 }), specLayer(name, { areaRatio: 1.2, spaceM: 0.3 }));
}

const HIGH_FILM = { areaRatio: 1.5, leak0MmPerS: 0.3, leak1MmPerM: 0.2 };
export const HIGH_TUNNEL = under(HIGH_ARCH, specLayer('PE', { ...HIGH_FILM, spaceM: 2.2 }));

export function fabricInHighTunnel(name: 'F19' | 'F30' | 'F50'): CoverStack {
  const inner = specLayer(name, { areaRatio: 1.2, spaceM: 0.35 });
  return { ...under(HIGH_ARCH, specLayer('PE', { ...HIGH_FILM, spaceM: 2 }), inner), floorFraction: 0.6 };
}

export const MOIST_LOAM: Soil = {
  conductivityWPerMK: 1.1,
  heatCapacityJPerM3K: 2.3e6,
  freezableFraction: 0.2,
  surfaceResistanceSPerM: 200,
  mulchResistanceM2KPerW: 0,
  albedoFraction: 0.15,
};
export const DRY_LOAM: Soil = {
  conductivityWPerMK: 0.35,
  heatCapacityJPerM3K: 1.5e6,
  freezableFraction: 0.04,
  surfaceResistanceSPerM: 2500,
  mulchResistanceM2KPerW: 0,
  albedoFraction: 0.25,
};

/** What differs from the reference night of section 13. */
export interface Changes {
  readonly cloud?: number;
  readonly windMPerS?: number;
  readonly dewPointC?: number;
  readonly screenC?: readonly number[];
  readonly soil?: Soil;
  readonly soil10CmC?: number;
  readonly deepC?: number;
  readonly leafAreaIndex?: number;
  readonly site?: Partial<NightSite>;
  readonly first?: Date;
}

export const FIRST = new Date('2025-12-01T12:00Z');
export const WINDOW = REFERENCE_WINDOW;

/** The reference night, with changes. It runs over the whole weather table. */
export function referenceInput(stack: CoverStack, changes: Changes = {}): NightInput {
  const { soil10CmC = 6, first = FIRST, screenC = REFERENCE_SCREEN_C } = changes;
  const deepC = changes.deepC ?? soil10CmC + 3;
  return {
    site: { ...REFERENCE_SITE, ...changes.site },
    start: first,
    end: new Date(first.getTime() + (screenC.length - 1) * 3_600_000),
    weather: steadyWeather(first, screenC, changes),
    soil: changes.soil ?? MOIST_LOAM,
    soilProfile: [
      { depthM: 0, soilC: soil10CmC },
      { depthM: 0.1, soilC: soil10CmC },
      { depthM: 0.8, soilC: deepC },
    ],
    canopy: { leafAreaIndex: changes.leafAreaIndex ?? 1, leafSizeM: 0.05 },
    stack,
  };
}

function steadyWeather(first: Date, screenC: readonly number[], changes: Changes): WeatherSeries {
  const lowC = Math.min(...screenC);
  return {
    first,
    stepH: 1,
    screenC,
    dewPointC: screenC.map(() => changes.dewPointC ?? lowC - 3),
    cloudFraction: screenC.map(() => changes.cloud ?? 0),
    wind10MPerS: screenC.map(() => changes.windMPerS ?? 1),
  };
}
