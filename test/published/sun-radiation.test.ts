import { describe, expect, test } from 'vitest';
import { clearDay } from './accuracy/radiation.ts';

describe('clear-sky radiation', () => {
  // Source: check values printed with the physics page, section 3; computed there by another implementation of the same formulas.
  // Tables of other authors are held against it in accuracy.test.ts.
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
});
