import { describe, expect, test } from 'vitest';
import { pastDaysSun, sunlessDays } from '../../../rules/index.ts';

const PLACE = { latitudeDeg: 43, longitudeDeg: 0 };
const FIRST = new Date('2026-01-10T00:00:00Z');
const DAY_MS = 86_400_000;

/** One cloud cover a day, from the earliest. */
function skies(...cloudOfDay: readonly number[]) {
  const hours = Array.from({ length: cloudOfDay.length * 24 + 1 }, (_, hour) => hour);
  const cloudFraction = hours.map((hour) => cloudOfDay[Math.min(cloudOfDay.length - 1, Math.floor(hour / 24))] ?? 0);
  const none = hours.map(() => 0);
  return { first: FIRST, stepH: 1, screenC: none, dewPointC: none, cloudFraction, wind10MPerS: none };
}
const end = (days: number) => new Date(FIRST.getTime() + days * DAY_MS);

describe('sunless days', () => {
  test('are counted back to the last sunny one', () => {
    const days = pastDaysSun(PLACE, skies(1, 0, 1, 1, 1), end(5));
    expect(days).toHaveLength(5);
    expect(sunlessDays(days)).toBe(3);
    expect(sunlessDays(pastDaysSun(PLACE, skies(1, 1, 0), end(3)))).toBe(0);
  });

  test('clear days have all of a clear day, closed ones a quarter', () => {
    const [closed, clear] = pastDaysSun(PLACE, skies(0, 1), end(2));
    expect((clear?.sunMJPerM2 ?? 0) / (clear?.clearMJPerM2 ?? 1)).toBeCloseTo(1, 6);
    expect((closed?.sunMJPerM2 ?? 0) / (closed?.clearMJPerM2 ?? 1)).toBeCloseTo(0.25, 2);
  });

  test('are none where the weather does not reach back a day', () => {
    expect(pastDaysSun(PLACE, skies(1, 1), new Date(FIRST.getTime() + DAY_MS / 2))).toEqual([]);
  });
});
