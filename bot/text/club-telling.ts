import type { OfficialWarnings } from '../forecast/forecast.ts';
import type { BedOutlook, NightOutlook } from '../outlook/night-outlook.ts';
import type { Button } from '../talk/reply.ts';
import type { AheadTelling, LowAhead } from './ahead-words.ts';
import type { LastKnown } from './no-forecast-words.ts';
import type { Reader } from './reader.ts';
import type { Shutting } from './shut-by-words.ts';

/** A garden of a club and its night. */
export interface ClubGarden {
  readonly outlook: NightOutlook;
  readonly official: OfficialWarnings;
}

/** A garden for which no forecast can be had. */
export interface ClubGap extends Shutting {
  readonly last: LastKnown;
  readonly official: OfficialWarnings;
}

/** All that a channel is told about a night. */
export interface ClubTelling {
  readonly gardens: readonly ClubGarden[];
  readonly gaps: readonly ClubGap[];
  /** Gardens that could not be worked out through a fault of ours. */
  readonly failedCount: number;
  /** Beds whose growers have marked the advice as done. */
  readonly markedBeds: number;
  readonly ahead: AheadTelling | undefined;
  /** Of the nights after this one, as far as the forecast goes. */
  readonly lowsAhead: readonly LowAhead[];
  /** Set for a second post of the night: only these beds have become worse since the first. */
  readonly worse: ReadonlySet<BedOutlook> | undefined;
  readonly reader: Reader;
  readonly now: Date;
  /** "tonight", "on Friday night". */
  readonly nightWords: string;
  readonly buttons: readonly Button[];
}
