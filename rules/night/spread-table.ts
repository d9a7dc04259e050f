/** Covers that are equally hard to foretell. */
export type SpreadGroup =
  | 'bare'
  | 'single-fabric'
  | 'film-tunnel'
  | 'frame'
  | 'insulated-frame'
  | 'two-covers'
  | 'high-tunnel'
  | 'inside-high-tunnel'
  | 'night-cover'
  | 'litter-or-snow';

/** How uncertain the leaf minimum is under a group of covers. */
export interface SpreadRow {
  /** Standard deviation with a perfect forecast: clear and calm; half cloud, 2 m s⁻¹; overcast, 4 m s⁻¹. [K] */
  readonly modelSdK: readonly [number, number, number];
  /** Change of the leaf minimum per kelvin of the forecast low. */
  readonly perForecastK: number;
  /** Change of the leaf minimum per kelvin of the soil at 10 cm. */
  readonly perSoilK: number;
  /** How much too cold the leaf comes out when the run begins at dusk. [K] */
  readonly withoutDayK: number;
}

/**
 * From draws of all inputs of this model (`model-spread`), with the soil off by 1.5 K among them; slopes from its
 * sensitivities. `night-cover` is assumed there, `litter-or-snow` here (`judgement`): straw settles, gets wet
 * and blows off; one trial in a long cold spell was 6 K colder at the crown than computed.
 */
export const SPREADS: Readonly<Record<SpreadGroup, SpreadRow>> = {
  bare: { modelSdK: [1.1, 1, 0.6], perForecastK: 1, perSoilK: 0, withoutDayK: 0 },
  'single-fabric': { modelSdK: [1.2, 1.4, 1.4], perForecastK: 0.7, perSoilK: 0.13, withoutDayK: 0.2 },
  'film-tunnel': { modelSdK: [1.3, 1.4, 1.4], perForecastK: 0.73, perSoilK: 0.27, withoutDayK: 0.5 },
  frame: { modelSdK: [1.1, 1.1, 1], perForecastK: 0.67, perSoilK: 0.33, withoutDayK: 1 },
  'insulated-frame': { modelSdK: [1.5, 1.5, 1.2], perForecastK: 0.53, perSoilK: 0.47, withoutDayK: 1.6 },
  'two-covers': { modelSdK: [1.5, 1.5, 1.3], perForecastK: 0.6, perSoilK: 0.4, withoutDayK: 1.3 },
  'high-tunnel': { modelSdK: [1.1, 1.3, 1.3], perForecastK: 0.77, perSoilK: 0.2, withoutDayK: 0.5 },
  'inside-high-tunnel': { modelSdK: [1.4, 1.6, 1.4], perForecastK: 0.57, perSoilK: 0.37, withoutDayK: 1.3 },
  'night-cover': { modelSdK: [1.8, 1.8, 1.5], perForecastK: 0.55, perSoilK: 0.45, withoutDayK: 1.3 },
  'litter-or-snow': { modelSdK: [3, 3, 3], perForecastK: 0.3, perSoilK: 0.6, withoutDayK: 1 },
};
