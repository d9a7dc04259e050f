/** The one clock of the program. Nothing else reads the time. */
export interface Clock {
  now(): Date;
  /** True when a host rehearses a night: every post is then marked as a rehearsal. */
  readonly rehearsal: boolean;
}

export const systemClock: Clock = { now: () => new Date(), rehearsal: false };

/** A clock that starts at `start` and runs `rate` times as fast as the wall clock. */
export function rehearsalClock(start: Date, rate: number, wall: () => number = Date.now): Clock {
  const begun = wall();
  return {
    now: () => new Date(start.getTime() + (wall() - begun) * rate),
    rehearsal: true,
  };
}

/** The clock that the settings ask for. */
export function clockOf(settings: {
  readonly CLOCK_START?: string | undefined;
  readonly CLOCK_RATE?: number | undefined;
}): Clock {
  const { CLOCK_START: start, CLOCK_RATE: rate } = settings;
  return start === undefined || rate === undefined ? systemClock : rehearsalClock(new Date(start), rate);
}
