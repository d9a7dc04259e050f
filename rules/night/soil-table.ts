import type { Soil } from '../balance/night-input.ts';
import type { SourceKey } from '../sources.ts';

/** Soils that a grower can tell apart, and what may lie on them. */
export const SOIL_KINDS = ['moist', 'dry', 'wet', 'sandy', 'clay', 'raised-bed'] as const;
export type SoilKind = (typeof SOIL_KINDS)[number];

export const MULCH_KINDS = ['none', 'straw', 'plastic'] as const;
export type MulchKind = (typeof MULCH_KINDS)[number];

interface SoilFacts {
  readonly american: string;
  readonly british: string;
  readonly soil: Soil;
  readonly source: SourceKey;
}

/** Thermal properties of soils; loam and compost are interpolated between sand, clay and peat, surface resistances judged. */
export const SOILS: Readonly<Record<SoilKind, SoilFacts>> = {
  moist: {
    american: 'ordinary moist soil',
    british: 'ordinary moist soil',
    soil: soil(1.1, 2.3e6, 0.2, 200, 0.15),
    source: 'moene-van-dam',
  },
  dry: {
    american: 'dry soil',
    british: 'dry soil',
    soil: soil(0.35, 1.5e6, 0.04, 2500, 0.25),
    source: 'moene-van-dam',
  },
  wet: { american: 'wet soil', british: 'wet soil', soil: soil(1.5, 2.9e6, 0.3, 80, 0.1), source: 'moene-van-dam' },
  sandy: {
    american: 'moist sandy soil',
    british: 'moist sandy soil',
    soil: soil(1.8, 2.1e6, 0.13, 400, 0.2),
    source: 'moene-van-dam',
  },
  clay: {
    american: 'moist clay soil',
    british: 'moist clay soil',
    soil: soil(0.95, 2.5e6, 0.15, 200, 0.12),
    source: 'moene-van-dam',
  },
  'raised-bed': {
    american: 'a raised bed rich in compost',
    british: 'a raised bed rich in compost',
    soil: soil(0.45, 2.3e6, 0.3, 150, 0.1),
    source: 'judgement',
  },
};

/** Resistance of a mulch to heat and to vapour (`cloth-memory`; vapour within 1500–3000 and 20 000–50 000, `judgement`). */
const MULCHES: Readonly<
  Record<Exclude<MulchKind, 'none'>, Pick<Soil, 'mulchResistanceM2KPerW' | 'surfaceResistanceSPerM'>>
> = {
  straw: { mulchResistanceM2KPerW: 0.7, surfaceResistanceSPerM: 2000 },
  plastic: { mulchResistanceM2KPerW: 0.005, surfaceResistanceSPerM: 20_000 },
};

/**
 * A soil with or without mulch, for the energy balance.
 *
 * @param kind - The soil.
 * @param mulch - 5 cm of straw, or a plastic sheet, on the soil under the crop.
 * @returns Its properties. Straw on the soil under a cover keeps the ground's warmth from the leaves.
 */
export function soilOf(kind: SoilKind, mulch: MulchKind = 'none'): Soil {
  const { soil: bare } = SOILS[kind];
  if (mulch === 'none') return bare;
  const cover = MULCHES[mulch];
  return {
    ...bare,
    mulchResistanceM2KPerW: cover.mulchResistanceM2KPerW,
    surfaceResistanceSPerM: Math.max(bare.surfaceResistanceSPerM, cover.surfaceResistanceSPerM),
  };
}

function soil(
  conductivityWPerMK: number,
  heatCapacityJPerM3K: number,
  freezableFraction: number,
  surfaceResistanceSPerM: number,
  albedoFraction: number,
): Soil {
  return {
    conductivityWPerMK,
    heatCapacityJPerM3K,
    freezableFraction,
    surfaceResistanceSPerM,
    mulchResistanceM2KPerW: 0,
    albedoFraction,
  };
}
