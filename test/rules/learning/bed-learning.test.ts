import fc from 'fast-check';
import { expect, test } from 'vitest';
import {
  afterNights,
  afterOtherCovers,
  afterReading,
  type BedBelief,
  bookBelief,
  insideErrorSds,
  learnedCoverShift,
  learnedOutsideShift,
  learnedShift,
  SENSOR_SD_K,
} from '../../../rules/learning/bed-learning.ts';
import { spreadRatio } from '../../../rules/learning/spread-correction.ts';

const BOOK = { siteSdK: 1.2, coverSdK: 1.3 };
const NIGHT = { slopeRatio: 0.8, forecastSdK: 1.4, nightSdK: 0.6 };
const kelvin = fc.double({ min: -15, max: 15, noNaN: true });
const readings = fc.array(
  fc.record(
    {
      outsideErrorK: kelvin,
      insideErrorK: kelvin,
      slopeRatio: fc.double({ min: 0, max: 1.08, noNaN: true }),
      forecastSdK: fc.double({ min: 0.3, max: 4, noNaN: true }),
      nightSdK: fc.double({ min: 0, max: 2, noNaN: true }),
    },
    { requiredKeys: ['slopeRatio', 'forecastSdK', 'nightSdK'] },
  ),
  { maxLength: 60 },
);

const learned = (nights: readonly Parameters<typeof afterReading>[1][]): BedBelief =>
  nights.reduce((belief, night) => afterReading(belief, night), bookBelief(BOOK));

test('every belief stays a proper normal distribution', () => {
  fc.assert(
    fc.property(readings, (nights) => {
      const b = learned(nights);
      expect(b.siteVarianceK2).toBeGreaterThan(0);
      expect(b.coverVarianceK2).toBeGreaterThan(0);
      expect(b.siteVarianceK2 * b.coverVarianceK2 - b.covarianceK2 ** 2).toBeGreaterThan(0);
    }),
  );
});

test('a reading never widens the range', () => {
  fc.assert(
    fc.property(readings, (nights) => {
      expect(learnedShift(learned(nights), NIGHT).sdK).toBeLessThanOrEqual(
        learnedShift(bookBelief(BOOK), NIGHT).sdK + 1e-9,
      );
    }),
  );
});

test('readings that agree with the prediction move nothing', () => {
  const belief = learned(Array.from({ length: 9 }, () => ({ ...NIGHT, outsideErrorK: 0, insideErrorK: 0 })));
  expect(learnedShift(belief, NIGHT).shiftK).toBe(0);
});

test('one reading moves a bed by less than what it said', () => {
  fc.assert(
    fc.property(kelvin, (error) => {
      const { shiftK } = learnedShift(afterReading(bookBelief(BOOK), { ...NIGHT, insideErrorK: error }), NIGHT);
      expect(Math.abs(shiftK)).toBeLessThanOrEqual(Math.abs(error));
    }),
  );
});

test('one absurd reading moves a bed no further than a merely large one', () => {
  const moved = (insideErrorK: number) =>
    learnedShift(afterReading(bookBelief(BOOK), { ...NIGHT, insideErrorK }), NIGHT).shiftK;
  expect(moved(40)).toBeCloseTo(moved(12), 9);
});

test('with both readings, the outside error of the night is not blamed on the cover', () => {
  const night = { ...NIGHT, outsideErrorK: 3, insideErrorK: 3 * NIGHT.slopeRatio };
  expect(afterReading(bookBelief(BOOK), night).coverOffsetK).toBeCloseTo(0, 9);
});

test('many equal nights teach nearly the whole difference', () => {
  const belief = learned(Array.from({ length: 80 }, () => ({ ...NIGHT, outsideErrorK: 0, insideErrorK: 1.4 })));
  expect(belief.coverOffsetK).toBeGreaterThan(1.2);
  expect(belief.coverOffsetK).toBeLessThan(1.4);
});

test('the update of one outside reading is the textbook weighting of prior and reading', () => {
  const belief = afterReading(bookBelief(BOOK), { ...NIGHT, outsideErrorK: 1 });
  const weight = BOOK.siteSdK ** 2 / (BOOK.siteSdK ** 2 + NIGHT.forecastSdK ** 2 + SENSOR_SD_K ** 2);
  expect(belief.siteOffsetK).toBeCloseTo(weight, 12);
});

test('without readings a bed slowly returns to the book', () => {
  const taught = learned(Array.from({ length: 20 }, () => ({ ...NIGHT, outsideErrorK: -2, insideErrorK: 1 })));
  const later = afterNights(taught, BOOK, 10_000);
  expect(later.siteOffsetK).toBeCloseTo(0, 6);
  expect(later.coverVarianceK2).toBeCloseTo(BOOK.coverSdK ** 2, 6);
  expect(Math.abs(afterNights(taught, BOOK, 30).siteOffsetK)).toBeGreaterThan(Math.abs(taught.siteOffsetK) * 0.85);
});

test('new covers on a known site keep a share of what was learned, unknown ones none of it', () => {
  const taught = learned([{ ...NIGHT, outsideErrorK: -2, insideErrorK: 1 }]);
  const more = afterOtherCovers(taught, BOOK, { ...BOOK, coverSdK: 2 }, 0.7);
  expect(more.siteOffsetK).toBe(taught.siteOffsetK);
  expect(more.coverOffsetK / taught.coverOffsetK).toBeCloseTo((0.7 * 2) / BOOK.coverSdK, 12);
  const other = afterOtherCovers(taught, BOOK, BOOK, 0);
  expect([other.coverOffsetK, other.coverVarianceK2, other.covarianceK2]).toEqual([0, BOOK.coverSdK ** 2, 0]);
  expect(afterOtherCovers(taught, BOOK, BOOK, 1)).toEqual(taught);
  expect(() => afterOtherCovers(taught, BOOK, BOOK, 1.2)).toThrow(RangeError);
});

test('without a reading the book stays as unsure after a change of covers as before', () => {
  fc.assert(
    fc.property(fc.double({ min: 0, max: 1, noNaN: true }), (sharedFraction) => {
      const changed = afterOtherCovers(bookBelief(BOOK), BOOK, { ...BOOK, coverSdK: 2 }, sharedFraction);
      expect(changed.coverVarianceK2).toBeCloseTo(4, 9);
    }),
  );
});

test('a low that is named moves by the cover alone, the low outside by the site alone', () => {
  const taught = learned(Array.from({ length: 30 }, () => ({ ...NIGHT, outsideErrorK: -2, insideErrorK: 1 })));
  expect(learnedCoverShift(taught, NIGHT).shiftK).toBe(taught.coverOffsetK);
  expect(learnedOutsideShift(taught, NIGHT).shiftK).toBe(taught.siteOffsetK);
  expect(learnedCoverShift(taught, NIGHT).sdK).toBeLessThan(learnedShift(taught, NIGHT).sdK);
});

test('no number of readings finds out what its own thermometer is off by', () => {
  const taught = learned(Array.from({ length: 500 }, () => ({ ...NIGHT, outsideErrorK: 0, insideErrorK: 1 })));
  expect(learnedCoverShift(taught, { nightSdK: 0 }).sdK).toBeCloseTo(0.5, 9);
});

test('a reading is told in standard deviations of what was believed before it', () => {
  const believed = Math.sqrt(0.8 ** 2 * (1.2 ** 2 + 1.4 ** 2) + 1.3 ** 2 + 0.6 ** 2 + SENSOR_SD_K ** 2);
  expect(insideErrorSds(bookBelief(BOOK), { ...NIGHT, insideErrorK: -2 })).toBeCloseTo(-2 / believed, 12);
  expect(insideErrorSds(bookBelief(BOOK), { ...NIGHT, outsideErrorK: -2 })).toBeUndefined();
});

test('a spread that fits is left alone, a narrow one is widened, a wide one narrowed', () => {
  expect(spreadRatio([])).toBe(1);
  expect(spreadRatio(Array.from({ length: 50 }, (_, i) => (i % 2 === 0 ? 1 : -1)))).toBeCloseTo(1, 12);
  expect(spreadRatio(Array.from({ length: 50 }, () => 2))).toBeGreaterThan(1.5);
  expect(spreadRatio(Array.from({ length: 50 }, () => 0.2))).toBeLessThan(0.75);
});

test('one absurd night does not widen the range for good', () => {
  expect(spreadRatio([40])).toBe(spreadRatio([3]));
  expect(spreadRatio([40])).toBeLessThan(1.2);
});

test('values that are no numbers are refused by name', () => {
  expect(() => bookBelief({ siteSdK: 0, coverSdK: 1 })).toThrow(RangeError);
  expect(() => afterReading(bookBelief(BOOK), { ...NIGHT, insideErrorK: Number.NaN })).toThrow(/not a number/);
  expect(() => spreadRatio([Number.NaN])).toThrow(RangeError);
});
