/** What the thermometers of a bed showed in one night. */
export interface ReadingFacts {
  readonly bedId: string;
  /** Local date of the evening, `2026-12-31`. */
  readonly night: string;
  readonly outsideLowC: number | undefined;
  readonly underCoverLowC: number | undefined;
  readonly origin: ReadingOrigin;
  /** Why it cannot be so, as a key; kept apart from learning until the member confirms it. */
  readonly doubt: string | undefined;
  /** The stack that lay over the bed that night. */
  readonly covers: readonly string[];
}

export const READING_ORIGINS = ['typed', 'form', 'logger'] as const;
export type ReadingOrigin = (typeof READING_ORIGINS)[number];

export interface Reading extends ReadingFacts {
  readonly id: string;
  readonly recordedAt: Date;
}

export interface Readings {
  /** All or none. A later reading replaces that of the same bed and night; what it leaves out stays. */
  record(memberId: string, readings: readonly ReadingFacts[], now: Date): Promise<void>;
  /** In order of nights. */
  ofBed(memberId: string, bedId: string, sinceNight?: string): Promise<readonly Reading[]>;
  /** Takes the doubt off. */
  confirm(memberId: string, readingId: string): Promise<boolean>;
  remove(memberId: string, readingId: string): Promise<boolean>;
}

/** What the bot told a member about a bed's night. */
export interface Prediction {
  readonly memberId: string;
  readonly bedId: string;
  readonly night: string;
  readonly issuedAt: Date;
  readonly service: string;
  /** From the issue to the low. [h] */
  readonly leadH: number;
  readonly outsideLowC: number;
  /** Standard deviations. [K] */
  readonly outsideSpreadK: number;
  /** Of a thermometer under the covers, among the leaves. */
  readonly underCoverLowC: number;
  readonly underCoverSpreadK: number;
  /** The same four as they were before anything learned from readings: what readings are held against to learn more. */
  readonly book: BookLows;
  readonly leafLowC: number;
  readonly leafSpreadK: number;
  /** The worst among the bed's crops. */
  readonly verdict: string;
  readonly covers: readonly string[];
  /** What to do about the bed, as a key; absent where an earlier version kept it. */
  readonly step?: string;
}

/** Lows from forecast and physics alone, with their standard deviations. */
export interface BookLows {
  readonly outsideLowC: number;
  readonly outsideSpreadK: number;
  readonly underCoverLowC: number;
  readonly underCoverSpreadK: number;
}

/** A prediction beside what was measured, for `record`. Readings in doubt are left out. */
export interface ScoredNight {
  readonly prediction: Prediction;
  readonly reading: Reading;
}

export type ScoreScope =
  | { readonly kind: 'beds'; readonly memberId: string; readonly bedIds: readonly string[] }
  | { readonly kind: 'channel'; readonly channelId: string }
  | { readonly kind: 'all' };

export interface Predictions {
  /** Beds removed meanwhile are passed over. */
  keep(predictions: readonly Prediction[]): Promise<void>;
  /** The newest for each bed that has one. */
  latest(bedIds: readonly string[], night: string): Promise<ReadonlyMap<string, Prediction>>;
  /** Drops those of nights before the given one. */
  forget(beforeNight: string): Promise<number>;
  /** In order of nights, then of issue. */
  scored(scope: ScoreScope, sinceNight: string): Promise<readonly ScoredNight[]>;
}

export const OUTCOME_KINDS = ['no-mark', 'leaf-burn', 'lost'] as const;
export type OutcomeKind = (typeof OUTCOME_KINDS)[number];

/** How a crop came through a night. */
export interface Outcome {
  readonly bedId: string;
  readonly night: string;
  readonly crop: string;
  readonly outcome: OutcomeKind;
  /** As estimated for that night. */
  readonly leafLowC: number;
  readonly hardeningFraction: number;
}

/** Seen in the member's own beds, or by somebody who shares a channel with the member. */
export interface OutcomeAround extends Outcome {
  /** Which of the others, by a number that means nothing outside this answer; undefined in one's own beds. */
  readonly otherIndex: number | undefined;
}

export interface Outcomes {
  /** A later answer for the same bed, night and crop replaces the earlier. */
  record(memberId: string, outcome: Outcome, now: Date): Promise<void>;
  ofMember(memberId: string, crop: string): Promise<readonly Outcome[]>;
  /** The member's own, and those of everybody who shares a channel with the member. */
  around(memberId: string, crops: readonly string[]): Promise<readonly OutcomeAround[]>;
  /** Of all members of a channel. */
  ofChannel(channelId: string, crop: string): Promise<readonly Outcome[]>;
}

/** Beds whose advice for a night has been carried out. */
export interface CoveredMarks {
  /** Returns how many of the beds are the member's and now marked. */
  mark(memberId: string, bedIds: readonly string[], night: string, now: Date): Promise<number>;
  marked(bedIds: readonly string[], night: string): Promise<ReadonlySet<string>>;
}
