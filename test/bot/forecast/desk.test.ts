import { expect, it } from 'vitest';
import { Desk } from '../../../bot/forecast/desk.ts';
import type {
  ForecastPlace,
  ForecastService,
  ForecastSource,
  HourlyForecast,
  OfficialWarning,
  ServiceFailure,
} from '../../../bot/forecast/forecast.ts';
import { ForecastServiceError, NoForecastError } from '../../../bot/forecast/forecast-error.ts';
import { PlainProblem } from '../../../bot/ground/errors.ts';
import { FIXTURE_NIGHT, FIXTURE_NOW } from '../../fakes/forecast-services.ts';
import { coolingNight, even, forecastOf } from './forecasts.ts';

const OMAHA = { latitudeDeg: 41.2, longitudeDeg: -96.6 };
const BERGEN = { latitudeDeg: 60.4, longitudeDeg: 5.3 };
const later = (hours: number) => new Date(FIXTURE_NOW.getTime() + hours * 3_600_000);

/** A service whose answers are put into its hands. */
class Scripted implements ForecastSource {
  readonly service: ForecastService;
  asked = 0;
  answer: HourlyForecast | ServiceFailure | Error;

  constructor(service: ForecastService, answer: HourlyForecast | ServiceFailure | Error) {
    this.service = service;
    this.answer = answer;
  }

  async forecastFor(): Promise<HourlyForecast> {
    this.asked += 1;
    await Promise.resolve();
    if (typeof this.answer === 'string')
      throw new ForecastServiceError(this.service, this.answer, 'no', { retryAfterS: 3600 });
    if (this.answer instanceof Error) throw this.answer;
    return this.answer;
  }
}

/** A day that has gone by before the usual cooling night. */
const withDayBefore = (night: readonly number[]) => [...even(24, 5), ...night];
const THE_DAY_BEFORE = '2026-01-19T12:00:00Z';

function good(
  service: ForecastService,
  more: Partial<HourlyForecast> = {},
  screenC = withDayBefore(coolingNight()),
  first = THE_DAY_BEFORE,
): HourlyForecast {
  const credits = [{ text: service, url: 'https://example.org/' }];
  return forecastOf({ screenC, wind10MPerS: even(screenC.length, 1) }, first, { service, credits, ...more });
}

function desk(
  answers: Partial<Record<ForecastService, HourlyForecast | ServiceFailure | Error>> = {},
  order?: readonly ForecastService[],
) {
  const source = (service: ForecastService) => new Scripted(service, answers[service] ?? good(service));
  const sources = { nws: source('nws'), metno: source('metno'), openmeteo: source('openmeteo') };
  const warnings = { failure: undefined as ServiceFailure | undefined, list: [] as OfficialWarning[] };
  const front = new Desk({
    sources,
    warnings: {
      warningsFor: async () => {
        await Promise.resolve();
        if (warnings.failure !== undefined) throw new ForecastServiceError('nws', warnings.failure, 'no');
        return warnings.list;
      },
    },
    order: order ?? ['nws', 'metno', 'openmeteo'],
    close: () => Promise.resolve(),
  });
  return { front, ...sources, warnings };
}

it('asks the National Weather Service in its area and nobody else', async () => {
  const { front, nws, metno } = desk();
  expect((await front.forecastFor(OMAHA, FIXTURE_NOW)).service).toBe('nws');
  expect([nws.asked, metno.asked]).toEqual([1, 0]);
});

it('asks MET Norway elsewhere', async () => {
  const { front, nws } = desk();
  const forecast = await front.forecastFor(BERGEN, FIXTURE_NOW);
  expect([forecast.service, nws.asked, forecast.notes]).toEqual(['metno', 0, []]);
});

it('knows the coarse area: states, islands and both sides of the date line', async () => {
  const inside: ForecastPlace[] = [
    { latitudeDeg: 61.2, longitudeDeg: -149.9 },
    { latitudeDeg: 52.9, longitudeDeg: 173.2 },
    { latitudeDeg: 21.3, longitudeDeg: -157.9 },
    { latitudeDeg: 18.4, longitudeDeg: -66.1 },
    { latitudeDeg: 13.5, longitudeDeg: 144.8 },
    { latitudeDeg: -14.3, longitudeDeg: -170.7 },
  ];
  for (const place of inside) expect((await desk().front.forecastFor(place, FIXTURE_NOW)).service).toBe('nws');
  const outside = [
    { latitudeDeg: 53.5, longitudeDeg: -113.5 },
    { latitudeDeg: 19.4, longitudeDeg: -99.1 },
    { latitudeDeg: -33.9, longitudeDeg: 151.2 },
  ];
  for (const place of outside) expect((await desk().front.forecastFor(place, FIXTURE_NOW)).service).toBe('metno');
});

it('goes on without a word where a coarse area holds another country', async () => {
  const { front } = desk({ nws: 'not-covered' });
  expect(await front.forecastFor({ latitudeDeg: 43.7, longitudeDeg: -79.4 }, FIXTURE_NOW)).toMatchObject({
    service: 'metno',
    notes: [],
  });
});

it('falls back to the next service and says from which and why', async () => {
  const { front } = desk({ nws: 'unavailable', metno: 'refused' });
  const { service, notes } = await front.forecastFor(OMAHA, FIXTURE_NOW);
  expect(service).toBe('openmeteo');
  expect(notes).toEqual([
    { code: 'fell-back', from: 'nws', to: 'openmeteo', because: 'unavailable' },
    { code: 'fell-back', from: 'metno', to: 'openmeteo', because: 'refused' },
  ]);
});

it('keeps to the order that the host has set', async () => {
  const { front, nws } = desk({}, ['openmeteo', 'nws']);
  expect((await front.forecastFor(OMAHA, FIXTURE_NOW)).service).toBe('openmeteo');
  expect(nws.asked).toBe(0);
});

it('passes over a service that does not reach the wished night', async () => {
  const { front } = desk({ nws: good('nws', {}, withDayBefore(coolingNight(20))) });
  const { service, notes } = await front.forecastFor(OMAHA, FIXTURE_NOW, { night: FIXTURE_NIGHT });
  expect(service).toBe('metno');
  expect(notes).toContainEqual({ code: 'fell-back', from: 'nws', to: 'metno', because: 'too-short' });
});

it('says in one sentence why no forecast could be had, and when to try again', async () => {
  const { front } = desk({ nws: 'unavailable', metno: 'rate-limited', openmeteo: 'bad-answer' });
  const error: unknown = await front.forecastFor(OMAHA, FIXTURE_NOW).catch((cause: unknown) => cause);
  if (!(error instanceof NoForecastError)) throw new Error('expected NoForecastError');
  expect(error).toBeInstanceOf(PlainProblem);
  expect(error.message).toBe(
    'No forecast could be had: the National Weather Service did not answer; MET Norway has been asked too often; Open-Meteo sent something that cannot be read. Look outside, and cover as for a colder night.',
  );
  expect(error).toMatchObject({ code: 'no-forecast', retryAfterS: 3600 });
  expect(error.failures.map(({ service }) => service)).toEqual(['nws', 'metno', 'openmeteo']);
});

it('says so when the night is simply too far away', async () => {
  const far = { sunset: new Date('2026-02-20T23:25:00Z'), sunrise: new Date('2026-02-21T13:45:00Z') };
  await expect(desk().front.forecastFor(BERGEN, FIXTURE_NOW, { night: far })).rejects.toThrow(
    'No forecast reaches that night yet',
  );
});

it('lets a fault of ours through instead of hiding it behind another service', async () => {
  const { front, metno } = desk({ nws: new TypeError('ours') });
  await expect(front.forecastFor(OMAHA, FIXTURE_NOW)).rejects.toThrow(TypeError);
  expect(metno.asked).toBe(0);
});

it('uses the last answer when nobody answers now, and tells its age, but not beyond 18 hours', async () => {
  const { front, nws, metno, openmeteo } = desk();
  await front.forecastFor(OMAHA, FIXTURE_NOW);
  for (const source of [nws, metno, openmeteo]) source.answer = 'unavailable';
  const stored = await front.forecastFor(OMAHA, later(13));
  expect(stored.notes).toEqual([
    { code: 'old-forecast', ageH: 13 },
    { code: 'stored-forecast', ageH: 13 },
  ]);
  await expect(front.forecastFor(OMAHA, later(19))).rejects.toThrow(NoForecastError);
  await expect(front.forecastFor({ latitudeDeg: 40, longitudeDeg: -96 }, later(1))).rejects.toThrow(NoForecastError);
});

it('asks a second service when the first is old, and takes the newer one', async () => {
  const { front } = desk({ nws: good('nws', { updatedAt: later(-13) }) });
  expect((await front.forecastFor(OMAHA, FIXTURE_NOW)).service).toBe('metno');
});

it('takes the colder of two that differ by more than 3 K, and says so', async () => {
  const colder = withDayBefore(coolingNight()).map((value) => value - 3.5);
  const { front } = desk({ metno: good('metno', {}, colder) });
  const { service, notes, credits } = await front.forecastFor(OMAHA, FIXTURE_NOW, {
    night: FIXTURE_NIGHT,
    compare: true,
  });
  expect(service).toBe('metno');
  expect(notes).toEqual([{ code: 'services-differ', other: 'nws', lowC: -9.5, otherLowC: -6 }]);
  expect(credits.map(({ text }) => text)).toEqual(['metno', 'nws']);
});

it('keeps the first, and says how mild the other is, when the first is the colder one', async () => {
  const milder = withDayBefore(coolingNight()).map((value) => value + 4);
  const { front } = desk({ metno: good('metno', {}, milder) });
  const { service, notes } = await front.forecastFor(OMAHA, FIXTURE_NOW, { night: FIXTURE_NIGHT, compare: true });
  expect([service, notes]).toEqual(['nws', [{ code: 'services-differ', other: 'metno', lowC: -6, otherLowC: -2 }]]);
});

it('keeps the first without a word when two agree within 3 K', async () => {
  const near = withDayBefore(coolingNight()).map((value) => value - 2.9);
  const { front, metno } = desk({ metno: good('metno', {}, near) });
  expect(await front.forecastFor(OMAHA, FIXTURE_NOW, { night: FIXTURE_NIGHT, compare: true })).toMatchObject({
    service: 'nws',
    notes: [],
  });
  expect(metno.asked).toBe(1);
});

it('borrows the past from Open-Meteo when a forecast tells less than a day of it', async () => {
  const bare = good('metno', {}, coolingNight().slice(8), '2026-01-20T20:00:00Z');
  const { front, openmeteo } = desk({ metno: bare });
  const forecast = await front.forecastFor(BERGEN, FIXTURE_NOW, { night: FIXTURE_NIGHT });
  expect(forecast).toMatchObject({ service: 'metno', first: new Date(THE_DAY_BEFORE), hours: 64 });
  expect(forecast.notes).toEqual([{ code: 'past-from-other-service', service: 'openmeteo', hours: 32 }]);
  expect(forecast.credits.map(({ text }) => text)).toEqual(['metno', 'openmeteo']);
  openmeteo.answer = 'unavailable';
  const alone = await desk({ metno: bare, openmeteo: 'unavailable' }).front.forecastFor(BERGEN, FIXTURE_NOW, {
    night: FIXTURE_NIGHT,
  });
  expect([alone.first, alone.notes]).toEqual([bare.first, []]);
});

it('remembers the hours of its own earlier answers', async () => {
  const { front, metno, openmeteo } = desk({ metno: good('metno') });
  await front.forecastFor(BERGEN, FIXTURE_NOW);
  metno.answer = good('metno', {}, coolingNight().slice(8), '2026-01-20T20:00:00Z');
  const forecast = await front.forecastFor(BERGEN, FIXTURE_NOW, { night: FIXTURE_NIGHT });
  expect(forecast).toMatchObject({ first: new Date(THE_DAY_BEFORE), hours: 64, notes: [] });
  expect(openmeteo.asked).toBe(0);
});

it('asks a service once for many who ask at the same time', async () => {
  const { front, nws } = desk();
  await Promise.all(Array.from({ length: 20 }, () => front.forecastFor(OMAHA, FIXTURE_NOW)));
  expect(nws.asked).toBe(1);
  await front.forecastFor(OMAHA, FIXTURE_NOW);
  expect(nws.asked).toBe(2);
});

it('tells warnings that are known from those that are not, and from places where nobody warns', async () => {
  const { front, warnings } = desk();
  expect(await front.warningsFor(OMAHA, FIXTURE_NOW)).toMatchObject({ kind: 'known', warnings: [] });
  warnings.failure = 'unavailable';
  expect(await front.warningsFor(OMAHA, FIXTURE_NOW)).toEqual({ kind: 'unknown', because: 'unavailable' });
  warnings.failure = 'not-covered';
  expect(await front.warningsFor(OMAHA, FIXTURE_NOW)).toEqual({ kind: 'not-covered' });
  expect(await front.warningsFor(BERGEN, FIXTURE_NOW)).toEqual({ kind: 'not-covered' });
});

it('asks no second service for the hours gone when the asker has them', async () => {
  const short = good('metno', {}, coolingNight(), FIXTURE_NOW.toISOString());
  const { front, openmeteo } = desk({ metno: short });
  await front.forecastFor(BERGEN, FIXTURE_NOW, { night: FIXTURE_NIGHT, pastKnown: true });
  expect(openmeteo.asked).toBe(0);
  await front.forecastFor(BERGEN, FIXTURE_NOW, { night: FIXTURE_NIGHT });
  expect(openmeteo.asked).toBe(1);
});
