import { expect, test } from 'vitest';
import { indianaReadyBy } from './accuracy/season.ts';

// R060, Purdue University Extension 2023, read: winter greens should have reached their size by the end of November in Indiana.
// Days from sowing to size are held against the extension's rules in accuracy.test.ts.
test('winter greens that are grown before the dark weeks are grown by the end of November in Indiana', () => {
  const readyBy = indianaReadyBy()?.getTime() ?? Number.NaN;
  expect(readyBy).toBeLessThan(Date.parse('2025-12-01T00:00:00Z'));
  expect(readyBy).toBeGreaterThan(Date.parse('2025-11-01T00:00:00Z'));
});
