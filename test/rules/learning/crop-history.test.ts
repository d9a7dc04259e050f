import { expect, test } from 'vitest';
import { type Crop, cropById, hardinessLearned, type SeenOutcome, toleranceAt } from '../../../rules/index.ts';

function spinach(): Crop {
  const crop = cropById('spinach');
  if (crop === undefined) throw new RangeError('spinach is not in the table');
  return crop;
}

const { firstMarkC, sdK } = toleranceAt(spinach(), 1);
const seen = (more: Partial<SeenOutcome>): SeenOutcome => ({
  ...{ seen: 'no-mark', organLowC: firstMarkC - 2, hardeningIndex: 1, garden: 'own' },
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

test("another garden of the club counts less than one's own", () => {
  const own = hardinessLearned(spinach(), 1, [seen({})])?.hardierK ?? 0;
  const club = hardinessLearned(spinach(), 1, [seen({ garden: 'club' })])?.hardierK ?? 0;
  expect(club).toBeGreaterThan(0);
  expect(club).toBeLessThan(own);
});

test('an outcome is held against the limits of its own night', () => {
  const organLowC = toleranceAt(spinach(), 0).firstMarkC - 2;
  const soft = hardinessLearned(spinach(), 1, [seen({ organLowC, hardeningIndex: 0 })])?.hardierK ?? 0;
  const hard = hardinessLearned(spinach(), 1, [seen({ organLowC, hardeningIndex: 1 })])?.hardierK ?? 0;
  expect(soft).toBeGreaterThan(0.5);
  expect(hard).toBeLessThan(0.2);
});

test('what hardly can be of the frost is hardly believed', () => {
  const { firstMarkC: softMarkC } = toleranceAt(spinach(), 0);
  const odd = seen({ organLowC: softMarkC - 10, hardeningIndex: 0 });
  const likely = seen({ organLowC: softMarkC - 2, hardeningIndex: 0 });
  const hardierK = (outcome: SeenOutcome) => hardinessLearned(spinach(), 1, [outcome])?.hardierK ?? 0;
  expect(hardierK(odd)).toBeLessThan(hardierK(likely));
});
