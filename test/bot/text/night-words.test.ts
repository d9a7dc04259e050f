import { expect, test } from 'vitest';
import { layingWords } from '../../../bot/text/night-words.ts';
import { readerOf } from '../../../bot/text/reader.ts';

const reader = readerOf('en-US');

test('says where a further cover lies', () => {
  expect(layingWords(['blanket', 'low-tunnel'], ['blanket'], reader, true)).toBe(
    'a blanket from the shed over the low tunnel',
  );
  expect(layingWords(['low-tunnel', 'quilt'], ['quilt'], reader)).toBe('a quilt under the low tunnel');
  expect(layingWords(['sheet', 'hoops'], ['sheet', 'hoops'], reader)).toBe('a bed sheet on hoops over it');
});

test('does not say the same cover twice over', () => {
  expect(layingWords(['blanket', 'blanket', 'row-cover'], ['blanket', 'blanket'], reader)).toBe(
    'a blanket over the row cover and another on that',
  );
});
