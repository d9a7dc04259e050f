import { describe, expect, it } from 'vitest';
import { cropVocabulary } from '../../../bot/language/crop-vocabulary.ts';
import { type Context, followUp, understand } from '../../../bot/language/understand.ts';

const context: Context = { vocabulary: cropVocabulary(), locale: 'en-US' };

describe('an answer to a question asked back', () => {
  it('gives the low that was missing', () => {
    const asked = understand('will my spinach survive under fleece', context);
    expect(asked.missing).toBe('temperature');
    const { crops, covers, lowC, missing } = followUp(asked, 'about 14', context);
    expect({ ids: crops.map(({ id }) => id), covers, lowC, missing }).toEqual({
      ids: ['spinach'],
      covers: ['row-cover'],
      lowC: -10,
      missing: undefined,
    });
  });

  it('chooses among the crops that a word may mean', () => {
    const asked = understand('will cress survive 14F under a sheet', context);
    expect(asked.missing).toBe('crop-choice');
    const { crops, covers, lowC, choices, missing } = followUp(asked, 'watercress', context);
    expect({ ids: crops.map(({ id }) => id), covers, lowC, choices, missing }).toEqual({
      ids: ['watercress'],
      covers: ['sheet'],
      lowC: -10,
      choices: [],
      missing: undefined,
    });
  });

  it('puts a crop of the table in the place of one that is not', () => {
    const asked = understand('will flumberry survive 14F under a blanket', context);
    expect(asked.intent).toBe('unknown-crop');
    const { intent, crops, unknownCrops, covers } = followUp(asked, 'I mean spinach then', context);
    expect({ intent, ids: crops.map(({ id }) => id), unknownCrops, covers }).toEqual({
      intent: 'survive',
      ids: ['spinach'],
      unknownCrops: [],
      covers: ['blanket'],
    });
  });

  it('names the covers to compare', () => {
    const asked = understand('which cover is better', context);
    expect(asked.missing).toBe('covers');
    expect(followUp(asked, 'blanket or low tunnel', context).options).toEqual([['blanket'], ['low-tunnel']]);
  });
});

describe('a new question in the same conversation', () => {
  const previous = understand('will lettuce survive 10F under fleece', context);

  it('takes nothing over when it stands by itself', () => {
    expect(understand('will garlic survive 0F', { ...context, previous })).toEqual(
      understand('will garlic survive 0F', context),
    );
  });

  it.each([
    'will it freeze tonight?',
    'is bed 2 ok tonight and bed 3?',
    'do I need to open the frame tomorrow?',
    'is a heat lamp safe in the frame?',
  ])('takes nothing over when it is whole in itself: %s', (question) => {
    expect(understand(question, { ...context, previous })).toEqual(understand(question, context));
  });

  it('is no continuation of a word of caution', () => {
    const warned = understand('can I eat rhubarb after frost', context);
    expect(understand('how windy will it be', { ...context, previous: warned }).crops).toEqual([]);
  });

  it('about another night leaves the low of the first behind', () => {
    const { crops, covers, lowC, when } = understand('and tomorrow night?', { ...context, previous });
    expect({ ids: crops.map(({ id }) => id), covers, lowC, when }).toEqual({
      ids: ['lettuce'],
      covers: ['row-cover'],
      lowC: undefined,
      when: 'tomorrow-night',
    });
  });

  it('is declined as ever when it is about something else', () => {
    expect(understand('thank you so much', { ...context, previous }).intent).toBe('decline');
  });

  it('asks for the limit of the same crop under the same cover', () => {
    const { intent, crops, covers, lowC } = understand('how cold can it go', { ...context, previous });
    expect({ intent, ids: crops.map(({ id }) => id), covers, lowC }).toEqual({
      intent: 'how-cold',
      ids: ['lettuce'],
      covers: ['row-cover'],
      lowC: undefined,
    });
  });

  it('lays another cover over what was there', () => {
    expect(understand('and with a tarp over it?', { ...context, previous }).covers).toEqual(['tarp', 'row-cover']);
  });
});

describe('a correction', () => {
  const previous = understand('will lettuce survive 10F under fleece', context);
  const corrected = (text: string, before = previous) => {
    const { intent, crops, lowC, covers, hardened } = understand(text, { ...context, previous: before });
    return { intent, ids: crops.map(({ id }) => id), lowC, covers, hardened };
  };
  const kept = { intent: 'survive', ids: ['lettuce'], lowC: previous.lowC, covers: ['row-cover'], hardened: undefined };

  it.each([
    ['celsius', { lowC: 10 }],
    ['I meant 50F', { lowC: 10 }],
    ['actually -10C', { lowC: -10 }],
    ['no, without', { covers: [] }],
    ['no I meant kale', { ids: ['kale'] }],
    ['plus a cold frame', { covers: ['cold-frame', 'row-cover'] }],
    ['just the kale under a sheet', { ids: ['kale'], covers: ['sheet'] }],
    ['they came out of the house this morning', { hardened: false }],
  ])('keeps the rest of the question: %s', (text, changed) => {
    expect(corrected(text)).toEqual({ ...kept, ...changed });
  });

  it('that adds a cover inside keeps the one outside', () => {
    const tunnel = understand('will lettuce survive 10F under a tunnel', context);
    expect(corrected('plus a row cover inside', tunnel).covers).toEqual(['low-tunnel', 'row-cover']);
  });

  it.each([
    ['20F', 'which-crops'],
    ['kale', 'what-cover'],
  ])('of a night asked about as a whole narrows it: %s', (text, intent) => {
    expect(corrected(text, understand('do I need to cover tonight', context)).intent).toBe(intent);
  });
});
