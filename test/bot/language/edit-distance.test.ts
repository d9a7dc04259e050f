import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { slipsBetween } from '../../../bot/language/edit-distance.ts';

const word = fc.string({ unit: fc.constantFrom(...'abcde'), maxLength: 9 });

describe('slips between two words', () => {
  it('counts a letter left out, added, mistaken or swapped with its neighbour as one', () => {
    expect(slipsBetween('spinch', 'spinach', 3)).toBe(1);
    expect(slipsBetween('spinnach', 'spinach', 3)).toBe(1);
    expect(slipsBetween('spinech', 'spinach', 3)).toBe(1);
    expect(slipsBetween('spianch', 'spinach', 3)).toBe(1);
    expect(slipsBetween('carrot', 'turnip', 9)).toBe(5);
  });

  it('is the same both ways, and nothing only between equal words', () => {
    fc.assert(
      fc.property(word, word, (one, other) => {
        expect(slipsBetween(one, other, 9)).toBe(slipsBetween(other, one, 9));
        expect(slipsBetween(one, other, 9) === 0).toBe(one === other);
      }),
    );
  });

  it('stops counting where it was told to', () => {
    fc.assert(
      fc.property(word, word, fc.integer({ min: 0, max: 9 }), (one, other, most) => {
        expect(slipsBetween(one, other, most)).toBe(Math.min(slipsBetween(one, other, 9), most + 1));
      }),
    );
  });

  it('is at least the difference of the lengths and at most the longer length', () => {
    fc.assert(
      fc.property(word, word, (one, other) => {
        const slips = slipsBetween(one, other, 20);
        expect(slips).toBeGreaterThanOrEqual(Math.abs(one.length - other.length));
        expect(slips).toBeLessThanOrEqual(Math.max(one.length, other.length));
      }),
    );
  });
});
