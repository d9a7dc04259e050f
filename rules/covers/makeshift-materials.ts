import type { Material } from './material-table.ts';

/** All of them between materials of the main table, or from general physics (thickness over conductivity). */
const JUDGED = { longwave: 'judgement', resistance: 'judgement', leakage: 'judgement', sun: 'judgement' } as const;

/**
 * Materials of covers that growers make from what is at hand. Upturned vessels stand in the soil: what leaks is the rim, and a
 * bottle loses air by its neck. None has been measured over a bed; ranges are wide (judgement).
 */
export const MAKESHIFT_MATERIALS = {
  /** Opaque plastic of 2 mm: bucket, pot, storage tote. */
  bucket: {
    skin: {
      longwaveTransmittedDryFraction: 0.02,
      longwaveReflectedDryFraction: 0.08,
      longwaveTransmittedWetFraction: 0.02,
      longwaveReflectedWetFraction: 0.06,
      resistanceM2KPerW: 0.006,
      heatCapacityJPerM2K: 3500,
      leak0MmPerS: 0.05,
      leak1MmPerM: 0.05,
      leak2MmSPerM2: 0,
      leakMmPerSK: 0,
      sunTransmittedFraction: 0.02,
      sunAbsorbedFraction: 0.6,
      diffusing: true,
    },
    ranges: { leak0MmPerS: [0.05, 0.4], leak1MmPerM: [0.03, 0.3] },
    sources: JUDGED,
  },
  /** Translucent polyethylene or clear bottle of 0.5 mm, its neck open. */
  'bottle-plastic': {
    skin: {
      longwaveTransmittedDryFraction: 0.35,
      longwaveReflectedDryFraction: 0.06,
      longwaveTransmittedWetFraction: 0.12,
      longwaveReflectedWetFraction: 0.05,
      resistanceM2KPerW: 0.003,
      heatCapacityJPerM2K: 900,
      leak0MmPerS: 0.4,
      leak1MmPerM: 0.2,
      leak2MmSPerM2: 0,
      leakMmPerSK: 0.02,
      sunTransmittedFraction: 0.7,
      sunAbsorbedFraction: 0.08,
      diffusing: true,
    },
    ranges: { leak0MmPerS: [0.1, 1], longwaveTransmittedDryFraction: [0.15, 0.5] },
    sources: JUDGED,
  },
  /** Dry corrugated board of 4 mm at 0.06 W m⁻¹ K⁻¹. */
  cardboard: {
    skin: {
      longwaveTransmittedDryFraction: 0,
      longwaveReflectedDryFraction: 0.08,
      longwaveTransmittedWetFraction: 0,
      longwaveReflectedWetFraction: 0.06,
      resistanceM2KPerW: 0.067,
      heatCapacityJPerM2K: 900,
      leak0MmPerS: 0.25,
      leak1MmPerM: 0.2,
      leak2MmSPerM2: 0,
      leakMmPerSK: 0,
      sunTransmittedFraction: 0,
      sunAbsorbedFraction: 0.6,
      diffusing: true,
    },
    ranges: { resistanceM2KPerW: [0.03, 0.1], leak0MmPerS: [0.1, 0.6] },
    sources: JUDGED,
  },
  /** Tubes of water in a ring, open above: water is opaque to longwave, the opening is not. Their water is a mass of its own. */
  'water-tubes': {
    skin: {
      longwaveTransmittedDryFraction: 0.1,
      longwaveReflectedDryFraction: 0.06,
      longwaveTransmittedWetFraction: 0.08,
      longwaveReflectedWetFraction: 0.05,
      resistanceM2KPerW: 0.05,
      heatCapacityJPerM2K: 20_000,
      leak0MmPerS: 0.15,
      leak1MmPerM: 0.1,
      leak2MmSPerM2: 0,
      leakMmPerSK: 0,
      sunTransmittedFraction: 0.6,
      sunAbsorbedFraction: 0.15,
      diffusing: true,
    },
    ranges: { leak0MmPerS: [0.05, 0.5], resistanceM2KPerW: [0.02, 0.1] },
    sources: JUDGED,
  },
  /** Jute of about 300 g m⁻²: a thicker, leakier sheet. */
  burlap: {
    skin: {
      longwaveTransmittedDryFraction: 0.25,
      longwaveReflectedDryFraction: 0.1,
      longwaveTransmittedWetFraction: 0.12,
      longwaveReflectedWetFraction: 0.06,
      resistanceM2KPerW: 0.016,
      heatCapacityJPerM2K: 450,
      leak0MmPerS: 1.2,
      leak1MmPerM: 0,
      leak2MmSPerM2: 2,
      leakMmPerSK: 0.06,
      sunTransmittedFraction: 0.3,
      sunAbsorbedFraction: 0.3,
      diffusing: true,
    },
    ranges: { leak0MmPerS: [0.7, 2], longwaveTransmittedDryFraction: [0.1, 0.4] },
    sources: JUDGED,
  },
  /** Two films with 10 mm of caught air. */
  'bubble-wrap': {
    skin: {
      longwaveTransmittedDryFraction: 0.45,
      longwaveReflectedDryFraction: 0.07,
      longwaveTransmittedWetFraction: 0.12,
      longwaveReflectedWetFraction: 0.05,
      resistanceM2KPerW: 0.13,
      heatCapacityJPerM2K: 400,
      leak0MmPerS: 0.2,
      leak1MmPerM: 0.15,
      leak2MmSPerM2: 0,
      leakMmPerSK: 0,
      sunTransmittedFraction: 0.78,
      sunAbsorbedFraction: 0.06,
      diffusing: true,
    },
    ranges: { resistanceM2KPerW: [0.08, 0.18], longwaveTransmittedDryFraction: [0.2, 0.6] },
    sources: JUDGED,
  },
} as const satisfies Readonly<Record<string, Material>>;
