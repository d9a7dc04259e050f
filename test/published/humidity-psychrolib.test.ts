import fc from 'fast-check';
import psychrolib from 'psychrolib';
import { describe, expect, test } from 'vitest';
import { dewPointFromHumidityC, saturationVapourHPa } from '../../rules/index.ts';
import { between } from '../rules/sun/arbitrary-places.ts';

psychrolib.SetUnitSystem(psychrolib.SI);

// Source: PsychroLib, equations of the ASHRAE Handbook — Fundamentals 2017, chapter 1 (Hyland & Wexler).
describe('humidity against a psychrometric library', () => {
  test('saturation over water agrees within 0.35 % from 0 to 60 °C', () => {
    // The WMO Magnus constants are fitted to −45…60 °C with one exponential: that is their error in the warm half.
    fc.assert(
      fc.property(between(0.02, 60), (airC) => {
        const theirsHPa = psychrolib.GetSatVapPres(airC) / 100;
        expect(Math.abs(saturationVapourHPa(airC) / theirsHPa - 1)).toBeLessThan(0.0035);
      }),
    );
  });

  test('dew points above freezing agree within 0.05 K', () => {
    fc.assert(
      fc.property(between(5, 45), between(0.3, 1), (airC, humidityFraction) => {
        const theirsC = psychrolib.GetTDewPointFromRelHum(airC, humidityFraction);
        fc.pre(theirsC > 0.02);
        expect(Math.abs(dewPointFromHumidityC(airC, humidityFraction) - theirsC)).toBeLessThan(0.05);
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
