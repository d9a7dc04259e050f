import fc from 'fast-check';
import { expect, test } from 'vitest';
import { CROPS } from '../../../rules/crops/crops.ts';
import { assumedHardening } from '../../../rules/hardening/assumed-hardening.ts';
import { toleranceAt } from '../../../rules/hardening/tolerance-at.ts';

const CROP = fc.constantFrom(...CROPS);
const INDEX = fc.double({ min: 0, max: 1, noNaN: true });
const ROUNDING_K = 1e-9;

test('the ends are those of the table', () => {
  for (const crop of CROPS) {
    expect(toleranceAt(crop, 0)).toMatchObject(limits(crop.unhardened));
    expect(toleranceAt(crop, 1).lt50C).toBeCloseTo(crop.hardened.lt50C, 9);
  }
});

test('a harder plant never has a warmer limit, and limits keep their order', () => {
  fc.assert(
    fc.property(CROP, INDEX, INDEX, (crop, one, other) => {
      const softer = toleranceAt(crop, Math.min(one, other));
      const harder = toleranceAt(crop, Math.max(one, other));
      for (const line of ['firstMarkC', 'lt50C', 'killC'] as const) {
        expect(harder[line]).toBeLessThanOrEqual(softer[line] + ROUNDING_K);
      }
      expect(harder.firstMarkC).toBeGreaterThan(harder.lt50C);
      expect(harder.lt50C).toBeGreaterThan(harder.killC);
    }),
  );
});

test.each([-0.1, 1.1, Number.NaN])('an index of %s is refused', (index) => {
  expect(() => toleranceAt(first(), index)).toThrow(/is outside 0…1/);
});

test('without a word, plants are taken as hardened and the other verdict is owed', () => {
  expect(assumedHardening(crop('spinach'))).toEqual({ hardeningIndex: 1, basis: 'assumed', otherwiseIndex: 0 });
});

test('what the grower says comes before what was followed', () => {
  expect(assumedHardening(crop('spinach'), { followedIndex: 0.7 })).toEqual({ hardeningIndex: 0.7, basis: 'followed' });
  expect(assumedHardening(crop('spinach'), { followedIndex: 0.7, said: 'grown-warm' })).toEqual({
    hardeningIndex: 0,
    basis: 'said',
  });
});

test('for a tomato hardening does not matter', () => {
  expect(assumedHardening(crop('tomato'), { said: 'hardened' })).toEqual({ hardeningIndex: 0, basis: 'no-matter' });
});

test('a followed index out of range is refused', () => {
  expect(() => assumedHardening(crop('kale'), { followedIndex: 2 })).toThrow(/followedIndex 2 is outside 0…1/);
});

function crop(id: string) {
  const found = CROPS.find((one) => one.id === id);
  if (found === undefined) throw new Error(`${id} is not in the table`);
  return found;
}

function first() {
  return crop('spinach');
}

function limits({ firstMarkC, lt50C, killC, sdK }: ReturnType<typeof toleranceAt>) {
  return { firstMarkC, lt50C, killC, sdK };
}
