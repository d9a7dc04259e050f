import { Interval } from 'luxon';
import { MS_PER_MIN } from '../../rules/index.ts';

/** The two ends of an ISO-8601 interval; the end is not part of it. */
export interface Span {
  readonly fromMs: number;
  readonly toMs: number;
}

/** The form that the service sends almost always. Read here, a full grid takes 2 ms; through luxon alone it takes 11. */
const USUAL =
  /^(\d{4}-\d\d-\d\dT\d\d:\d\d:\d\d(?:Z|[+-]\d\d:\d\d))\/P(?:(\d{1,4})D)?(?:T(?:(\d{1,4})H)?(?:(\d{1,4})M)?)?$/;

/**
 * An ISO-8601 interval: start and duration, start and end, or duration and end. `NOW` stands for the given instant.
 *
 * @returns `undefined` for anything else, and for an interval without length.
 */
export function isoInterval(text: string, now: Date): Span | undefined {
  const span = usualSpan(text) ?? anySpan(text.replace('NOW', now.toISOString()));
  return span !== undefined && span.fromMs < span.toMs ? span : undefined;
}

function usualSpan(text: string): Span | undefined {
  const [, start, days = 0, hours = 0, minutes = 0] = USUAL.exec(text) ?? [];
  if (start === undefined) return undefined;
  const fromMs = Date.parse(start);
  return { fromMs, toMs: fromMs + ((Number(days) * 24 + Number(hours)) * 60 + Number(minutes)) * MS_PER_MIN };
}

function anySpan(text: string): Span | undefined {
  const { isValid, start, end } = Interval.fromISO(text, { zone: 'utc' });
  return isValid && start !== null && end !== null ? { fromMs: start.toMillis(), toMs: end.toMillis() } : undefined;
}
