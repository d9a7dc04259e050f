import { expect, it } from 'vitest';
import { type Quantity, toSi } from '../../../bot/forecast/quantity.ts';

const cases: readonly (readonly [Quantity, string, number, number])[] = [
  ['temperature', 'wmoUnit:degC', -4, -4],
  ['temperature', 'unit:degC', -4, -4],
  ['temperature', '°F', 14, -10],
  ['temperature', 'nwsUnit:degF', 32, 0],
  ['temperature', 'K', 263.15, -10],
  ['temperature', 'http://codes.example/unit:degC', 3, 3],
  ['speed', 'wmoUnit:km_h-1', 36, 10],
  ['speed', 'm/s', 3, 3],
  ['speed', 'mp/h', 10, 4.4704],
  ['speed', 'kn', 10, 5.1444],
  ['fraction', 'wmoUnit:percent', 40, 0.4],
  ['fraction', '1', 0.4, 0.4],
  ['water', 'inch', 1, 25.4],
  ['snow', 'wmoUnit:mm', 120, 0.12],
  ['snow', 'cm', 12, 0.12],
  ['snow', 'ft', 1, 0.3048],
  ['radiation', 'W/m²', 250, 250],
];

for (const [quantity, unit, value, si] of cases) {
  it(`reads ${quantity} in ${unit}`, () => {
    expect(toSi(quantity, unit)?.(value)).toBeCloseTo(si, 4);
  });
}

it('does not guess a unit that it does not know, nor one of another quantity', () => {
  for (const unit of ['', 'degR', 'wmoUnit:', 'constructor', 'mm', 'kelvins'])
    expect(toSi('temperature', unit)).toBeUndefined();
  expect(toSi('speed', 'furlong_fortnight-1')).toBeUndefined();
});
