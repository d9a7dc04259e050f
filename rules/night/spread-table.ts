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
 * Bare, fabric and two covers from draws of all inputs of this model (`model-spread`), with the soil off by 1.5 K among them; slopes from its
 * sensitivities. Frames and tunnels are wider than those draws: errors of form come on top, as fourteen frost nights in a frame
 * (`cold-frame-2018`) and the range of a winter's log in a tunnel show. `night-cover` is assumed there, `litter-or-snow` here (`judgement`): straw
 * settles, gets wet and blows off.
 */
export const SPREADS: Readonly<Record<SpreadGroup, SpreadRow>> = {
  bare: { modelSdK: [1.1, 1, 0.6], perForecastK: 1, perSoilK: 0, withoutDayK: 0 },
  'single-fabric': { modelSdK: [1.2, 1.4, 1.4], perForecastK: 0.7, perSoilK: 0.13, withoutDayK: 0.2 },
  'film-tunnel': { modelSdK: [1.5, 1.5, 1.5], perForecastK: 0.73, perSoilK: 0.27, withoutDayK: 0.5 },
  frame: { modelSdK: [1.5, 1.5, 1.4], perForecastK: 0.67, perSoilK: 0.33, withoutDayK: 1 },
  'insulated-frame': { modelSdK: [1.7, 1.7, 1.5], perForecastK: 0.53, perSoilK: 0.47, withoutDayK: 1.6 },
  'two-covers': { modelSdK: [1.6, 1.6, 1.5], perForecastK: 0.6, perSoilK: 0.4, withoutDayK: 1.3 },
  'high-tunnel': { modelSdK: [1.7, 1.7, 1.7], perForecastK: 0.77, perSoilK: 0.2, withoutDayK: 0.5 },
  'inside-high-tunnel': { modelSdK: [1.7, 1.8, 1.7], perForecastK: 0.57, perSoilK: 0.37, withoutDayK: 1.3 },
  'night-cover': { modelSdK: [1.8, 1.8, 1.5], perForecastK: 0.55, perSoilK: 0.45, withoutDayK: 1.3 },
  'litter-or-snow': { modelSdK: [3, 3, 3], perForecastK: 0.3, perSoilK: 0.6, withoutDayK: 1 },
};
