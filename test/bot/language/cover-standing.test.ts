import { describe, expect, it } from 'vitest';
import { cropVocabulary } from '../../../bot/language/crop-vocabulary.ts';
import { understand } from '../../../bot/language/understand.ts';

const read = (text: string) => {
  const { covers, coversOtherwise } = understand(text, { vocabulary: cropVocabulary() });
  return { covers, coversOtherwise };
};

describe('a cover that is named', () => {
  it.each([
    'lettuce 24F, the blanket blew off',
    "I don't have a cold frame, lettuce 24F",
    "lettuce 24F didn't put the blanket on",
    'lettuce 24F neither blanket nor fleece',
    'lettuce 24F no blanket or fleece',
    'lettuce 24F blanket: no',
    'lettuce 24F the frame was left open',
    'lettuce moved out of the cold frame, 24F',
    'lettuce raised in a greenhouse, now bare at 24F',
    'my neighbour has a cold frame, my lettuce at 24F?',
    'lettuce 24F ~~blanket~~ nothing',
    'the wind ripped the row cover off my lettuce, 24F tonight',
    'lettuce at 24F, wish I had a blanket',
    'lettuce 24F, blanket is still in the shed',
    "lettuce in a cold frame, the lid's open, 24F",
    'lettuce 24F. had a blanket on but it blew off',
    'lettuce 24F withut the fleece',
  ])('is left out where it is plainly not there: %s', (question) => {
    expect(read(question)).toEqual({ covers: [], coversOtherwise: undefined });
  });

  it.each([
    'lettuce 24F tonight, I think the blanket is on',
    'will lettuce survive 24F if the blanket blows off',
    'lettuce, 24F, under a blanket that might blow off',
    "don't know if the blanket is still on, lettuce 24F",
    'lettuce 24F. the blanket lives at my daughters',
    'lettuce 24F blanket would be nice',
    'lettuce 24F, is the blanket still on?',
    'is the blanket on? lettuce 24F',
    'should I put a blanket on lettuce at 24F',
  ])('is in doubt where it may or may not be on: %s', (question) => {
    expect(read(question)).toEqual({ covers: ['blanket'], coversOtherwise: [] });
  });

  it.each([
    'lettuce under a blanket 24F',
    'lettuce blanket 24F',
    'if I throw a blanket on the lettuce, will it take 24F?',
    "lettuce won't survive 24F under a blanket will it",
    'was the lettuce ok under the blanket last night at 24F',
    "the blanket isn't off, lettuce 24F",
    'the blanket blew off but I put it straight back. lettuce 24F',
    'lettuce under a blanket, no wind, never seen a frost, 24F',
  ])('is on where nothing says otherwise: %s', (question) => {
    expect(read(question)).toEqual({ covers: ['blanket'], coversOtherwise: undefined });
  });

  it('leaves what lies there besides', () => {
    expect(read('no blanket but fleece is on, lettuce 24F')).toEqual({
      covers: ['row-cover'],
      coversOtherwise: undefined,
    });
  });

  it.each([
    ['with fleece or without, lettuce 24F', [['row-cover'], []]],
    ['bare or fleece on lettuce at 24F', [[], ['row-cover']]],
  ])('is weighed against none where that is asked: %s', (question, options) => {
    expect(understand(question, { vocabulary: cropVocabulary() }).options).toEqual(options);
  });
});

describe('crops under different covers', () => {
  it.each(['kale is bare, lettuce is in a cold frame, 20F', 'lettuce in a cold frame and kale outside, 15F both ok?'])(
    'are each judged under their own: %s',
    (question) => {
      const { byCrop = [] } = understand(question, { vocabulary: cropVocabulary() });
      expect(Object.fromEntries(byCrop.map(({ cropId, covers }) => [cropId, covers]))).toEqual({
        kale: [],
        lettuce: ['cold-frame'],
      });
    },
  );

  it('are judged alone where one of them is asked about', () => {
    const question =
      'the cold frame is over the spinach. the romaine has nothing and it is 23. does the romaine make it?';
    const { crops, covers } = understand(question, { vocabulary: cropVocabulary() });
    expect({ ids: crops.map(({ id }) => id), covers }).toEqual({ ids: ['romaine'], covers: [] });
  });
});
