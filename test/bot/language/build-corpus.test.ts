import { describe, expect, it } from 'vitest';
import { BUILD_CORPUS } from './build-corpus.ts';
import { missesOf } from './corpus-check.ts';

describe('the half of the corpus that the reader is built on', () => {
  it.each(BUILD_CORPUS)('[$group] $after "$ask"', (question) => {
    expect(missesOf(question)).toEqual([]);
  });
});
