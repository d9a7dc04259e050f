import { expect, test } from 'vitest';
import { hourMarks } from '../../../bot/charts/hour-marks.ts';

const span = (from: string, to: string, units: 'us' | 'metric' = 'us') =>
  hourMarks({ from: new Date(from), to: new Date(to), timeZone: 'America/New_York', units }).map(({ label }) => label);

test('a night is marked every third hour of the place', () => {
  expect(span('2026-01-20T19:30:00Z', '2026-01-21T14:40:00Z')).toEqual([
    ...['3 pm', '6 pm', '9 pm', '12 am', '3 am', '6 am', '9 am'],
  ]);
});

test('where hours are counted to 24, so are the marks', () => {
  expect(span('2026-01-20T22:00:00Z', '2026-01-21T06:30:00Z', 'metric')).toEqual(['18:00', '21:00', '0:00']);
});

test('a long polar night is marked more widely', () => {
  expect(span('2026-01-20T17:00:00Z', '2026-01-22T10:00:00Z').length).toBeLessThanOrEqual(8);
});

test('a night in which the clocks change keeps its hours', () => {
  const marks = hourMarks({
    from: new Date('2026-03-07T22:00:00Z'),
    to: new Date('2026-03-08T13:00:00Z'),
    timeZone: 'America/New_York',
    units: 'us',
  });
  expect(marks.map(({ label }) => label)).toEqual(['6 pm', '9 pm', '12 am', '3 am', '6 am', '9 am']);
  expect(marks.every(({ at }) => at.getUTCMinutes() === 0)).toBe(true);
});
