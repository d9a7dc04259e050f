import { afterAll, describe, expect, it } from 'vitest';
import { isSafe } from './dangerous-questions.ts';
import { FRESH_QUESTIONS, FRESH_SLOTS, missedSlots } from './typed-questions.ts';

const scored = FRESH_QUESTIONS.map((question) => ({
  question,
  missed: missedSlots(question, FRESH_SLOTS),
  isUnsafe: question.must['danger'] === 'yes' && !isSafe(question),
}));
const groups = [...new Set(scored.map(({ question }) => question.group))].map((name) => {
  const rows = scored.filter(({ question }) => question.group === name);
  const share = (isRight: (row: (typeof scored)[number]) => boolean) => rows.filter(isRight).length / rows.length;
  return {
    name,
    intent: share(({ missed }) => !missed.includes('intent')),
    all: share(({ missed }) => missed.length === 0),
  };
});
const mean = (of: (group: (typeof groups)[number]) => number) =>
  groups.reduce((sum, group) => sum + of(group), 0) / groups.length;

/** What is reached; a change of the reader may not fall behind it. */
const LEAST_INTENT = 0.93;
const LEAST_ALL_SLOTS = 0.77;

describe('questions by three other hands, through the JSON door', () => {
  afterAll(() => {
    const percent = (share: number) => `${Math.round(100 * share)} %`;
    const lines = groups.map(
      ({ name, intent, all }) => `  ${name}: intent ${percent(intent)}, all slots ${percent(all)}`,
    );
    process.stdout.write(
      `Questions by other hands (mean of groups: intent ${percent(mean(({ intent }) => intent))}, all slots ${percent(mean(({ all }) => all))}):\n${lines.join('\n')}\n`,
    );
  });

  it('are more than 400, some 300 of them dangerous to misread', () => {
    expect(FRESH_QUESTIONS.length).toBeGreaterThan(400);
    expect(FRESH_QUESTIONS.filter(({ must }) => must['danger'] === 'yes').length).toBeGreaterThan(280);
  });

  it('never let a plant that the night would hurt be told only that it holds', () => {
    expect(scored.filter(({ isUnsafe }) => isUnsafe).map(({ question }) => question.ask)).toEqual([]);
  });

  it('are understood as often as before', () => {
    expect(mean(({ intent }) => intent)).toBeGreaterThanOrEqual(LEAST_INTENT);
    expect(mean(({ all }) => all)).toBeGreaterThanOrEqual(LEAST_ALL_SLOTS);
  });
});
