import { describe, expect, it } from 'vitest';
import { cropVocabulary } from '../../../bot/language/crop-vocabulary.ts';
import { nearestCrops } from '../../../bot/language/nearest-crops.ts';

const { crops } = cropVocabulary();

describe('the nearest crops to a word that names none', () => {
  it('begin with the one that it is most like', () => {
    expect(nearestCrops('spinatch', crops)[0]).toBe('spinach');
    expect(nearestCrops('letus', crops)[0]).toBe('lettuce');
  });

  it('share a whole word where one does', () => {
    expect(nearestCrops('plumbo kale', crops)).toContain('kale');
  });

  it('are three different ones for any text, however long', () => {
    for (const said of ['', 'x', 'dahlia', 'z'.repeat(5000)]) {
      const nearest = nearestCrops(said, crops);
      expect(new Set(nearest).size).toBe(3);
    }
  });
});
