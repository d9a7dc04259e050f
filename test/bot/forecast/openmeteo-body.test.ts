import fc from 'fast-check';
import { expect, it } from 'vitest';
import { readOpenMeteo } from '../../../bot/forecast/openmeteo-body.ts';
import { FIXTURE_NOW } from '../../fakes/forecast-services.ts';
import { changed } from './bodies.ts';

type Changes = Parameters<typeof changed> extends [string, ...infer Rest] ? Rest : never;
const CONTEXT = { fetchedAt: FIXTURE_NOW };
const read = (...changes: Changes) => readOpenMeteo(changed('openmeteo.json', ...changes), CONTEXT);

/** An answer of our own with one column. */
function answer(
  column: string,
  unit: string,
  values: readonly (number | null)[],
  times?: readonly (string | number)[],
) {
  return {
    latitude: 50,
    longitude: 10,
    utc_offset_seconds: 0,
    hourly_units: { temperature_2m: '°C', [column]: unit },
    hourly: {
      time: times ?? values.map((_, i) => 1_768_867_200 + i * 3600),
      temperature_2m: values.map(() => 0),
      [column]: values,
    },
  };
}

it('reads hours and provenance', () => {
  const forecast = read();
  expect(forecast).toMatchObject({
    service: 'openmeteo',
    updatedAt: FIXTURE_NOW,
    place: { latitudeDeg: 41.21, longitudeDeg: -96.64 },
    gridElevationM: 337,
    first: new Date('2026-01-19T00:00:00Z'),
    hours: 96,
    credits: [{ text: 'Weather data by Open-Meteo.com', url: 'https://open-meteo.com/' }],
    notes: [],
  });
  expect(forecast.columns.wind10MPerS?.[0]).toBe(1.5);
  expect(forecast.timeZone).toBeUndefined();
});

it('never turns null into zero: an untold column vanishes, untold hours stay untold', () => {
  const { columns } = read();
  expect(columns.snowDepthM).toBeUndefined();
  expect(columns.cloudFraction?.[12]).toBeUndefined();
  expect(columns.cloudFraction?.[13]).toBe(0.2);
  expect(columns.soil6C?.slice(-3)).toEqual([1.5, undefined, undefined]);
});

it('moves the rain and gusts of the hour before to the hour in which they fell', () => {
  const rain = readOpenMeteo(answer('precipitation', 'mm', [9, 0, 2, 0]), CONTEXT).columns.precipitationMm;
  expect(rain).toEqual([0, 2, 0, undefined]);
  const gust = readOpenMeteo(answer('wind_gusts_10m', 'm/s', [1, 2, 3, 4]), CONTEXT).columns.gustMPerS;
  expect(gust).toEqual([2, 3, 4, undefined]);
});

it('takes radiation at an instant as halfway between the hour before and the hour after', () => {
  const sun = readOpenMeteo(answer('shortwave_radiation', 'W/m²', [0, 100, 300, 200, null]), CONTEXT).columns
    .globalWPerM2;
  expect(sun).toEqual([50, 200, 250, undefined, undefined]);
});

it('lifts small negative radiation of the night to zero', () => {
  const sun = readOpenMeteo(answer('shortwave_radiation', 'W/m²', [-0.2, -0.1, 0, 0]), CONTEXT).columns.globalWPerM2;
  expect(sun).toEqual([0, 0, 0, undefined]);
});

it('reads local times by the one offset of the answer, also those that a change of clocks skips', () => {
  const body = {
    ...answer(
      'cloud_cover',
      '%',
      [0, 0, 0, 0],
      ['2026-03-08T00:00', '2026-03-08T01:00', '2026-03-08T02:00', '2026-03-08T03:00'],
    ),
    utc_offset_seconds: -18_000,
  };
  const forecast = readOpenMeteo(body, CONTEXT);
  expect(forecast.first).toEqual(new Date('2026-03-08T05:00:00Z'));
  expect(forecast.hours).toBe(4);
});

it('keeps the hours of a place whose clock is half an hour off', () => {
  const body = {
    ...answer('cloud_cover', '%', [0, 0], ['2026-01-20T00:00', '2026-01-20T01:00']),
    utc_offset_seconds: 34_200,
  };
  const forecast = readOpenMeteo(body, CONTEXT);
  expect(forecast.first).toEqual(new Date('2026-01-19T14:30:00Z'));
  expect(forecast.columns.screenC).toEqual([0, 0]);
});

it('converts American units by what the answer says they are', () => {
  const body = {
    ...answer('wind_speed_10m', 'mp/h', [10]),
    hourly_units: { temperature_2m: '°F', wind_speed_10m: 'mp/h' },
  };
  const { columns } = readOpenMeteo(body, CONTEXT);
  expect(columns.screenC?.[0]).toBeCloseTo(-17.78, 2);
  expect(columns.wind10MPerS?.[0]).toBeCloseTo(4.4704, 4);
});

it('reads the older names of columns', () => {
  expect(readOpenMeteo(answer('dewpoint_2m', '°C', [-3]), CONTEXT).columns.dewPointC).toEqual([-3]);
  expect(readOpenMeteo(answer('cloudcover', '%', [50]), CONTEXT).columns.cloudFraction).toEqual([0.5]);
});

it('refuses a column of another length or of an unknown unit, and keeps the rest', () => {
  expect(read(['hourly.cloud_cover', [1, 2]]).notes).toEqual([
    { code: 'layer-refused', layer: 'cloud_cover', reason: 'bad-values' },
  ]);
  expect(read(['hourly_units.cloud_cover', 'okta']).notes).toEqual([
    { code: 'layer-refused', layer: 'cloud_cover', reason: 'unknown-unit' },
  ]);
  expect(read(['hourly_units.cloud_cover', undefined]).columns.cloudFraction).toBeUndefined();
});

it('says when there is nothing to use', () => {
  expect(() => read(['hourly.temperature_2m', new Array<null>(96).fill(null)])).toThrow(
    'The forecast holds no temperatures.',
  );
  expect(() => read(['hourly', undefined])).toThrow('has no hourly values');
  expect(() => read(['hourly.time', ['today']])).toThrow('The list of times is not as documented');
});

it('never yields a number that is none, whatever the columns hold', () => {
  const cell = fc.oneof(fc.double(), fc.constant(null), fc.string({ maxLength: 6 }), fc.boolean());
  fc.assert(
    fc.property(fc.array(cell, { minLength: 3, maxLength: 12 }), (values) => {
      const sane = values.map((_, i) => i);
      const body = {
        ...answer('cloud_cover', '%', sane),
        hourly_units: { temperature_2m: '°C', cloud_cover: '%', soil_temperature_0cm: '°C' },
      };
      const hourly = { ...body.hourly, cloud_cover: values, soil_temperature_0cm: values };
      const { columns } = readOpenMeteo({ ...body, hourly }, CONTEXT);
      for (const column of Object.values(columns)) {
        for (const value of column) expect(value === undefined || Number.isFinite(value)).toBe(true);
      }
      for (const [i, value] of values.entries()) {
        if (value === null) expect(columns.cloudFraction?.[i]).toBeUndefined();
      }
    }),
  );
});
