/** A person the bot answers. The id is opaque, made by a door, such as `discord:1234`. */
export interface Member {
  readonly id: string;
  /** Undefined: the usual ones of the member's locale. */
  readonly units: UnitSystem | undefined;
  /** BCP 47 tag last seen, such as `en-US`. */
  readonly locale: string | undefined;
  /** Agreed to be written to directly. */
  readonly directMessages: boolean;
  readonly since: Date;
}

export const UNIT_SYSTEMS = ['metric', 'us'] as const;
export type UnitSystem = (typeof UNIT_SYSTEMS)[number];

export type MemberChange = Partial<Pick<Member, 'units' | 'locale' | 'directMessages'>>;

/** Whatever is kept for a member makes the member known; nobody has to sign up first. */
export interface Members {
  find(memberId: string): Promise<Member | undefined>;
  change(memberId: string, change: MemberChange, now: Date): Promise<Member>;
}
