import { expect, it } from 'vitest';
import { readNwsGrid } from '../../../bot/forecast/nws-grid.ts';
import { FIXTURE_NOW } from '../../fakes/forecast-services.ts';
import { changed } from './bodies.ts';

const CONTEXT = {
  fetchedAt: FIXTURE_NOW,
  place: { latitudeDeg: 41.211, longitudeDeg: -96.63 },
  timeZone: 'America/Chicago',
};
type Changes = Parameters<typeof changed> extends [string, ...infer Rest] ? Rest : never;

function read(...changes: Changes) {
  return readNwsGrid(changed('nws-grid.json', ...changes)['properties'], CONTEXT);
}

it('reads hours, lows and provenance', () => {
  const forecast = read();
  expect(forecast).toMatchObject({
    service: 'nws',
    updatedAt: new Date('2026-01-20T19:00:00Z'),
    fetchedAt: FIXTURE_NOW,
    gridElevationM: 340.5,
    timeZone: 'America/Chicago',
    first: new Date('2026-01-20T13:00:00Z'),
    hours: 41,
    notes: [],
  });
  expect(forecast.columns.screenC?.slice(0, 8)).toEqual([-3, -2, -1, 0, 1, 2, 3, 3]);
  expect(forecast.columns.wind10MPerS?.[0]).toBeCloseTo(5, 9);
  expect(forecast.columns.cloudFraction?.slice(5, 7)).toEqual([0.9, 0.1]);
  expect(forecast.columns.precipitationMm?.slice(4, 6)).toEqual([0, 0.5]);
  expect(forecast.columns.newSnowM?.[11]).toBeCloseTo(0.001, 9);
  expect(forecast.lowWindows.map(({ lowC }) => lowC)).toEqual([-4, -9.5, -7]);
  expect(forecast.credits).toEqual([{ text: 'National Weather Service', url: 'https://www.weather.gov/' }]);
});

it('has columns of equal length with nothing where a layer ends early', () => {
  const { columns, hours } = read();
  for (const column of Object.values(columns)) expect(column).toHaveLength(hours);
  expect(columns.dewPointC?.at(-1)).toBeUndefined();
});

it('passes over empty layers, nulls and layers that hold words', () => {
  expect(read(['properties.dewpoint', { values: [] }]).columns.dewPointC).toBeUndefined();
  expect(read(['properties.dewpoint', undefined]).columns.dewPointC).toBeUndefined();
  expect(read(['properties.dewpoint', null]).notes).toEqual([]);
});

it('never turns null into zero', () => {
  const values = [{ validTime: '2026-01-20T13:00:00+00:00/PT4H', value: null }];
  expect(read(['properties.skyCover', { uom: 'wmoUnit:percent', values }]).columns.cloudFraction).toBeUndefined();
});

it('loses only the layer whose unit it does not know', () => {
  const { columns, notes } = read(['properties.windSpeed.uom', 'wmoUnit:furlong']);
  expect(columns.wind10MPerS).toBeUndefined();
  expect(columns.screenC).toBeDefined();
  expect(notes).toEqual([{ code: 'layer-refused', layer: 'windSpeed', reason: 'unknown-unit' }]);
});

it('loses only the layer that is not as documented', () => {
  for (const layer of [
    'cold',
    { values: 'none' },
    { uom: 'wmoUnit:percent', values: [{ validTime: 'soon', value: 1 }] },
  ]) {
    expect(read(['properties.skyCover', layer]).notes).toEqual([
      { code: 'layer-refused', layer: 'skyCover', reason: 'bad-values' },
    ]);
  }
});

it('loses the layer whose values are no numbers', () => {
  const values = [{ validTime: '2026-01-20T13:00:00+00:00/PT4H', value: 'much' }];
  expect(read(['properties.skyCover', { uom: 'wmoUnit:percent', values }]).notes).toHaveLength(1);
});

it('reads numbers written as strings, and older names of units', () => {
  const values = [{ validTime: '2026-01-20T13:00:00+00:00/PT9H', value: '14' }];
  expect(read(['properties.temperature', { uom: 'unit:degF', values }]).columns.screenC?.[0]).toBeCloseTo(-10, 9);
});

it('leaves out absurd temperatures', () => {
  const values = [
    { validTime: '2026-01-20T13:00:00+00:00/PT3H', value: 4000 },
    { validTime: '2026-01-20T16:00:00+00:00/PT3H', value: -5 },
  ];
  const { columns, notes } = read(['properties.temperature', { uom: 'wmoUnit:degC', values }]);
  expect(columns.screenC).toEqual([undefined, undefined, undefined, -5, -5, -5]);
  expect(notes).toContainEqual({ code: 'layer-refused', layer: 'temperature', reason: 'absurd-values' });
});

it('says why there is no forecast at all', () => {
  expect(() => read(['properties.temperature', { values: [] }])).toThrow('The forecast holds no temperatures.');
  expect(() => read(['properties.temperature.uom', 'degR'])).toThrow(
    'a unit that is not known here; °C or °F would be right',
  );
  expect(() => read(['properties.updateTime', 'today'])).toThrow(
    'The forecast grid is not as documented at "updateTime".',
  );
});
