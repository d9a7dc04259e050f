import type { Logger } from 'pino';
import type { ForecastDesk } from '../forecast/forecast.ts';
import type { Clock } from '../ground/clock.ts';
import type { Store } from '../store/store.ts';
import type { ChannelPoster } from '../talk/channel-poster.ts';
import type { Reply } from '../talk/reply.ts';
import type { Reader } from '../text/reader.ts';
import type { Allowance } from './allowance.ts';
import type { NightOrWeek } from './tonight/night-option.ts';

/** What commands may use of the world; each is a port. */
export interface Services {
  readonly clock: Clock;
  readonly log: Logger;
  readonly allowance: Allowance;
  /** How many files a member may send in; as many as they like where absent. */
  readonly fileAllowance?: Allowance;
  /** Absent in a one-shot program that keeps nothing. */
  readonly store?: Store;
  /** Absent where no live forecast may be asked for. */
  readonly forecasts?: ForecastDesk;
  /** What to tell somebody who needs one then. */
  readonly noForecasts?: string;
  /** Absent where there are no channels. */
  readonly poster?: ChannelPoster;
  /** A made-up night, shown to who has no garden here yet where no account is needed to try the program. */
  readonly sample?: (reader: Reader, asked: NightOrWeek) => Promise<Reply>;
  /** The same garden's day. */
  readonly sampleDay?: (reader: Reader) => Promise<Reply>;
}
