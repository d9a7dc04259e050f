import { describe, expect, it } from 'vitest';
import { isSafe } from './dangerous-questions.ts';
import { mistyped } from './one-typo.ts';
import {
  answered,
  FRESH_QUESTIONS,
  FRESH_SLOTS,
  missedSlots,
  TYPED_QUESTIONS,
  type TypedQuestion,
} from './typed-questions.ts';

const COUNT = 2000;
const SEED = 20261201;
const LEAST_KEPT = 0.9;

/** Read right as they stand; where a slip is what they are about, one more would be two. */
const right = [
  ...TYPED_QUESTIONS.filter((question) => missedSlots(question).length === 0),
  ...FRESH_QUESTIONS.filter((question) => missedSlots(question, FRESH_SLOTS).length === 0),
].filter(({ group }) => group !== 'typos');

const variations = mistyped(right, COUNT, SEED).map(({ question, ask }) => ({
  before: question,
  after: { ...question, ask },
}));
const changed = variations.filter(({ after }) => missedSlots(after).length > 0);

describe(`${COUNT} questions with one typo each`, () => {
  it('keep their slots in at least nine of ten', () => {
    expect(1 - changed.length / COUNT).toBeGreaterThanOrEqual(LEAST_KEPT);
  });

  it('never turn a plant that would be hurt into one that holds', () => {
    // A crop that is then named as strange is told to be without a verdict.
    const isTold = (question: TypedQuestion) => answered(question).understood.unknownCrops.length > 0;
    const turned = changed.filter(({ before, after }) => isSafe(before) && !isSafe(after) && !isTold(after));
    expect(turned.map(({ after }) => after.ask)).toEqual([]);
  });

  it('are the same every time', () => {
    expect(mistyped(right, 5, SEED)).toEqual(mistyped(right, 5, SEED));
  });
});
