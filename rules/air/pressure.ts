/** Height over which the pressure of the standard atmosphere falls to 1/e near the ground. */
const SCALE_HEIGHT_M = 8434;
const PSYCHROMETRIC_SEA_LEVEL_HPA_PER_K = 0.658;
const AIR_HEAT_CAPACITY_SEA_LEVEL_J_PER_M3K = 1290;

/**
 * Air pressure at a height, as a share of that at sea level.
 *
 * @param elevationM - Height above the sea. [m, −500…5000]
 * @returns Pressure over sea-level pressure. [0.55…1.06]
 * @throws RangeError when the height is not a number.
 *
 * @see Isothermal atmosphere with the scale height of the standard atmosphere (`standard-atmosphere`)
 */
export function pressureFraction(elevationM: number): number {
  if (!Number.isFinite(elevationM)) throw new RangeError(`elevationM ${elevationM} is not a number of metres`);
  return Math.exp(-elevationM / SCALE_HEIGHT_M);
}

/**
 * Psychrometric constant: how much vapour pressure carries as much heat as one kelvin of air.
 *
 * @param elevationM - Height above the sea. [m, −500…5000]
 * @returns Psychrometric constant with the latent heat near freezing. [hPa K⁻¹]
 * @throws RangeError when the height is not a number.
 *
 * @see Vanthoor et al. 2011 (`vanthoor-2011`)
 */
export function psychrometricHPaPerK(elevationM: number): number {
  return PSYCHROMETRIC_SEA_LEVEL_HPA_PER_K * pressureFraction(elevationM);
}

/**
 * Heat that warms a cubic metre of air by one kelvin.
 *
 * @param elevationM - Height above the sea. [m, −500…5000]
 * @returns Volumetric heat capacity of air near freezing. [J m⁻³ K⁻¹]
 * @throws RangeError when the height is not a number.
 *
 * @see Density 1.29 kg m⁻³ at 0 °C times about 1000 J kg⁻¹ K⁻¹ (`standard-atmosphere`)
 */
export function airHeatCapacityJPerM3K(elevationM: number): number {
  return AIR_HEAT_CAPACITY_SEA_LEVEL_J_PER_M3K * pressureFraction(elevationM);
}
