import { type Span, senseOf } from './span.ts';
import type { Intent, When } from './understood.ts';

/** The night or day that a question names: the first that still lies ahead, else the one that is past. */
export function readWhen(spans: readonly Span[]): When | 'tomorrow' | undefined {
  const said = spans
    .map((span) => senseOf(span, 'when')?.when ?? tonightWithin(span))
    .filter((when) => when !== undefined);
  return said.find((when) => when !== 'last-night') ?? said[0];
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
