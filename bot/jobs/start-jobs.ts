import { schedule } from 'node-cron';
import type { JobServices } from './job-services.ts';
import { Round, type RoundOptions } from './round.ts';

/** What runs by itself. */
export interface Jobs {
  /** Takes on nothing more and finishes what is in hand. */
  stop(): Promise<void>;
}

const EVERY_MINUTE = '* * * * *';
/** A rehearsal's day passes in minutes. */
const EVERY_SECOND = '* * * * * *';

/** Starts what happens every minute, and does it once at once: what was due while nothing ran is caught up. */
export function startJobs(services: JobServices, options: Partial<RoundOptions> = {}): Jobs {
  const round = new Round(services, options);
  const pattern = services.clock.rehearsal ? EVERY_SECOND : EVERY_MINUTE;
  let first: Promise<void> | undefined = round.tick().finally(() => {
    first = undefined;
  });
  const task = schedule(pattern, () => first ?? round.tick(), {
    ...{ name: 'nightly', noOverlap: true, suppressMissedWarning: true },
    logger: cronLog(services),
  });
  return {
    async stop() {
      await task.destroy();
      await first;
      await round.stop();
    },
  };
}

/** The library speaks to the console unless told otherwise. */
function cronLog({ log }: JobServices) {
  return {
    info: (message: string) => log.debug(message),
    warn: (message: string) => log.debug(message),
    debug: (message: string | Error) => log.debug(String(message)),
    error: (message: string | Error) => log.error({ err: message }, 'the clock of the jobs failed'),
  };
}
