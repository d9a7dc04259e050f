import fc from 'fast-check';
import { expect, test } from 'vitest';
import {
  celsiusFrom,
  degrees,
  difference,
  fahrenheitFrom,
  temperature,
  temperatureWithRange,
  unitSystemOf,
} from '../../../bot/ground/units.ts';

test.each([
  ['en-US', 'us'],
  ['en', 'us'],
  ['en-GB', 'metric'],
  ['en-CA', 'metric'],
  ['de', 'metric'],
  ['es-PR', 'us'],
  ['', 'metric'],
])('a person with locale %s reads %s', (locale, units) => {
  expect(unitSystemOf(locale)).toBe(units);
});

test('water freezes and boils where both scales say', () => {
  expect(fahrenheitFrom(0)).toBe(32);
  expect(celsiusFrom(212)).toBeCloseTo(100, 12);
  expect(celsiusFrom(-40)).toBeCloseTo(-40, 12);
});

test('a temperature survives the way to °F and back', () => {
  fc.assert(
    fc.property(
      fc.double({ min: -90, max: 60, noNaN: true }),
      (c) => Math.abs(celsiusFrom(fahrenheitFrom(c)) - c) < 1e-9,
    ),
  );
});

test('results are no finer than the model: whole °F and half °C', () => {
  expect(temperature(-5.9, 'us')).toBe('21 °F');
  expect(temperature(-5.9, 'metric')).toBe('−6 °C');
  expect(temperature(-5.7, 'metric')).toBe('−5.5 °C');
});

test('there is no negative zero', () => {
  expect(degrees(-0.1, 'metric')).toBe('0');
  expect(degrees(-17.9, 'us')).toBe('0');
});

test('a difference is scaled but never shifted', () => {
  expect(difference(5, 'us')).toBe('9 °F');
  expect(difference(1.4, 'metric')).toBe('1.5 °C');
});

test('a range is the middle 80 % of the spread', () => {
  expect(temperatureWithRange(-6, 2, 'metric')).toBe('−6 °C (−8.5 to −3.5)');
});
