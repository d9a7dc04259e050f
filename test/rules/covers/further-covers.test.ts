import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { COVER_KEYS, coverStack, furtherCovers, isUsualOrder } from '../../../rules/index.ts';

const usualStack = fc.array(fc.constantFrom(...COVER_KEYS), { maxLength: 4 }).filter(isUsualOrder);
const anySpares = fc.option(fc.subarray([...COVER_KEYS]), { nil: undefined });

describe('one more cover', () => {
  test('on a bare bed is first what is least trouble', () => {
    const ways = furtherCovers([]).map(({ added, effort }) => `${added.join('+')} ${effort}`);
    expect(ways).toContain('blanket 1');
    expect(ways).toContain('blanket+hoops 2');
    expect(ways.indexOf('blanket 1')).toBeLessThan(ways.indexOf('blanket+hoops 2'));
    expect(ways).toContain('low-tunnel 3');
  });

  test('comes from what is at hand, where that is known', () => {
    expect(furtherCovers(['low-tunnel'], ['quilt'])).toEqual([
      { keys: ['quilt', 'low-tunnel'], added: ['quilt'], effort: 1 },
      { keys: ['low-tunnel', 'quilt'], added: ['quilt'], effort: 1.5 },
    ]);
    expect(furtherCovers(['low-tunnel'], [])).toEqual([]);
  });

  test('never goes where growers would not put it: fabric on film, anything over a high tunnel', () => {
    for (const { keys } of furtherCovers(['high-tunnel', 'low-tunnel'], ['row-cover', 'blanket', 'mat'])) {
      expect(keys[0]).toBe('high-tunnel');
      expect(keys.indexOf('row-cover')).not.toBe(1);
    }
  });

  test('makes a sound stack of the same covers and the added ones, in order of effort', () => {
    fc.assert(
      fc.property(usualStack, anySpares, (keys, spares) => {
        const ways = furtherCovers(keys, spares);
        for (const way of ways) {
          expect(coverStack(way.keys).kind).toBe('stack');
          expect(way.keys.toSorted()).toEqual([...keys, ...way.added].toSorted());
          if (spares) expect(spares).toEqual(expect.arrayContaining([...way.added]));
        }
        expect(ways.map(({ effort }) => effort)).toEqual(ways.map(({ effort }) => effort).toSorted((a, b) => a - b));
        expect(new Set(ways.map((way) => way.keys.join())).size).toBe(ways.length);
      }),
    );
  });
});
