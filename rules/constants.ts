/** Stefan–Boltzmann constant (CODATA 2018). [W m⁻² K⁻⁴] */
export const STEFAN_BOLTZMANN_W_PER_M2K4 = 5.670374e-8;

/** Absolute temperature of melting ice. [K] */
export const KELVIN_AT_ZERO_C = 273.15;

/** Heat that a cubic metre of water gives off when it freezes (general physics). [J m⁻³] */
export const FREEZING_HEAT_J_PER_M3 = 334e6;

/** Heat that a kilogram of water gives off when it freezes (general physics). [J kg⁻¹] */
export const FREEZING_HEAT_J_PER_KG = 334e3;

/** Leaf to inside air, per side of the leaf: free convection on a leaf of 5 cm (`vanthoor-2011`, rounded down). [W m⁻² K⁻¹] */
export const SHELTERED_LEAF_W_PER_M2K = 4;

/**
 * What a black body sends out.
 *
 * @param bodyC - Temperature of the body. [°C, above −273.15]
 * @returns Emission of a black surface. [W m⁻²]
 */
export function blackBodyWPerM2(bodyC: number): number {
  const kelvin = bodyC + KELVIN_AT_ZERO_C;
  const squared = kelvin * kelvin;
  return STEFAN_BOLTZMANN_W_PER_M2K4 * squared * squared;
}
