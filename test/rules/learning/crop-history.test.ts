import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Crop, cropById, hardinessLearned, type SeenOutcome, toleranceAt } from '../../../rules/index.ts';

function spinach(): Crop {
  const crop = cropById('spinach');
  if (crop === undefined) throw new RangeError('spinach is not in the table');
  return crop;
}

const { firstMarkC, sdK } = toleranceAt(spinach(), 1);
const seen = (more: Partial<SeenOutcome>): SeenOutcome => ({
  ...{ seen: 'no-mark', organLowC: firstMarkC - 2, hardeningIndex: 1, epochDays: 20_000 },
  ...more,
});

test('without outcomes the table stands', () => {
  expect(hardinessLearned(spinach(), 1, [])).toBeUndefined();
});

test('a crop that comes through unmarked below its limit proves hardier, and surer', () => {
  const once = hardinessLearned(spinach(), 1, [seen({})]);
  const often = hardinessLearned(
    spinach(),
    1,
    Array.from({ length: 6 }, () => seen({})),
  );
  expect(once?.hardierK).toBeGreaterThan(0);
  expect(often?.hardierK).toBeGreaterThan(once?.hardierK ?? Number.NaN);
  expect(often?.varianceK2).toBeLessThan(sdK ** 2);
});

test('a crop lost above its limit proves more tender', () => {
  expect(hardinessLearned(spinach(), 1, [seen({ seen: 'lost', organLowC: firstMarkC })])?.hardierK).toBeLessThan(0);
});

describe('others of the club', () => {
  const hardierK = (outcomes: readonly SeenOutcome[]) => hardinessLearned(spinach(), 1, outcomes)?.hardierK ?? 0;
  const nights = (otherIndex: number, count: number, more: Partial<SeenOutcome> = {}) =>
    Array.from({ length: count }, (_, night) => seen({ otherIndex, epochDays: 20_000 + night, ...more }));

  test('move nothing while only one of them speaks, however often', () => {
    expect(hardinessLearned(spinach(), 1, nights(0, 12))).toBeUndefined();
    expect(hardierK([seen({}), ...nights(0, 12)])).toBe(hardierK([seen({})]));
  });

  test('move it by what two of them saw, and are counted', () => {
    const learned = hardinessLearned(spinach(), 1, [...nights(0, 2), ...nights(1, 2)]);
    expect(learned?.hardierK).toBeGreaterThan(0.3);
    expect(learned?.othersCount).toEqual({ 'no-mark': 2, 'leaf-burn': 0, lost: 0 });
  });

  test("count less than one's own", () => {
    const club = hardierK([...nights(0, 1), ...nights(1, 1)]);
    expect(club).toBeGreaterThan(0);
    expect(club).toBeLessThan(hardierK([seen({})]));
  });

  test('count once a night each, by the gravest that they saw', () => {
    const once = [...nights(0, 1, { seen: 'leaf-burn' }), ...nights(1, 1)];
    const often = [...once, ...nights(0, 1), ...nights(0, 1), ...nights(1, 1)];
    expect(hardinessLearned(spinach(), 1, often)).toEqual(hardinessLearned(spinach(), 1, once));
  });

  test('who contradict each other move nothing', () => {
    expect(hardierK([...nights(0, 3), ...nights(1, 3, { seen: 'lost', organLowC: firstMarkC })])).toBe(0);
  });

  test('never make a crop hardier on the word of one, whatever another saw on milder nights', () => {
    const mild = fc.double({ min: firstMarkC + 8, max: firstMarkC + 14, noNaN: true });
    const cold = fc.double({ min: firstMarkC - 9, max: firstMarkC, noNaN: true });
    fc.assert(
      fc.property(fc.array(cold, { maxLength: 12 }), mild, (lowsC, mildC) => {
        const one = lowsC.map((organLowC, night) => seen({ otherIndex: 0, organLowC, epochDays: 20_000 + night }));
        const other = seen({ otherIndex: 1, organLowC: mildC });
        // No mark in air that marks nobody says next to nothing.
        expect(hardierK([...one, other])).toBeLessThan(0.2);
      }),
    );
  });
});

test('an outcome is held against the limits of its own night', () => {
  const organLowC = toleranceAt(spinach(), 0).firstMarkC - 2;
  const soft = hardinessLearned(spinach(), 1, [seen({ organLowC, hardeningIndex: 0 })])?.hardierK ?? 0;
  const hard = hardinessLearned(spinach(), 1, [seen({ organLowC, hardeningIndex: 1 })])?.hardierK ?? 0;
  expect(soft).toBeGreaterThan(0.5);
  expect(hard).toBeLessThan(soft / 2);
});

test('what hardly can be of the frost is hardly believed', () => {
  const { firstMarkC: softMarkC } = toleranceAt(spinach(), 0);
  const odd = seen({ organLowC: softMarkC - 10, hardeningIndex: 0 });
  const likely = seen({ organLowC: softMarkC - 2, hardeningIndex: 0 });
  const hardierK = (outcome: SeenOutcome) => hardinessLearned(spinach(), 1, [outcome])?.hardierK ?? 0;
  expect(hardierK(odd)).toBeLessThan(hardierK(likely));
});
