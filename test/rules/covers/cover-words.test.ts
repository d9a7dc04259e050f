import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { COVER_KEYS, type CoverKey, coverWords, stackWords } from '../../../rules/index.ts';

describe('a stack in words', () => {
  test.each<[CoverKey[], string, string]>([
    [[], 'no cover', 'no cover'],
    [['hoops'], 'no cover', 'no cover'],
    [['blanket'], 'a blanket', 'a blanket'],
    [['row-cover-medium'], 'medium row cover (0.9 oz/yd²)', 'fleece (30 g/m²)'],
    [['quilt', 'row-cover', 'hoops'], 'a quilt over row cover on hoops', 'a duvet over fleece on hoops'],
    [['low-tunnel', 'hoops', 'straw'], 'a low tunnel over loose straw', 'a low tunnel over loose straw'],
    [['high-tunnel', 'jugs'], 'a high tunnel, with water jugs', 'a polytunnel, with water bottles'],
    [['jugs'], 'no cover, with water jugs', 'no cover, with water bottles'],
  ])('%j is “%s” or “%s”', (keys, american, british) => {
    expect(stackWords(keys, 'american')).toBe(american);
    expect(stackWords(keys, 'british')).toBe(british);
  });

  test('names every cover of any stack once for each time it lies there', () => {
    fc.assert(
      fc.property(
        fc.array(fc.constantFrom(...COVER_KEYS.filter((key) => key !== 'hoops' && key !== 'jugs')), { minLength: 1 }),
        (keys) => {
          expect(stackWords(keys, 'british').split(' over ')).toEqual(keys.map((key) => coverWords(key, 'british')));
        },
      ),
    );
  });
});
