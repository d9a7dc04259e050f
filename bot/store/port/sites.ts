/** Where beds lie. Coordinates are the member's own: never in a log, an error, or another member's view. */
export interface SiteFacts {
  /** Unique among the member's sites, whatever the case. 1 to 100 characters. */
  readonly name: string;
  readonly latitudeDeg: number;
  readonly longitudeDeg: number;
  /** Above the sea, where known. */
  readonly heightM: number | undefined;
  readonly exposure: Exposure;
  /** IANA name, such as `Europe/Vienna`. */
  readonly timeZone: string;
  /** Height of what hides the sky, evenly spaced round the compass from north through east; empty where it is open. */
  readonly horizonDeg: readonly number[];
}

export const EXPOSURES = ['open', 'sheltered', 'hollow', 'ridge', 'wall'] as const;
export type Exposure = (typeof EXPOSURES)[number];

export interface Site extends SiteFacts {
  readonly id: string;
  readonly memberId: string;
  readonly isDefault: boolean;
  readonly since: Date;
}

/** Every method sees only the sites of the member it is asked for. */
export interface Sites {
  /** The first site is the default until another is chosen. */
  add(memberId: string, facts: SiteFacts, now: Date): Promise<Site>;
  /** The default first, then by age. */
  list(memberId: string): Promise<readonly Site[]>;
  find(memberId: string, siteId: string): Promise<Site | undefined>;
  change(memberId: string, siteId: string, change: Partial<SiteFacts>): Promise<Site>;
  makeDefault(memberId: string, siteId: string): Promise<void>;
  /** Takes its beds with it; the oldest of the others becomes the default if this was it. False: there was none. */
  remove(memberId: string, siteId: string): Promise<boolean>;
}
