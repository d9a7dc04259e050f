import type { Bed, SpareCover } from './beds.ts';
import type { Member } from './members.ts';
import type { Site } from './sites.ts';

/** What a subscription can be set to. */
export interface ChannelFacts {
  /** How long before the earliest shutting time the warning comes. [h] */
  readonly leadH: number;
  /** Posts an opening plan in the morning. */
  readonly morningPost: boolean;
  /** Says so when a night needs nothing. */
  readonly allClear: boolean;
}

/** A place that gets warnings: a channel of a club, or one member's own direct messages. */
export interface Channel extends ChannelFacts {
  readonly id: string;
  readonly kind: ChannelKind;
  readonly guildId: string | undefined;
  /** Undefined once that member has erased everything. */
  readonly startedBy: string | undefined;
  readonly since: Date;
  /** Undefined while it runs. */
  readonly paused: Pause | undefined;
}

export const CHANNEL_KINDS = ['channel', 'direct'] as const;
export type ChannelKind = (typeof CHANNEL_KINDS)[number];

export interface Pause {
  /** A key such as `missing-rights`, or `asked`. */
  readonly reason: string;
  readonly at: Date;
}

export interface NewChannel extends ChannelFacts {
  readonly id: string;
  readonly kind: ChannelKind;
  readonly guildId: string | undefined;
  readonly startedBy: string;
}

export interface Membership {
  readonly channelId: string;
  readonly memberId: string;
  /** Undefined: the member's default site. */
  readonly siteId: string | undefined;
  /** Wants the own part by direct message as well. */
  readonly wantsDirect: boolean;
  readonly since: Date;
}

export type MembershipFacts = Pick<Membership, 'siteId' | 'wantsDirect'>;

/** What a warning for one member of a channel is worked out from. */
export interface Garden {
  readonly member: Member;
  readonly site: Site;
  readonly beds: readonly Bed[];
  readonly spareCovers: readonly SpareCover[];
  readonly wantsDirect: boolean;
}

/** A garden that a channel looks after. */
export interface JoinedGarden extends Garden {
  /** When its member joined the channel. */
  readonly since: Date;
}

/** Where and by which clock the sun sets for a member of a channel. */
export interface SunPlace {
  readonly latitudeDeg: number;
  readonly longitudeDeg: number;
  /** Above the sea, where known. */
  readonly heightM: number | undefined;
  readonly timeZone: string;
  /** When the member joined the channel. */
  readonly since: Date;
}

export interface ChannelPlaces {
  readonly channel: Channel;
  readonly places: readonly SunPlace[];
}

export interface Channels {
  /** Starts a subscription, or sets a known one anew and lets it run again. */
  start(channel: NewChannel, now: Date): Promise<Channel>;
  find(channelId: string): Promise<Channel | undefined>;
  change(channelId: string, change: Partial<ChannelFacts>): Promise<Channel>;
  /** Open deliveries to it are given up. True only for the call that paused it, so that one person is told once. */
  pause(channelId: string, pause: Pause): Promise<boolean>;
  /** False: it was not paused. */
  resume(channelId: string): Promise<boolean>;
  /** Ends the subscription and gives up what is still to be sent. False: there was none. */
  stop(channelId: string): Promise<boolean>;
  /** Joins, or changes how the member has joined. */
  join(channelId: string, memberId: string, facts: MembershipFacts, now: Date): Promise<Membership>;
  leave(channelId: string, memberId: string): Promise<boolean>;
  joinedBy(memberId: string): Promise<readonly Membership[]>;
  /** Running channels in order of their id, after the given one: the planner goes through them page by page. */
  running(after: string | undefined, limit: number): Promise<readonly ChannelPlaces[]>;
  /** In order of joining; members without a site are left out. */
  gardens(channelId: string): Promise<readonly JoinedGarden[]>;
}
