import type { Bed, Beds, Plantings, Shed, SpareCover } from './port/beds.ts';
import type { Channel, Channels, Membership } from './port/channels.ts';
import type { Deliveries, Delivery } from './port/deliveries.ts';
import type { Member, Members } from './port/members.ts';
import type { CoveredMarks, Outcome, Outcomes, Prediction, Predictions, Reading, Readings } from './port/readings.ts';
import type { Site, Sites } from './port/sites.ts';
import type { Weather } from './port/weather.ts';

/**
 * What the bot remembers. One port per concept; each method is one transaction, and every failure is a `StoreProblem`.
 * Numbers must be finite and text free of NUL and of broken surrogates, so that both engines give back what they got.
 */
export interface Store {
  readonly members: Members;
  readonly sites: Sites;
  readonly beds: Beds;
  readonly plantings: Plantings;
  readonly shed: Shed;
  readonly channels: Channels;
  readonly deliveries: Deliveries;
  readonly readings: Readings;
  readonly predictions: Predictions;
  readonly outcomes: Outcomes;
  readonly covered: CoveredMarks;
  readonly weather: Weather;
  /** Everything kept about a member; undefined where nothing is. */
  exportMember(memberId: string): Promise<MemberExport | undefined>;
  /** Leaves no trace of the member. False: nothing was kept. */
  eraseMember(memberId: string): Promise<boolean>;
  /** Throws unless the database answers. */
  ping(): Promise<void>;
  close(): Promise<void>;
}

export interface MemberExport {
  readonly member: Member;
  readonly sites: readonly Site[];
  readonly beds: readonly Bed[];
  readonly spareCovers: readonly SpareCover[];
  readonly memberships: readonly Membership[];
  /** Subscriptions that the member started. */
  readonly channels: readonly Channel[];
  readonly readings: readonly Reading[];
  readonly predictions: readonly Prediction[];
  readonly outcomes: readonly Outcome[];
  readonly covered: readonly { readonly bedId: string; readonly night: string; readonly at: Date }[];
  /** What was sent to the member directly. */
  readonly deliveries: readonly Delivery[];
}
