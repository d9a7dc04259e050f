import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { expect, it, type TestContext } from 'vitest';
import type { ForecastColumnName, HourlyForecast } from '../../../bot/forecast/forecast.ts';
import { SavedForecastError } from '../../../bot/forecast/forecast-error.ts';
import { readWarnings } from '../../../bot/forecast/nws-alerts.ts';
import { readSavedForecast } from '../../../bot/forecast/recorded.ts';
import { nightWeather } from '../../../bot/weather/night.ts';
import { nightFrom } from '../../../rules/index.ts';

// Real answers of the services, kept beside the project with their origins; the facts below are those that their list of sources
// states, or were read off the files by other means.
const RECORDED = new URL('../../../../shared/weather/recorded/', import.meta.url);

function textOf(context: TestContext, path: string): string {
  const file = new URL(path, RECORDED);
  if (!existsSync(file)) context.skip(`no recorded answers beside the project: ${path}`);
  return readFileSync(file, 'utf8');
}

const recorded = (context: TestContext, path: string) => readSavedForecast(textOf(context, path));

function told(forecast: HourlyForecast, name: ForecastColumnName): number[] {
  return (forecast.columns[name] ?? []).filter((value) => value !== undefined);
}

function problemOf(context: TestContext, path: string): SavedForecastError {
  const text = textOf(context, path);
  try {
    readSavedForecast(text);
  } catch (error) {
    if (error instanceof SavedForecastError) return error;
    throw error;
  }
  throw new Error(`${path} was read`);
}

function night(forecast: HourlyForecast, day = 0) {
  const at = new Date(forecast.fetchedAt.getTime() + day * 86_400_000);
  const span = nightFrom(at, forecast.place?.latitudeDeg ?? Number.NaN, forecast.place?.longitudeDeg ?? Number.NaN);
  if (span === undefined) throw new Error('polar day');
  return nightWeather(forecast, span, forecast.fetchedAt);
}

it('reads the Flagstaff grid: 2130 m, lows to −8.3 °C, starting 6.2 h before its update', (context) => {
  const forecast = recorded(context, 'nws/grid_FGZ_74-89_2024-02-20.json');
  expect(forecast.gridElevationM).toBeCloseTo(2130, 0);
  expect(Math.min(...forecast.lowWindows.map(({ lowC }) => lowC))).toBeCloseTo(-8.333, 3);
  expect(forecast.lowWindows).toHaveLength(9);
  expect((forecast.updatedAt.getTime() - forecast.first.getTime()) / 3_600_000).toBeCloseTo(6.23, 2);
  expect(forecast.notes).toEqual([]);
  expect(told(forecast, 'screenC')).toHaveLength(182);
});

it("lowers the first Flagstaff night to the service's own low of −2.8 °C", (context) => {
  const { summary, notes } = night(recorded(context, 'nws/grid_FGZ_74-89_2024-02-20.json'));
  expect(summary.lowC).toBeCloseTo(-2.778, 3);
  expect(notes).toEqual([{ code: 'lowered-to-service-low', byK: expect.closeTo(0.556, 3) as number }]);
});

it('reads the Minneapolis grid with its −23.9 °C', (context) => {
  const forecast = recorded(context, 'nws/grid_MPX_108-72_2024-01-11_geometry-edited.json');
  expect(Math.min(...forecast.lowWindows.map(({ lowC }) => lowC))).toBeCloseTo(-23.889, 3);
  expect(Math.max(...told(forecast, 'newSnowM'))).toBeGreaterThan(0);
  expect(forecast.place).toBeUndefined();
});

it('reads one place alike from grid and hourly forecast', (context) => {
  const grid = recorded(context, 'nws/grid_BMX_32-69_2024-02-23.json');
  const hourly = recorded(context, 'nws/hourly_BMX_32-69_2024-02-23.json');
  expect(hourly.updatedAt).toEqual(grid.updatedAt);
  const offset = (hourly.first.getTime() - grid.first.getTime()) / 3_600_000;
  const pairs = told(hourly, 'screenC').map((value, i) => [value, grid.columns.screenC?.[i + offset]] as const);
  expect(pairs).toHaveLength(156);
  for (const [a, b] of pairs) expect(a).toBeCloseTo(b ?? Number.NaN, 6);
});

it('reads grids with strings for numbers of cells, overlapping first intervals and edited shapes', (context) => {
  const tallahassee = recorded(context, 'nws/grid_TAE_58-65_2022-02-04_gridX-as-string.json');
  expect(tallahassee.updatedAt).toEqual(new Date('2022-02-04T03:15:41Z'));
  expect(told(tallahassee, 'screenC')).toHaveLength(182);
  expect(told(recorded(context, 'nws/grid_OAX_59-58_2024-12-03_reanchored.json'), 'screenC')).toHaveLength(171);
  expect(told(recorded(context, 'nws/grid_OHX_14-55_2024-01-08_geometry-edited.json'), 'screenC')).toHaveLength(189);
});

it('reads hourly periods of 2024 with an empty first one, and of 2019 in °C', (context) => {
  expect(recorded(context, 'nws/hourly_OAX_59-58_2024-12-03_reanchored.json').hours).toBe(155);
  const old = recorded(context, 'nws/hourly_2019_si_unit-prefix.json');
  expect(old.columns).toMatchObject({ screenC: [25.5, 25], dewPointC: [5, 5], wind10MPerS: [0, 0] });
  expect(old.gridElevationM).toBeCloseTo(7.92, 2);
});

it('finds four of the eight recorded alerts to be about cold and in force', (context) => {
  const alerts: unknown = JSON.parse(textOf(context, 'nws/alerts_freeze_subset_2025-12-15_reanchored.json'));
  const warnings = readWarnings(alerts, new Date('2025-12-15T21:55:00Z'));
  expect(warnings.map(({ event, key }) => `${event} ${key}`).sort()).toEqual([
    'Cold Weather Advisory KCHS.CW.Y.0007',
    'Cold Weather Advisory PAJK.CW.Y.0008',
    'Freeze Warning KJAX.FZ.W.0026',
    'Freeze Warning KTAE.FZ.W.0013',
  ]);
  const jacksonville = warnings.find(({ key }) => key.startsWith('KJAX'));
  expect(jacksonville?.until).toEqual(new Date('2025-12-16T14:00:00Z'));
  expect(
    readWarnings(JSON.parse(textOf(context, 'nws/alerts_none_point.json')), new Date('2026-02-28T15:00:00Z')),
  ).toEqual([]);
});

it('reads the frosty Oslo forecast: −4.7…6.1 °C, six-hourly from 20 November', (context) => {
  const forecast = recorded(context, 'metno/compact_oslo_2023-11-17_freezing.json');
  expect(Math.min(...told(forecast, 'screenC'))).toBe(-4.7);
  expect(Math.max(...told(forecast, 'screenC'))).toBe(6.1);
  expect(told(forecast, 'screenC')).toHaveLength(85);
  expect(night(forecast).notes).toEqual([{ code: 'dew-point-from-humidity', hours: 20 }]);
  expect(night(forecast, 4).notes).toContainEqual({ code: 'six-hourly-steps' });
});

it('dates the London and New York answers by their headers and uses the six-hourly lows', (context) => {
  const london = recorded(context, 'metno/complete_london_2020-07-20_with-headers.json');
  expect(london.updatedAt).toEqual(new Date('2020-07-20T11:44:31Z'));
  const { summary, notes } = night(london, 3);
  expect(notes.map(({ code }) => code)).toEqual(['six-hourly-steps', 'lowered-to-service-low']);
  expect(summary.lowC).toBeCloseTo(11.2, 9);
  expect(recorded(context, 'metno/compact_newyork_2020-07-20_with-headers.json').lowWindows).toEqual([]);
});

it('reads the Brisbane cassettes, the second answer of the second one', (context) => {
  expect(recorded(context, 'metno/compact_brisbane_2025-10-29_cassette.json')).toMatchObject({
    fetchedAt: new Date('2025-10-29T01:11:49Z'),
    place: { latitudeDeg: -27.5, longitudeDeg: 153 },
  });
  expect(recorded(context, 'metno/compact_brisbane_2026-03-30_revalidate_cassette.json').fetchedAt).toEqual(
    new Date('2026-03-30T13:22:46Z'),
  );
});

it('reads the Berlin forecast with its soil and the sun moved to the instants', (context) => {
  const forecast = recorded(context, 'openmeteo/forecast_berlin_2021-11-24_soil_subset.json');
  expect(forecast).toMatchObject({ first: new Date('2021-11-23T23:00:00Z'), hours: 168, timeZone: 'Europe/Berlin' });
  expect(Math.min(...told(forecast, 'screenC'))).toBe(-0.5);
  expect(Math.min(...told(forecast, 'soil0C'))).toBe(-0.7);
  expect(told(forecast, 'soil18C')).toHaveLength(168);
  expect(Math.min(...told(forecast, 'globalWPerM2'))).toBe(0);
  expect(night(forecast, 2).series.globalWPerM2).toBeDefined();
});

it('keeps the hours of Toronto whole across the change of clocks of 8 March 2026', (context) => {
  const forecast = recorded(context, 'openmeteo/forecast_toronto_2026-03-05_us-units_across-dst.json');
  expect(forecast.first).toEqual(new Date('2026-03-04T05:00:00Z'));
  expect(told(forecast, 'screenC')).toHaveLength(192);
  expect(Math.min(...told(forecast, 'screenC'))).toBeCloseTo(((26.5 - 32) * 5) / 9, 9);
  expect(Math.max(...told(forecast, 'screenC'))).toBeCloseTo(((63.7 - 32) * 5) / 9, 9);
  expect(forecast.fetchedAt).toEqual(new Date('2026-03-06T02:00:00Z'));
});

it('bridges the nulls that stand in every thirteenth hour of the New Jersey clouds', (context) => {
  const forecast = recorded(context, 'openmeteo/forecast_newjersey_2025-12-28_freezing_cloud-invented.json');
  expect(told(forecast, 'cloudFraction')).toHaveLength(312);
  expect(Math.min(...told(forecast, 'screenC'))).toBe(-10.4);
  expect(night(forecast).notes.map(({ code }) => code)).toEqual(['dew-point-from-humidity', 'gaps-filled']);
});

it('reads a file with nothing but temperatures and says what it assumed', (context) => {
  const { notes } = night(recorded(context, 'openmeteo/forecast_brasilia_2023-10-25.json'), 1);
  expect(notes.map(({ code }) => code)).toEqual(['dew-point-assumed', 'cloud-assumed-clear', 'wind-assumed-calm']);
});

const refused: Readonly<Record<string, SavedForecastError['code']>> = {
  'nws/alerts_freeze_subset_2025-12-15_reanchored.json': 'unknown-shape',
  'nws/alerts_none_point.json': 'unknown-shape',
  'nws/forecast_BMX_32-69_2024-02-23.json': 'no-data',
  'nws/forecast_numbers-as-strings_edited.json': 'no-data',
  'nws/hourly_all-null_edited.json': 'no-data',
  'nws/point_BMX_33.211_-87.566.json': 'unknown-shape',
  'nws/problem_404_InvalidPoint.json': 'error-answer',
  'nws/problem_503_ForecastGridExpired.json': 'error-answer',
  'nws/problem_503_UnavailableWebService.json': 'error-answer',
  'openmeteo/current_darwin_fahrenheit_legacy-names.json': 'no-data',
  'openmeteo/error_400_bad_unit.json': 'error-answer',
  'openmeteo/error_400_bad_variable.json': 'error-answer',
  'openmeteo/forecast_ocean_all-null_daily.json': 'no-data',
  'brightsky/weather_muenster_2023-08-07_one_hour.json': 'unknown-shape',
};
for (const [path, code] of Object.entries(refused)) {
  it(`refuses ${path} in one sentence`, (context) => {
    const problem = problemOf(context, path);
    expect(problem.code).toBe(code);
    expect(problem.message).toMatch(/^[A-Z][^\n]{20,300}\.$/);
  });
}

it('leaves no recorded file out', (context) => {
  if (!existsSync(RECORDED)) context.skip('no recorded answers beside the project');
  const files = ['nws', 'metno', 'openmeteo', 'brightsky'].flatMap((folder) =>
    readdirSync(new URL(`${folder}/`, RECORDED)).map((file) => `${folder}/${file}`),
  );
  const read = files.filter((file) => !(file in refused));
  for (const file of read) expect(told(recorded(context, file), 'screenC').length).toBeGreaterThan(1);
  expect(files.filter((file) => file in refused)).toHaveLength(Object.keys(refused).length);
});
