const MAGNUS_HPA = 6.112;
const MAGNUS_SLOPE = 17.62;
const MAGNUS_C = 243.12;

/**
 * Vapour pressure of air that is saturated over liquid water, also below freezing: dew points are stated over water.
 *
 * @param airC - Temperature of the air. [°C, −45…60; above −243]
 * @returns Saturation vapour pressure. [hPa]
 * @throws RangeError at or below the pole of the formula, −243.12 °C.
 *
 * @see World Meteorological Organization, Guide to Instruments (CIMO), Magnus form (`wmo-magnus`)
 */
export function saturationVapourHPa(airC: number): number {
  if (!(airC > -MAGNUS_C)) throw new RangeError(`airC ${airC} is not above −${MAGNUS_C}`);
  return MAGNUS_HPA * Math.exp((MAGNUS_SLOPE * airC) / (MAGNUS_C + airC));
}

/**
 * How fast the saturation vapour pressure rises with temperature: the exact slope of `saturationVapourHPa`.
 *
 * @param airC - Temperature of the air. [°C, −45…60; above −243]
 * @returns Slope of the saturation curve. [hPa K⁻¹]
 * @throws RangeError at or below the pole of the formula, −243.12 °C.
 */
export function saturationSlopeHPaPerK(airC: number): number {
  return (saturationVapourHPa(airC) * MAGNUS_SLOPE * MAGNUS_C) / (MAGNUS_C + airC) ** 2;
}

/**
 * Temperature at which air with this much vapour is saturated over water: the inverse of `saturationVapourHPa`.
 *
 * @param vapourHPa - Vapour pressure. [hPa, above 0]
 * @returns Dew point. [°C]
 * @throws RangeError when there is no vapour, or more than any air can hold.
 */
export function dewPointC(vapourHPa: number): number {
  const exponent = Math.log(vapourHPa / MAGNUS_HPA);
  if (!(vapourHPa > 0 && exponent < MAGNUS_SLOPE)) {
    throw new RangeError(`vapourHPa ${vapourHPa} is outside what air can hold, above 0`);
  }
  return (MAGNUS_C * exponent) / (MAGNUS_SLOPE - exponent);
}

/**
 * Dew point from temperature and relative humidity over water.
 *
 * @param airC - Temperature of the air. [°C, −45…60]
 * @param relativeHumidityFraction - Relative humidity. [above 0, at most 1]
 * @returns Dew point, at most `airC`. [°C]
 * @throws RangeError when a parameter is out of range.
 */
export function dewPointFromHumidityC(airC: number, relativeHumidityFraction: number): number {
  if (!(relativeHumidityFraction > 0 && relativeHumidityFraction <= 1)) {
    throw new RangeError(`relativeHumidityFraction ${relativeHumidityFraction} is outside 0…1, 0 excluded`);
  }
  // At saturation the round trip through the logarithm may end a rounding error above the air.
  return Math.min(airC, dewPointC(relativeHumidityFraction * saturationVapourHPa(airC)));
}
