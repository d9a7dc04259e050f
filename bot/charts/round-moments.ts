const FIVE_MIN_MS = 300_000;
const QUARTER_H_MS = 900_000;

/** A time to act by, as the words beside a picture round it: rather early than late. */
export function actBy(at: Date): Date {
  return new Date(Math.floor(at.getTime() / FIVE_MIN_MS) * FIVE_MIN_MS);
}

/** A time from which something is safe, as the words round it: rather late than early. */
export function safeFrom(at: Date): Date {
  return new Date(Math.ceil(at.getTime() / QUARTER_H_MS) * QUARTER_H_MS);
}
