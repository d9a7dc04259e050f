import { describe, expect, it } from 'vitest';
import { cropVocabulary } from '../../../bot/language/crop-vocabulary.ts';
import { understand } from '../../../bot/language/understand.ts';
import { INTENT_PHRASES } from './intent-phrases-corpus.ts';

const vocabulary = cropVocabulary();
const CROPS = ['spinach', 'kale', 'my leeks', 'the broccoli', 'brussels sprouts'];

describe.each(Object.entries(INTENT_PHRASES))('each way to ask for "%s"', (intent, phrases) => {
  it('is understood, whatever the crop', () => {
    const asked = phrases.flatMap((phrase) =>
      (phrase.includes('X') ? CROPS : ['']).map((crop) => phrase.replaceAll('X', crop)),
    );
    const wrong = asked
      .map((ask) => ({ ask, got: understand(ask, { vocabulary, hasPlace: true, hasBeds: true }).intent }))
      .filter(({ got }) => got !== intent);
    expect(wrong).toEqual([]);
  });

  it('keeps its crop', () => {
    if (intent === 'decline') return;
    const ofCrops = phrases.filter((phrase) => phrase.includes('X'));
    const lost = ofCrops.filter((phrase) => {
      const { crops } = understand(phrase.replaceAll('X', 'kale'), { vocabulary });
      return crops.map(({ id }) => id).join() !== 'kale';
    });
    expect(lost).toEqual([]);
  });
});
