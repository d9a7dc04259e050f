import { expect, test } from 'vitest';
import { lineWithFiles } from '../../../../bot/chat/terminal/line-files.ts';

test.each([
  ['tonight --chart night.png', { line: 'tonight', chart: 'night.png' }],
  ['record bed:"Long tunnel" --chart "my record.png"', { line: 'record bed:"Long tunnel"', chart: 'my record.png' }],
  ['tonight --chart my night.png', { line: 'tonight', chart: 'my night.png' }],
  ['tonight --forecast saved.json', { line: 'tonight', forecast: 'saved.json' }],
  ['vent --forecast "a b.json" --chart day.png', { line: 'vent', forecast: 'a b.json', chart: 'day.png' }],
  ['vent --chart day.png --forecast a.json', { line: 'vent', forecast: 'a.json', chart: 'day.png' }],
  ['tonight', { line: 'tonight' }],
  ['tonight --chart ', { line: 'tonight --chart ' }],
])('%s is read as a line and its files', (text, read) => {
  expect(lineWithFiles(text)).toEqual(read);
});
