import { describe, expect, it } from 'vitest';
import { BUILT_ON } from './corpora.ts';
import { missesOf } from './corpus-check.ts';

describe('the half of the corpus that the reader is built on', () => {
  it.each(BUILT_ON)('[$group] $after "$ask"', (question) => {
    expect(missesOf(question)).toEqual([]);
  });
});
