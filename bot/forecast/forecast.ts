/**
 * The forecast port: what the rest of the bot may know of weather services. SI inside, °C; every instant is a `Date`.
 * The services behind it differ in units, steps, caching and licence; here they all look alike.
 */

import type { NightSpan } from '../../rules/index.ts';

export const FORECAST_SERVICES = ['nws', 'metno', 'openmeteo'] as const;
export type ForecastService = (typeof FORECAST_SERVICES)[number];

/** A place as the services see it; never logged, never shown to another member. */
export interface ForecastPlace {
  /** North positive. [°, −90…90] */
  readonly latitudeDeg: number;
  /** East positive. [°, −180…180] */
  readonly longitudeDeg: number;
  /** Height of the garden above the sea, if known. [m] */
  readonly elevationM?: number;
}

/** One value per hour; `undefined` where the service said nothing. Nothing is never zero. */
export type HourlyColumn = readonly (number | undefined)[];

/**
 * What the services can tell, hour by hour. A column that is absent was not sent, or was refused. States hold at the
 * instant of the hour; amounts and gusts belong to the hour that begins there.
 */
export interface ForecastColumns {
  /** Air at 2 m. [°C] */
  readonly screenC?: HourlyColumn;
  readonly dewPointC?: HourlyColumn;
  /** Relative humidity over water. [0…1] */
  readonly humidityFraction?: HourlyColumn;
  /** Total cloud. [0…1] */
  readonly cloudFraction?: HourlyColumn;
  /** Sustained wind at 10 m. [m s⁻¹] */
  readonly wind10MPerS?: HourlyColumn;
  readonly gustMPerS?: HourlyColumn;
  /** Rain and melted snow that fall in the hour. [mm] */
  readonly precipitationMm?: HourlyColumn;
  /** Depth of the fresh snow that falls in the hour. [m] */
  readonly newSnowM?: HourlyColumn;
  /** Snow lying on the ground. [m] */
  readonly snowDepthM?: HourlyColumn;
  /** Global radiation at the instant. [W m⁻²] */
  readonly globalWPerM2?: HourlyColumn;
  readonly soil0C?: HourlyColumn;
  readonly soil6C?: HourlyColumn;
  readonly soil18C?: HourlyColumn;
}

export type ForecastColumnName = keyof ForecastColumns;

/** The lowest temperature that a service itself names for a stretch of time. `to` is not part of it. */
export interface LowWindow {
  readonly from: Date;
  readonly to: Date;
  readonly lowC: number;
}

/** Wording and link that the licence of the data asks for, wherever the data are shown. */
export interface Credit {
  readonly text: string;
  readonly url: string;
}

/** What a reader of this forecast should be told about it. */
export type ForecastNote =
  /** A part of the answer could not be used. `layer` is the service's own name for it. */
  | {
      readonly code: 'layer-refused';
      readonly layer: string;
      readonly reason: 'unknown-unit' | 'bad-values' | 'absurd-values';
    }
  /** The forecast was last changed more than 12 h ago. */
  | { readonly code: 'old-forecast'; readonly ageH: number }
  /** Another service should have answered, but did not. */
  | {
      readonly code: 'fell-back';
      readonly from: ForecastService;
      readonly to: ForecastService;
      readonly because: ServiceFailure;
    }
  /** Two services disagree about the night's low; this forecast is the colder one. */
  | {
      readonly code: 'services-differ';
      readonly other: ForecastService;
      readonly lowC: number;
      readonly otherLowC: number;
    }
  /** No service answered now: this is the last answer we had, `ageH` after it was fetched. */
  | { readonly code: 'stored-forecast'; readonly ageH: number }
  /** The earliest `hours` hours came from another service. */
  | { readonly code: 'past-from-other-service'; readonly service: ForecastService; readonly hours: number };

/** An hourly forecast of one place in one normal form. Hour `i` is `first` + `i` hours; all columns have `hours` entries. */
export interface HourlyForecast {
  readonly service: ForecastService;
  /** Made up, for showing the program without any service; `service` then only names the form it has. */
  readonly invented?: true;
  /** When the service last changed it, which its age is counted from; the fetch time where a service does not tell. */
  readonly updatedAt: Date;
  readonly fetchedAt: Date;
  /** The place as asked of the service, rounded; in a saved file, where the file says it is for. */
  readonly place?: ForecastPlace;
  /** Height of the ground that the values are meant for. [m] */
  readonly gridElevationM?: number;
  /** IANA name, if the service tells it. */
  readonly timeZone?: string;
  readonly first: Date;
  readonly hours: number;
  readonly columns: ForecastColumns;
  /** Lows that the service names itself, in order of time. */
  readonly lowWindows: readonly LowWindow[];
  readonly credits: readonly Credit[];
  readonly notes: readonly ForecastNote[];
}

/** One frost or cold warning in force, as a public service words it. */
export interface OfficialWarning {
  readonly kind: 'freeze' | 'frost' | 'hard-freeze' | 'cold' | 'extreme-cold';
  /** The service's own name, such as "Freeze Warning". */
  readonly event: string;
  readonly headline: string;
  readonly from: Date;
  readonly until: Date;
  /** Who gave it out, such as "NWS Jacksonville FL". */
  readonly sender: string;
  readonly url: string;
  /** The same for every update of one warning: office, phenomenon, significance and number. */
  readonly key: string;
}

/** Warnings for a place, or why they are not known. Unknown must be told: silence reads as safe. */
export type OfficialWarnings =
  | { readonly kind: 'known'; readonly warnings: readonly OfficialWarning[]; readonly credits: readonly Credit[] }
  /** No service with frost warnings that we read covers the place. */
  | { readonly kind: 'not-covered' }
  | { readonly kind: 'unknown'; readonly because: ServiceFailure };

/** What still holds when the night begins: a warning that has run out leads no later night. */
export function inForce(official: OfficialWarnings, { sunset }: ForecastNight): OfficialWarnings {
  if (official.kind !== 'known') return official;
  return { ...official, warnings: official.warnings.filter(({ until }) => until > sunset) };
}

/** A night of a place. The night's low is sought from one hour before sunset to one hour after sunrise. */
export type ForecastNight = Pick<NightSpan, 'sunset' | 'sunrise'>;

/**
 * How long a request may wait for its turn at a service. `nightly`: a club waits, nobody at a screen. `asked`: somebody does,
 * and another service may be quicker. `second`: the same, and there is an answer already. `last`: as long as it takes, for
 * there is no other.
 */
export type Haste = 'nightly' | 'asked' | 'second' | 'last';

/** One service. */
export interface ForecastSource {
  readonly service: ForecastService;
  /** @throws ForecastServiceError when this service cannot answer. */
  forecastFor(place: ForecastPlace, now: Date, haste?: Haste): Promise<HourlyForecast>;
}

export interface WarningSource {
  /** @throws ForecastServiceError when the service cannot answer. */
  warningsFor(place: ForecastPlace, now: Date, haste?: Haste): Promise<readonly OfficialWarning[]>;
}

export interface ForecastWish {
  /** The night that matters: a service whose forecast ends before its sunrise is passed over. */
  readonly night?: ForecastNight;
  /** Ask two services and keep the colder night. */
  readonly compare?: boolean;
  /** The asker has the hours gone by itself: no second service is asked for them. */
  readonly pastKnown?: boolean;
  /** Asked for a club's night: goes before what members ask. */
  readonly nightly?: boolean;
}

/** All services together, which is what commands and jobs use. */
export interface ForecastDesk {
  /** @throws NoForecastError when no service could answer. */
  forecastFor(place: ForecastPlace, now: Date, wish?: ForecastWish): Promise<HourlyForecast>;
  /** Never throws for a failing service: it says that the warnings are unknown. */
  warningsFor(place: ForecastPlace, now: Date, wish?: Pick<ForecastWish, 'nightly'>): Promise<OfficialWarnings>;
  close(): Promise<void>;
}

export const SERVICE_FAILURES = [
  /** The service turns us away: contact missing, or banned (401, 403). */
  'refused',
  /** Too many requests (429). */
  'rate-limited',
  /** The place lies outside the service's area. */
  'not-covered',
  /** Too many wait for their turn there. */
  'busy',
  /** No answer, or one that says the service is broken. */
  'unavailable',
  /** An answer that cannot be read. */
  'bad-answer',
  /** An answer too old to use: more than 18 h. */
  'stale',
  /** The forecast ends before the night does. */
  'too-short',
] as const;
export type ServiceFailure = (typeof SERVICE_FAILURES)[number];
