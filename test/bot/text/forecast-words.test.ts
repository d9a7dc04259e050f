import { expect, test } from 'vitest';
import { noteLines } from '../../../bot/text/forecast-words.ts';
import { readerOf } from '../../../bot/text/reader.ts';

test.each([
  ['unavailable', 'The National Weather Service did not answer; this is from Open-Meteo.'],
  ['too-short', 'The National Weather Service does not reach that night; this is from Open-Meteo.'],
  ['refused', 'The National Weather Service turned us away; this is from Open-Meteo.'],
] as const)('when another service steps in, it is said why: %s', (because, words) => {
  expect(noteLines([{ code: 'fell-back', from: 'nws', to: 'openmeteo', because }], readerOf('en-US'))).toEqual([words]);
});
