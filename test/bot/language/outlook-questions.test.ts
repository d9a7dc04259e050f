import { describe, expect, it } from 'vitest';
import { answerText } from '../../../bot/commands/ask/ask.ts';
import { cropVocabulary } from '../../../bot/language/crop-vocabulary.ts';
import { understand } from '../../../bot/language/understand.ts';

const read = (text: string, hasPlace: boolean) => {
  const { intent, when, missing, problem } = understand(text, { vocabulary: cropVocabulary(), hasPlace });
  return { intent, when, missing, problem };
};

describe('a question about the night itself', () => {
  it.each([
    ['do I need to cover tonight?', 'tonight'],
    ['cover or not?', undefined],
    ['cover tonight?', 'tonight'],
    ['should I cover on friday night or not', 'friday'],
    ['do the covers need to go on tomorrow night', 'tomorrow-night'],
    ['how bad is tonight', 'tonight'],
    ['is it gonna be cold tonight', 'tonight'],
    ['which nights this week are bad?', 'week'],
    ['which nights do I need to cover', 'week'],
    ['when is the coldest night', 'week'],
    ['when does the cold let up', 'week'],
    ['what does the week look like', 'week'],
  ])('is for the outlook: %s', (question, when) => {
    expect(read(question, true)).toEqual({ intent: 'outlook', when, missing: undefined, problem: undefined });
    expect(read(question, false)).toEqual({ intent: 'outlook', when, missing: 'place', problem: undefined });
  });

  it.each([
    'which ones need a blanket tonight',
    'which beds do I need to cover tonight',
    'what should I cover tonight',
  ])('is for the crops where it asks which of them: %s', (question) => {
    expect(read(question, true).intent).toBe('which-crops');
  });

  it.each(['do I need to cover kale tonight', 'do I need to cover at 20F'])(
    'is for a cover where a crop or a low is named: %s',
    (question) => {
      expect(read(question, true).intent).toBe('what-cover');
    },
  );

  it.each(['is 20F bad?', 'is 25 degrees ok', 'how bad is -4C'])(
    'asks what a bare low does where no crop is named: %s',
    (question) => {
      expect(read(question, false)).toMatchObject({ intent: 'which-crops', missing: undefined });
    },
  );

  it('asks for the crop and the low where no place is known, and offers to use a place', () => {
    const { reply } = answerText('do I need to cover tonight?', {
      locale: 'en-US',
      now: new Date('2026-01-20T15:00Z'),
    });
    expect(reply.headline).toMatch(/^Which crop is it, and how cold will it get outside\?.*"site"/);
  });
});
