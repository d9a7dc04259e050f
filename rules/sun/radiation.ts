const SOLAR_CONSTANT_W_PER_M2 = 1367;
/** Below this the sun gives no warmth worth counting and the formulas lose their meaning. */
const LOWEST_COS_ZENITH = 0.01;

/**
 * Sun and sky radiation on level ground under a clear sky.
 *
 * @param cosZenith - Cosine of the sun's angle from overhead. [−1…1]
 * @returns Global radiation, 0 with the sun at or below about half a degree. [W m⁻², 0…1036]
 * @throws RangeError when `cosZenith` is no cosine.
 *
 * @remarks Noon at 40° N is within 5 % of the ASHRAE clear-day tables in December and June. Haze and height are not known.
 * @see Haurwitz 1945 (`haurwitz-1945`)
 */
export function clearSkyGlobalWPerM2(cosZenith: number): number {
  refuseNoCosine(cosZenith);
  if (cosZenith <= LOWEST_COS_ZENITH) return 0;
  return 1098 * cosZenith * Math.exp(-0.059 / cosZenith);
}

/**
 * What total cloud leaves of the clear-sky radiation on level ground.
 *
 * @param clearWPerM2 - Radiation under a clear sky. [W m⁻², at least 0]
 * @param cloudFraction - Total cloud cover. [0…1]
 * @returns Global radiation under that cloud; a closed sky leaves a quarter. [W m⁻²]
 * @throws RangeError when a parameter is out of range.
 *
 * @see Kasten & Czeplak 1980 (`kasten-czeplak-1980`)
 */
export function cloudedGlobalWPerM2(clearWPerM2: number, cloudFraction: number): number {
  if (!(clearWPerM2 >= 0)) throw new RangeError(`clearWPerM2 ${clearWPerM2} is below 0`);
  if (!(cloudFraction >= 0 && cloudFraction <= 1)) {
    throw new RangeError(`cloudFraction ${cloudFraction} is outside 0…1`);
  }
  return clearWPerM2 * (1 - 0.75 * cloudFraction ** 3.4);
}

/**
 * Share of the radiation on level ground that comes from the whole sky instead of straight from the sun.
 *
 * @param globalWPerM2 - Radiation on level ground. [W m⁻², at least 0]
 * @param cosZenith - Cosine of the sun's angle from overhead. [−1…1]
 * @param eccentricity - Squared distance ratio from `solarPosition`. [0.966…1.035]
 * @returns Diffuse share: 1 under thick cloud, 0.165 under the clearest sky. [0.165…1]
 * @throws RangeError when a parameter is out of range.
 *
 * @see Erbs, Klein & Duffie 1982 (`erbs-1982`)
 */
export function diffuseFraction(globalWPerM2: number, cosZenith: number, eccentricity: number): number {
  if (!(globalWPerM2 >= 0)) throw new RangeError(`globalWPerM2 ${globalWPerM2} is below 0`);
  if (!(eccentricity > 0)) throw new RangeError(`eccentricity ${eccentricity} is not above 0`);
  refuseNoCosine(cosZenith);
  const overAtmosphereWPerM2 = SOLAR_CONSTANT_W_PER_M2 * eccentricity * Math.max(cosZenith, 0.05);
  const clearness = Math.min(1, globalWPerM2 / overAtmosphereWPerM2);
  if (clearness <= 0.22) return 1 - 0.09 * clearness;
  if (clearness > 0.8) return 0.165;
  return 0.9511 - 0.1604 * clearness + 4.388 * clearness ** 2 - 16.638 * clearness ** 3 + 12.336 * clearness ** 4;
}

function refuseNoCosine(cosZenith: number): void {
  if (!(cosZenith >= -1 && cosZenith <= 1)) throw new RangeError(`cosZenith ${cosZenith} is outside −1…1`);
}
