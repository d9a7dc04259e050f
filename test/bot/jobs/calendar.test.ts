import fc from 'fast-check';
import { expect, test } from 'vitest';
import { timeZoneOf } from '../../../bot/ground/time-zone.ts';
import { Calendar, solarDay } from '../../../bot/jobs/calendar.ts';
import { MS_PER_DAY } from '../../../rules/index.ts';

const calendar = new Calendar();
const place = fc
  .record({
    latitudeDeg: fc.double({ min: -89, max: 89, noNaN: true }),
    longitudeDeg: fc.double({ min: -179.9, max: 179.9, noNaN: true }),
  })
  .map((spot) => ({ ...spot, timeZone: timeZoneOf(spot.latitudeDeg, spot.longitudeDeg) }));
const day = fc.integer({ min: 18_500, max: 25_000 });

test('no name of a night is left out and none comes twice, whatever place and clock', () => {
  fc.assert(
    fc.property(place, day, (where, first) => {
      const names = [0, 1, 2, 3].map((days) => calendar.day(where, first + days).name);
      const numbers = names.map((name) => Date.parse(name) / MS_PER_DAY);
      expect(numbers.map((number) => number - (numbers[0] ?? 0))).toEqual([0, 1, 2, 3]);
    }),
  );
});

test('a night is found again by its name', () => {
  fc.assert(
    fc.property(place, day, (where, number) => {
      const night = calendar.night(where, number);
      fc.pre(night !== undefined);
      expect(calendar.named(where, night?.name ?? '')).toEqual(night);
    }),
  );
});

test('a night lies between two noons and is shut for before its sunset', () => {
  fc.assert(
    fc.property(place, day, (where, number) => {
      const night = calendar.night(where, number);
      fc.pre(night !== undefined);
      if (night === undefined) return;
      expect(night.shutBy <= night.sunset && night.sunset < night.sunrise).toBe(true);
      expect(solarDay(new Date(night.sunset.getTime() - MS_PER_DAY / 4), where.longitudeDeg)).toBe(number);
    }),
  );
});

test('at Chatham, a day ahead of its sun, the night is named by the clock there', () => {
  const chatham = { latitudeDeg: -43.95, longitudeDeg: -176.55, timeZone: 'Pacific/Chatham' };
  const night = calendar.named(chatham, '2026-07-10');
  // 17:05 at the thirteenth hour east of Greenwich, less a quarter.
  expect(night?.sunset.toISOString()).toMatch(/^2026-07-10T04:/);
});
