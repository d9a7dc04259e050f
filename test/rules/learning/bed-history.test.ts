import fc from 'fast-check';
import { expect, test } from 'vitest';
import { bedLearning, type CoverKey, type ReadNight } from '../../../rules/index.ts';

const FRAME = { covers: ['cold-frame'] as readonly CoverKey[], walls: 'wood' } as const;
const TUNNEL = { covers: ['low-tunnel'] as readonly CoverKey[] };
const BOOK = { outsideLowC: -5, outsideSdK: 1.8, underCoverLowC: -2, underCoverSdK: 1.7 };
const night = (epochDays: number, more: Partial<ReadNight> = {}): ReadNight => ({
  epochDays,
  laid: FRAME,
  book: BOOK,
  ...more,
});
const warmNights = (count: number, errorK: number) =>
  Array.from({ length: count }, (_, day) => night(day, { outsideLowC: -5, underCoverLowC: -2 + errorK }));

test('a bed without readings is as the book says', () => {
  const { belief, underCoverNights, outsideNights, spreadRatio } = bedLearning([], { laid: FRAME, epochDays: 0 });
  expect([belief.siteOffsetK, belief.coverOffsetK, underCoverNights, outsideNights, spreadRatio]).toEqual([
    0, 0, 0, 0, 1,
  ]);
});

test('nine nights 1.4 K above the book teach most of it', () => {
  const { belief, underCoverNights } = bedLearning(warmNights(9, 1.4), { laid: FRAME, epochDays: 9 });
  expect(belief.coverOffsetK).toBeGreaterThan(1.1);
  expect(belief.coverOffsetK).toBeLessThan(1.4);
  expect(underCoverNights).toBe(9);
});

test('the order in which readings were entered does not matter', () => {
  const nights = warmNights(12, 1).map((each, i) => ({ ...each, underCoverLowC: -2 + Math.sin(i) }));
  const now = { laid: FRAME, epochDays: 20 };
  fc.assert(
    fc.property(fc.shuffledSubarray(nights, { minLength: nights.length }), (shuffled) => {
      expect(bedLearning(shuffled, now)).toEqual(bedLearning(nights, now));
    }),
  );
});

test('a night without any reading teaches nothing', () => {
  const now = { laid: FRAME, epochDays: 30 };
  const read = warmNights(5, 2);
  expect(bedLearning([...read, night(7), night(8)], now)).toEqual(bedLearning(read, now));
});

test('readings of an old stack count less under a new one, and none of the site is lost', () => {
  const read = warmNights(30, 2).map((each) => ({ ...each, outsideLowC: -7 }));
  const same = bedLearning(read, { laid: FRAME, epochDays: 30 }).belief;
  const other = bedLearning(read, { laid: TUNNEL, epochDays: 30 }).belief;
  expect(other.siteOffsetK).toBe(same.siteOffsetK);
  expect(Math.abs(other.coverOffsetK)).toBeLessThan((2 / 3) * Math.abs(same.coverOffsetK));
});

test('what was learned a winter ago counts, but less', () => {
  const read = warmNights(20, 2);
  const soon = bedLearning(read, { laid: FRAME, epochDays: 20 }).belief.coverOffsetK;
  const later = bedLearning(read, { laid: FRAME, epochDays: 20 + 365 }).belief.coverOffsetK;
  expect(later).toBeGreaterThan(0.15 * soon);
  expect(later).toBeLessThan(0.3 * soon);
});

test('nights that scatter more than stated widen the range', () => {
  const wild = Array.from({ length: 30 }, (_, day) => night(day, { underCoverLowC: -2 + (day % 2 === 0 ? 4 : -4) }));
  expect(bedLearning(wild, { laid: FRAME, epochDays: 30 }).spreadRatio).toBeGreaterThan(1.3);
  expect(bedLearning(warmNights(30, 0), { laid: FRAME, epochDays: 30 }).spreadRatio).toBeLessThan(0.8);
});

test('a low that is no number is refused', () => {
  expect(() => bedLearning([night(0, { underCoverLowC: Number.NaN })], { laid: FRAME, epochDays: 1 })).toThrow(
    RangeError,
  );
});
