import type { FrameBuild } from '../../../rules/index.ts';

/** Crops, covers, soils and mulches are keys of the rules' tables, kept as text. */
export interface BedFacts {
  readonly siteId: string;
  /** Unique within the site, whatever the case. 1 to 100 characters. */
  readonly name: string;
  readonly soil: string;
  readonly mulch: string | undefined;
  /** How its cold frame is built, where it has one. */
  readonly frame: FrameBuild | undefined;
  readonly hardeningNote: string | undefined;
  /** From outside to inside. */
  readonly covers: readonly string[];
}

export interface Bed extends BedFacts {
  readonly id: string;
  readonly memberId: string;
  /** When the stack of covers last changed: readings from before tell of another stack. */
  readonly coversSince: Date;
  readonly plantings: readonly Planting[];
  readonly since: Date;
}

export const STAGES = ['just-set-out', 'growing', 'grown'] as const;
export type Stage = (typeof STAGES)[number];

export interface PlantingFacts {
  readonly crop: string;
  readonly stage: Stage;
  /** Local date of that stage, `2026-10-31`. */
  readonly since: string;
  /** As the grower says; undefined: not said. */
  readonly hardened: boolean | undefined;
  /** Local dates, where the grower tells them; the calendar counts from the earlier step. */
  readonly sown?: string | undefined;
  readonly setOut?: string | undefined;
}

export interface Planting extends PlantingFacts {
  readonly id: string;
  /** As followed from the temperatures under the cover, and when. */
  readonly hardening: Hardening | undefined;
}

export interface Hardening {
  readonly fraction: number;
  readonly at: Date;
}

/** Every method sees only the beds of the member it is asked for. */
export interface Beds {
  /** With what grows in it, whole or not at all. */
  add(memberId: string, facts: BedFacts, now: Date, plantings?: readonly PlantingFacts[]): Promise<Bed>;
  /** By age; all sites where none is named. */
  list(memberId: string, siteId?: string): Promise<readonly Bed[]>;
  find(memberId: string, bedId: string): Promise<Bed | undefined>;
  change(memberId: string, bedId: string, change: Partial<BedFacts>, now: Date): Promise<Bed>;
  remove(memberId: string, bedId: string): Promise<boolean>;
}

/** What grows in the beds; all but `keepHardening` see only the beds of the member they are asked for. */
export interface Plantings {
  add(memberId: string, bedId: string, facts: PlantingFacts): Promise<Planting>;
  change(memberId: string, plantingId: string, change: Partial<PlantingFacts>): Promise<Planting>;
  remove(memberId: string, plantingId: string): Promise<boolean>;
  /** The nightly run keeps what it followed, for any member's plantings; those pulled meanwhile are passed over. */
  keepHardening(followed: ReadonlyMap<string, Hardening>): Promise<void>;
}

/** Covers that lie ready in the member's shed. */
export interface SpareCover {
  readonly cover: string;
  readonly count: number;
}

export interface Shed {
  list(memberId: string): Promise<readonly SpareCover[]>;
  /** Zero takes the cover off the list. */
  put(memberId: string, spare: SpareCover, now: Date): Promise<void>;
}
