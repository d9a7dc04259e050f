import type { Clock } from '../clock.ts';

/** What commands may use of the world; each is a port. Grows as commands need it. */
export interface Services {
  readonly clock: Clock;
}
