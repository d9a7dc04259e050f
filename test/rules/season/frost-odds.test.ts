import fc from 'fast-check';
import { expect, test } from 'vitest';
import { type AverageFrost, frostYearsFraction, oneYearInTen } from '../../../rules/season/frost-odds.ts';

const at = (day: string) => new Date(`2026-${day}T12:00:00Z`);
const FIRST: AverageFrost = { at: at('09-27'), which: 'first' };
const LAST: AverageFrost = { at: at('05-15'), which: 'last' };
const DAY = fc.date({ min: at('01-01'), max: at('12-31'), noInvalidDate: true });
const LOW = fc.double({ min: -10, max: 0, noNaN: true });

test('half the years have a frost after the average last one', () => {
  expect(frostYearsFraction(LAST, LAST.at, 0)).toBeCloseTo(0.5, 6);
});

test('counts of thirty years that an outside hand gave (3, 9, 18, 27 by 10-day steps) are met within a tenth', () => {
  const counted = [
    ['09-10', 3],
    ['09-20', 9],
    ['09-30', 18],
    ['10-10', 27],
  ] as const;
  for (const [day, years] of counted) {
    expect(Math.abs(frostYearsFraction(FIRST, at(day), 0) - years / 30)).toBeLessThan(0.1);
  }
});

test('a colder low is never more likely, and odds run on with the calendar', () => {
  fc.assert(
    fc.property(DAY, LOW, LOW, fc.integer({ min: 0, max: 60 }), (day, one, other, moreDays) => {
      const [colder, milder] = [Math.min(one, other), Math.max(one, other)];
      const later = new Date(day.getTime() + moreDays * 86_400_000);
      for (const average of [FIRST, LAST]) {
        const odds = frostYearsFraction(average, day, milder);
        expect(odds).toBeGreaterThanOrEqual(0);
        expect(odds).toBeLessThanOrEqual(1);
        expect(frostYearsFraction(average, day, colder)).toBeLessThanOrEqual(odds + 1e-6);
        const then = frostYearsFraction(average, later, milder);
        if (average.which === 'first') expect(then).toBeGreaterThanOrEqual(odds - 1e-6);
        else expect(then).toBeLessThanOrEqual(odds + 1e-6);
      }
    }),
  );
});

test('on the day of one year in ten the odds are one in ten', () => {
  for (const lowC of [0, -2, -4]) {
    expect(frostYearsFraction(LAST, oneYearInTen(LAST, lowC), lowC)).toBeCloseTo(0.1, 3);
    expect(frostYearsFraction(FIRST, oneYearInTen(FIRST, lowC), lowC)).toBeCloseTo(0.1, 3);
  }
});

test('tender plants wait about two weeks after the average last frost', () => {
  const days = (oneYearInTen(LAST, 0).getTime() - LAST.at.getTime()) / 86_400_000;
  expect(days).toBeGreaterThan(10);
  expect(days).toBeLessThan(18);
});

test('a low above freezing is refused by name', () => {
  expect(() => frostYearsFraction(LAST, LAST.at, 3)).toThrow('lowC 3 is outside −10…0');
});
