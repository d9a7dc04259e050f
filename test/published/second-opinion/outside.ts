import type { NightInput } from '../../../rules/index.ts';

/** Formulas of the physics page (`rules/balance/README.md`, sections 2 and 3), written anew for the second opinion: nothing here comes from `rules/`. */

const SIGMA = 5.670374e-8;

export function emissionWPerM2(bodyC: number): number {
  return SIGMA * (bodyC + 273.15) ** 4;
}

export function saturationHPa(airC: number): number {
  return 6.112 * Math.exp((17.62 * airC) / (243.12 + airC));
}

export function dewPointC(vapourHPa: number): number {
  const x = Math.log(vapourHPa / 6.112);
  return (243.12 * x) / (17.62 - x);
}

/** |x| to a power, rounded at the tip. */
export function smoothPower(x: number, power: number): number {
  return (x * x + 0.01) ** (power / 2);
}

export interface Outside {
  readonly vapourHPa: number;
  /** Air at the cover and at the crop. [°C] */
  readonly coverAirC: number;
  readonly cropAirC: number;
  readonly downWPerM2: number;
  readonly coverWindMPerS: number;
  readonly cropWindMPerS: number;
}

/** What the bed feels from outside at so many seconds after the first weather value, by night. */
export function outside({ site, weather, stack }: NightInput, sinceFirstS: number): Outside {
  const at = (values: readonly number[]) => between(values, sinceFirstS / 3600 / weather.stepH);
  const screenC = at(weather.screenC);
  const dewC = Math.min(screenC, at(weather.dewPointC));
  const cloud = at(weather.cloudFraction);
  const wind = at(weather.wind10MPerS);
  const vapourHPa = saturationHPa(dewC);
  const waterCm = (46.5 * vapourHPa) / (screenC + 273.15);
  const clear = 1 - (1 + waterCm) * Math.exp(-Math.sqrt(1.2 + 3 * waterCm));
  const skyWPerM2 = (clear + (0.97 - clear) * cloud ** 4) * emissionWPerM2(screenC);
  const lossShare = Math.max(0, emissionWPerM2(screenC) - skyWPerM2) / 100 / (1 + (wind / 2) ** 2);
  const colderK = (heightM: number) =>
    site.inversionK * lossShare * Math.max(0, Math.min(1, Math.log(2 / heightM) / Math.log(20)));
  const windAt = (heightM: number) =>
    Math.max(0.1, (site.shelterFraction * wind * Math.log(Math.max(heightM, 0.1) / 0.03)) / Math.log(10 / 0.03));
  const { heightM } = stack.geometry;
  const coverAirC = screenC - colderK(heightM);
  return {
    vapourHPa,
    coverAirC,
    cropAirC: screenC - colderK(0.15),
    downWPerM2: site.skyViewFraction * skyWPerM2 + (1 - site.skyViewFraction) * emissionWPerM2(coverAirC),
    coverWindMPerS: windAt(heightM),
    cropWindMPerS: windAt(0.15),
  };
}

function between(values: readonly number[], place: number): number {
  const index = Math.min(values.length - 2, Math.floor(place));
  const [one = Number.NaN, other = Number.NaN] = [values[index], values[index + 1]];
  return one + (other - one) * (place - index);
}
