import { afterEach, beforeEach, expect, it } from 'vitest';
import { forecastDesk } from '../../../bot/forecast/choose.ts';
import type { ForecastDesk } from '../../../bot/forecast/forecast.ts';
import type { ServiceEvent } from '../../../bot/forecast/transport.ts';
import { nightWeather } from '../../../bot/weather/night.ts';
import { FIXTURE_NIGHT, FIXTURE_NOW, FIXTURE_PLACE, ForecastServices } from '../../fakes/forecast-services.ts';

let services: ForecastServices;
let desk: ForecastDesk;
let events: ServiceEvent[];

beforeEach(async () => {
  services = await ForecastServices.start();
  events = [];
  desk = forecastDesk({
    bases: services.bases,
    contact: 'grower@example.org',
    retryWaitMs: () => 1,
    spacingMs: { nws: 0, metno: 0, openmeteo: 0 },
    tell: (event) => events.push(event),
  });
});

afterEach(async () => {
  await desk.close();
  await services.close();
});

it('brings the night from the American grid through to its low', async () => {
  const forecast = await desk.forecastFor(FIXTURE_PLACE, FIXTURE_NOW, { night: FIXTURE_NIGHT });
  const { summary, notes, spinUpH } = nightWeather(forecast, FIXTURE_NIGHT, FIXTURE_NOW);
  expect(forecast.service).toBe('nws');
  expect(summary).toMatchObject({ lowC: -9.5, lowAt: new Date('2026-01-21T11:00:00Z') });
  expect(notes.map(({ code }) => code)).toEqual(['past-from-other-service', 'gaps-filled', 'lowered-to-service-low']);
  expect(spinUpH).toBeCloseTo(47.4, 1);
  expect(services.requests).toHaveLength(3);
});

it('turns to MET Norway when the American service is broken, and to Open-Meteo for the hours of the day', async () => {
  services.script('/gridpoints/', {
    status: 503,
    headers: { 'content-type': 'application/problem+json' },
    body: '{"title":"Forecast Grid Expired"}',
    gzip: false,
  });
  const forecast = await desk.forecastFor(FIXTURE_PLACE, FIXTURE_NOW, { night: FIXTURE_NIGHT });
  expect(forecast.service).toBe('metno');
  expect(forecast.notes.map(({ code }) => code)).toEqual(['fell-back', 'past-from-other-service']);
  const { summary, spinUpH } = nightWeather(forecast, FIXTURE_NIGHT, FIXTURE_NOW);
  expect(summary.lowC).toBe(-9.2);
  expect(spinUpH).toBeGreaterThan(24);
  expect(events).toEqual([{ service: 'nws', code: 'unavailable', status: 503 }]);
});

it('tells which warnings are in force', async () => {
  const warnings = await desk.warningsFor(FIXTURE_PLACE, FIXTURE_NOW);
  expect(warnings).toMatchObject({ kind: 'known', credits: [{ text: 'National Weather Service' }] });
  services.script('/alerts/', { status: 500 });
  expect(await desk.warningsFor({ ...FIXTURE_PLACE, latitudeDeg: 40 }, FIXTURE_NOW)).toEqual({
    kind: 'unknown',
    because: 'unavailable',
  });
});

it('tells the gardener when everything fails', async () => {
  for (const path of ['/points/', '/weatherapi/', '/v1/']) services.script(path, { status: 500 });
  await expect(desk.forecastFor(FIXTURE_PLACE, FIXTURE_NOW)).rejects.toThrow(
    /^No forecast could be had: .*cover as for a colder night\.$/,
  );
});
