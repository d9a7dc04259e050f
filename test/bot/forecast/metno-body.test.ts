import { expect, it } from 'vitest';
import { readMetno } from '../../../bot/forecast/metno-body.ts';
import { FIXTURE_NOW } from '../../fakes/forecast-services.ts';
import { changed } from './bodies.ts';

type Changes = Parameters<typeof changed> extends [string, ...infer Rest] ? Rest : never;
const read = (...changes: Changes) => readMetno(changed('metno-complete.json', ...changes), { fetchedAt: FIXTURE_NOW });
const UNITS = 'properties.meta.units';

it('reads hours, then six-hourly steps with nothing between them', () => {
  const forecast = read();
  expect(forecast).toMatchObject({
    service: 'metno',
    place: { latitudeDeg: 41.211, longitudeDeg: -96.63 },
    gridElevationM: 338,
    first: new Date('2026-01-20T20:00:00Z'),
    hours: 35,
    credits: [{ text: 'Data from MET Norway', url: 'https://api.met.no/' }],
    notes: [],
  });
  expect(forecast.columns.screenC?.slice(8, 17)).toEqual([
    -4.5,
    -5,
    -5.5,
    undefined,
    undefined,
    undefined,
    undefined,
    undefined,
    -7,
  ]);
  expect(forecast.columns.cloudFraction?.[0]).toBe(0.125);
  expect(forecast.columns.humidityFraction?.[0]).toBe(0.85);
  expect(forecast.columns.gustMPerS?.slice(9, 11)).toEqual([3.9, undefined]);
});

it('takes the hourly amount, and a sixth of the six-hourly one where there is no hourly', () => {
  const { precipitationMm } = read().columns;
  expect(precipitationMm?.[0]).toBe(0.2);
  expect(precipitationMm?.slice(10, 16).every((value) => Math.abs((value ?? 0) - 0.2) < 1e-9)).toBe(true);
  expect(precipitationMm?.at(-1)).toBeUndefined();
});

it('keeps the lows that the service names for six hours', () => {
  const low = read().lowWindows.find(({ lowC }) => lowC === -9.2);
  expect(low).toEqual({ from: new Date('2026-01-21T06:00:00Z'), to: new Date('2026-01-21T12:00:00Z'), lowC: -9.2 });
});

it('is as old as its Last-Modified, and as its model run where that is not known', () => {
  expect(read().updatedAt).toEqual(new Date('2026-01-20T11:00:00Z'));
  const modifiedAt = new Date('2026-01-20T19:31:07Z');
  const body = changed('metno-complete.json');
  expect(readMetno(body, { fetchedAt: FIXTURE_NOW, modifiedAt }).updatedAt).toEqual(modifiedAt);
});

it('reads the compact answer too, which has no dew point, gust or lows', () => {
  const forecast = read([`${UNITS}.dew_point_temperature`, undefined], [`${UNITS}.air_temperature_min`, undefined]);
  expect(forecast.columns.dewPointC).toBeUndefined();
  expect(forecast.lowWindows).toEqual([]);
  expect(forecast.notes.map((note) => note.code === 'layer-refused' && note.layer)).toEqual([
    'dew_point_temperature',
    'air_temperature_min',
  ]);
});

it('bears steps without any details', () => {
  const steps = [
    { time: '2026-01-20T20:00:00Z', data: { instant: { details: { air_temperature: 1 } } } },
    { time: '2026-01-20T21:00:00Z', data: {} },
    {
      time: '2026-01-20T22:00:00Z',
      data: { instant: {}, next_12_hours: { summary: {} }, next_6_hours: { summary: {} } },
    },
    { time: '2026-01-20T23:00:00Z', data: { instant: { details: { air_temperature: null } } } },
  ];
  const forecast = read(['properties.timeseries', steps]);
  expect(forecast.columns).toEqual({ screenC: [1] });
});

it('refuses another unit than it knows', () => {
  expect(() => read([`${UNITS}.air_temperature`, 'reaumur'])).toThrow('°C or °F would be right');
  expect(read([`${UNITS}.wind_speed`, 'Beaufort']).notes).toEqual([
    { code: 'layer-refused', layer: 'wind_speed', reason: 'unknown-unit' },
  ]);
});

it('says what is not as documented', () => {
  expect(() => read(['properties.meta.updated_at', 5])).toThrow(
    'The MET Norway forecast is not as documented at "properties.meta.updated_at".',
  );
  expect(() => read(['properties.timeseries', []])).toThrow('The forecast holds no temperatures.');
});
