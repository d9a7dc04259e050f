import { existsSync, readFileSync } from 'node:fs';
import { parse } from 'csv-parse/sync';
import { describe, expect, test } from 'vitest';
import { errorOf, isWithin } from './accuracy/comparison.ts';
import { frameComparison, frameNights } from './accuracy/frame-series.ts';
import { FURTHER_ROWS, hardComparison, MAIN_ROWS, TRIAL_ROWS, trialComparisons } from './accuracy/trials.ts';

const COMPILATIONS = [
  ['trials.csv', MAIN_ROWS],
  ['measured/further-pairs.csv', FURTHER_ROWS],
] as const;
const PAGE = readFileSync(new URL('README.md', import.meta.url), 'utf8');

/** The rows themselves are held against the model with all others, in accuracy.test.ts. */
describe('lows measured under covers', () => {
  test('are all accounted for: every pair of lows is compared, every other row says why not', () => {
    for (const { id, insideMinC, outsideMinC, compared, notCompared } of TRIAL_ROWS) {
      expect([id, (compared === undefined) !== (notCompared === undefined)]).toEqual([id, true]);
      if (compared !== undefined) expect([id, insideMinC === null || outsideMinC === null]).toEqual([id, false]);
    }
    const pairs = TRIAL_ROWS.filter(({ insideMinC, outsideMinC }) => insideMinC !== null && outsideMinC !== null);
    // A glass house heated by the dwelling, one within another, and hoops under a cover that is not told.
    expect(pairs.filter(({ compared }) => compared === undefined).map(({ id }) => id)).toEqual([
      'T044',
      'T062',
      'N010',
    ]);
  });

  test('fall within the range told as often as the accuracy page says', () => {
    const { mild, hard } = frameComparison(frameNights());
    const hardNights = hardComparison(hard);
    const rows = [...trialComparisons(), mild, hardNights].flatMap((comparison) => comparison.rows);
    expect(PAGE).toContain(`The range held ${rows.filter(isWithin).length} of ${rows.length} measured lows`);
    const errors = hardNights.rows.map((row) => Math.abs(errorOf(row)));
    expect(errors.reduce((sum, error) => sum + error, 0) / errors.length).toBeLessThan(1.6);
  });

  test.for(COMPILATIONS)('stand as %s has them, row by row', ([name, rows], context) => {
    const compilation = new URL(`../../../shared/reference/${name}`, import.meta.url);
    if (!existsSync(compilation)) context.skip('the compilation of trials is not at hand');
    const printed: Record<string, string>[] = parse(readFileSync(compilation), { columns: true });
    const cell = (value: string | undefined) => (value === '' || value === undefined ? null : Number(value));
    expect(
      rows.map(({ id, coverStack, source, outsideMinC, insideMinC }) => [
        id,
        coverStack,
        source,
        outsideMinC,
        insideMinC,
      ]),
    ).toEqual(
      printed.map((row) => [
        row['id'],
        row['cover_stack'] ?? row['cover'],
        row['source'],
        cell(row['outside_min_c']),
        cell(row['inside_min_c']),
      ]),
    );
  });
});
