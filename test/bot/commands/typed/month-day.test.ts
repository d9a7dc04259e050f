import { expect, test } from 'vitest';
import { typedMonthDay } from '../../../../bot/commands/typed/month-day.ts';

test.each([
  ['Oct 12', 10, 12],
  ['12 October', 10, 12],
  ['october 12', 10, 12],
  ['5. May', 5, 5],
  ['02-29', 2, 29],
])('%s is a day of the year', (text, month, day) => {
  expect(typedMonthDay(text)).toEqual({ ok: true, value: { month, day } });
});

test.each(['', 'tomorrow', 'Oct 32', '13-01', 'x'.repeat(300)])(
  '%s is none, and the answer says how to write one',
  (text) => {
    const read = typedMonthDay(text);
    expect(read.ok).toBe(false);
    if (!read.ok) expect(read.problem).toMatch(/write it like Oct 12/);
  },
);
