import fc from 'fast-check';
import { expect, test } from 'vitest';
import { clockTime, deadline, localDay, roughAge } from '../../../bot/ground/times.ts';
import { counted, list, saidBack } from '../../../bot/text/phrases.ts';

test('lists read as people speak', () => {
  expect([list([]), list(['kale']), list(['kale', 'leek']), list(['a', 'b', 'c'], 'or')]).toEqual([
    '',
    'kale',
    'kale and leek',
    'a, b or c',
  ]);
});

test('one bed is singular', () => {
  expect([counted(1, 'bed'), counted(0, 'bed'), counted(2, 'leaf', 'leaves')]).toEqual(['1 bed', '0 beds', '2 leaves']);
});

test('what was typed is said back on one short line', () => {
  fc.assert(
    fc.property(
      fc.string({ unit: 'grapheme', maxLength: 500 }),
      (text) => !/[\n\r]/.test(saidBack(text)) && [...saidBack(text)].length <= 60,
    ),
  );
});

test('a time is told in the zone of the garden, in its own style', () => {
  const at = new Date('2026-01-20T20:07:30Z');
  expect(clockTime(at, 'America/New_York', true)).toBe('3:07 pm');
  expect(clockTime(at, 'Europe/Oslo', false)).toBe('21:07');
});

test('a deadline is never told later than it is', () => {
  expect(deadline(new Date('2026-01-20T20:09:59Z'), 'UTC', false)).toBe('20:05');
});

test('a night is named by the local day, not the UTC day', () => {
  expect(localDay(new Date('2026-01-21T02:00:00Z'), 'America/New_York')).toBe('2026-01-20');
});

test('an age is told roughly', () => {
  expect([roughAge(60_000), roughAge(89 * 60_000), roughAge(20 * 3_600_000), roughAge(72 * 3_600_000)]).toEqual([
    '1 minute',
    '89 minutes',
    '20 hours',
    '3 days',
  ]);
});
