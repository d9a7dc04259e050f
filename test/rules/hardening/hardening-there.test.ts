import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { hardeningThere, type PastWeather } from '../../../rules/hardening/hardening-there.ts';

const DAY = fc
  .record({ lowC: fc.double({ min: -25, max: 20, noNaN: true }), aboveK: fc.double({ min: 0, max: 15, noNaN: true }) })
  .map(({ lowC, aboveK }) => ({ lowC, meanC: lowC + aboveK }));
const PAST = fc.record({
  latitudeDeg: fc.double({ min: -66, max: 66, noNaN: true }),
  elevationM: fc.double({ min: 0, max: 2500, noNaN: true }),
  at: fc.date({ min: new Date('2020-01-01'), max: new Date('2030-01-01'), noInvalidDate: true }),
  days: fc.array(DAY, { maxLength: 14 }),
  warmerK: fc.double({ min: 0, max: 12, noNaN: true }),
});
const week = (lowC: number, meanC: number) => Array.from({ length: 7 }, () => ({ lowC, meanC }));
const at = (day: string, latitudeDeg: number, days: PastWeather['days'], warmerK = 0) =>
  hardeningThere({ latitudeDeg, elevationM: 0, at: new Date(`${day}T22:00:00Z`), days, warmerK });

test('the index stays between grown warm and fully hardened', () => {
  fc.assert(
    fc.property(PAST, (past) => {
      const { hardeningIndex } = hardeningThere(past);
      expect(hardeningIndex).toBeGreaterThanOrEqual(0);
      expect(hardeningIndex).toBeLessThanOrEqual(1);
    }),
  );
});

test('a warmer cover never leaves plants harder', () => {
  fc.assert(
    fc.property(PAST, fc.double({ min: 0, max: 8, noNaN: true }), (past, moreK) => {
      const warmer = hardeningThere({ ...past, warmerK: past.warmerK + moreK });
      expect(warmer.hardeningIndex).toBeLessThanOrEqual(hardeningThere(past).hardeningIndex + 1e-12);
    }),
  );
});

test('a negative warming is refused by name', () => {
  expect(() => at('2026-01-01', 44, [], -1)).toThrow('warmerK -1 is below 0');
});

describe('decisions of common practice', () => {
  test('on 20 October after a week of 8 to 20 °C plants are not hardened', () => {
    expect(at('2026-10-20', 44, week(8, 14))).toMatchObject({ basis: 'weather' });
    expect(at('2026-10-20', 44, week(8, 14)).hardeningIndex).toBeLessThan(0.3);
  });

  test('in January after a week of frost they are fully hardened', () => {
    expect(at('2026-01-20', 44, week(-8, -4)).hardeningIndex).toBeGreaterThan(0.9);
  });

  test('one cold week in early October hardens them only partly', () => {
    const { hardeningIndex } = at('2026-10-05', 44, week(0, 5));
    expect(hardeningIndex).toBeGreaterThan(0.4);
    expect(hardeningIndex).toBeLessThan(0.95);
  });

  test('a warm spell in January costs part of the hardness', () => {
    expect(at('2026-01-20', 44, week(8, 14)).hardeningIndex).toBeLessThan(0.6);
  });

  test('with two days behind only date and latitude count', () => {
    const two = week(8, 14).slice(0, 2);
    expect(at('2026-01-20', 52, two)).toEqual(at('2026-01-20', 52, []));
    expect(at('2026-01-20', 52, two)).toMatchObject({ basis: 'season', hardeningIndex: 1 });
  });

  test('the south hardens half a year later', () => {
    expect(at('2026-07-20', -43, []).hardeningIndex).toBe(at('2026-01-19', 43, []).hardeningIndex);
    expect(at('2026-01-20', -43, []).hardeningIndex).toBe(0);
  });

  test('nearer to the equator plants are softer on the same day', () => {
    const [georgia, minnesota] = [at('2026-11-10', 32, []), at('2026-11-10', 45, [])];
    expect(georgia.hardeningIndex).toBeLessThan(minnesota.hardeningIndex);
  });
});
