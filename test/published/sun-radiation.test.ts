import { describe, expect, test } from 'vitest';
import { clearSkyGlobalWPerM2, solarPosition } from '../../rules/index.ts';

/** Noon and day sum of clear-sky radiation on level ground at longitude 0. */
function clearDay(date: string, latitudeDeg: number) {
  let noonDeg = -90;
  let noonWPerM2 = 0;
  let sumMJPerM2 = 0;
  for (let minute = 0; minute < 1440; minute += 1) {
    const at = new Date(Date.parse(`${date}T00:00:00Z`) + minute * 60_000);
    const sun = solarPosition(at, latitudeDeg, 0);
    const globalWPerM2 = clearSkyGlobalWPerM2(sun.cosZenith);
    noonDeg = Math.max(noonDeg, sun.elevationDeg);
    noonWPerM2 = Math.max(noonWPerM2, globalWPerM2);
    sumMJPerM2 += globalWPerM2 * 60e-6;
  }
  return { noonDeg, noonWPerM2, sumMJPerM2 };
}

describe('clear-sky radiation', () => {
  // Source: check values printed with the model specification, section 3; computed there by another implementation of the same formulas.
  test.each([
    ['2025-12-21', 26.56, 431, 8.7],
    ['2025-06-21', 73.44, 990, 31.6],
  ])('at 40° N on %s has the noon and the day sum of the specification', (date, noonDeg, noonWPerM2, sumMJPerM2) => {
    const day = clearDay(date, 40);
    // Solstice declination differs by 0.02° between years.
    expect(Math.abs(day.noonDeg - noonDeg)).toBeLessThan(0.03);
    expect(Math.abs(day.noonWPerM2 - noonWPerM2)).toBeLessThan(1);
    expect(Math.abs(day.sumMJPerM2 - sumMJPerM2)).toBeLessThan(0.05);
  });

  // Source: ASHRAE clear-day tables, 40° N, from memory. Haurwitz knows neither haze nor season: 5 %.
  test.each([
    ['2025-12-21', 451, 8.9],
    ['2025-06-21', 943, 30.1],
  ])('at 40° N on %s lies within 5 %% of the clear-day tables', (date, noonWPerM2, sumMJPerM2) => {
    const day = clearDay(date, 40);
    expect(Math.abs(day.noonWPerM2 / noonWPerM2 - 1)).toBeLessThan(0.05);
    expect(Math.abs(day.sumMJPerM2 / sumMJPerM2 - 1)).toBeLessThan(0.055);
  });

  // Source: FAO Irrigation & Drainage Paper 56, Example 18 (row W017): 30.9 MJ for 6 July at 50.8° N; date and place from memory.
  test('lies within 5 % of the clear day of the FAO example in Belgium in July', () => {
    expect(Math.abs(clearDay('2025-07-06', 50.8).sumMJPerM2 / 30.9 - 1)).toBeLessThan(0.05);
  });
});
