import { expect, test } from 'vitest';
import { withSignsMended } from '../../../bot/language/sign-slips.ts';

test.each([
  ['mints nine tonight', 'minus nine tonight'],
  ['kale mins 3', 'kale minus 3'],
  ['mint 9', 'mint 9'],
  ['mints at nine', 'mints at nine'],
  ['open for 20 mins 3 times', 'open for 20 mins 3 times'],
])('%s is read as %s', (typed, read) => {
  expect(withSignsMended(typed.split(' ')).join(' ')).toBe(read);
});
