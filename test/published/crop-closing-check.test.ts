import { describe, expect, test } from 'vitest';
import { bareNights, closingCheck } from '../../rules/crops/closing-check.ts';
import { CROPS } from '../../rules/crops/crops.ts';
import { CLOSING_EXCEPTIONS } from './crop-hardiness-exceptions.ts';

const NIGHTS = bareNights();

/** The crops themselves are held against their entries with all other rows, in accuracy.test.ts. */
describe('the outside low at which half of a bare crop is lost', () => {
  test('was checked for 86 crops with list entries, none quietly dropped', () => {
    const checks = CROPS.flatMap((crop) => closingCheck(crop, NIGHTS) ?? []);
    expect(checks).toHaveLength(86);
    expect(Object.keys(CLOSING_EXCEPTIONS).every((id) => checks.some((check) => check.cropId === id))).toBe(true);
    expect(checks.reduce((sum, check) => sum + check.entries.length, 0)).toBe(ENTRIES);
  });

  test('lies 1 to 4 K above the leaf', () => {
    for (const { outsideC, leafLowC } of NIGHTS.filter((night) => night.outsideC >= -20)) {
      expect(outsideC - leafLowC).toBeGreaterThan(1);
      expect(outsideC - leafLowC).toBeLessThan(4);
    }
  });
});

/** A regression: entries of the lists, each as often as a crop uses it, so that none drops out unseen. */
const ENTRIES = 135;
