import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { dayFrom } from '../../../rules/index.ts';
import { anyLongitudeDeg, between, thisCentury } from '../sun/arbitrary-places.ts';

const HOUR_MS = 3_600_000;

describe('day', () => {
  test('is the one in which an instant lies or, by night, the next', () => {
    fc.assert(
      fc.property(thisCentury, between(-60, 60), anyLongitudeDeg, (at, latitudeDeg, longitudeDeg) => {
        const day = dayFrom(at, latitudeDeg, longitudeDeg);
        if (day === undefined) throw new Error('no day');
        expect(day.sunset.getTime()).toBeGreaterThan(at.getTime());
        expect(day.sunsetBefore.getTime()).toBeLessThanOrEqual(Math.max(at.getTime(), day.sunrise.getTime()));
        const order = [day.shutBefore, day.sunsetBefore, day.sunrise, day.shutBy, day.sunset];
        expect(order).toEqual([...order].sort((a, b) => a.getTime() - b.getTime()));
        expect(day.sunset.getTime() - day.sunsetBefore.getTime()).toBeLessThan(25 * HOUR_MS);
      }),
    );
  });

  test('does not exist in the polar night', () => {
    expect(dayFrom(new Date('2025-12-21T12:00:00Z'), 80, 0)).toBeUndefined();
  });
});
