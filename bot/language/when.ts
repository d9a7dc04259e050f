import { type Span, senseOf } from './span.ts';
import type { Intent, When } from './understood.ts';

/** The night or day that a question names: the first that still lies ahead, else the one that is past. */
export function readWhen(spans: readonly Span[]): When | 'tomorrow' | undefined {
  return firstAhead(saidWhens(spans));
}

/** "50 now, 24 tonight": of a night that is asked about, the night counts. */
export function readNight(spans: readonly Span[]): When | 'tomorrow' | undefined {
  const said = saidWhens(spans);
  if (said.includes('tonight')) return 'tonight';
  return firstAhead(said.filter((when) => !OF_THE_DAY.has(when))) ?? firstAhead(said);
}

const OF_THE_DAY: ReadonlySet<When | 'tomorrow'> = new Set<When | 'tomorrow'>(['now', 'today', 'morning']);

function firstAhead(said: readonly (When | 'tomorrow')[]): When | 'tomorrow' | undefined {
  return said.find((when) => when !== 'last-night') ?? said[0];
}

function saidWhens(spans: readonly Span[]): readonly (When | 'tomorrow')[] {
  return spans
    .map((span, at) =>
      isIdleNow(spans, at) || isSpanOfTime(spans, at) || isSatDown(spans, at)
        ? undefined
        : (senseOf(span, 'when')?.when ?? tonightWithin(span)),
    )
    .filter((when) => when !== undefined);
}

/** "now dropping to 15": the word only goes on with the tale; "can I pick now?" asks of now. */
function isIdleNow(spans: readonly Span[], at: number): boolean {
  const next = spans[at + 1];
  return spans[at]?.plain === 'now' && next !== undefined && next.kind !== 'mark';
}

/** "the frame sat open"; "9 sat, uncovered" is a day. */
function isSatDown(spans: readonly Span[], at: number): boolean {
  const next = spans[at + 1];
  return spans[at]?.plain === 'sat' && next !== undefined && next.kind !== 'mark';
}

/** "6 week old", "a week of warm weather". */
function isSpanOfTime(spans: readonly Span[], at: number): boolean {
  const before = spans[at - 1];
  if (spans[at]?.plain !== 'week' || before === undefined) return false;
  return (
    before.value !== undefined || ['a', 'an', 'per', 'every', 'each', 'last', 'past', 'whole'].includes(before.plain)
  );
}

/** "Frost tonight", "tonight's low": longer phrases that name the night too. */
function tonightWithin({ plain }: Span): When | undefined {
  return /\btonights?\b/.test(plain) ? 'tonight' : undefined;
}

/** "Tomorrow" is the day for opening and picking, and the night for everything else. */
export function settledWhen(when: When | 'tomorrow', intent: Intent): When {
  if (when !== 'tomorrow') return when;
  return intent === 'vent' || intent === 'pick' ? 'morning' : 'tomorrow-night';
}
