import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import type { ForecastService, ForecastSource } from '../../../bot/forecast/forecast.ts';
import { ForecastServiceError } from '../../../bot/forecast/forecast-error.ts';
import { MetnoSource } from '../../../bot/forecast/metno.ts';
import { NwsSource } from '../../../bot/forecast/nws.ts';
import { OpenMeteoSource } from '../../../bot/forecast/openmeteo.ts';
import { Transport } from '../../../bot/forecast/transport.ts';
import { nightWeather } from '../../../bot/weather/night.ts';
import { FIXTURE_NIGHT, FIXTURE_NOW, FIXTURE_PLACE, ForecastServices } from '../../fakes/forecast-services.ts';

const SOURCES: Readonly<Record<ForecastService, { path: string; open: (transport: Transport) => ForecastSource }>> = {
  nws: { path: '/gridpoints/', open: (transport) => new NwsSource(transport) },
  metno: { path: '/weatherapi/', open: (transport) => new MetnoSource(transport) },
  openmeteo: { path: '/v1/', open: (transport) => new OpenMeteoSource(transport) },
};

for (const [name, { path, open }] of Object.entries(SOURCES)) {
  describe(`any forecast service (${name})`, () => {
    let services: ForecastServices;
    let transport: Transport;
    let source: ForecastSource;

    beforeEach(async () => {
      services = await ForecastServices.start();
      transport = new Transport({
        bases: services.bases,
        contact: 'grower@example.org',
        retryWaitMs: () => 1,
        spacingMs: { nws: 0, metno: 0, openmeteo: 0 },
      });
      source = open(transport);
    });

    afterEach(async () => {
      await transport.close();
      await services.close();
    });

    async function failure(): Promise<ForecastServiceError> {
      const error: unknown = await source.forecastFor(FIXTURE_PLACE, FIXTURE_NOW).catch((cause: unknown) => cause);
      if (!(error instanceof ForecastServiceError))
        throw new Error(`expected a failure of the service, got ${String(error)}`);
      return error;
    }

    it('gives a forecast in the one normal form', async () => {
      const forecast = await source.forecastFor(FIXTURE_PLACE, FIXTURE_NOW);
      expect(forecast.service).toBe(name);
      expect(source.service).toBe(name);
      expect(forecast.fetchedAt).toEqual(FIXTURE_NOW);
      expect(forecast.place).toEqual({ latitudeDeg: 41.22, longitudeDeg: -96.64, elevationM: 350 });
      expect(forecast.gridElevationM).toBeGreaterThan(300);
      expect(forecast.credits[0]?.url).toMatch(/^https:/);
      expect(forecast.columns.screenC?.some((value) => value !== undefined)).toBe(true);
      for (const column of Object.values(forecast.columns)) {
        expect(column).toHaveLength(forecast.hours);
        expect(column.every((value: unknown) => value === undefined || Number.isFinite(value))).toBe(true);
      }
    });

    it('carries a night', async () => {
      const forecast = await source.forecastFor(FIXTURE_PLACE, FIXTURE_NOW);
      const { summary } = nightWeather(forecast, FIXTURE_NIGHT, FIXTURE_NOW);
      expect(summary.lowC).toBeLessThan(-5);
      expect(summary.lowC).toBeGreaterThan(-15);
    });

    it('says who it is and whose fault it was, without the place', async () => {
      services.script(path, { status: 403 });
      const error = await failure();
      expect(error).toMatchObject({ service: name, code: 'refused', retryAfterS: 3600 });
      expect(error.message).not.toMatch(/41|96/);
    });

    it('does not use JSON that breaks off', async () => {
      services.script(path, { headers: { 'content-type': 'application/json' }, body: '{"a":', gzip: false });
      expect((await failure()).code).toBe('bad-answer');
    });

    it('does not use an answer of the wrong type or shape', async () => {
      services.script(path, { headers: { 'content-type': 'text/html' }, body: '<p>0</p>', gzip: false });
      expect((await failure()).code).toBe('bad-answer');
    });

    it('does not use an answer without temperatures', async () => {
      services.script(path, {
        headers: { 'content-type': 'application/json' },
        body: '{"properties":{}}',
        gzip: false,
      });
      const error = await failure();
      expect(error.code).toBe('bad-answer');
      expect(error.cause).toBeInstanceOf(Error);
    });

    it('survives one broken answer and reports two', async () => {
      services.script(path, { status: 502 }, {});
      expect((await source.forecastFor(FIXTURE_PLACE, FIXTURE_NOW)).service).toBe(name);
      services.script(path, { status: 502 });
      await expect(
        open(transport).forecastFor({ latitudeDeg: 42, longitudeDeg: -96 }, FIXTURE_NOW),
      ).rejects.toMatchObject({ code: 'unavailable', retryAfterS: 90 });
    });

    it('asks for one place once in two minutes at most when the answer says so', async () => {
      const expires = new Date(Date.now() + 120_000).toUTCString();
      const headers = { 'content-type': 'application/json', expires, 'last-modified': 'Tue, 20 Jan 2026 19:31:07 GMT' };
      services.script(path, { headers });
      await source.forecastFor(FIXTURE_PLACE, FIXTURE_NOW);
      await source.forecastFor(FIXTURE_PLACE, FIXTURE_NOW);
      expect(services.seen(path)).toHaveLength(1);
    });
  });
}

describe('services that tell when they changed the forecast', () => {
  for (const name of ['nws', 'metno'] as const) {
    it(`refuse one more than 18 hours old and note one above 12 (${name})`, async () => {
      const services = await ForecastServices.start();
      const transport = new Transport({
        bases: services.bases,
        contact: 'grower@example.org',
        spacingMs: { nws: 0, metno: 0, openmeteo: 0 },
      });
      const source = SOURCES[name].open(transport);
      const later = (hours: number) => new Date(FIXTURE_NOW.getTime() + hours * 3_600_000);
      await expect(source.forecastFor(FIXTURE_PLACE, later(18))).rejects.toMatchObject({ code: 'stale' });
      const old = await source.forecastFor(FIXTURE_PLACE, later(13));
      expect(old.notes).toMatchObject([{ code: 'old-forecast' }]);
      await transport.close();
      await services.close();
    });
  }
});
