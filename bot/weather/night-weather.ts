import type { WeatherSeries } from '../../rules/index.ts';
import type { ForecastNote } from '../forecast/forecast.ts';

/** What had to be assumed to turn a forecast into one night's weather. `hours` counts the hours concerned. */
export type NightNote =
  | ForecastNote
  | { readonly code: 'dew-point-from-humidity'; readonly hours: number }
  /** No dew point and no humidity: 3 K below the air. */
  | { readonly code: 'dew-point-assumed'; readonly hours: number }
  /** No cloud: a clear sky, the cold side. */
  | { readonly code: 'cloud-assumed-clear'; readonly hours: number }
  /** No wind: 1 m/s, the calm side. */
  | { readonly code: 'wind-assumed-calm'; readonly hours: number }
  | { readonly code: 'gaps-filled'; readonly hours: number }
  /** The night lies where the service gives only one value in six hours. */
  | { readonly code: 'six-hourly-steps' }
  /** The service's own low for the night is `byK` below its lowest hour; the night's curve was lowered to meet it. */
  | { readonly code: 'lowered-to-service-low'; readonly byK: number }
  /** The weather ends before the wanted end, `missingH` hours early. */
  | { readonly code: 'ends-early'; readonly missingH: number };

/** What the night brings, for a sentence or two. */
export interface NightSummary {
  /** Lowest screen temperature from one hour before sunset to one hour after sunrise. [°C] */
  readonly lowC: number;
  readonly lowAt: Date;
  /** Means over the three hours around the low. */
  readonly cloudFraction: number;
  readonly wind10MPerS: number;
  /** Strongest gust of the night, if told. */
  readonly gustMaxMPerS?: number;
  /** Rain and melted snow of the night, if told. [mm] */
  readonly precipitationMm?: number;
  /** Precipitation in the night's hours above 0 °C before its first frost; `undefined` when untold or without frost. [mm] */
  readonly rainBeforeFreezeMm?: number;
  /** Fresh snow of the night, if told. [m] */
  readonly newSnowM?: number;
  /** Deepest snow on the ground in the night, if told. [m] */
  readonly snowDepthM?: number;
  /** Snow on the ground where it is least in the night. [m] */
  readonly leastSnowDepthM?: number;
}

export interface NightWeather {
  readonly series: WeatherSeries;
  readonly summary: NightSummary;
  readonly notes: readonly NightNote[];
  /** Hours of weather before the sunset: little of it means an uncertain soil, so widen the error band. */
  readonly spinUpH: number;
}
