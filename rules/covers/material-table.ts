import type { CoverLayer } from '../balance/night-input.ts';
import type { SourceKey } from '../sources.ts';
import { MAKESHIFT_MATERIALS } from './makeshift-materials.ts';

/** What a cover is made of, wherever it lies: optics, resistance, leakage and light, without shape and air space. */
export type Skin = Omit<CoverLayer, 'areaRatio' | 'spaceM' | 'contactWPerM2K'>;

/** A material, the plausible range of its less certain numbers, and where they come from. */
export interface Material {
  readonly skin: Skin;
  /** Lowest and highest plausible value, in the unit of the number. */
  readonly ranges: Readonly<Partial<Record<keyof Skin, readonly [number, number]>>>;
  readonly sources: {
    readonly longwave: SourceKey;
    readonly resistance: SourceKey;
    readonly leakage: SourceKey;
    readonly sun: SourceKey;
  };
}

/** Materials by a key of our own. Wet values hold once dew covers the skin. Longwave of fabrics is the least certain of all. */
export const MATERIALS = {
  ...MAKESHIFT_MATERIALS,
  /** Spunbonded fabric of 19 g m⁻² (0.55 oz yd⁻²). */
  'fabric-light': {
    skin: {
      longwaveTransmittedDryFraction: 0.6,
      longwaveReflectedDryFraction: 0.1,
      longwaveTransmittedWetFraction: 0.3,
      longwaveReflectedWetFraction: 0.07,
      resistanceM2KPerW: 0.002,
      heatCapacityJPerM2K: 40,
      leak0MmPerS: 1,
      leak1MmPerM: 0,
      leak2MmSPerM2: 2,
      leakMmPerSK: 0.09,
      sunTransmittedFraction: 0.85,
      sunAbsorbedFraction: 0.02,
      diffusing: true,
    },
    ranges: {
      longwaveTransmittedDryFraction: [0.45, 0.7],
      longwaveTransmittedWetFraction: [0.15, 0.45],
      leak0MmPerS: [0.4, 1.7],
      leak2MmSPerM2: [1, 4],
      sunTransmittedFraction: [0.8, 0.9],
    },
    sources: {
      longwave: 'fabric-optics',
      resistance: 'nonwoven-trade',
      leakage: 'nonwoven-trade',
      sun: 'nonwoven-trade',
    },
  },
  /** Spunbonded fabric of 30 g m⁻² (0.9 oz yd⁻²). */
  'fabric-medium': {
    skin: {
      longwaveTransmittedDryFraction: 0.5,
      longwaveReflectedDryFraction: 0.12,
      longwaveTransmittedWetFraction: 0.22,
      longwaveReflectedWetFraction: 0.07,
      resistanceM2KPerW: 0.003,
      heatCapacityJPerM2K: 60,
      leak0MmPerS: 0.7,
      leak1MmPerM: 0,
      leak2MmSPerM2: 1.2,
      leakMmPerSK: 0.06,
      sunTransmittedFraction: 0.75,
      sunAbsorbedFraction: 0.03,
      diffusing: true,
    },
    ranges: {
      longwaveTransmittedDryFraction: [0.35, 0.6],
      longwaveTransmittedWetFraction: [0.1, 0.35],
      leak0MmPerS: [0.3, 1.2],
      leak2MmSPerM2: [0.6, 2.5],
      sunTransmittedFraction: [0.7, 0.8],
    },
    sources: {
      longwave: 'fabric-optics',
      resistance: 'nonwoven-trade',
      leakage: 'nonwoven-trade',
      sun: 'nonwoven-trade',
    },
  },
  /** Spunbonded fabric of 50 g m⁻² (1.5 oz yd⁻²). */
  'fabric-heavy': {
    skin: {
      longwaveTransmittedDryFraction: 0.35,
      longwaveReflectedDryFraction: 0.15,
      longwaveTransmittedWetFraction: 0.12,
      longwaveReflectedWetFraction: 0.07,
      resistanceM2KPerW: 0.006,
      heatCapacityJPerM2K: 90,
      leak0MmPerS: 0.5,
      leak1MmPerM: 0,
      leak2MmSPerM2: 0.7,
      leakMmPerSK: 0.035,
      sunTransmittedFraction: 0.55,
      sunAbsorbedFraction: 0.05,
      diffusing: true,
    },
    ranges: {
      longwaveTransmittedDryFraction: [0.2, 0.45],
      longwaveTransmittedWetFraction: [0.05, 0.25],
      leak0MmPerS: [0.2, 0.9],
      leak2MmSPerM2: [0.3, 1.5],
      sunTransmittedFraction: [0.45, 0.65],
    },
    sources: {
      longwave: 'fabric-optics',
      resistance: 'nonwoven-trade',
      leakage: 'nonwoven-trade',
      sun: 'nonwoven-trade',
    },
  },
  /** Clear polyethylene film, 0.1–0.15 mm. */
  film: {
    skin: {
      longwaveTransmittedDryFraction: 0.7,
      longwaveReflectedDryFraction: 0.05,
      longwaveTransmittedWetFraction: 0.2,
      longwaveReflectedWetFraction: 0.05,
      resistanceM2KPerW: 0.002,
      heatCapacityJPerM2K: 300,
      leak0MmPerS: 0.1,
      leak1MmPerM: 0.1,
      leak2MmSPerM2: 0,
      leakMmPerSK: 0,
      sunTransmittedFraction: 0.86,
      sunAbsorbedFraction: 0.04,
      diffusing: false,
    },
    ranges: {
      longwaveTransmittedDryFraction: [0.6, 0.8],
      longwaveTransmittedWetFraction: [0.05, 0.35],
      leak0MmPerS: [0.05, 0.3],
      leak1MmPerM: [0.05, 0.3],
      sunTransmittedFraction: [0.8, 0.9],
    },
    sources: { longwave: 'hanson-1963', resistance: 'film-memory', leakage: 'infiltration-tables', sun: 'film-memory' },
  },
  /** Polyethylene film with an infrared absorber. */
  'film-infrared': {
    skin: {
      longwaveTransmittedDryFraction: 0.25,
      longwaveReflectedDryFraction: 0.05,
      longwaveTransmittedWetFraction: 0.12,
      longwaveReflectedWetFraction: 0.05,
      resistanceM2KPerW: 0.002,
      heatCapacityJPerM2K: 300,
      leak0MmPerS: 0.1,
      leak1MmPerM: 0.1,
      leak2MmSPerM2: 0,
      leakMmPerSK: 0,
      sunTransmittedFraction: 0.84,
      sunAbsorbedFraction: 0.05,
      diffusing: false,
    },
    ranges: { longwaveTransmittedDryFraction: [0.15, 0.4], longwaveTransmittedWetFraction: [0.05, 0.2] },
    sources: { longwave: 'kalfas-1988', resistance: 'film-memory', leakage: 'infiltration-tables', sun: 'film-memory' },
  },
  /** Perforated polyethylene film, about 4 % holes. */
  'film-perforated': {
    skin: {
      longwaveTransmittedDryFraction: 0.72,
      longwaveReflectedDryFraction: 0.05,
      longwaveTransmittedWetFraction: 0.25,
      longwaveReflectedWetFraction: 0.05,
      resistanceM2KPerW: 0.002,
      heatCapacityJPerM2K: 100,
      leak0MmPerS: 1.5,
      leak1MmPerM: 3,
      leak2MmSPerM2: 0,
      leakMmPerSK: 0.3,
      sunTransmittedFraction: 0.86,
      sunAbsorbedFraction: 0.03,
      diffusing: false,
    },
    ranges: {
      longwaveTransmittedDryFraction: [0.65, 0.8],
      longwaveTransmittedWetFraction: [0.1, 0.4],
      leak0MmPerS: [0.5, 3],
      leak1MmPerM: [1.5, 5],
    },
    sources: { longwave: 'film-memory', resistance: 'film-memory', leakage: 'film-memory', sun: 'film-memory' },
  },
  /** Glass, 3 mm. */
  glass: {
    skin: {
      longwaveTransmittedDryFraction: 0,
      longwaveReflectedDryFraction: 0.12,
      longwaveTransmittedWetFraction: 0,
      longwaveReflectedWetFraction: 0.06,
      resistanceM2KPerW: 0.004,
      heatCapacityJPerM2K: 6600,
      leak0MmPerS: 0.1,
      leak1MmPerM: 0.1,
      leak2MmSPerM2: 0,
      leakMmPerSK: 0,
      sunTransmittedFraction: 0.84,
      sunAbsorbedFraction: 0.08,
      diffusing: false,
    },
    ranges: { leak0MmPerS: [0.03, 0.4], leak1MmPerM: [0.03, 0.4], sunTransmittedFraction: [0.8, 0.88] },
    sources: {
      longwave: 'vanthoor-2011',
      resistance: 'cibse-guide-a',
      leakage: 'infiltration-tables',
      sun: 'film-memory',
    },
  },
  /** Twin-wall polycarbonate, 4 mm. */
  'twin-wall-4': {
    skin: {
      longwaveTransmittedDryFraction: 0.02,
      longwaveReflectedDryFraction: 0.08,
      longwaveTransmittedWetFraction: 0.02,
      longwaveReflectedWetFraction: 0.06,
      resistanceM2KPerW: 0.082,
      heatCapacityJPerM2K: 960,
      leak0MmPerS: 0.1,
      leak1MmPerM: 0.1,
      leak2MmSPerM2: 0,
      leakMmPerSK: 0,
      sunTransmittedFraction: 0.8,
      sunAbsorbedFraction: 0.07,
      diffusing: false,
    },
    ranges: { resistanceM2KPerW: [0.07, 0.09] },
    sources: {
      longwave: 'film-memory',
      resistance: 'glazing-r-values',
      leakage: 'infiltration-tables',
      sun: 'film-memory',
    },
  },
  /** Twin-wall polycarbonate, 10 mm. */
  'twin-wall-10': {
    skin: {
      longwaveTransmittedDryFraction: 0.02,
      longwaveReflectedDryFraction: 0.08,
      longwaveTransmittedWetFraction: 0.02,
      longwaveReflectedWetFraction: 0.06,
      resistanceM2KPerW: 0.155,
      heatCapacityJPerM2K: 2000,
      leak0MmPerS: 0.1,
      leak1MmPerM: 0.1,
      leak2MmSPerM2: 0,
      leakMmPerSK: 0,
      sunTransmittedFraction: 0.77,
      sunAbsorbedFraction: 0.08,
      diffusing: false,
    },
    ranges: { resistanceM2KPerW: [0.13, 0.17] },
    sources: { longwave: 'film-memory', resistance: 'film-memory', leakage: 'infiltration-tables', sun: 'film-memory' },
  },
  /** Cotton bed sheet, 130 g m⁻². */
  sheet: {
    skin: {
      longwaveTransmittedDryFraction: 0.1,
      longwaveReflectedDryFraction: 0.1,
      longwaveTransmittedWetFraction: 0.03,
      longwaveReflectedWetFraction: 0.06,
      resistanceM2KPerW: 0.012,
      heatCapacityJPerM2K: 200,
      leak0MmPerS: 0.6,
      leak1MmPerM: 0,
      leak2MmSPerM2: 0.8,
      leakMmPerSK: 0.03,
      sunTransmittedFraction: 0.35,
      sunAbsorbedFraction: 0.15,
      diffusing: true,
    },
    ranges: { resistanceM2KPerW: [0.008, 0.018], leak0MmPerS: [0.4, 0.9] },
    sources: { longwave: 'cloth-memory', resistance: 'cloth-memory', leakage: 'cloth-memory', sun: 'cloth-memory' },
  },
  /** Household or moving blanket, about 1 cm. */
  blanket: {
    skin: {
      longwaveTransmittedDryFraction: 0,
      longwaveReflectedDryFraction: 0.08,
      longwaveTransmittedWetFraction: 0,
      longwaveReflectedWetFraction: 0.06,
      resistanceM2KPerW: 0.2,
      heatCapacityJPerM2K: 1500,
      leak0MmPerS: 0.3,
      leak1MmPerM: 0,
      leak2MmSPerM2: 0.2,
      leakMmPerSK: 0,
      sunTransmittedFraction: 0,
      sunAbsorbedFraction: 0.5,
      diffusing: true,
    },
    ranges: { resistanceM2KPerW: [0.133, 0.3], leak0MmPerS: [0.2, 0.45] },
    sources: { longwave: 'cloth-memory', resistance: 'cloth-memory', leakage: 'cloth-memory', sun: 'cloth-memory' },
  },
  /** Quilt or duvet, about 2 cm. */
  quilt: {
    skin: {
      longwaveTransmittedDryFraction: 0,
      longwaveReflectedDryFraction: 0.08,
      longwaveTransmittedWetFraction: 0,
      longwaveReflectedWetFraction: 0.06,
      resistanceM2KPerW: 0.4,
      heatCapacityJPerM2K: 3000,
      leak0MmPerS: 0.2,
      leak1MmPerM: 0,
      leak2MmSPerM2: 0.1,
      leakMmPerSK: 0,
      sunTransmittedFraction: 0,
      sunAbsorbedFraction: 0.5,
      diffusing: true,
    },
    ranges: { resistanceM2KPerW: [0.267, 0.6], leak0MmPerS: [0.133, 0.3] },
    sources: { longwave: 'cloth-memory', resistance: 'cloth-memory', leakage: 'cloth-memory', sun: 'cloth-memory' },
  },
  /** Woven polyethylene tarp. */
  tarp: {
    skin: {
      longwaveTransmittedDryFraction: 0.35,
      longwaveReflectedDryFraction: 0.08,
      longwaveTransmittedWetFraction: 0.1,
      longwaveReflectedWetFraction: 0.06,
      resistanceM2KPerW: 0.003,
      heatCapacityJPerM2K: 300,
      leak0MmPerS: 0.1,
      leak1MmPerM: 0.1,
      leak2MmSPerM2: 0,
      leakMmPerSK: 0,
      sunTransmittedFraction: 0.1,
      sunAbsorbedFraction: 0.5,
      diffusing: false,
    },
    ranges: { resistanceM2KPerW: [0.002, 0.005], leak0MmPerS: [0.067, 0.15] },
    sources: { longwave: 'cloth-memory', resistance: 'cloth-memory', leakage: 'cloth-memory', sun: 'cloth-memory' },
  },
  /** Dry straw mat, 5 cm; leaks like a quilt (judgement). */
  mat: {
    skin: {
      longwaveTransmittedDryFraction: 0,
      longwaveReflectedDryFraction: 0.05,
      longwaveTransmittedWetFraction: 0,
      longwaveReflectedWetFraction: 0.05,
      resistanceM2KPerW: 0.6,
      heatCapacityJPerM2K: 6000,
      leak0MmPerS: 0.2,
      leak1MmPerM: 0,
      leak2MmSPerM2: 0.1,
      leakMmPerSK: 0,
      sunTransmittedFraction: 0,
      sunAbsorbedFraction: 0.7,
      diffusing: true,
    },
    ranges: { resistanceM2KPerW: [0.25, 0.75] },
    sources: { longwave: 'judgement', resistance: 'cloth-memory', leakage: 'judgement', sun: 'judgement' },
  },
  /**
   * Straw, hay or leaves laid 10 cm deep, as it lies after some weeks: settled to half, damp at the bottom, 0.6 of the 1.25 m² K W⁻¹ that dry
   * loose straw has at 0.08 W m⁻¹ K⁻¹;
   * air goes through it as through heavy fabric (`judgement`; the one measured pair, Purdue 2018, lies 6 K below what dry loose straw gives). Wet: 0.4 of that.
   */
  litter: {
    skin: {
      longwaveTransmittedDryFraction: 0,
      longwaveReflectedDryFraction: 0.05,
      longwaveTransmittedWetFraction: 0,
      longwaveReflectedWetFraction: 0.05,
      resistanceM2KPerW: 0.6,
      heatCapacityJPerM2K: 8500,
      leak0MmPerS: 0.5,
      leak1MmPerM: 0.5,
      leak2MmSPerM2: 0,
      leakMmPerSK: 0,
      sunTransmittedFraction: 0.02,
      sunAbsorbedFraction: 0.7,
      diffusing: true,
    },
    ranges: { resistanceM2KPerW: [0.25, 1.25], leak0MmPerS: [0.15, 1] },
    sources: { longwave: 'cloth-memory', resistance: 'cloth-memory', leakage: 'cloth-memory', sun: 'cloth-memory' },
  },
  /** Fresh snow, 10 cm at 0.10 W m⁻¹ K⁻¹ and 200 kg m⁻³. */
  snow: {
    skin: {
      longwaveTransmittedDryFraction: 0,
      longwaveReflectedDryFraction: 0.02,
      longwaveTransmittedWetFraction: 0,
      longwaveReflectedWetFraction: 0.02,
      resistanceM2KPerW: 1,
      heatCapacityJPerM2K: 42_000,
      leak0MmPerS: 0.05,
      leak1MmPerM: 0,
      leak2MmSPerM2: 0,
      leakMmPerSK: 0,
      sunTransmittedFraction: 0.1,
      sunAbsorbedFraction: 0.1,
      diffusing: true,
    },
    ranges: { resistanceM2KPerW: [0.667, 1.5], leak0MmPerS: [0.033, 0.075] },
    sources: { longwave: 'snow-memory', resistance: 'moene-van-dam', leakage: 'snow-memory', sun: 'snow-memory' },
  },
} as const satisfies Record<string, Material>;

export type MaterialKey = keyof typeof MATERIALS;
