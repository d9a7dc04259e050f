import fc from 'fast-check';
import { expect, test } from 'vitest';
import { pastDay } from '../../../../bot/commands/typed/past-day.ts';

test.each([
  [{ month: 8, day: 20 }, '2026-11-25', '2026-08-20'],
  [{ month: 11, day: 25 }, '2026-11-25', '2026-11-25'],
  [{ month: 12, day: 1 }, '2026-11-25', '2025-12-01'],
  [{ month: 2, day: 29 }, '2026-11-25', '2024-02-29'],
  [{ month: 2, day: 29 }, '2103-11-25', '2096-02-29'],
])('%o is read on %s as the latest such day', (monthDay, today, date) => {
  expect(pastDay(monthDay, today)).toBe(date);
});

test('a day read back is never ahead, and less than a year old but for the leap day', () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 1, max: 12 }),
      fc.integer({ min: 1, max: 28 }),
      fc.integer({ min: 0, max: 9e4 }),
      (month, day, days) => {
        const today = new Date(days * 86_400_000);
        const iso = today.toISOString().slice(0, 10);
        const date = pastDay({ month, day }, iso);
        expect(date <= iso).toBe(true);
        expect((today.getTime() - Date.parse(date)) / 86_400_000).toBeLessThan(366);
      },
    ),
  );
});
