/** The nightly ledger: one row for each thing to be posted, so that it is posted once. */
export interface DeliveryKey {
  /** A channel's id, or `directPlace(memberId)` for a member's own copy. */
  readonly placeId: string;
  /** Local date of the evening at the site, `2026-12-31`. */
  readonly night: string;
  /** Such as `warning`, `worse-1`, `opening`. */
  readonly kind: string;
}

export interface PlannedDelivery extends DeliveryKey {
  readonly dueAt: Date;
  /** From here on the post would be stale; it is never sent. */
  readonly giveUpAt: Date;
}

export const DELIVERY_STATES = ['due', 'sending', 'sent', 'gave_up', 'missed'] as const;
export type DeliveryState = (typeof DELIVERY_STATES)[number];

export interface Delivery extends PlannedDelivery {
  readonly state: DeliveryState;
  readonly attempts: number;
  readonly messageId: string | undefined;
  readonly lastProblem: string | undefined;
}

/** A worker's hold on a row. It ends by itself, by the database's clock, so that another can take over from a dead worker. */
export interface Claim extends PlannedDelivery {
  readonly worker: string;
  /** Counts this attempt. Above 1: look for our own message in the place before posting again. */
  readonly attempts: number;
  /** When any worker first took it, by the database's clock: nothing of ours can be older. */
  readonly firstClaimedAt: Date;
}

export interface ClaimWish {
  readonly worker: string;
  readonly now: Date;
  readonly limit: number;
  readonly leaseS: number;
}

export interface Deliveries {
  /** Rows already planned stay as they are. Returns how many are new. */
  plan(deliveries: readonly PlannedDelivery[]): Promise<number>;
  /** Takes what is due, and what a dead worker has left; no row to two workers at once. */
  claim(wish: ClaimWish): Promise<readonly Claim[]>;
  /** How many workers hold rows now, the dead ones included until their leases end. */
  busyWorkers(): Promise<number>;
  /** Ask right before posting: false once another has taken over or 0.6 of the lease is gone. */
  mayPost(claim: Claim): Promise<boolean>;
  /** False: another worker has taken over, nothing was changed. So for the next two. */
  settle(claim: Claim, messageId: string): Promise<boolean>;
  postpone(claim: Claim, until: Date, problem: string): Promise<boolean>;
  giveUp(claim: Claim, problem: string): Promise<boolean>;
  /** Ends rows past their `giveUpAt`: `missed` if nobody ever tried, else `gave_up`. Returns each row once. */
  expire(now: Date): Promise<readonly Delivery[]>;
  ofNight(placeId: string, night: string): Promise<readonly Delivery[]>;
  /** Drops settled rows of nights before the given one. */
  forget(beforeNight: string): Promise<number>;
}
