import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  type BedLearning,
  bedDay,
  bedLearning,
  bookNight,
  type CoverKey,
  learnedNight,
  learnedOutsideLow,
  type ReadNight,
  sharedDay,
  soilAt,
} from '../../../rules/index.ts';
import { plainDay } from '../day/arbitrary-day.ts';
import { frostNight, namedNight } from './arbitrary-bed.ts';

const STACKS: readonly (readonly CoverKey[])[] = [
  [],
  ['row-cover-medium', 'hoops'],
  ['low-tunnel'],
  ['cold-frame'],
  ['blanket', 'low-tunnel'],
  ['high-tunnel', 'row-cover-heavy', 'hoops'],
];
const TUNNEL = { covers: ['low-tunnel'] as readonly CoverKey[] };

function taught(covers: readonly CoverKey[], siteK: number, insideK: number, count = 20): BedLearning {
  const laid = { covers };
  const book = bookNight(frostNight(covers), laid);
  const nights: ReadNight[] = Array.from({ length: count }, (_, epochDays) => ({
    ...{ epochDays, laid, book },
    outsideLowC: book.outsideLowC + siteK,
    underCoverLowC: book.underCoverLowC + insideK,
  }));
  return bedLearning(nights, { laid, epochDays: count });
}

describe.each(STACKS)('under %s, %s, %s', (...covers) => {
  const night = frostNight(covers);
  const laid = { covers };

  test('readings that agree with the book move nothing and narrow the range', () => {
    const after = learnedNight(night, taught(covers, 0, 0), laid);
    expect(after.leafLowC).toBeCloseTo(night.leafLowC, 12);
    expect(after.spread.sdK).toBeLessThan(night.spread.sdK);
  });

  test('a bed that ran warmer is told warmer, leaf, air and thermometer alike', () => {
    const after = learnedNight(night, taught(covers, 0, 1.5), laid);
    const shiftK = after.leafLowC - night.leafLowC;
    expect(shiftK).toBeGreaterThan(0.8);
    expect(shiftK).toBeLessThan(1.5);
    expect(after.thermometerLowC - night.thermometerLowC).toBeCloseTo(shiftK, 9);
    expect(Math.min(...after.run.leafC) - Math.min(...night.run.leafC)).toBeCloseTo(shiftK, 9);
  });

  test('the parts of the range still add up to it', () => {
    const { spread } = learnedNight(night, taught(covers, -1, 1), laid);
    expect(Math.hypot(...spread.parts.map(({ sdK }) => sdK))).toBeCloseTo(spread.sdK, 9);
    expect(spread.parts.every(({ sdK }) => sdK > 0)).toBe(true);
  });

  test('the night keeps what the book had said', () => {
    expect(learnedNight(night, taught(covers, -1, 1), laid).book).toEqual(bookNight(night, laid));
  });
});

test('the range before any learning is what the book states', () => {
  const none = bedLearning([], { laid: TUNNEL, epochDays: 0 });
  const night = frostNight(TUNNEL.covers);
  expect(learnedNight(night, none, TUNNEL).spread.sdK).toBeLessThanOrEqual(night.spread.sdK);
});

test('a garden colder than its forecast is told a colder low outside', () => {
  const night = frostNight(TUNNEL.covers);
  const learned = taught(TUNNEL.covers, -3, -2);
  const after = learnedNight(night, learned, TUNNEL);
  expect(after.screenLowC - night.screenLowC).toBeLessThan(-1.5);
  const outside = learnedOutsideLow(bookNight(night, TUNNEL), learned);
  expect(outside.lowC).toBeCloseTo(after.screenLowC, 9);
  expect(outside.sdK).toBeLessThan(bookNight(night, TUNNEL).outsideSdK);
});

test('a low that the asker names is not moved by what the forecast gets wrong', () => {
  const named = namedNight(TUNNEL.covers);
  const learned = taught(TUNNEL.covers, -3, -3 * 0.73);
  const after = learnedNight(named, learned, TUNNEL);
  expect(after.screenLowC).toBe(named.screenLowC);
  expect(after.leafLowC).toBeCloseTo(named.leafLowC, 6);
});

test('leaves told warm enough do not freeze, and have no thaw', () => {
  const night = frostNight(['cold-frame'], -7);
  expect(night.frozenFraction).toBeGreaterThan(0);
  const after = learnedNight(night, taught(['cold-frame'], 0, 8, 60), { covers: ['cold-frame'] });
  expect([after.frozenFraction, after.thawAt]).toEqual([0, undefined]);
});

test('one reading moves the night by less than it said, however odd', () => {
  fc.assert(
    fc.property(fc.constantFrom(...STACKS), fc.double({ min: -30, max: 30, noNaN: true }), (covers, errorK) => {
      const night = frostNight(covers);
      const shiftK = learnedNight(night, taught(covers, 0, errorK, 1), { covers }).leafLowC - night.leafLowC;
      expect(Math.abs(shiftK)).toBeLessThanOrEqual(Math.abs(errorK) + 1e-9);
      expect(Math.abs(shiftK)).toBeLessThan(6);
    }),
    { numRuns: 40 },
  );
});

describe('the morning after', () => {
  const { site, weather, day } = plainDay({
    ...{ date: '2026-02-20', latitudeDeg: 43, lowC: -6, rangeK: 10, cloudFraction: 0.5, windMPerS: 2, soilC: 3 },
  });
  const pickAfter = (learned?: BedLearning) => {
    const found = bedDay(
      {
        ...{ site, weather, soil: soilAt(3, 4, 1.5), bed: TUNNEL, plantings: [], from: day.sunrise },
        ...(learned && { learned }),
      },
      sharedDay(site, weather, day),
    );
    if (found.kind !== 'day' || found.pick?.kind !== 'thawed') throw new Error('the leaves should freeze and thaw');
    return found.pick.at.getTime();
  };

  test('leaves of a bed that runs colder than the book thaw later', () => {
    expect(pickAfter(taught(TUNNEL.covers, 0, -2))).toBeGreaterThan(pickAfter());
  });

  test('a bed that runs as the book says is picked when the book says', () => {
    expect(pickAfter(taught(TUNNEL.covers, 0, 0))).toBe(pickAfter());
  });
});
