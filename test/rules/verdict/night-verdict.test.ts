import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { CROPS } from '../../../rules/crops/crops.ts';
import { bookHardiness } from '../../../rules/learning/crop-learning.ts';
import { nightVerdict, VERDICTS, type VerdictInput } from '../../../rules/verdict/night-verdict.ts';

const LOW = fc.double({ min: -40, max: 15, noNaN: true });
const INPUT: fc.Arbitrary<VerdictInput> = fc.record({
  crop: fc.constantFrom(...CROPS),
  hardeningIndex: fc.double({ min: 0, max: 1, noNaN: true }),
  leafLowC: LOW,
  surfaceLowC: LOW,
  sdK: fc.double({ min: 0, max: 5, noNaN: true }),
  circumstances: fc.record(
    {
      leafTouchesCover: fc.boolean(),
      wetThenFrozen: fc.boolean(),
      windyBare: fc.boolean(),
      nightsInARow: fc.nat(6),
      matureHead: fc.boolean(),
      smallRosette: fc.boolean(),
    },
    { requiredKeys: [] },
  ),
});
/** Error of the normal share. */
const ROUNDING = 1e-6;

describe('the odds of a night', () => {
  test('are chances that add up to one', () => {
    fc.assert(
      fc.property(INPUT, (input) => {
        const { noMark, leafBurn, winterkill } = nightVerdict(input).odds;
        for (const chance of [noMark, leafBurn, winterkill]) {
          expect(chance).toBeGreaterThanOrEqual(-ROUNDING);
          expect(chance).toBeLessThanOrEqual(1 + ROUNDING);
        }
        expect(noMark + leafBurn + winterkill).toBeCloseTo(1, 9);
      }),
    );
  });

  test('never improve as the night gets colder', () => {
    fc.assert(
      fc.property(INPUT, fc.double({ min: 0, max: 10, noNaN: true }), (input, colderK) => {
        const colder = { ...input, leafLowC: input.leafLowC - colderK, surfaceLowC: input.surfaceLowC - colderK };
        const [mild, cold] = [nightVerdict(input), nightVerdict(colder)];
        expect(cold.odds.winterkill).toBeGreaterThanOrEqual(mild.odds.winterkill - ROUNDING);
        expect(cold.odds.noMark).toBeLessThanOrEqual(mild.odds.noMark + ROUNDING);
        expect(VERDICTS.indexOf(cold.verdict)).toBeGreaterThanOrEqual(VERDICTS.indexOf(mild.verdict));
      }),
    );
  });

  test('move toward even when less is known', () => {
    fc.assert(
      fc.property(INPUT, fc.double({ min: 0, max: 5, noNaN: true }), (input, moreK) => {
        const known = nightVerdict(input).odds;
        const unknown = nightVerdict({ ...input, sdK: input.sdK + moreK }).odds;
        expect(Math.abs(unknown.winterkill - 0.5)).toBeLessThanOrEqual(Math.abs(known.winterkill - 0.5) + ROUNDING);
        expect(Math.abs(unknown.noMark - 0.5)).toBeLessThanOrEqual(Math.abs(known.noMark - 0.5) + ROUNDING);
      }),
    );
  });

  test('are even for a loss exactly at the median lethal temperature', () => {
    for (const crop of CROPS) {
      const lowC = crop.hardened.lt50C;
      const { odds } = nightVerdict({ crop, hardeningIndex: 1, leafLowC: lowC, surfaceLowC: lowC, sdK: 2 });
      expect(odds.winterkill).toBeCloseTo(0.5, 6);
    }
  });

  test('combine the spread of the low and of the crop in quadrature', () => {
    const spinach = crop('spinach');
    const { sdTotalK, tolerance } = nightVerdict({ ...night(spinach, -8), sdK: 3 });
    expect(sdTotalK).toBeCloseTo(Math.sqrt(9 + tolerance.sdK ** 2), 9);
  });
});

describe('a harder plant', () => {
  test('never fares worse where both states are known equally well', () => {
    fc.assert(
      fc.property(INPUT, fc.double({ min: 0, max: 1, noNaN: true }), (input, harderIndex) => {
        const sameSpread = {
          ...input,
          crop: { ...input.crop, hardened: { ...input.crop.hardened, sdK: input.crop.unhardened.sdK } },
        };
        const soft = nightVerdict(sameSpread);
        const hard = nightVerdict({ ...sameSpread, hardeningIndex: Math.max(input.hardeningIndex, harderIndex) });
        expect(hard.odds.winterkill).toBeLessThanOrEqual(soft.odds.winterkill + ROUNDING);
        expect(hard.odds.noMark).toBeGreaterThanOrEqual(soft.odds.noMark - ROUNDING);
      }),
    );
  });

  test('of the table fares worse by one in a hundred at most, where the hardened state is known less well', () => {
    fc.assert(
      fc.property(INPUT, fc.double({ min: 0, max: 1, noNaN: true }), (input, harderIndex) => {
        const soft = nightVerdict(input);
        const hard = nightVerdict({ ...input, hardeningIndex: Math.max(input.hardeningIndex, harderIndex) });
        expect(hard.odds.winterkill).toBeLessThanOrEqual(soft.odds.winterkill + 0.01);
        expect(hard.odds.noMark).toBeGreaterThanOrEqual(soft.odds.noMark - 0.01);
      }),
      { numRuns: 2000 },
    );
  });
});

describe('the verdict word', () => {
  test('goes from holds through the edge and leaf burn to winterkill as a night gets colder', () => {
    const spinach = crop('spinach');
    const words = [-8, -11.5, -14, -18].map((lowC) => nightVerdict(night(spinach, lowC)).verdict);
    expect(words).toEqual(['holds', 'on the edge', 'leaf burn', 'winterkill']);
  });

  test('follows the soil surface for a root and the leaf for a leaf', () => {
    const cold = { hardeningIndex: 1, leafLowC: -15, surfaceLowC: 0.5, sdK: 1 };
    expect(nightVerdict({ ...cold, crop: crop('carrot') }).organLowC).toBe(0.5);
    expect(nightVerdict({ ...cold, crop: crop('lettuce') }).organLowC).toBe(-15);
  });
});

describe('circumstances', () => {
  test.each([
    [{ leafTouchesCover: true }, 1.5],
    [{ wetThenFrozen: true }, 1.5],
    [{ windyBare: true }, 1.5],
    [{ nightsInARow: 3 }, 1.5],
    [{ nightsInARow: 2 }, 0],
    [{ matureHead: true }, 1.5],
    [{ smallRosette: true }, -1.5],
    [{ smallRosette: true, leafTouchesCover: true }, 0],
    [{ leafTouchesCover: true, wetThenFrozen: true, windyBare: true }, 3],
  ])('%o move the limits by %s K', (circumstances, warmerK) => {
    const plain = nightVerdict(night(crop('spinach'), -8));
    const moved = nightVerdict({ ...night(crop('spinach'), -8), circumstances });
    expect(moved.tolerance.lt50C - plain.tolerance.lt50C).toBeCloseTo(warmerK, 9);
  });

  test('never raise a limit above freezing, where there is no ice', () => {
    const { tolerance } = nightVerdict({
      ...night(crop('tomato'), 1),
      circumstances: { leafTouchesCover: true, wetThenFrozen: true },
    });
    expect(tolerance.firstMarkC).toBeCloseTo(0, 9);
  });

  test('above the ground do not touch a root in it', () => {
    const { adjustments } = nightVerdict({
      ...night(crop('carrot'), -2),
      circumstances: { leafTouchesCover: true, windyBare: true, nightsInARow: 4 },
    });
    expect(adjustments).toEqual(['third-freeze']);
  });
});

test('what the garden has shown moves the limits and takes the place of the book’s spread', () => {
  const spinach = crop('spinach');
  const book = nightVerdict(night(spinach, -12));
  const learned = { ...bookHardiness(1), hardierK: 2 };
  const taught = nightVerdict({ ...night(spinach, -12), learned });
  expect(taught.tolerance.lt50C).toBeCloseTo(book.tolerance.lt50C - 2, 9);
  expect(taught.tolerance.sdK).toBe(1);
});

test.each([
  ['a low that is not a number', { leafLowC: Number.NaN }, /is not a temperature/],
  ['a negative spread', { sdK: -1 }, /sdK -1 is below 0/],
  ['an index above 1', { hardeningIndex: 1.2 }, /hardeningIndex 1.2 is outside 0…1/],
  ['a negative run of nights', { circumstances: { nightsInARow: -1 } }, /nightsInARow -1 must be 0 or more/],
])('%s is refused', (_what, wrong, message) => {
  expect(() => nightVerdict({ ...night(crop('spinach'), -5), ...wrong })).toThrow(message);
});

function crop(id: string) {
  const found = CROPS.find((one) => one.id === id);
  if (found === undefined) throw new Error(`${id} is not in the table`);
  return found;
}

function night(judged: VerdictInput['crop'], lowC: number): VerdictInput {
  return { crop: judged, hardeningIndex: 1, leafLowC: lowC, surfaceLowC: lowC, sdK: 1 };
}
