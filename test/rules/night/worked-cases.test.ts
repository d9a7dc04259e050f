import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { z } from 'zod';
import { caseResult } from '../../../bot/cli/model-cases/case-result.ts';
import { caseResultSchema, caseSchema } from '../../../bot/cli/model-cases/case-schema.ts';

/** Stated with the table of results: 0.4 K at 05:30 UTC, ±0.05 of the frozen share. */
const MIDDLE_K = 0.4;
const SHARE = 0.05;

const fileSchema = z.object({
  cases: z.array(
    caseSchema.extend({
      expected: caseResultSchema,
      tolerance: z.object({
        temperatureMinK: z.number(),
        temperatureMaxK: z.number(),
        timeOfMinimumMinutes: z.number(),
        crossingMinutes: z.number(),
      }),
    }),
  ),
});
const { cases } = fileSchema.parse(
  JSON.parse(readFileSync(new URL('../../fixtures/model-cases/model-cases.json', import.meta.url), 'utf8')),
);

/** Minutes between two instants; 0 when neither is there, endless when only one is. */
function apartMin(one: string | null, other: string | null): number {
  if (one === null || other === null) return one === other ? 0 : Number.POSITIVE_INFINITY;
  return Math.abs(Date.parse(one) - Date.parse(other)) / 60_000;
}

function within(found: number, wanted: number, slack: number): void {
  expect(Math.abs(found - wanted)).toBeLessThanOrEqual(slack);
}

describe('the worked cases of the physics page', () => {
  test('are twelve', () => {
    expect(cases.map(({ id }) => id)).toHaveLength(12);
  });

  describe.each(cases)('$id, $title', (worked) => {
    const { expected, tolerance } = worked;
    const found = caseResult(worked);

    test('has the outside that the reference solution has', () => {
      within(found.outsideScreenMin, expected.outsideScreenMin, 0.01);
      within(found.outsideCropLevelMin, expected.outsideCropLevelMin, 0.05);
    });

    test('has its minima of leaf, air and soil surface, and the leaf its hour', () => {
      within(found.leafMin, expected.leafMin, tolerance.temperatureMinK);
      within(found.airMin, expected.airMin, tolerance.temperatureMinK);
      within(found.surfaceMin, expected.surfaceMin, tolerance.temperatureMinK);
      expect(apartMin(found.leafMinTime, expected.leafMinTime)).toBeLessThanOrEqual(tolerance.timeOfMinimumMinutes);
    });

    test('has its leaf and air at dusk, in the middle of the night and at dawn', () => {
      expect(expected.leafAt).toHaveLength(3);
      for (const [i, [at, leafC, airC]] of expected.leafAt.entries()) {
        const [foundAt, foundLeafC, foundAirC] = found.leafAt[i] ?? ['', Number.NaN, Number.NaN];
        const slack = i === 1 ? MIDDLE_K : tolerance.temperatureMaxK;
        expect(apartMin(foundAt, at)).toBe(0);
        within(foundLeafC, leafC, slack);
        within(foundAirC, airC, slack);
      }
    });

    test('has its maxima of the next day and the time at which 24 °C is reached', () => {
      within(found.thermoMax, expected.thermoMax, tolerance.temperatureMaxK);
      within(found.airMax, expected.airMax, tolerance.temperatureMaxK);
      // No tolerance is stated for the hour of the maximum; it is as flat as the minimum.
      expect(apartMin(found.thermoMaxTime, expected.thermoMaxTime)).toBeLessThanOrEqual(tolerance.timeOfMinimumMinutes);
      expect(apartMin(found.first24, expected.first24)).toBeLessThanOrEqual(tolerance.crossingMinutes);
    });

    test('freezes as much of the leaf, and thaws it when', () => {
      within(found.frozenShare, expected.frozenShare, SHARE);
      expect(apartMin(found.thawTime, expected.thawTime)).toBeLessThanOrEqual(tolerance.crossingMinutes);
    });
  });
});
