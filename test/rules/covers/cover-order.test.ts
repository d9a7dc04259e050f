import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { COVER_KEYS, type CoverKey, coverStack, isUsualOrder, orderProblem, soundOrder } from '../../../rules/index.ts';

const anyCovers = fc.array(fc.constantFrom(...COVER_KEYS), { maxLength: 5 });

describe('covers from outside to inside', () => {
  test.each<[string, CoverKey[], string, CoverKey[] | undefined]>([
    ['a blanket over a high tunnel', ['blanket', 'high-tunnel'], 'over-high-tunnel', ['high-tunnel', 'blanket']],
    [
      'a low tunnel over a high tunnel',
      ['low-tunnel', 'high-tunnel'],
      'over-high-tunnel',
      ['high-tunnel', 'low-tunnel'],
    ],
    ['a frame inside a low tunnel', ['low-tunnel', 'cold-frame'], 'frame-with-low-tunnel', undefined],
    ['a low tunnel inside a frame', ['cold-frame', 'low-tunnel'], 'frame-with-low-tunnel', undefined],
    ['two high tunnels', ['high-tunnel', 'high-tunnel-double'], 'twice', undefined],
    ['snow under film', ['low-tunnel', 'snow'], 'snow-under-cover', ['snow', 'low-tunnel']],
    ['straw over fabric', ['straw', 'row-cover'], 'litter-outside', ['row-cover', 'straw']],
    ['straw on a frame', ['straw', 'cold-frame'], 'litter-outside', ['cold-frame', 'straw']],
    ['a mat inside a frame', ['cold-frame', 'mat'], 'mat-inside', ['mat', 'cold-frame']],
    ['hoops over the fabric they carry', ['hoops', 'row-cover'], 'hoops-outside', ['row-cover', 'hoops']],
    ['hoops outside a high tunnel', ['hoops', 'high-tunnel'], 'hoops-outside', ['high-tunnel', 'hoops']],
    ['two sets of hoops with nothing between', ['row-cover', 'hoops', 'hoops'], 'twice', undefined],
  ])('refuse %s and name the order expected', (_what, keys, problem, expectedOrder) => {
    expect(orderProblem(keys)).toMatchObject({ kind: 'unsound', problem });
    expect(orderProblem(keys)?.expectedOrder).toEqual(expectedOrder);
  });

  test('name the two that clash, outer one first', () => {
    expect(orderProblem(['row-cover', 'blanket', 'high-tunnel'])?.between).toEqual(['row-cover', 'high-tunnel']);
  });

  test.each<[CoverKey[]]>([
    [[]],
    [['hoops']],
    [['row-cover', 'hoops']],
    [['blanket', 'low-tunnel', 'hoops', 'row-cover']],
    [['low-tunnel', 'blanket']],
    [['snow', 'quilt', 'cold-frame', 'row-cover', 'straw']],
    [['high-tunnel', 'low-tunnel', 'row-cover', 'hoops']],
    [['high-tunnel', 'mat', 'low-tunnel']],
    [['high-tunnel', 'cold-frame', 'sheet']],
    [['low-tunnel', 'low-tunnel']],
    [['jugs', 'low-tunnel']],
  ])('may lie as %j', (keys) => {
    expect(orderProblem(keys)).toBeUndefined();
  });

  test('a refusal names a sound order of the same covers, or none', () => {
    fc.assert(
      fc.property(anyCovers, (keys) => {
        const expected = orderProblem(keys)?.expectedOrder;
        if (expected === undefined) return;
        expect(orderProblem(expected)).toBeUndefined();
        expect(sortedWithOneJug(expected)).toEqual(sortedWithOneJug(keys));
      }),
    );
  });

  test('more than eight are refused in no time, whatever they are', () => {
    fc.assert(
      fc.property(fc.array(fc.constantFrom(...COVER_KEYS), { minLength: 9, maxLength: 2000 }), (keys) => {
        const covers = keys.filter((key) => key !== 'jugs');
        fc.pre(covers.length > 8);
        expect(orderProblem(keys)).toEqual({ kind: 'unsound', problem: 'too-many', between: [] });
        expect(soundOrder(keys)).toBeUndefined();
      }),
    );
  });
});

describe('the usual order of a set of covers', () => {
  test.each<[CoverKey[], CoverKey[] | undefined]>([
    [
      ['row-cover', 'low-tunnel'],
      ['low-tunnel', 'row-cover'],
    ],
    [
      ['hoops', 'row-cover', 'blanket'],
      ['blanket', 'row-cover', 'hoops'],
    ],
    [
      ['row-cover', 'row-cover', 'hoops'],
      ['row-cover', 'row-cover', 'hoops'],
    ],
    [
      ['hoops', 'row-cover', 'low-tunnel'],
      ['low-tunnel', 'row-cover', 'hoops'],
    ],
    [
      ['jugs', 'low-tunnel', 'high-tunnel', 'straw'],
      ['high-tunnel', 'low-tunnel', 'straw', 'jugs'],
    ],
    [
      ['cold-frame', 'mat'],
      ['mat', 'cold-frame'],
    ],
    [
      ['snow', 'row-cover'],
      ['snow', 'row-cover'],
    ],
    [['blanket', 'low-tunnel'], undefined],
    [['cold-frame', 'low-tunnel'], undefined],
    [[], []],
  ])('of %j is %j', (keys, expected) => {
    expect(soundOrder(keys)).toEqual(expected);
  });

  test('is sound and usual, and its own usual order', () => {
    fc.assert(
      fc.property(anyCovers, (keys) => {
        const order = soundOrder(keys);
        if (order === undefined) return;
        expect(orderProblem(order)).toBeUndefined();
        expect(isUsualOrder(order)).toBe(true);
        expect(soundOrder(order)).toEqual(order);
        expect(coverStack(order).kind).toBe('stack');
      }),
    );
  });

  test('does not depend on the order in which the covers are named', () => {
    fc.assert(
      fc.property(
        anyCovers.chain((keys) =>
          fc.tuple(fc.constant(keys), fc.shuffledSubarray(keys, { minLength: keys.length, maxLength: keys.length })),
        ),
        ([keys, shuffled]) => {
          expect(soundOrder(shuffled)).toEqual(soundOrder(keys));
        },
      ),
    );
  });
});

function sortedWithOneJug(keys: readonly CoverKey[]): CoverKey[] {
  const covers = keys.filter((key) => key !== 'jugs').toSorted();
  return keys.includes('jugs') ? [...covers, 'jugs'] : covers;
}
