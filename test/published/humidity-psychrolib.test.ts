import fc from 'fast-check';
import psychrolib from 'psychrolib';
import { describe, expect, test } from 'vitest';
import { saturationVapourHPa } from '../../rules/index.ts';
import { between } from '../rules/sun/arbitrary-places.ts';
import { DEW_POINT_K, dewPointOffK, SATURATION_PERCENT, saturationPercentOff } from './accuracy/humidity.ts';

psychrolib.SetUnitSystem(psychrolib.SI);

// Source: PsychroLib, equations of the ASHRAE Handbook — Fundamentals 2017, chapter 1 (Hyland & Wexler).
describe('humidity against a psychrometric library', () => {
  test('saturation over water agrees within 0.35 % from 0 to 60 °C', () => {
    fc.assert(
      fc.property(between(0.02, 60), (airC) => {
        expect(Math.abs(saturationPercentOff(airC))).toBeLessThan(SATURATION_PERCENT);
      }),
    );
  });

  test('dew points above freezing agree within 0.05 K', () => {
    fc.assert(
      fc.property(between(5, 45), between(0.3, 1), (airC, humidityFraction) => {
        fc.pre(psychrolib.GetTDewPointFromRelHum(airC, humidityFraction) > 0.02);
        expect(Math.abs(dewPointOffK(airC, humidityFraction))).toBeLessThan(DEW_POINT_K);
      }),
    );
  });

  test('below freezing ours lies above theirs as water does above ice, by 1 % per kelvin', () => {
    // The library turns to ice below 0.01 °C; forecasts give dew points over water. The ratio e(water)/e(ice) follows from the heats
    // of evaporation and sublimation: exp(0.334e6 / 461.5 × (1/T − 1/273.16)), general physics.
    fc.assert(
      fc.property(between(-30, -0.5), (airC) => {
        const waterOverIce = Math.exp((0.334e6 / 461.5) * (1 / (airC + 273.15) - 1 / 273.16));
        const ratio = (100 * saturationVapourHPa(airC)) / psychrolib.GetSatVapPres(airC);
        expect(Math.abs(ratio / waterOverIce - 1)).toBeLessThan(0.03);
      }),
    );
  });
});
