import fc from 'fast-check';
import { expect, it } from 'vitest';
import { withPast } from '../../../bot/forecast/past.ts';
import { even, forecastOf } from './forecasts.ts';

const NOON = '2026-01-20T12:00:00Z';

it('puts earlier hours before the first and fills columns that only one of them has with nothing', () => {
  const now = forecastOf({ screenC: [4, 5], cloudFraction: [1, 1] }, '2026-01-20T14:00:00Z');
  const earlier = forecastOf({ screenC: [1, 2, 3, 9], soil6C: [6, 7, 8, 9] }, NOON);
  const joined = withPast(now, earlier);
  expect(joined).toMatchObject({ first: new Date(NOON), hours: 4, notes: [] });
  expect(joined.columns).toEqual({
    screenC: [1, 2, 4, 5],
    cloudFraction: [undefined, undefined, 1, 1],
    soil6C: [6, 7, undefined, undefined],
  });
});

it('leaves a gap as it is rather than closing it', () => {
  const now = forecastOf({ screenC: [4, 5] }, '2026-01-20T18:00:00Z');
  expect(withPast(now, forecastOf({ screenC: [1, 2] }, NOON))).toBe(now);
});

it('does not join hours that do not fall together, nor later ones', () => {
  const now = forecastOf({ screenC: [4, 5] }, '2026-01-20T12:30:00Z');
  expect(withPast(now, forecastOf({ screenC: even(9, 1) }, NOON))).toBe(now);
  const early = forecastOf({ screenC: even(9, 1) }, NOON);
  expect(withPast(early, forecastOf({ screenC: [4, 5] }, '2026-01-20T14:00:00Z'))).toBe(early);
});

it('keeps a week at most', () => {
  const now = forecastOf({ screenC: [4] }, '2026-01-20T12:00:00Z');
  const long = forecastOf({ screenC: even(500, 1) }, '2025-12-31T12:00:00Z');
  expect(withPast(now, long).hours).toBe(169);
});

it('never changes an hour that the forecast has itself', () => {
  fc.assert(
    fc.property(
      fc.integer({ min: -5, max: 30 }),
      fc.integer({ min: 1, max: 40 }),
      fc.integer({ min: 1, max: 40 }),
      (offset, ownHours, otherHours) => {
        const own = forecastOf(
          { screenC: even(ownHours, 1) },
          new Date(Date.parse(NOON) + offset * 3_600_000).toISOString(),
        );
        const joined = withPast(own, forecastOf({ screenC: even(otherHours, 2) }, NOON));
        expect(joined.columns.screenC?.slice(-ownHours)).toEqual(even(ownHours, 1));
        expect(joined.columns.screenC).toHaveLength(joined.hours);
        expect(joined.first.getTime() + joined.hours * 3_600_000).toBe(own.first.getTime() + ownHours * 3_600_000);
      },
    ),
  );
});
