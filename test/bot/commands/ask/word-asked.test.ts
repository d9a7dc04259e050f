import { describe, expect, test } from 'vitest';
import { answerText } from '../../../../bot/commands/ask/ask.ts';
import { wordAsked } from '../../../../bot/commands/ask/word-asked.ts';
import { GLOSSARY } from '../../../../bot/text/glossary.ts';
import { readerOf } from '../../../../bot/text/reader.ts';
import { COVER_KEYS, COVERS, CROPS } from '../../../../rules/index.ts';
import { wordsOf } from '../club.ts';

const US = readerOf('en-US');

describe('a word of mine is explained when it is asked for', () => {
  test.each([
    ['what does leaf burn mean', 'Leaf burn: '],
    ['What does "hardened" mean?', 'Hardened: '],
    ['what is a row cover', 'Row cover: '],
    ['whats fleece', 'Row cover: '],
    ['what do you mean by on the edge?', 'On the edge: '],
    ['define winterkill', 'Winterkill: '],
    ['What are lights?', 'Light: '],
    ['hardened meaning', 'Hardened: '],
  ])('%s', (question, begins) => {
    expect(wordAsked(question, US)?.headline.startsWith(begins)).toBe(true);
  });

  test.each(GLOSSARY.map(({ word }) => word))('%s', (word) => {
    expect(wordAsked(`What does ${word} mean?`, US)?.headline.toLowerCase().startsWith(word)).toBe(true);
  });
});

describe('what can be named is listed whole', () => {
  test.each(['which covers do you know?', 'what covers are there', 'list covers'])('%s', (question) => {
    const words = wordsOf(wordAsked(question, US) ?? { headline: '', sections: [], private: false });
    for (const key of COVER_KEYS) expect(words).toContain(COVERS[key].american);
  });

  test.each(['which crops do you know', 'What vegetables do you know?', 'list crops'])('%s', (question) => {
    const words = wordsOf(wordAsked(question, US) ?? { headline: '', sections: [], private: false });
    for (const { name } of CROPS) expect(words).toContain(name.american);
  });
});

test.each([
  'what is spinach good to under a row cover',
  'what does 20F mean for my kale',
  'which crops survive 10F',
  'what covers do I need for lettuce at 20F',
  'will leaf burn kill my lettuce at 24F',
  'what is the low tonight',
  'x'.repeat(2000),
])('%s is a question of the night, not of a word', (question) => {
  expect(wordAsked(question, US)).toBeUndefined();
});

test('the JSON door explains too, and judges nothing', () => {
  const { reply, judged } = answerText('what does leaf burn mean?', { locale: 'en-US', now: new Date('2026-01-20') });
  expect([reply.headline.startsWith('Leaf burn: '), judged]).toEqual([true, []]);
});
