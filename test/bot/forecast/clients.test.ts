import { afterEach, beforeEach, expect, it } from 'vitest';
import { MetnoSource } from '../../../bot/forecast/metno.ts';
import { NwsSource } from '../../../bot/forecast/nws.ts';
import { OpenMeteoSource } from '../../../bot/forecast/openmeteo.ts';
import { Transport } from '../../../bot/forecast/transport.ts';
import { FIXTURE_NOW, FIXTURE_PLACE, ForecastServices } from '../../fakes/forecast-services.ts';
import { changed } from './bodies.ts';

const GEO = { 'content-type': 'application/geo+json' };
const PROBLEM = { 'content-type': 'application/problem+json' };

let services: ForecastServices;
let transport: Transport;
let clockMs: number;
let nws: NwsSource;

beforeEach(async () => {
  services = await ForecastServices.start();
  clockMs = 0;
  const clock = () => clockMs;
  transport = new Transport({
    bases: services.bases,
    contact: 'grower@example.org',
    retryWaitMs: () => 1,
    spacingMs: { nws: 0, metno: 0, openmeteo: 0 },
    clockMs: clock,
  });
  nws = new NwsSource(transport, clock);
});

afterEach(async () => {
  await transport.close();
  await services.close();
});

it('asks the National Weather Service for the rounded point, then for the grid it names, with its Accept header', async () => {
  const forecast = await nws.forecastFor(FIXTURE_PLACE, FIXTURE_NOW);
  expect(services.requests.map(({ path }) => path)).toEqual(['/points/41.22,-96.64', '/gridpoints/XYZ/11,22']);
  for (const { headers } of services.requests) expect(headers['accept']).toBe('application/geo+json');
  expect(forecast).toMatchObject({
    timeZone: 'America/Chicago',
    place: { latitudeDeg: 41.22, longitudeDeg: -96.64, elevationM: 350 },
  });
});

it('asks for the point once a week', async () => {
  await nws.forecastFor(FIXTURE_PLACE, FIXTURE_NOW);
  clockMs += 6.9 * 24 * 3_600_000;
  await nws.forecastFor(FIXTURE_PLACE, FIXTURE_NOW);
  expect(services.seen('/points/')).toHaveLength(1);
  clockMs += 0.2 * 24 * 3_600_000;
  await nws.forecastFor(FIXTURE_PLACE, FIXTURE_NOW);
  expect(services.seen('/points/')).toHaveLength(2);
});

it('looks the point up again when its grid has moved, even though the old answer could still be kept', async () => {
  const lasting = { ...GEO, 'cache-control': 'public, max-age=86400' };
  services.script('/points/', { headers: lasting, body: JSON.stringify(changed('nws-point.json')) });
  await nws.forecastFor(FIXTURE_PLACE, FIXTURE_NOW);
  services.script('/gridpoints/XYZ/11,22', {
    status: 404,
    headers: PROBLEM,
    body: '{"title":"Not Found"}',
    gzip: false,
  });
  const moved = changed('nws-point.json', [
    'properties.forecastGridData',
    'https://api.weather.gov/gridpoints/ABC/1,2',
  ]);
  services.script('/points/', { headers: GEO, body: JSON.stringify(moved) });
  await nws.forecastFor(FIXTURE_PLACE, FIXTURE_NOW);
  expect(services.requests.map(({ path }) => path).slice(-3)).toEqual([
    '/gridpoints/XYZ/11,22',
    '/points/41.22,-96.64',
    '/gridpoints/ABC/1,2',
  ]);
});

it('says that a place is not covered when the grid stays unknown, and does not ask for a place outside twice', async () => {
  services.script('/gridpoints/', {
    status: 404,
    headers: PROBLEM,
    body: '{"title":"Marine Forecast Not Supported"}',
    gzip: false,
  });
  await expect(nws.forecastFor(FIXTURE_PLACE, FIXTURE_NOW)).rejects.toMatchObject({
    code: 'not-covered',
    message: 'The National Weather Service has no forecast for this place (Marine Forecast Not Supported).',
  });
  services.script('/points/', {
    status: 404,
    headers: PROBLEM,
    body: '{"title":"Data Unavailable For Requested Point"}',
  });
  const abroad = { latitudeDeg: 43.7, longitudeDeg: -79.4 };
  await expect(nws.forecastFor(abroad, FIXTURE_NOW)).rejects.toMatchObject({ code: 'not-covered' });
  const asked = services.requests.length;
  await expect(nws.forecastFor(abroad, FIXTURE_NOW)).rejects.toMatchObject({ code: 'not-covered' });
  await expect(nws.warningsFor(abroad, FIXTURE_NOW)).rejects.toMatchObject({ code: 'not-covered' });
  expect(services.requests).toHaveLength(asked);
});

it('follows the named grid only below its own base', async () => {
  const elsewhere = changed('nws-point.json', [
    'properties.forecastGridData',
    'https://evil.example/gridpoints/XYZ/11,22',
  ]);
  services.script('/points/', { headers: GEO, body: JSON.stringify(elsewhere) });
  await nws.forecastFor(FIXTURE_PLACE, FIXTURE_NOW);
  expect(services.seen('/gridpoints/XYZ/11,22')).toHaveLength(1);
  const trick = changed('nws-point.json', ['properties.forecastGridData', 'https://api.weather.gov/alerts/active']);
  services.script('/points/', { headers: GEO, body: JSON.stringify(trick) });
  await expect(nws.forecastFor({ latitudeDeg: 40, longitudeDeg: -96 }, FIXTURE_NOW)).rejects.toMatchObject({
    code: 'bad-answer',
  });
});

it('asks for the warnings at the rounded point', async () => {
  const warnings = await nws.warningsFor(FIXTURE_PLACE, FIXTURE_NOW);
  expect(services.seen('/alerts/')[0]?.path).toBe('/alerts/active?point=41.22,-96.64');
  expect(warnings.map(({ kind }) => kind)).toEqual(['cold', 'freeze', 'extreme-cold']);
});

it("passes the service's own problem on", async () => {
  services.script('/points/', { status: 400, headers: PROBLEM, body: '{"title":"Bad Request"}' });
  await expect(nws.forecastFor(FIXTURE_PLACE, FIXTURE_NOW)).rejects.toMatchObject({
    code: 'bad-answer',
    message: 'The National Weather Service answered with status 400 (Bad Request).',
  });
});

it('asks MET Norway for the complete forecast at the rounded place and whole metres', async () => {
  const forecast = await new MetnoSource(transport).forecastFor(FIXTURE_PLACE, FIXTURE_NOW);
  expect(services.requests[0]?.path).toBe(
    '/weatherapi/locationforecast/2.0/complete?lat=41.22&lon=-96.64&altitude=350',
  );
  expect(forecast.updatedAt).toEqual(new Date('2026-01-20T19:31:07Z'));
});

it('leaves the altitude out when it is not known, and never writes a trailing zero or a minus before it', async () => {
  await new MetnoSource(transport).forecastFor({ latitudeDeg: 60.5, longitudeDeg: -0.0001 }, FIXTURE_NOW);
  expect(services.requests[0]?.path).toBe('/weatherapi/locationforecast/2.0/complete?lat=60.5&lon=0');
});

it('asks Open-Meteo for ten columns over two weeks in SI units and seconds', async () => {
  await new OpenMeteoSource(transport).forecastFor(FIXTURE_PLACE, FIXTURE_NOW);
  const query = new URL(services.requests[0]?.path ?? '', 'http://x').searchParams;
  expect(query.get('hourly')?.split(',')).toHaveLength(10);
  expect(Number(query.get('past_days')) + Number(query.get('forecast_days'))).toBe(14);
  query.delete('hourly');
  expect(Object.fromEntries(query)).toEqual({
    latitude: '41.22',
    longitude: '-96.64',
    elevation: '350',
    wind_speed_unit: 'ms',
    timeformat: 'unixtime',
    timezone: 'GMT',
    past_days: '7',
    forecast_days: '7',
  });
});

it('refuses a place that is none before anybody is asked', async () => {
  await expect(nws.forecastFor({ latitudeDeg: Number.NaN, longitudeDeg: 0 }, FIXTURE_NOW)).rejects.toThrow(RangeError);
  expect(services.requests).toEqual([]);
});
