import fc from 'fast-check';
import { expect, test } from 'vitest';
import { type DayBehind, frostDepthM, frozenNightsInARow } from '../../../rules/night/long-cold.ts';

const cold = (count: number): DayBehind[] => Array.from({ length: count }, () => ({ lowC: -12, meanC: -8, highC: -4 }));
const THAW: DayBehind = { lowC: -6, meanC: -1, highC: 3 };
const BARE = { leafLowC: -14, leafAboveOutsideK: -2, isGlazed: false };
const DAYS = fc.array(
  fc
    .record({ lowC: fc.double({ min: -25, max: 5, noNaN: true }), rangeK: fc.double({ min: 0, max: 12, noNaN: true }) })
    .map(({ lowC, rangeK }) => ({ lowC, meanC: lowC + rangeK / 2, highC: lowC + rangeK })),
  { maxLength: 14 },
);

test('nights count since the last thaw, the judged one included', () => {
  expect(frozenNightsInARow([...cold(4), THAW, ...cold(2)], BARE)).toBe(3);
  expect(frozenNightsInARow([...cold(2), THAW], BARE)).toBe(1);
  expect(frozenNightsInARow([], BARE)).toBe(1);
});

test('leaves that do not freeze this night have no frozen nights', () => {
  expect(frozenNightsInARow(cold(5), { ...BARE, leafLowC: 0.5 })).toBe(0);
});

test('under glazing a day of −3 °C thaws what stays frozen in the open', () => {
  const days = cold(3).map((day) => ({ ...day, highC: -3 }));
  expect(frozenNightsInARow(days, BARE)).toBe(4);
  expect(frozenNightsInARow(days, { ...BARE, isGlazed: true })).toBe(1);
});

test('a week at −8 °C freezes bare moist ground some 20 cm deep, and a thaw takes it out', () => {
  expect(frostDepthM(cold(7), 0)).toBeGreaterThan(0.15);
  expect(frostDepthM(cold(7), 0)).toBeLessThan(0.25);
  expect(frostDepthM([...cold(1), { lowC: 2, meanC: 9, highC: 12 }], 0)).toBe(0);
});

test('a warmer bed never freezes deeper, and colder days never less deep', () => {
  fc.assert(
    fc.property(DAYS, fc.double({ min: 0, max: 10, noNaN: true }), (days, warmerK) => {
      expect(frostDepthM(days, warmerK)).toBeLessThanOrEqual(frostDepthM(days, 0));
      const colder = days.map(({ lowC, meanC, highC }) => ({ lowC: lowC - 2, meanC: meanC - 2, highC: highC - 2 }));
      expect(frostDepthM(colder, warmerK)).toBeGreaterThanOrEqual(frostDepthM(days, warmerK));
    }),
  );
});

test('a negative warming is refused by name', () => {
  expect(() => frostDepthM([], -1)).toThrow('warmerK -1 is below 0');
});
