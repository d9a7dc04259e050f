import { expect, test } from 'vitest';
import { bookNight, type CoverKey, readingDoubt } from '../../../rules/index.ts';
import { frostNight } from './arbitrary-bed.ts';

const FRAME = { covers: ['cold-frame'] as readonly CoverKey[] };
const BOOK = bookNight(frostNight(FRAME.covers), FRAME);
const { outsideLowC, underCoverLowC } = BOOK;

test('readings near the book are taken as they are', () => {
  expect(readingDoubt({ outsideLowC, underCoverLowC }, FRAME, BOOK)).toBeUndefined();
  expect(
    readingDoubt({ outsideLowC: outsideLowC - 3, underCoverLowC: underCoverLowC - 2 }, FRAME, BOOK),
  ).toBeUndefined();
});

test('the largest measured gain of a frame in the trials, 9.4 K, is not doubted', () => {
  const book = bookNight(frostNight(FRAME.covers, -2.2), FRAME);
  expect(readingDoubt({ outsideLowC: -2.2, underCoverLowC: 7.2 }, FRAME, book)).toBeUndefined();
});

test('a bed warmer at night than any would be is doubted: a sensor in the sun', () => {
  expect(readingDoubt({ underCoverLowC: 28 }, FRAME)).toBe('too-warm');
  expect(readingDoubt({ underCoverLowC: underCoverLowC + 20 }, FRAME, BOOK)).toBe('too-warm');
});

test('a bed colder than any would be is doubted', () => {
  expect(readingDoubt({ underCoverLowC: underCoverLowC - 20 }, FRAME, BOOK)).toBe('too-cold');
});

test('an outside low far from the forecast is doubted', () => {
  expect(readingDoubt({ outsideLowC: outsideLowC + 12 }, FRAME, BOOK)).toBe('outside-off');
});

test('a bed much colder than the air outside is doubted: the two may be swapped', () => {
  expect(readingDoubt({ outsideLowC: -1, underCoverLowC: -8 }, FRAME)).toBe('colder-than-outside');
});

test('air under dry film a little below the air outside is known from the field', () => {
  const film = { covers: ['low-tunnel'] as readonly CoverKey[] };
  const book = bookNight(frostNight(film.covers), film);
  const lows = { outsideLowC: book.outsideLowC, underCoverLowC: book.outsideLowC - 2.8 };
  expect(readingDoubt(lows, film, book)).toBeUndefined();
});

test('numbers that are none are refused', () => {
  expect(() => readingDoubt({ underCoverLowC: Number.NaN }, FRAME)).toThrow(RangeError);
});
