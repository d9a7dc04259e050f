import { expect, test } from 'vitest';
import { winter } from '../../bench/nightly/winter.ts';

// The whole winter with fifty channels is lived through by `npm run bench:nightly -- winter`.
test('ten clubs round the globe are told of every night once and in time while clocks change', {
  timeout: 120_000,
}, async () => {
  const wish = {
    from: new Date('2026-10-23T00:00:00Z'),
    to: new Date('2026-11-04T00:00:00Z'),
    channels: 10,
    stepMin: 15,
  };
  const { nightsDue, nightsSettled, missed, postedTwice, postedLate, posts } = await winter(wish);
  expect({ missed, postedTwice, postedLate }).toEqual({ missed: 0, postedTwice: 0, postedLate: 0 });
  expect(nightsSettled).toBe(nightsDue);
  expect(nightsDue).toBeGreaterThan(95);
  expect(posts).toBeGreaterThan(95);
});
