import { Body, Equator, Observer } from 'astronomy-engine';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { solarPosition } from '../../rules/index.ts';
import { almanacSun } from '../../rules/sun/almanac-sun.ts';
import { anyLatitudeDeg, anyLongitudeDeg, thisCentury } from '../rules/sun/arbitrary-places.ts';
import {
  almanacOff,
  DECLINATION_DEG,
  EQUATION_OF_TIME_MIN,
  heightOffDeg,
  SERIES_DEG,
  sunApartDeg,
} from './accuracy/sun.ts';

const anywhere = fc.tuple(thisCentury, anyLatitudeDeg, anyLongitudeDeg);

// Sources: Astronomy Engine 2.1 (VSOP87, within an arc minute); SunCalc 2.0 (its own truth tables within 0.01°).
describe('position of the sun', () => {
  test('lies within 0.7° of Astronomy Engine everywhere, 2000 to 2050', () => {
    fc.assert(
      fc.property(anywhere, (place) => {
        expect(sunApartDeg(place)).toBeLessThan(SERIES_DEG);
      }),
    );
  });

  test('stands within 0.7° of the height that SunCalc gives, with the sun above 20°', () => {
    fc.assert(
      fc.property(anywhere, (place) => {
        const offDeg = heightOffDeg(place);
        fc.pre(offDeg !== undefined);
        expect(Math.abs(offDeg)).toBeLessThan(SERIES_DEG);
      }),
    );
  });

  test('gives distances within 0.3 % of the squared ratio of Astronomy Engine', () => {
    fc.assert(
      fc.property(thisCentury, (at) => {
        const { dist } = Equator(Body.Sun, at, new Observer(0, 0, 0), true, true);
        expect(Math.abs(solarPosition(at, 0, 0).eccentricity - 1 / dist ** 2)).toBeLessThan(0.003);
      }),
    );
  });
});

describe('the sun for sunrise and seasons', () => {
  test('has declination within 0.02° and equation of time within 0.1 min of Astronomy Engine', () => {
    fc.assert(
      fc.property(thisCentury, (at) => {
        const { declinationDeg, equationOfTimeMin } = almanacOff(at);
        expect(Math.abs(declinationDeg)).toBeLessThan(DECLINATION_DEG);
        expect(Math.abs(equationOfTimeMin)).toBeLessThan(EQUATION_OF_TIME_MIN);
        const { dist } = Equator(Body.Sun, at, new Observer(0, 0, 0), true, true);
        expect(Math.abs(almanacSun(at).eccentricity - 1 / dist ** 2)).toBeLessThan(0.0005);
      }),
    );
  });
});
