import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { Garden } from '../../../bot/outlook/garden.ts';
import { nightOutlook, type OutlooksShared } from '../../../bot/outlook/night-outlook.ts';
import { SharedNights } from '../../../bot/outlook/shared-nights.ts';
import { SAMPLE_GARDEN, SAMPLE_NOW, sampleForecast } from '../../../bot/sample/sample-garden.ts';
import { type CoverKey, EXPOSURES, nightFrom } from '../../../rules/index.ts';

const forecast = sampleForecast();
const tonight = nightFrom(SAMPLE_NOW, SAMPLE_GARDEN.latitudeDeg, SAMPLE_GARDEN.longitudeDeg);
if (tonight === undefined) throw new Error('the sample garden has nights');

const STACKS: readonly (readonly CoverKey[])[] = [[], ['blanket'], ['low-tunnel'], ['cold-frame', 'row-cover-medium']];
const bed = fc.record({
  name: fc.constant('a bed'),
  covers: fc.constantFrom(...STACKS),
  plantings: fc.constantFrom(
    [{ cropId: 'spinach' as const, stage: 'grown' as const }],
    [{ cropId: 'leaf-lettuce' as const, stage: 'just-set-out' as const }],
  ),
  soilKind: fc.constantFrom('dry' as const, 'moist' as const),
});
const garden: fc.Arbitrary<Garden> = fc.record({
  name: fc.constant('a garden'),
  latitudeDeg: fc.constantFrom(43.1, 43.5),
  longitudeDeg: fc.constant(-76.3),
  elevationM: fc.constantFrom(150, 400),
  exposure: fc.constantFrom(...EXPOSURES),
  timeZone: fc.constant('America/New_York'),
  beds: fc.array(bed, { minLength: 1, maxLength: 3 }),
  shed: fc.constantFrom<readonly CoverKey[]>([], ['quilt']),
});

test('gardens worked out together come to the same as each alone', () => {
  fc.assert(
    fc.property(fc.array(garden, { minLength: 2, maxLength: 4 }), (gardens) => {
      const shared: OutlooksShared = new SharedNights();
      for (const each of gardens) {
        expect(nightOutlook(each, forecast, tonight, SAMPLE_NOW, shared)).toEqual(
          nightOutlook(each, forecast, tonight, SAMPLE_NOW),
        );
      }
    }),
    { numRuns: 15 },
  );
});

test('beds that lie alike are worked out once', () => {
  let worked = 0;
  const shared = new SharedNights();
  const once = () => {
    worked += 1;
    return undefined;
  };
  shared.night('alike', false, once);
  shared.night('alike', false, once);
  expect(worked).toBe(1);
});

test('a newer forecast is told from the one before, even with the same figures', () => {
  const shared = new SharedNights();
  expect(shared.numberOf(forecast)).toBe(shared.numberOf(forecast));
  expect(shared.numberOf({ ...forecast })).not.toBe(shared.numberOf(forecast));
});

test('where hours are let go, lows and spreads stay as they were, and who needs the hours still gets them', () => {
  const lean: OutlooksShared = new SharedNights(false);
  const [told] = nightOutlook(SAMPLE_GARDEN, forecast, tonight, SAMPLE_NOW, lean).beds;
  const [whole] = nightOutlook(SAMPLE_GARDEN, forecast, tonight, SAMPLE_NOW).beds;
  if (told === undefined || whole === undefined) throw new Error('the sample garden has beds');
  const { run, ...facts } = told.verdict.night;
  expect(run.timesMs).toHaveLength(0);
  expect(facts).toEqual(withoutRun(whole.verdict.night));
  const made = lean.night('needs its hours', true, () => whole.verdict.night);
  expect(made?.run.timesMs.length).toBeGreaterThan(0);
});

function withoutRun<T extends { readonly run: unknown }>({ run: _, ...facts }: T): Omit<T, 'run'> {
  return facts;
}
