import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pino } from 'pino';
import type { JobServices } from '../../../bot/jobs/job-services.ts';
import { Round, type RoundOptions } from '../../../bot/jobs/round.ts';
import { openLog } from '../../../bot/log.ts';
import { openStore } from '../../../bot/store/open-store.ts';
import type { Store } from '../../../bot/store/store.ts';
import { MS_PER_MIN } from '../../../rules/index.ts';
import { CollectingPoster } from '../../fakes/collecting-poster.ts';
import { SyntheticForecasts } from '../../fakes/synthetic-forecasts.ts';

/** A clock, a store, made-up weather and a chat that collects, with the jobs between them. */
export interface JobsWorld {
  now: Date;
  rehearsal: boolean;
  readonly store: Store;
  readonly url: string;
  readonly forecasts: SyntheticForecasts;
  readonly poster: CollectingPoster;
  readonly services: JobServices;
  /** When each message arrived, by the world's clock. */
  readonly postedAt: ReadonlyMap<string, Date>;
  /** What the operator is told, as objects. */
  readonly told: Record<string, unknown>[];
  /** A process of its own on the same store. */
  round(options?: Partial<RoundOptions>, services?: Partial<JobServices>): Round;
  /** Ticks every few minutes until the instant, which is then the time. */
  runUntil(until: Date, round: Round, stepMin?: number): Promise<void>;
  close(): Promise<void>;
}

export async function jobsWorld(now: Date): Promise<JobsWorld> {
  const folder = await mkdtemp(join(tmpdir(), 'eiderdown-jobs-'));
  const url = `sqlite:${join(folder, 'jobs.db')}`;
  const store = await openStore(url);
  const told: Record<string, unknown>[] = [];
  const log = openLog('warn', { write: (line: string) => told.push(JSON.parse(line) as Record<string, unknown>) });
  const forecasts = new SyntheticForecasts();
  const postedAt = new Map<string, Date>();
  const poster = new CollectingPoster(({ messageId }) => postedAt.set(messageId, world.now));
  const world: JobsWorld = {
    ...{ now, rehearsal: false, store, url, forecasts, poster, postedAt, told },
    services: {
      clock: {
        now: () => world.now,
        get rehearsal() {
          return world.rehearsal;
        },
      },
      ...{ log, store, forecasts, poster },
    },
    round: (options = {}, services = {}) =>
      new Round({ ...world.services, ...services }, { lookBackH: 0, postsPerS: Number.POSITIVE_INFINITY, ...options }),
    async runUntil(until, round, stepMin = 5) {
      for (; world.now < until; world.now = new Date(world.now.getTime() + stepMin * MS_PER_MIN)) {
        await round.tick();
        await round.drained();
      }
    },
    async close() {
      await store.close();
      await rm(folder, { recursive: true, force: true });
    },
  };
  return world;
}

export const silentLog = pino({ level: 'silent' });
