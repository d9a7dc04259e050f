import type { CoverLayer } from '../balance/night-input.ts';
import type { NightAddition } from './cover-table.ts';
import { MATERIALS, type MaterialKey, type Skin } from './material-table.ts';

/** Resistance of the air caught between two covers that touch. [m² K W⁻¹] */
const TOUCHING_GAP_M2K_PER_W = 0.01;
/** Two fabrics laid on leaves rub less in wind than on hoops: 1.4, 0.8, 0.5 against 2.0, 1.2, 0.7 mm s m⁻². */
const LAID_WIND_LEAK_MM_S_PER_M2: Partial<Record<MaterialKey, number>> = {
  'fabric-light': 1.4,
  'fabric-medium': 0.8,
  'fabric-heavy': 0.5,
};
/** Longwave reflectance of the top of a mat, blanket or tarp laid on another cover. */
const NIGHT_ADDITION_REFLECTED_FRACTION = 0.1;
/** A thing laid on a cover for the night closes half of its leaks. */
const NIGHT_ADDITION_LEAK_SHARE = 0.5;
/** Between the tightest fabric, 0.5, and the leakiest tunnel, 0.3 mm s⁻¹ (judgement). */
const POROUS_FROM_MM_PER_S = 0.4;
/** Far above the edges of any film, below 4 % holes (judgement). */
const HOLED_FROM_MM_PER_M = 1;

/**
 * A material as it lies on the leaves: fabrics leak less wind than on hoops.
 *
 * @param key - The material.
 * @see Coefficients of the model's own laid-on fabrics, from air-flow figures (`nonwoven-trade`)
 */
export function laidSkin(key: MaterialKey): Skin {
  const skin: Skin = MATERIALS[key].skin;
  return { ...skin, leak2MmSPerM2: LAID_WIND_LEAK_MM_S_PER_M2[key] ?? skin.leak2MmSPerM2 };
}

/**
 * Two covers that touch (gap below about 2 cm) as one.
 *
 * @param outer - The upper one.
 * @param inner - The lower one.
 * @param gapM2KPerW - Resistance of the air between them, default 0.01 for touching ones. [m² K W⁻¹]
 * @returns One skin: optics with all reflections between the two, resistances added, leaks in series.
 *
 * @remarks Covers that partly touch lie between this and two separate ones; this is the colder answer.
 */
export function touchingSkin(outer: Skin, inner: Skin, gapM2KPerW: number = TOUCHING_GAP_M2K_PER_W): Skin {
  const dry = stackedOptics(
    outer.longwaveTransmittedDryFraction,
    outer.longwaveReflectedDryFraction,
    inner.longwaveTransmittedDryFraction,
    inner.longwaveReflectedDryFraction,
  );
  const wet = stackedOptics(
    outer.longwaveTransmittedWetFraction,
    outer.longwaveReflectedWetFraction,
    inner.longwaveTransmittedWetFraction,
    inner.longwaveReflectedWetFraction,
  );
  return {
    longwaveTransmittedDryFraction: dry.transmitted,
    longwaveReflectedDryFraction: dry.reflected,
    longwaveTransmittedWetFraction: wet.transmitted,
    longwaveReflectedWetFraction: wet.reflected,
    resistanceM2KPerW: outer.resistanceM2KPerW + inner.resistanceM2KPerW + gapM2KPerW,
    heatCapacityJPerM2K: outer.heatCapacityJPerM2K + inner.heatCapacityJPerM2K,
    leak0MmPerS: inSeries(outer.leak0MmPerS, inner.leak0MmPerS),
    leak1MmPerM: inSeries(outer.leak1MmPerM, inner.leak1MmPerM),
    leak2MmSPerM2: inSeries(outer.leak2MmSPerM2, inner.leak2MmSPerM2),
    leakMmPerSK: inSeries(outer.leakMmPerSK, inner.leakMmPerSK),
    sunTransmittedFraction: outer.sunTransmittedFraction * inner.sunTransmittedFraction,
    sunAbsorbedFraction: outer.sunAbsorbedFraction + outer.sunTransmittedFraction * inner.sunAbsorbedFraction,
    diffusing: outer.diffusing || inner.diffusing,
  };
}

/**
 * A cover with something laid on it that stays there: opaque, better insulating, and half as leaky.
 *
 * @param skin - The cover below.
 * @param addition - What lies on it.
 * @param top - The same as a skin of its own, for what wind it lets through.
 * @param isPressed - The cover below lies on the leaves.
 *
 * @remarks
 * What lies on held-up fabric takes the wind off it; fabric pressed on the leaves, and holes in film, are shut by it and leak
 * as it does alone: half of what these let in would be more (judgement).
 */
export function coveredSkin(skin: Skin, addition: NightAddition, top: Skin, isPressed: boolean): Skin {
  return {
    ...skin,
    longwaveTransmittedDryFraction: 0,
    longwaveReflectedDryFraction: NIGHT_ADDITION_REFLECTED_FRACTION,
    longwaveTransmittedWetFraction: 0,
    resistanceM2KPerW: skin.resistanceM2KPerW + addition.resistanceM2KPerW,
    heatCapacityJPerM2K: skin.heatCapacityJPerM2K + addition.heatCapacityJPerM2K,
    ...leaksUnder(top, skin, isPressed),
    sunTransmittedFraction: 0,
    sunAbsorbedFraction: 0.5,
  };
}

/** Lets air through all over, as fabric and perforated film do, and not just at its edges. */
export function isPorous(skin: Skin): boolean {
  return skin.leak0MmPerS >= POROUS_FROM_MM_PER_S;
}

type Leaks = Pick<Skin, 'leak0MmPerS' | 'leak1MmPerM' | 'leak2MmSPerM2' | 'leakMmPerSK'>;

function leaksUnder(top: Skin, skin: Skin, isPressed: boolean): Leaks {
  const { leak1MmPerM, leak2MmSPerM2 } = top;
  if (skin.leak1MmPerM >= HOLED_FROM_MM_PER_M || (isPressed && isPorous(skin))) {
    return { leak0MmPerS: top.leak0MmPerS, leak1MmPerM, leak2MmSPerM2, leakMmPerSK: top.leakMmPerSK };
  }
  const leak0MmPerS = NIGHT_ADDITION_LEAK_SHARE * skin.leak0MmPerS;
  const leakMmPerSK = NIGHT_ADDITION_LEAK_SHARE * skin.leakMmPerSK;
  if (isPorous(skin)) return { leak0MmPerS, leak1MmPerM, leak2MmSPerM2, leakMmPerSK };
  return {
    leak0MmPerS,
    leak1MmPerM: NIGHT_ADDITION_LEAK_SHARE * skin.leak1MmPerM,
    leak2MmSPerM2: NIGHT_ADDITION_LEAK_SHARE * skin.leak2MmSPerM2,
    leakMmPerSK,
  };
}

/**
 * A skin given its shape and the air space below it.
 *
 * @param skin - The material.
 * @param areaRatio - Cover area per floor area. [1…2]
 * @param spaceM - Height of the air below it. [m]
 * @param contactWPerM2K - Contact with the leaves; 0 when held off them. [W m⁻² K⁻¹]
 */
export function layerOf(skin: Skin, areaRatio: number, spaceM: number, contactWPerM2K = 0): CoverLayer {
  return { ...skin, areaRatio, spaceM, contactWPerM2K };
}

function stackedOptics(
  outerTransmitted: number,
  outerReflected: number,
  innerTransmitted: number,
  innerReflected: number,
) {
  const repeated = 1 / (1 - outerReflected * innerReflected);
  return {
    transmitted: outerTransmitted * innerTransmitted * repeated,
    reflected: outerReflected + outerTransmitted ** 2 * innerReflected * repeated,
  };
}

function inSeries(outer: number, inner: number): number {
  return outer === 0 || inner === 0 ? 0 : 1 / (1 / outer + 1 / inner);
}
