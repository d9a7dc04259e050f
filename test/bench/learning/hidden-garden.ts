import type { CoverLayer, CoverStack } from '../../../rules/index.ts';
import type { Random } from './random.ts';

/**
 * What nobody knows of a garden. Steps are the physics page's one-sigma steps of its section on uncertainty; the share
 * of each that lasts all season is our judgement.
 */
export interface HiddenGarden {
  /** Forecast low too warm or too cold for the place, always. [K] */
  readonly siteOffsetK: number;
  /** What the physics itself gets wrong for this bed, beyond its inputs. [K] */
  readonly formOffsetK: number;
  readonly sensorBiasK: { readonly outside: number; readonly underCover: number };
  readonly dewPointK: number;
  readonly windLog: number;
  readonly skyWPerM2: number;
  readonly inversionK: number;
  readonly skyViewLostFraction: number;
  readonly soilK: number;
  readonly conductivityRatio: number;
  readonly leafAreaRatio: number;
  readonly wallRatio: number;
  readonly layers: readonly {
    readonly transmitted: number;
    readonly leakRatio: number;
    readonly resistanceRatio: number;
  }[];
}

/** Share of the variance that is the same every night. */
const LASTING = { dewPoint: 0.25, wind: 0.5, sky: 0.25, soil: 0.67 } as const;
export const STEP = {
  dewPointK: 2,
  windLog: Math.log(1.7),
  skyWPerM2: 10,
  brokenSkyWPerM2: 17,
  soilK: 1.5,
  cloud: 0.15,
} as const;
const MOST_LAYERS = 4;
const SITE_SD_K = 1.2;
const SENSOR_BIAS_SD_K = 0.5;

export function hiddenGarden(chance: Random, formSdK: number, hollowK: number): HiddenGarden {
  const n = chance.normal;
  const ratio = (step: number) => Math.exp(Math.log(step) * n());
  return {
    siteOffsetK: SITE_SD_K * n() - hollowK,
    formOffsetK: formSdK * n(),
    sensorBiasK: { outside: SENSOR_BIAS_SD_K * n(), underCover: SENSOR_BIAS_SD_K * n() },
    dewPointK: STEP.dewPointK * Math.sqrt(LASTING.dewPoint) * n(),
    windLog: STEP.windLog * Math.sqrt(LASTING.wind) * n(),
    skyWPerM2: STEP.skyWPerM2 * Math.sqrt(LASTING.sky) * n(),
    inversionK: 1.5 * n(),
    skyViewLostFraction: Math.abs(0.15 * n()),
    soilK: STEP.soilK * Math.sqrt(LASTING.soil) * n(),
    conductivityRatio: ratio(1.4),
    leafAreaRatio: ratio(1.8),
    wallRatio: ratio(1.4),
    layers: Array.from({ length: MOST_LAYERS }, () => ({
      transmitted: 0.12 * n(),
      leakRatio: ratio(2),
      resistanceRatio: ratio(1.4),
    })),
  };
}

/** What changes from night to night: the rest of the variance. */
export interface NightErrors {
  readonly forecastK: number;
  readonly dewPointK: number;
  readonly windLog: number;
  readonly skyShare: number;
  readonly cloudFraction: number;
  readonly soilK: number;
}

export function nightErrors(chance: Random, forecastSdK: number): NightErrors {
  const n = chance.normal;
  return {
    forecastK: Math.sqrt(Math.max(0, forecastSdK ** 2 - SITE_SD_K ** 2)) * n(),
    dewPointK: STEP.dewPointK * Math.sqrt(1 - LASTING.dewPoint) * n(),
    windLog: STEP.windLog * Math.sqrt(1 - LASTING.wind) * n(),
    skyShare: Math.sqrt(1 - LASTING.sky) * n(),
    cloudFraction: STEP.cloud * n(),
    soilK: STEP.soilK * Math.sqrt(1 - LASTING.soil) * n(),
  };
}

/** The stack as this garden's really is. */
export function trueStack(stack: CoverStack, garden: HiddenGarden): CoverStack {
  const outer = garden.layers[0];
  return {
    ...stack,
    layers: stack.layers.map((layer, index) => trueLayer(layer, garden.layers[index] ?? outer)),
    ...(stack.walls && {
      walls: { ...stack.walls, resistanceM2KPerW: stack.walls.resistanceM2KPerW * garden.wallRatio },
    }),
  };
}

function trueLayer(layer: CoverLayer, hidden: HiddenGarden['layers'][number] | undefined): CoverLayer {
  if (hidden === undefined) return layer;
  // Glass and boards let no longwave through, whatever their make.
  const through = (fraction: number) =>
    layer.longwaveTransmittedDryFraction < 0.03
      ? fraction
      : Math.max(0.01, Math.min(0.85, fraction + hidden.transmitted));
  return {
    ...layer,
    longwaveTransmittedDryFraction: through(layer.longwaveTransmittedDryFraction),
    longwaveTransmittedWetFraction: through(layer.longwaveTransmittedWetFraction),
    resistanceM2KPerW: layer.resistanceM2KPerW * hidden.resistanceRatio,
    leak0MmPerS: layer.leak0MmPerS * hidden.leakRatio,
    leak1MmPerM: layer.leak1MmPerM * hidden.leakRatio,
    leak2MmSPerM2: layer.leak2MmSPerM2 * hidden.leakRatio,
    leakMmPerSK: layer.leakMmPerSK * hidden.leakRatio,
  };
}
