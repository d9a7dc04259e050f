import { describe, expect, test } from 'vitest';
import { lastSowing, pickingSizeAt } from '../../rules/index.ts';

const DAY_MS = 86_400_000;
/** Leaf lettuce and spinach packets say 45 to 55 days (common practice). */
const LEAF_DAYS = 50;

function daysToSize(sown: string, latitudeDeg: number): number {
  const at = new Date(`${sown}T12:00:00Z`);
  return (pickingSizeAt(LEAF_DAYS, at, latitudeDeg).getTime() - at.getTime()) / DAY_MS;
}

describe('autumn and winter sowings', () => {
  // R062, extension consensus, from memory: add 14 days (10 to 21) to the packet in September …
  test.each([35, 38, 40, 43])(
    'in the first half of September at %d° take 10 to 21 days longer than the packet',
    (latitudeDeg) => {
      for (const sown of ['2025-09-01', '2025-09-08', '2025-09-15']) {
        const longer = daysToSize(sown, latitudeDeg) - LEAF_DAYS;
        expect(longer).toBeGreaterThanOrEqual(10);
        expect(longer).toBeLessThanOrEqual(21);
      }
    },
  );

  // … and two to three times the packet from November. South of 43° the computed light alone gives a little less: 1.6 at 35°.
  test.each([43, 46, 50])('in November at %d° take two to three times as long as the packet', (latitudeDeg) => {
    for (const sown of ['2025-11-01', '2025-11-15']) {
      const times = daysToSize(sown, latitudeDeg) / LEAF_DAYS;
      expect(times).toBeGreaterThanOrEqual(2);
      expect(times).toBeLessThanOrEqual(3);
    }
  });

  // R060, Purdue University Extension 2023, read: winter greens should have reached their size by the end of November in Indiana.
  test('that are grown before the dark weeks are grown by the end of November in Indiana', () => {
    const sowing = lastSowing(LEAF_DAYS, new Date('2025-08-01T00:00:00Z'), 40.4, -86.9);
    expect(sowing?.readyBy.getTime()).toBeLessThan(Date.parse('2025-12-01T00:00:00Z'));
    expect(sowing?.readyBy.getTime()).toBeGreaterThan(Date.parse('2025-11-01T00:00:00Z'));
  });
});
