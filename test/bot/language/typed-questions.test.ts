import { afterAll, describe, expect, it } from 'vitest';
import { missedSlots, TYPED_QUESTIONS, TYPED_SLOTS } from './typed-questions.ts';

const LOWEST_SHARE = 0.97;

const scored = TYPED_QUESTIONS.map((question) => ({ question, missed: missedSlots(question) }));
const reported = scored.filter(({ question }) => question.isReported);

describe('questions as growers type them, through the JSON door', () => {
  afterAll(() => {
    const groups = [...new Set(scored.map(({ question }) => question.group))].map((group) => {
      const rows = scored.filter(({ question }) => question.group === group);
      return `${group} ${rows.filter(({ missed }) => missed.length === 0).length}/${rows.length}`;
    });
    const failing = scored
      .filter(({ missed }) => missed.length > 0)
      .map(({ question, missed }) => `  not yet (${missed.join(', ')}): ${question.ask}`);
    process.stdout.write(`Typed questions right in every slot: ${groups.join(', ')}\n${failing.join('\n')}\n`);
  });

  it('are more than 700, and half of them only reported on', () => {
    expect(TYPED_QUESTIONS.length).toBeGreaterThan(700);
    expect(reported.length / scored.length).toBeCloseTo(0.5, 2);
  });

  it('are read right in every slot in the half that is built on', () => {
    const missed = scored.filter(({ question, missed: slots }) => !question.isReported && slots.length > 0);
    expect(missed.map(({ question, missed: slots }) => [question.ask, slots])).toEqual([]);
  });

  it.each(TYPED_SLOTS)('are read right in the slot "%s" in at least 97 of 100 that are only reported', (slot) => {
    const right = reported.filter(({ missed }) => !missed.includes(slot));
    expect(right.length / reported.length).toBeGreaterThanOrEqual(LOWEST_SHARE);
  });
});
