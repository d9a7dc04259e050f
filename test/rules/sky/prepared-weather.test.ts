import { describe, expect, test } from 'vitest';
import {
  nightRun,
  outsideAt,
  preparedWeather,
  saturationVapourHPa,
  underSameSun,
  type WeatherSeries,
} from '../../../rules/index.ts';
import { hoops, referenceInput } from '../night/spec-stacks.ts';

const INPUT = referenceInput(hoops('PE'));
const prepared = preparedWeather(INPUT.site, INPUT.weather, INPUT.start, INPUT.end);

function broken(changes: Partial<WeatherSeries>): () => unknown {
  return () => preparedWeather(INPUT.site, { ...INPUT.weather, ...changes }, INPUT.start, INPUT.end);
}

describe('weather prepared for the beds of a place', () => {
  test('gives each bed the night that it would have had alone', () => {
    const sheltered = { ...INPUT, site: { ...INPUT.site, shelterFraction: 0.4, skyViewFraction: 0.8, inversionK: 5 } };
    expect(nightRun(sheltered, { prepared })).toEqual(nightRun(sheltered));
  });

  test('is the same whether the sun is worked out anew or taken from other weather of the place', () => {
    const colder = { ...INPUT.weather, screenC: INPUT.weather.screenC.map((screenC) => screenC - 7) };
    expect(underSameSun(prepared, colder)).toEqual(preparedWeather(INPUT.site, colder, INPUT.start, INPUT.end));
    expect(() => underSameSun(prepared, { ...colder, stepH: 0 })).toThrow('weather.stepH 0');
  });

  test('is read between its steps as the forecast says', () => {
    const atMs = Date.parse('2025-12-01T12:34:30Z');
    const outside = outsideAt(prepared, atMs);
    const share = 34.5 / 60;
    expect(outside.screenC).toBeCloseTo(-4 + share * (-1.33 + 4), 10);
    expect(outside.vapourHPa).toBeCloseTo(saturationVapourHPa(-7), 10);
  });

  test('caps the dew point at the temperature', () => {
    const damp = preparedWeather(
      INPUT.site,
      { ...INPUT.weather, dewPointC: INPUT.weather.screenC.map(() => 20) },
      INPUT.start,
      INPUT.end,
    );
    expect(outsideAt(damp, INPUT.start.getTime()).vapourHPa).toBeCloseTo(saturationVapourHPa(-4), 10);
  });

  test('takes the sun that a service gives in place of its own, and none at night', () => {
    const given = preparedWeather(
      INPUT.site,
      { ...INPUT.weather, globalWPerM2: INPUT.weather.screenC.map(() => 123) },
      INPUT.start,
      INPUT.end,
    );
    expect(outsideAt(given, Date.parse('2025-12-01T17:00Z')).globalWPerM2).toBe(123);
    expect(outsideAt(given, Date.parse('2025-12-02T05:00Z')).globalWPerM2).toBe(0);
  });

  test('refuses a broken forecast by name, value and limit', () => {
    const { screenC } = INPUT.weather;
    expect(broken({ screenC: [] })).toThrow('weather.screenC is empty');
    expect(broken({ wind10MPerS: [1] })).toThrow('weather.wind10MPerS has 1 values, weather.screenC has 34');
    expect(broken({ cloudFraction: screenC.map(() => 1.5) })).toThrow('weather.cloudFraction[0] 1.5 is outside 0…1');
    expect(broken({ screenC: screenC.map(() => Number.NaN) })).toThrow('weather.screenC[0] NaN');
    expect(broken({ stepH: 0 })).toThrow('weather.stepH 0');
    expect(broken({ first: new Date('2025-12-01T13:00Z') })).toThrow('start 2025-12-01T12:00:00.000Z is before');
    expect(broken({ first: new Date('2025-12-01T06:00Z') })).toThrow('is after the last weather value');
  });

  test('refuses to serve another place, or a run that it does not reach', () => {
    const elsewhere = { ...INPUT, site: { ...INPUT.site, latitudeDeg: 41 } };
    expect(() => nightRun(elsewhere, { prepared })).toThrow('another place');
    const later = { ...INPUT, end: new Date(INPUT.end.getTime() + 3_600_000) };
    expect(() => nightRun(later, { prepared })).toThrow('prepared weather ends before');
  });
});
