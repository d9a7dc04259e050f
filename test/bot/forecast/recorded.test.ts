import fc from 'fast-check';
import { expect, it } from 'vitest';
import { SavedForecastError } from '../../../bot/forecast/forecast-error.ts';
import { readSavedForecast } from '../../../bot/forecast/recorded.ts';
import { PlainProblem } from '../../../bot/ground/errors.ts';
import { FIXTURE_NOW, fixture } from '../../fakes/forecast-services.ts';
import { changed } from './bodies.ts';

function problem(text: string): SavedForecastError {
  try {
    readSavedForecast(text);
  } catch (error) {
    if (error instanceof SavedForecastError) return error;
    throw error;
  }
  throw new Error('no error');
}

it('tells the three services apart by what the file holds', () => {
  const services = ['nws-grid.json', 'nws-hourly.json', 'metno-complete.json', 'openmeteo.json'].map(
    (name) => readSavedForecast(fixture(name)).service,
  );
  expect(services).toEqual(['nws', 'nws', 'metno', 'openmeteo']);
});

it('reads hourly periods: both temperature units, lower winds, strings, periods without length', () => {
  const forecast = readSavedForecast(fixture('nws-hourly.json'));
  expect(forecast).toMatchObject({ first: new Date('2026-01-20T20:00:00Z'), hours: 22, gridElevationM: 340.5 });
  expect(forecast.columns.screenC?.[0]).toBeCloseTo(3, 6);
  expect(forecast.columns.wind10MPerS?.slice(0, 3).map((value) => value?.toFixed(3))).toEqual([
    '4.470',
    '2.235',
    '2.500',
  ]);
  expect(forecast.columns.dewPointC?.slice(2, 5)).toEqual([-9, undefined, -9]);
  expect(forecast.columns.humidityFraction?.[0]).toBeCloseTo(0.7, 9);
  expect(forecast.columns.cloudFraction).toBeUndefined();
  expect(forecast.place).toEqual({ latitudeDeg: 41.211, longitudeDeg: -96.63 });
});

it('knows where a saved grid lies, unless its shape is no grid cell', () => {
  const place = readSavedForecast(fixture('nws-grid.json')).place;
  expect(place?.latitudeDeg).toBeCloseTo(41.21, 6);
  expect(place?.longitudeDeg).toBeCloseTo(-96.625, 6);
  const square = {
    type: 'Polygon',
    coordinates: [
      [
        [10, 10],
        [12, 10],
        [12, 12],
        [10, 12],
        [10, 10],
      ],
    ],
  };
  expect(readSavedForecast(JSON.stringify(changed('nws-grid.json', ['geometry', square]))).place).toBeUndefined();
});

it('reads the flat form of the same grid', () => {
  const { properties } = changed('nws-grid.json');
  expect(readSavedForecast(JSON.stringify(properties)).service).toBe('nws');
});

it('takes the times of a wrapped answer from its headers', () => {
  const headers = { Date: 'Tue, 20 Jan 2026 20:00:00 GMT', 'Last-Modified': 'Tue, 20 Jan 2026 19:31:07 GMT' };
  const text = JSON.stringify({ status_code: 200, headers, data: changed('metno-complete.json') });
  expect(readSavedForecast(text)).toMatchObject({
    fetchedAt: FIXTURE_NOW,
    updatedAt: new Date('2026-01-20T19:31:07Z'),
  });
});

it('reads the last answer on an HTTP cassette', () => {
  const response = (date: string) => ({
    status: 200,
    headers: { date: [date], 'last-modified': 'Tue, 20 Jan 2026 19:31:07 GMT' },
    body: { string: fixture('metno-complete.json') },
  });
  const interactions = ['Tue, 20 Jan 2026 20:00:00 GMT', 'Tue, 20 Jan 2026 20:00:01 GMT'].map((date) => ({
    request: {},
    response: response(date),
  }));
  expect(readSavedForecast(JSON.stringify({ http_interactions: interactions })).fetchedAt).toEqual(
    new Date('2026-01-20T20:00:01Z'),
  );
});

it('accepts a list of one place from Open-Meteo, and only of one', () => {
  expect(readSavedForecast(`[${fixture('openmeteo.json')}]`).service).toBe('openmeteo');
  expect(problem(`[${fixture('openmeteo.json')},{}]`)).toMatchObject({
    code: 'unknown-shape',
    message: expect.stringContaining('single place') as string,
  });
});

it('dates a bare file by what it says itself, or by the time given', () => {
  expect(readSavedForecast(fixture('nws-grid.json')).fetchedAt).toEqual(new Date('2026-01-20T19:00:00Z'));
  expect(readSavedForecast(fixture('nws-hourly.json')).fetchedAt).toEqual(new Date('2026-01-20T20:00:00Z'));
  expect(readSavedForecast(fixture('openmeteo.json')).fetchedAt).toEqual(new Date('2026-01-19T00:00:00Z'));
  expect(readSavedForecast(fixture('openmeteo.json'), FIXTURE_NOW).updatedAt).toEqual(FIXTURE_NOW);
  const current = { time: '2026-01-20T15:00', interval: 900 };
  const local = JSON.stringify(changed('openmeteo.json', ['current', current], ['utc_offset_seconds', -18_000]));
  expect(readSavedForecast(local).fetchedAt).toEqual(FIXTURE_NOW);
});

it('bears a byte-order mark', () => {
  expect(readSavedForecast(`\uFEFF${fixture('openmeteo.json')}`).service).toBe('openmeteo');
});

const complaints: readonly (readonly [string, string, string, string])[] = [
  ['an empty file', '  \n', 'not-json', 'The file is empty; save the whole answer of the service.'],
  ['a file that breaks off', fixture('nws-grid.json').slice(0, 900), 'not-json', 'The file breaks off or is damaged'],
  ['a web page', '<!doctype html><title>400</title>', 'not-json', 'The file is a web page'],
  ['some text', 'cold tonight', 'not-json', 'The file is not JSON'],
  ['a number', '7', 'unknown-shape', 'The file is not a forecast'],
  ['another object', '{"weather":[]}', 'unknown-shape', 'The file is not a forecast that is known here'],
  ['a list of warnings', fixture('nws-alerts.json'), 'unknown-shape', 'list of warnings or stations'],
  [
    'the way to a forecast',
    fixture('nws-point.json'),
    'unknown-shape',
    'open the address it gives as forecastGridData',
  ],
  [
    'a problem report',
    '{"type":"https://x/problems/y","title":"Forecast Grid Expired","status":503}',
    'error-answer',
    '"Forecast Grid Expired"',
  ],
  ['a refusal', '{"error":true,"reason":"Bad unit"}', 'error-answer', 'error of Open-Meteo ("Bad unit")'],
  ['a wrapped failure', '{"status_code":404,"headers":{},"data":{}}', 'error-answer', 'has status 404'],
  [
    'a damaged cassette',
    '{"http_interactions":[{"response":{"status":200,"headers":{},"body":{"string":"{\\"a\\""}}}]}',
    'not-json',
    'breaks off',
  ],
  [
    'nothing but current weather',
    '{"latitude":1,"longitude":2,"current":{"time":"2026-01-20T00:00"}}',
    'no-data',
    'has no hourly values',
  ],
  [
    'hours without times',
    '{"latitude":1,"longitude":2,"hourly":{"temperature_2m":[1]}}',
    'unknown-shape',
    'The list of times',
  ],
];
for (const [what, text, code, words] of complaints) {
  it(`says in one sentence what is wrong with ${what}`, () => {
    const error = problem(text);
    expect(error).toBeInstanceOf(PlainProblem);
    expect(error.code).toBe(code);
    expect(error.message).toContain(words);
    expect(error.message).toMatch(/\.$/);
    expect(error.message).not.toMatch(/undefined|\[object|at position/);
  });
}

it('says when every value is empty or the unit is unknown', () => {
  const nulls = JSON.stringify(changed('openmeteo.json', ['hourly.temperature_2m', new Array<null>(96).fill(null)]));
  expect(problem(nulls)).toMatchObject({ code: 'no-data', message: 'The forecast holds no temperatures.' });
  const odd = JSON.stringify(changed('openmeteo.json', ['hourly_units.temperature_2m', '°Ré']));
  expect(problem(odd)).toMatchObject({ code: 'wrong-unit' });
});

it('says when the periods are half days', () => {
  const period = {
    startTime: '2026-01-20T18:00:00-06:00',
    endTime: '2026-01-21T06:00:00-06:00',
    temperature: 14,
    temperatureUnit: 'F',
  };
  const text = JSON.stringify({ properties: { updateTime: '2026-01-20T19:00:00Z', periods: [period] } });
  expect(problem(text).message).toContain('by half days');
});

it('answers every file with a forecast or one plain problem, whatever is cut off or put in', () => {
  const names = ['nws-grid.json', 'metno-complete.json', 'openmeteo.json', 'nws-hourly.json'];
  fc.assert(
    fc.property(
      fc.constantFrom(...names),
      fc.double({ min: 0, max: 1, noNaN: true }),
      fc.string({ maxLength: 5 }),
      fc.boolean(),
      (name, share, added, cut) => {
        const whole = fixture(name);
        const at = Math.floor(share * whole.length);
        const text = cut ? whole.slice(0, at) : whole.slice(0, at) + added + whole.slice(at + 1);
        try {
          const forecast = readSavedForecast(text);
          for (const column of Object.values(forecast.columns)) {
            expect(column).toHaveLength(forecast.hours);
            expect(column.every((value: unknown) => value === undefined || Number.isFinite(value))).toBe(true);
          }
        } catch (error) {
          expect(error).toBeInstanceOf(SavedForecastError);
        }
      },
    ),
    { numRuns: 150 },
  );
});
