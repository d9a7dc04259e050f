import { describe, expect, it } from 'vitest';
import { cropVocabulary } from '../../../bot/language/crop-vocabulary.ts';
import { type Found, PhraseTrie } from '../../../bot/language/phrase-trie.ts';
import { spansOf } from '../../../bot/language/spans.ts';
import { understandUnbounded } from '../../../bot/language/understand.ts';

const vocabulary = cropVocabulary();

/** Counts the phrases tried; everything after the cutting looks a fixed number of spans around each span. */
class CountingTrie extends PhraseTrie {
  work = 0;

  override phrasesAt(words: readonly string[], from: number): readonly Found[] {
    const found = vocabulary.trie.phrasesAt(words, from);
    this.work += 1 + found.length;
    return found;
  }
}

function workFor(text: string): number {
  const trie = new CountingTrie();
  spansOf(text, { ...vocabulary, trie });
  return trie.work;
}

const HOSTILE = [
  'will my kale survive 14 F under a blanket, ',
  'two layers of ',
  'in the in the low tunnel ',
  '14-15-',
  'xqzv wkrt ',
  '((("-°,',
  'a',
];

describe('the work that a text makes', () => {
  it.each(HOSTILE)('grows no faster than its length: "%s" over and over', (unit) => {
    const half = unit.repeat(Math.ceil(50_000 / unit.length)).slice(0, 50_000);
    expect(workFor(half + half)).toBeLessThanOrEqual(2.5 * workFor(half));
  });

  it.each(HOSTILE)('ends for 100,000 characters of "%s"', (unit) => {
    const text = unit.repeat(Math.ceil(100_000 / unit.length)).slice(0, 100_000);
    expect(understandUnbounded(text, { vocabulary }).intent).toBeTypeOf('string');
  });
});
