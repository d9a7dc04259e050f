/**
 * Share of a standard normal distribution below a value.
 *
 * @param zSds - Standard deviations from the mean; infinite values give 0 or 1.
 * @returns Share, never falling as `zSds` rises, with an error below 1.5e-7. [0…1]
 * @see abramowitz-stegun, 7.1.26
 */
export function normalFraction(zSds: number): number {
  const x = Math.abs(zSds) / Math.SQRT2;
  const t = 1 / (1 + 0.327_591_1 * x);
  const tail =
    0.5 *
    t *
    (0.254_829_592 + t * (-0.284_496_736 + t * (1.421_413_741 + t * (-1.453_152_027 + t * 1.061_405_429)))) *
    Math.exp(-x * x);
  return zSds < 0 ? tail : 1 - tail;
}
