import type { Logger } from 'pino';
import type { ForecastDesk, HourlyForecast } from '../forecast/forecast.ts';
import type { Clock } from '../ground/clock.ts';
import type { StoredSite } from '../outlook/stored-garden.ts';
import type { Garden } from '../store/port/channels.ts';
import type { Store } from '../store/store.ts';
import type { ChannelPoster } from '../talk/channel-poster.ts';
import type { Reply } from '../talk/reply.ts';

/** What the jobs use of the world; each is a port. */
export interface JobServices {
  readonly clock: Clock;
  readonly log: Logger;
  readonly store: Store;
  readonly forecasts: ForecastDesk;
  readonly poster: ChannelPoster;
  /** Absent: no opening plans are posted, whatever channels are set to. */
  readonly opening?: OpeningPlanner;
}

/** A garden and the forecast of its day. */
export interface GardenDay {
  readonly garden: Garden & Pick<StoredSite, 'learned'>;
  readonly forecast: HourlyForecast;
}

export interface OpeningWish {
  readonly now: Date;
  /** One garden's fault stays with it. */
  readonly isolated: <T>(work: () => Promise<T>) => Promise<T | undefined>;
  /** Gardens without a forecast. */
  readonly unknownCount: number;
}

/** Says in the morning when to open what. */
export interface OpeningPlanner {
  /**
   * The plan for a channel's day.
   *
   * @returns Undefined when no cover need be opened.
   */
  openingPlan(gardens: readonly GardenDay[], wish: OpeningWish): Promise<Reply | undefined>;
}
