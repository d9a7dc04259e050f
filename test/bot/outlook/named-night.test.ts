import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { NIGHT_NAMES, namedNight } from '../../../bot/outlook/named-night.ts';

const BUFFALO = { latitudeDeg: 42.9, longitudeDeg: -78.8, timeZone: 'America/New_York' };
/** A Wednesday, 3 pm at Buffalo. */
const AFTERNOON = new Date('2026-11-25T20:00:00Z');
const BEFORE_DAWN = new Date('2026-11-26T10:00:00Z');

const night = (name: (typeof NIGHT_NAMES)[number], now = AFTERNOON, place = BUFFALO) => namedNight(name, now, place);

describe('a night is named by the day its evening falls on, by the clock of the garden', () => {
  test.each([
    ['tonight', '2026-11-25', 'tonight'],
    ['tomorrow', '2026-11-26', 'tomorrow night'],
    ['wednesday', '2026-11-25', 'tonight'],
    ['thursday', '2026-11-26', 'on Thursday night'],
    ['tuesday', '2026-12-01', 'on Tuesday night'],
  ] as const)('%s', (name, day, words) => expect(night(name)).toMatchObject({ day, words }));

  test('before dawn the night is still that of yesterday evening', () => {
    expect(night('tonight', BEFORE_DAWN)?.day).toBe('2026-11-25');
    expect(night('tomorrow', BEFORE_DAWN)?.day).toBe('2026-11-26');
  });

  test('on the other side of the date line it is that side’s day', () => {
    const chatham = { latitudeDeg: -44, longitudeDeg: -176.5, timeZone: 'Pacific/Chatham' };
    expect(night('tonight', new Date('2026-06-10T03:00:00Z'), chatham)?.day).toBe('2026-06-10');
    expect(night('tonight', new Date('2026-06-09T23:00:00Z'), chatham)?.day).toBe('2026-06-10');
  });
});

test('where the sun does not set there is no night', () => {
  const tromso = { latitudeDeg: 69.7, longitudeDeg: 18.9, timeZone: 'Europe/Oslo' };
  for (const name of NIGHT_NAMES) expect(night(name, new Date('2026-06-20T12:00:00Z'), tromso)).toBeUndefined();
  expect(night('tonight', new Date('2026-12-20T12:00:00Z'), tromso)).toBeDefined();
});

test('all nights of a week are found once each, in order, wherever and whenever', () => {
  const place = fc.record({
    latitudeDeg: fc.double({ min: -60, max: 60, noNaN: true }),
    longitudeDeg: fc.double({ min: -180, max: 180, noNaN: true }),
    timeZone: fc.constantFrom('UTC'),
  });
  const now = fc.date({ min: new Date('2020-01-01'), max: new Date('2035-01-01'), noInvalidDate: true });
  fc.assert(
    fc.property(place, now, (where, at) => {
      const [tonight, tomorrow, ...week] = NIGHT_NAMES.map((name) =>
        namedNight(name, at, where)?.span.sunset.getTime(),
      );
      const sorted = week.filter((ms) => ms !== undefined).sort((a, b) => a - b);
      expect(new Set(sorted).size).toBe(7);
      expect(sorted[0]).toBe(tonight);
      expect(sorted[1]).toBe(tomorrow);
    }),
    { numRuns: 60 },
  );
});
