import { expect, it } from 'vitest';
import { type AskLine, askLine } from '../../../bot/cli/ask-json.ts';
import { answerText } from '../../../bot/commands/ask/ask.ts';

/** A decision as a practised grower would make it, written down before the program was asked. */
export interface Decision {
  readonly ask: string;
  /** en-US where absent. */
  readonly locale?: string;
  /** Month of the year 2026, from 1; December where absent. */
  readonly month?: number;
  readonly says: readonly RegExp[];
  readonly neverSays?: readonly RegExp[];
  /** Of the first crop, one of these. */
  readonly verdict?: readonly AskLine['answers'][number]['verdict'][];
}

const DECEMBER = 12;

export function decided({ ask, locale = 'en-US', month = DECEMBER }: Decision): AskLine {
  return askLine(answerText(ask, { locale, now: new Date(Date.UTC(2026, month - 1, 15, 18)) }));
}

/** One test for each decision. */
export function itDecides(decisions: readonly Decision[]): void {
  it.each(decisions)('$ask', (decision) => {
    const { text, answers } = decided(decision);
    for (const words of decision.says) expect(text).toMatch(words);
    for (const words of decision.neverSays ?? []) expect(text).not.toMatch(words);
    if (decision.verdict !== undefined) expect(decision.verdict).toContain(answers[0]?.verdict);
  });
}
