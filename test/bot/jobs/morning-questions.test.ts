import { describe, expect, test } from 'vitest';
import { withMorningQuestions } from '../../../bot/jobs/morning-questions.ts';
import type { Garden } from '../../../bot/store/port/channels.ts';
import type { Prediction } from '../../../bot/store/port/readings.ts';
import type { Reply } from '../../../bot/talk/reply.ts';

const PLAN: Reply = { headline: 'Open 1 bed.', sections: [], private: false };
const GARDENS = [{ beds: [{ id: 'bed-1' }, { id: 'bed-2' }] }] as unknown as readonly Garden[];

/** What had been told of the night before, by verdict. */
function told(...verdicts: readonly string[]) {
  const asked: string[] = [];
  const latest = async (_: readonly string[], night: string) => {
    asked.push(night);
    return new Map(verdicts.map((verdict, index) => [`bed-${index + 1}`, { verdict } as Prediction]));
  };
  return { asked, predictions: { latest } } as unknown as Parameters<typeof withMorningQuestions>[3] & {
    readonly asked: readonly string[];
  };
}

const labels = (reply: Reply | undefined) => reply?.buttons?.map(({ label }) => label);

describe('the morning post', () => {
  test('asks for last night’s reading where a night had been told', async () => {
    const store = told('holds');
    expect(labels(await withMorningQuestions(PLAN, GARDENS, '2026-01-01', store))).toEqual(['Enter a reading']);
    expect(store.asked).toEqual(['2025-12-31']);
  });

  test('asks how it went after a risky night', async () => {
    const reply = await withMorningQuestions(PLAN, GARDENS, '2026-01-01', told('holds', 'leaf burn'));
    expect(labels(reply)).toEqual(['How did it go?', 'Enter a reading']);
    expect(reply?.headline).toBe(PLAN.headline);
  });

  test('asks after a risky night even where nothing is to be opened', async () => {
    const reply = await withMorningQuestions(undefined, GARDENS, '2026-01-01', told('winterkill'));
    expect(reply?.headline).toBe('How did your beds come through the night?');
  });

  test('stays silent where nothing was at risk and nothing is to be opened', async () => {
    expect(await withMorningQuestions(undefined, GARDENS, '2026-01-01', told('holds'))).toBeUndefined();
  });

  test('keeps the buttons that the post has', async () => {
    const own = { ...PLAN, buttons: [{ id: 'my-beds', label: 'My beds' }] };
    expect(labels(await withMorningQuestions(own, GARDENS, '2026-01-01', told()))).toEqual(['My beds']);
  });
});
