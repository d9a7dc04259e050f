import { describe, expect, it } from 'vitest';
import { cropVocabulary } from '../../../bot/language/crop-vocabulary.ts';
import { understand } from '../../../bot/language/understand.ts';

const vocabulary = cropVocabulary();

/** Sentences of our own, rich in words one slip from a crop or a cover. */
const SENTENCES = [
  'the basic idea is to share the cost',
  'my roof leaks and the dollar is down',
  'a funnel for the kennel would be handy',
  'he built the fence last spring',
  'I quit my job and feel quite calm',
  'they finish the course in Spanish',
  'the press wore a red dress',
  'a reddish radius on the chart',
  'the union had no opinion on salaries',
  'turning left at the turnpike takes longer',
  'paper towels and carpets are on sale',
  'the orchestra played music from the monarch era',
  'she sings a song about space',
  'the commander of the apparatus wrote an article',
  'our horse ate the house plants of my neighbour',
  'a letter to the editor about carbon monoxide',
  'the parson read a lecture to the scholar',
  'market prices for copper and current',
  'the quality of sausage is at stake',
  'winners of the marathon in Nevada',
  'police found the pocket in a locker',
  'a clash of cultures in the peace talks',
  'please send the invoice by mail',
  'the movie starts at eight and ends at ten',
];

describe('ordinary English', () => {
  it.each(SENTENCES)('is no question about a crop: "%s"', (sentence) => {
    const { intent, crops, unknownCrops } = understand(sentence, { vocabulary, hasPlace: true, hasBeds: true });
    expect({ intent, crops, unknownCrops }).toEqual({ intent: 'decline', crops: [], unknownCrops: [] });
  });
});
