import type { Kysely } from 'kysely';

/** An open database of either engine, before anybody has looked at its schema. */
export interface OpenedDatabase<Tables> {
  readonly db: Kysely<Tables>;
  readonly engine: Engine;
  /** Whether a write has failed for want of room since the last that was tried; absent where a server looks after it. */
  readonly disk?: { isFull: boolean };
  /** Sets what durability rests on and reads it back; throws `not-durable` where it does not hold. */
  makeDurable(): Promise<void>;
}

export type Engine = 'sqlite' | 'postgres';
